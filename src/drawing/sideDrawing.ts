import type { Computed } from '../core/compute.ts'
import type { RimPlace } from '../core/instrument/rim.ts'
import { shapesBounds } from './bounds.ts'
import { inPlace, label, outside, running } from './dimension.ts'
import type { Drawing, Shape } from './drawing.ts'
import { figured } from './figured.ts'
import { drawn, through } from './line.ts'
import { edgeFromSide, edgeStops, LEVEL, onSheetMm, profileCommands } from './profile.ts'
import { baseLines, taperOf } from './taper.ts'

const STEP_MM = 20

/**
 * The rim seen from the treble side, tail to the left. Departures of the top edge from the rim plane and of the back edge from the
 * straight taper are drawn `heightsTimes` larger than they are; depths are figured true.
 */
export function sideDrawing(computed: Computed, heightsTimes = 1): Drawing {
  const { numbers, geometry } = computed
  const { half } = geometry.outline
  const { lengthMm } = geometry
  const taper = taperOf(computed)
  const stops = edgeStops(half, typeof numbers.top.flatFromMm === 'number' ? [numbers.top.flatFromMm] : [])
  const topY = (x: number, z: number) => onSheetMm(LEVEL, heightsTimes, x, z)
  const backY = (x: number, z: number) => onSheetMm(taper, heightsTimes, x, z)
  const ends = [numbers.rim[0]!, numbers.rim.at(-1)!]
  const shapes: Shape[] = [
    ...baseLines(lengthMm, taper),
    drawn('edge', profileCommands(edgeFromSide(half, geometry.top.rim), stops, STEP_MM, LEVEL, heightsTimes)),
    drawn('edge', profileCommands(edgeFromSide(half, geometry.back.surface), stops, STEP_MM, taper, heightsTimes)),
    ...ends.map((row) =>
      drawn(
        'edge',
        through([
          { x: row.xMm, y: topY(row.xMm, row.topEdgeMm) },
          { x: row.xMm, y: backY(row.xMm, row.backEdgeMm) },
        ]),
      ),
    ),
  ]
  const bounds = shapesBounds(shapes)
  const tail = { x: 0, y: -taper.atZeroMm }
  const depths = numbers.places.flatMap((at, row): Shape[] => {
    const from = { x: at.xMm, y: topY(at.xMm, at.topEdgeMm) }
    const to = { x: at.xMm, y: backY(at.xMm, at.backEdgeMm) }
    const depth = figured(numbers, 'places[].depthMm', row)
    if (at.place === 'tail') return [outside(depth, 'left', bounds.minX, from, to)]
    if (at.place === 'neck') return [outside(depth, 'right', bounds.maxX, from, to)]
    return [
      inPlace(depth, 'left', from, to),
      label(PLACE_LABELS[at.place], { x: at.xMm, y: bounds.minY }, { x: 0, y: -1 }),
      running(figured(numbers, 'places[].xMm', row), 'below', bounds.maxY, tail, to),
    ]
  })
  return {
    name: 'side',
    seenFrom: 'trebleSide',
    bounds,
    heightsTimes,
    marks: { left: 'tail', right: 'neck' },
    shapes: [
      ...shapes,
      ...depths,
      outside(figured(numbers, 'body.lengthMm'), 'below', bounds.maxY, tail, {
        x: lengthMm,
        y: backY(lengthMm, ends[1]!.backEdgeMm),
      }),
      label('rimPlane', { x: lengthMm * 0.437, y: 0 }, { x: 0, y: 1 }),
      label(
        'straightTaper',
        { x: lengthMm * 0.437, y: -(taper.atZeroMm + taper.rise * lengthMm * 0.437) },
        { x: 0, y: -1 },
      ),
    ],
  }
}

const PLACE_LABELS = {
  tail: 'tail',
  lowerBout: 'lowerBout',
  waist: 'waist',
  upperBout: 'upperBout',
  neck: 'neck',
} as const satisfies Record<RimPlace, string>
