import type { Computed } from '../../core/compute.ts'
import { blockPoints } from '../blockFace.ts'
import { shapesBounds } from '../bounds.ts'
import { curveCommands } from '../curvePath.ts'
import { label, radius } from '../dimension.ts'
import type { Drawing, Shape } from '../drawing.ts'
import { figured } from '../figured.ts'
import type { HalfName } from '../innerFace.ts'
import { arcAbout, circle, closed, drawn, through } from '../line.ts'
import {
  alongCentreline,
  blockOnHalf,
  freeXMm,
  type Half,
  halfOf,
  halfStations,
  halfWidths,
  middleFigures,
  placeNames,
  placeFigures,
  roomOnHalf,
} from './half.ts'

const ENDS = ['tail', 'neck'] as const
const BEYOND_MM = 10
const SADDLE_HALF_MM = 40
const CROSS_MM = 5
const NAMES_IN_MM = 11
/** Clear of the stations at tail and neck. */
const IN_MM = 8

/**
 * One half of the body to saw out, in the body's own frame, seen from the front: the outer face of the sides, the centreline as its straight
 * edge; bouts and waist, stations, saddle line, hole, and where the blocks stand. Where both halves are alike the bass half serves for either.
 */
export function outlineHalf(computed: Computed, side: HalfName): Drawing {
  const { geometry, numbers } = computed
  const half = halfOf(computed, side)
  const { flip } = half
  const end = half.curve.places.at(-1)!.point
  const toMiddle = flip < 0 ? [Math.PI, 2 * Math.PI] : [0, Math.PI]
  const hole = { x: numbers.soundhole.centreMm, y: 0 }
  const shapes: Shape[] = [
    ...ENDS.map((at) => blockOnHalf(computed, half, at)),
    ...onHalf(computed, half),
    drawn('thin', arcAbout(hole, numbers.soundhole.radiusMm, toMiddle[0]!, toMiddle[1]!)),
    drawn(
      'edge',
      through([
        { x: end.x, y: 0 },
        { x: 0, y: 0 },
      ]),
    ),
    drawn('cut', curveCommands(half.curve, { mirrored: flip < 0 })),
  ]
  const room = roomOnHalf(computed, half)
  return {
    name: 'outlineTemplate',
    seenFrom: 'front',
    bounds: shapesBounds(shapes),
    heightsTimes: 1,
    marks: {},
    shapes: [
      ...shapes,
      ...figures(computed, half),
      ...alongCentreline(half, [...placeFigures(half), ...middleFigures(computed)]),
      label('referenceEdge', { x: freeXMm(computed, half), y: 0 }, { x: 0, y: flip }),
      ...(geometry.outline.isMirrored ? [] : sideName(half)),
    ],
    ...(room === null ? {} : { titleRoom: room }),
  }
}

/** Both halves to saw out in one, with the centreline between them. */
export function outlineWhole(computed: Computed): Drawing {
  const { geometry, numbers } = computed
  const [bass, treble] = [halfOf(computed, 'bass'), halfOf(computed, 'treble')]
  const halves = [bass, treble]
  const hole = { x: numbers.soundhole.centreMm, y: 0 }
  const outer: Shape[] = halves.map(({ curve, flip }) => drawn('cut', curveCommands(curve, { mirrored: flip < 0 })))
  const { minX, maxX } = shapesBounds(outer)
  const shapes: Shape[] = [
    ...ENDS.map((at) => drawn('hidden', closed(through(blockPoints(computed, at))))),
    ...halves.flatMap((half) => onHalf(computed, half)),
    drawn('thin', circle(hole, numbers.soundhole.radiusMm)),
    drawn(
      'centre',
      through([
        { x: minX - BEYOND_MM, y: 0 },
        { x: maxX + BEYOND_MM, y: 0 },
      ]),
    ),
    ...outer,
  ]
  const room = roomOnHalf(computed, bass)
  return {
    name: 'outlineTemplate',
    seenFrom: 'front',
    bounds: shapesBounds(shapes),
    heightsTimes: 1,
    marks: {},
    shapes: [
      ...shapes,
      ...figures(computed, bass),
      ...halfWidths(treble),
      ...placeNames(treble, NAMES_IN_MM),
      ...alongCentreline(bass, [...placeFigures(bass), ...middleFigures(computed)]),
      ...(geometry.outline.isMirrored ? [] : alongCentreline(treble, placeFigures(treble))),
      label('centreline', { x: freeXMm(computed, bass), y: 0 }, { x: 0, y: 1 }),
      ...halves.flatMap(sideName),
    ],
    ...(room === null ? {} : { titleRoom: room }),
  }
}

/** What is marked on one half. */
function onHalf(computed: Computed, half: Half): Shape[] {
  const { numbers } = computed
  const across = (x: number, toMm: number) =>
    drawn(
      'thin',
      through([
        { x, y: 0 },
        { x, y: half.flip * toMm },
      ]),
    )
  return [
    across(numbers.scale.saddleLineMm, SADDLE_HALF_MM),
    across(numbers.soundhole.centreMm, CROSS_MM),
    ...halfStations(computed, half),
  ]
}

/** Half-widths, the hole's radius, and what lies where. */
function figures(computed: Computed, half: Half): Shape[] {
  const { numbers, geometry } = computed
  const { flip } = half
  const { centreMm, radiusMm } = numbers.soundhole
  const inside = (word: 'tail' | 'neck' | 'joint', x: number, y: number, way: 1 | -1) =>
    label(word, { x, y: flip * y }, { x: way, y: 0 })
  return [
    ...halfWidths(half),
    ...placeNames(half, NAMES_IN_MM),
    radius(
      figured(numbers, 'soundhole.radiusMm'),
      { x: centreMm, y: 0 },
      radiusMm,
      (flip * Math.PI) / 3,
      radiusMm + BEYOND_MM,
    ),
    label('saddleLine', { x: numbers.scale.saddleLineMm, y: flip * SADDLE_HALF_MM }, { x: 0, y: flip }),
    inside('tail', IN_MM, 16, 1),
    inside('neck', geometry.lengthMm - IN_MM, 16, -1),
    inside('joint', geometry.lengthMm - IN_MM, 22, -1),
  ]
}

/** Inside the lower bout. */
const sideName = (half: Half): Shape[] =>
  half.places.flatMap(({ at: { place, xMm, yMm } }) =>
    place === 'lowerBout' ? [label(half.side, { x: xMm - 2, y: half.flip * (yMm - 16) }, { x: -1, y: 0 })] : [],
  )
