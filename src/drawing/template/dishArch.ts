import type { PlateSide } from '../../core/boxPlan.ts'
import type { Computed } from '../../core/compute.ts'
import { curveAt } from '../../core/geometry/curve.ts'
import { sagittaMm } from '../../core/geometry/sagitta.ts'
import { shapesBounds } from '../bounds.ts'
import { label, ordinate } from '../dimension.ts'
import type { Drawing, Shape } from '../drawing.ts'
import { figured } from '../figured.ts'
import { drawn, through } from '../line.ts'

/** How much longer than the body is wide, how wide the strip is under its ends, and its ticks. */
const LONGER_MM = 40
const STRIP_MM = 40
const TICK_MM = 6
const EIGHTHS = 8
/** An arch is never longer than this part of its circle's diameter: the bulge of a very round dish still has to rise from a strip. */
const MOST_OF_DIAMETER = 0.95

/**
 * A strip with the arch of one plate's dish, a little longer than the body is wide: the arc, and under it a straight edge parallel to its chord,
 * with every eighth of it marked. Of a flat plate a straight one.
 */
export function dishArch(computed: Computed, plate: PlateSide): Drawing {
  const { numbers, geometry } = computed
  const key = plate === 'top' ? 'top.radiusMm' : 'back.radiusMm'
  const { radiusMm } = plate === 'top' ? geometry.top : geometry.back
  const isFlat = radiusMm === 'flat'
  const widestMm =
    curveAt(geometry.outline.bass, geometry.bouts.lowerBoutMm).point.y +
    curveAt(geometry.outline.treble, geometry.trebleBouts.lowerBoutMm).point.y
  const lengthMm = Math.min(widestMm + LONGER_MM, isFlat ? Infinity : 2 * MOST_OF_DIAMETER * radiusMm)
  const half = lengthMm / 2
  const dropMm = (x: number) => (isFlat ? 0 : sagittaMm(radiusMm, 2 * x))
  const riseMm = dropMm(half)
  /** Of the arc over its chord. */
  const archMm = (x: number) => riseMm - dropMm(x)
  const shapes: Shape[] = [
    ...Array.from({ length: EIGHTHS + 1 }, (_, i) => {
      const x = -half + (lengthMm * i) / EIGHTHS
      const y = -archMm(x)
      return [
        drawn(
          'thin',
          through([
            { x, y },
            { x, y: y + TICK_MM },
          ]),
        ),
        drawn(
          'thin',
          through([
            { x, y: STRIP_MM - TICK_MM },
            { x, y: STRIP_MM },
          ]),
        ),
      ]
    }).flat(),
    drawn(
      'edge',
      through([
        { x: -half, y: 0 },
        { x: -half, y: STRIP_MM },
        { x: half, y: STRIP_MM },
        { x: half, y: 0 },
      ]),
    ),
    drawn('cut', [['M', -half, 0], isFlat ? ['L', half, 0] : ['A', radiusMm, 0, 1, half, 0]]),
  ]
  return {
    name: 'archTemplate',
    seenFrom: 'face',
    bounds: shapesBounds(shapes),
    heightsTimes: 1,
    marks: {},
    shapes: [
      ...shapes,
      ordinate(
        { ...figured(numbers, key), ...(isFlat ? {} : { sign: 'R' as const }) },
        { x: 0, y: TICK_MM - riseMm },
        { x: 0, y: 1 },
        0,
      ),
      label('referenceEdge', { x: half * 0.875, y: STRIP_MM }, { x: 0, y: -1 }),
    ],
    titleRoom: { minX: -half + TICK_MM, maxX: half * 0.7, minY: TICK_MM + 6, maxY: STRIP_MM - TICK_MM - 2 },
  }
}
