import type { Computed } from '../core/compute.ts'
import { shapesBounds } from './bounds.ts'
import { outside, radius } from './dimension.ts'
import type { Drawing, Shape } from './drawing.ts'
import { figured } from './figured.ts'
import { arcAbout, circle, drawn, through } from './line.ts'

const CENTRE = { x: 0, y: 0 }
const deg = Math.PI / 180
/** In parts of the outermost radius. */
const BOARD_TO = 2.3
const FIRST_ARC = 1.2
const NEXT_ARC = 0.5
const LEADER_TO = 1.16
const LEADER_FURTHER = 0.2

/**
 * Hole and rings seen from the front, neck to the right, with the board's end over them: radii on the bass side, the circles the cutter's
 * centre runs on (dashed) on the treble side, and over each ring the angle the board hides.
 */
export function rosetteDrawing({ numbers, geometry }: Computed): Drawing {
  const { soundhole, rosette } = numbers
  const { fromCentreMm, halfWidthMm, taper } = geometry.boardEnd
  const outermost = Math.max(soundhole.radiusMm, 1, ...rosette.rings.map((ring) => ring.outerRadiusMm))
  const boardToMm = outermost * BOARD_TO
  const shapes: Shape[] = [
    drawn(
      'centre',
      through([
        { x: -outermost * 1.08, y: 0 },
        { x: outermost * 1.08, y: 0 },
      ]),
    ),
    drawn(
      'centre',
      through([
        { x: 0, y: -outermost * 1.08 },
        { x: 0, y: outermost * 1.08 },
      ]),
    ),
    drawn('edge', circle(CENTRE, soundhole.radiusMm)),
    drawn('hidden', circle(CENTRE, soundhole.cutterCircleMm)),
    ...rosette.rings.flatMap((ring): Shape[] => {
      const gap = Math.min(ring.gapRad, 2 * Math.PI - 0.01) / 2
      const wall = (r: number) =>
        drawn('thin', gap > 0 ? arcAbout(CENTRE, r, gap, 2 * Math.PI - gap) : circle(CENTRE, r))
      const end = (at: number) =>
        drawn(
          'thin',
          through([ring.innerRadiusMm, ring.outerRadiusMm].map((r) => ({ x: r * Math.cos(at), y: r * Math.sin(at) }))),
        )
      const cutters =
        ring.outerCutterCircleMm - ring.innerCutterCircleMm > 0.01
          ? [ring.innerCutterCircleMm, ring.outerCutterCircleMm]
          : [ring.innerCutterCircleMm]
      return [
        wall(ring.innerRadiusMm),
        wall(ring.outerRadiusMm),
        ...(gap > 0 ? [end(gap), end(-gap)] : []),
        ...cutters.map((r) => drawn('hidden', circle(CENTRE, r))),
      ]
    }),
  ]
  if (fromCentreMm < boardToMm) {
    const onHalfMm = halfWidthMm - taper * (boardToMm - fromCentreMm)
    shapes.push(
      drawn(
        'edge',
        through([
          { x: boardToMm, y: -onHalfMm },
          { x: fromCentreMm, y: -halfWidthMm },
          { x: fromCentreMm, y: halfWidthMm },
          { x: boardToMm, y: onHalfMm },
        ]),
      ),
    )
  }
  const hidden = rosette.rings.flatMap((ring, row): Shape[] => {
    if (ring.hiddenRad <= 0) return []
    const h = ring.hiddenRad / 2
    const at = outermost * (FIRST_ARC + Math.min(NEXT_ARC, 1.2 / rosette.rings.length) * row)
    const ray = (angle: number) =>
      through([ring.innerRadiusMm, at].map((r) => ({ x: r * Math.cos(angle), y: r * Math.sin(angle) })))
    return [
      drawn('dimension', [...ray(-h), ...ray(h)]),
      {
        kind: 'angle',
        figured: figured(numbers, 'rosette.rings[].hiddenRad', row),
        vertex: CENTRE,
        fromRad: -h,
        toRad: h,
        radiusMm: at,
        figureAt: [0.5, 0.36, 0.64][row % 3]!,
      },
    ]
  })
  return {
    name: 'rosette',
    seenFrom: 'front',
    bounds: shapesBounds([...shapes, ...hidden]),
    heightsTimes: 1,
    marks: { top: 'bass', bottom: 'treble', left: 'tail', right: 'neck' },
    shapes: [...shapes, ...hidden, ...leaders(numbers, outermost), ...boardDistance(numbers, geometry, outermost)],
  }
}

function boardDistance(numbers: Computed['numbers'], geometry: Computed['geometry'], outermost: number): Shape[] {
  const { fromCentreMm, halfWidthMm } = geometry.boardEnd
  if (fromCentreMm <= 0 || fromCentreMm > outermost * BOARD_TO) return []
  return [
    outside(
      figured(numbers, 'soundhole.centreToBoardEndMm'),
      'below',
      outermost,
      { x: 0, y: outermost * 1.08 },
      { x: fromCentreMm, y: halfWidthMm },
    ),
  ]
}

/** Leaders fanned out to the tail: walls on the bass side, cutter circles on the treble side, the largest radius nearest the tail. */
function leaders({ soundhole, rosette }: Computed['numbers'], outermost: number): Shape[] {
  const numbers = { soundhole, rosette } as Computed['numbers']
  const walls = [
    { figure: figured(numbers, 'soundhole.radiusMm'), r: soundhole.radiusMm },
    ...rosette.rings.flatMap((ring, row) => [
      { figure: figured(numbers, 'rosette.rings[].innerRadiusMm', row), r: ring.innerRadiusMm },
      { figure: figured(numbers, 'rosette.rings[].outerRadiusMm', row), r: ring.outerRadiusMm },
    ]),
  ]
  const cutters = [
    { figure: figured(numbers, 'soundhole.cutterCircleMm'), r: soundhole.cutterCircleMm },
    ...rosette.rings.flatMap((ring, row) => [
      { figure: figured(numbers, 'rosette.rings[].innerCutterCircleMm', row), r: ring.innerCutterCircleMm },
      ...(ring.outerCutterCircleMm - ring.innerCutterCircleMm > 0.01
        ? [{ figure: figured(numbers, 'rosette.rings[].outerCutterCircleMm', row), r: ring.outerCutterCircleMm }]
        : []),
    ]),
  ]
  const fan = (list: typeof walls, nearTailRad: number, farRad: number): Shape[] =>
    list
      .toSorted((a, b) => b.r - a.r)
      .map(({ figure, r }, i) => {
        const toward = nearTailRad + ((farRad - nearTailRad) * (i + 0.5)) / list.length
        // Where figures stand side by side every other one stands further off.
        const further = Math.abs(Math.sin(toward)) > 0.75 && i % 2 === 1 ? LEADER_FURTHER : 0
        return radius(figure, CENTRE, r, toward, outermost * (LEADER_TO + further))
      })
  return [...fan(walls, 186 * deg, 306 * deg), ...fan(cutters, 174 * deg, 92 * deg)]
}
