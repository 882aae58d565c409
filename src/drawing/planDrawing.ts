import type { Computed } from '../core/compute.ts'
import { curveAt, insetPoint } from '../core/geometry/curve.ts'
import { halfWidthAtMm } from '../core/instrument/body.ts'
import type { RimRow } from '../core/instrument/rim.ts'
import type { Drawing, Figured, Shape } from './drawing.ts'
import { shapesBounds } from './bounds.ts'
import { blockFacePoints } from './blockFace.ts'
import { curveCommands } from './curvePath.ts'
import { inPlace, label, ordinate, outside, running, stationUrgency } from './dimension.ts'
import { figured } from './figured.ts'
import { stationRows } from './stationRows.ts'
import { circle, closed, drawn, through } from './line.ts'

const TICK_MM = 6
const BOARD_ON_MM = 14

/**
 * The body seen from the front, neck to the right, so treble below: outer and inner face, blocks, hole, rings, the board over the body,
 * saddle line, stations; widths and places as found.
 */
export function planDrawing(computed: Computed): Drawing {
  const { numbers, geometry } = computed
  const { half } = geometry.outline
  const { lengthMm } = geometry
  const { sideThicknessMm } = geometry.rimSite
  const faces: Shape[] = [false, true].flatMap((mirrored) => [
    drawn('thin', curveCommands(half, { mirrored, insetMm: sideThicknessMm })),
    drawn('edge', curveCommands(half, { mirrored })),
  ])
  const blocks = (['tail', 'neck'] as const).map((end) => {
    const face = blockFacePoints(computed, end)
    const middle = face[Math.floor(face.length / 2)]!
    const insideX = middle.x + (end === 'tail' ? 1 : -1) * numbers.blocks[end].thicknessMm
    return drawn('hidden', closed(through([...face, { x: insideX, y: face.at(-1)!.y }, { x: insideX, y: face[0]!.y }])))
  })
  const hole = { x: numbers.soundhole.centreMm, y: 0 }
  const rings = numbers.rosette.rings.flatMap((ring) => [
    drawn('thin', circle(hole, ring.innerRadiusMm)),
    drawn('thin', circle(hole, ring.outerRadiusMm)),
  ])
  const body = shapesBounds(faces)
  const shapes: Shape[] = [
    ...blocks,
    ...faces,
    ...flatLine(computed),
    ...rings,
    drawn('edge', circle(hole, numbers.soundhole.radiusMm)),
    drawn(
      'centre',
      through([
        { x: body.minX - 10, y: 0 },
        { x: body.maxX + BOARD_ON_MM + 6, y: 0 },
      ]),
    ),
    ...board(computed),
    ...saddle(computed),
    ...stations(computed),
  ]
  return {
    name: 'plan',
    seenFrom: 'front',
    bounds: shapesBounds(shapes),
    heightsTimes: 1,
    marks: { top: 'bass', bottom: 'treble', left: 'tail', right: 'neck', inCorners: true },
    shapes: [...shapes, ...dimensions(computed, lengthMm)],
  }
}

function board({ geometry, numbers }: Computed): Shape[] {
  const { halfWidthMm, taper } = geometry.boardEnd
  const endMm = numbers.scale.boardEndMm
  if (endMm >= geometry.lengthMm) return []
  const jointHalfMm = halfWidthMm - taper * (geometry.lengthMm - endMm)
  const onMm = geometry.lengthMm + BOARD_ON_MM
  const onHalfMm = jointHalfMm - taper * BOARD_ON_MM
  return [
    {
      kind: 'path',
      role: 'edge',
      covers: true,
      commands: through([
        { x: onMm, y: -onHalfMm },
        { x: endMm, y: -halfWidthMm },
        { x: endMm, y: halfWidthMm },
        { x: onMm, y: onHalfMm },
      ]),
    },
    drawn(
      'thin',
      through([
        { x: geometry.lengthMm, y: -jointHalfMm },
        { x: geometry.lengthMm, y: jointHalfMm },
      ]),
    ),
  ]
}

const SADDLE_HALF_MM = 40
function saddle({ numbers }: Computed): Shape[] {
  const x = numbers.scale.saddleLineMm
  return [
    drawn(
      'thin',
      through([
        { x, y: -SADDLE_HALF_MM },
        { x, y: SADDLE_HALF_MM },
      ]),
    ),
    label('saddleLine', { x, y: SADDLE_HALF_MM }, { x: 0, y: 1 }),
  ]
}

function flatLine({ numbers, geometry }: Computed): Shape[] {
  const x = numbers.top.flatFromMm
  if (typeof x !== 'number') return []
  const y = halfWidthAtMm(geometry.outline.half, x)
  return [
    drawn(
      'hidden',
      through([
        { x, y: -y },
        { x, y },
      ]),
    ),
    label('flatFrom', { x, y: y * 0.7 }, { x: -1, y: -0.9 }),
    ordinate(figured(numbers, 'top.flatFromMm'), { x, y: y * 0.7 }, { x: -1, y: 0.9 }, 0),
  ]
}

function stations({ numbers, geometry }: Computed): Shape[] {
  const last = numbers.rim.length - 1
  const underBoard = (at: RimRow) =>
    at.xMm > numbers.scale.boardEndMm && at.xMm > geometry.lengthMm / 2 && at.yMm < geometry.boardEnd.halfWidthMm
  return stationRows(numbers).flatMap(({ at, row }): Shape[] => {
    if (underBoard(at)) return []
    const inner = insetPoint(geometry.outline.half, at.alongOuterMm, TICK_MM)
    const { normal } = curveAt(geometry.outline.half, at.alongOuterMm)
    const from = { x: at.xMm, y: at.yMm }
    return [
      {
        kind: 'station',
        row,
        ticks: [
          { from, to: inner },
          { from: { x: from.x, y: -from.y }, to: { x: inner.x, y: -inner.y } },
        ],
        numberAt: from,
        away: normal,
        urgency: row % 5 === 0 ? stationUrgency(row, last) : 9,
      },
    ]
  })
}

function dimensions({ numbers: n, geometry }: Computed, lengthMm: number): Shape[] {
  const { half } = geometry.outline
  const { lowerBoutMm, waistMm, upperBoutMm } = geometry.bouts
  const lower = curveAt(half, lowerBoutMm).point
  const waist = waistMm === null ? null : curveAt(half, waistMm).point
  const upper = upperBoutMm === null ? null : curveAt(half, upperBoutMm).point
  const tail = { x: 0, y: 0 }
  const below = Math.max(lower.y, upper?.y ?? 0)
  const up = (figure: Figured, x: number, y: number): Shape => running(figure, 'above', -below, tail, { x, y })
  const down = (figure: Figured, to: { x: number; y: number }): Shape => running(figure, 'below', below, tail, to)
  const outermost = Math.max(n.soundhole.radiusMm, ...n.rosette.rings.map((ring) => ring.outerRadiusMm))
  return [
    outside(figured(n, 'body.lowerBoutMm'), 'left', Math.min(0, lower.x), { x: lower.x, y: -lower.y }, lower),
    ...(waist === null
      ? []
      : [
          inPlace(figured(n, 'body.waistMm'), 'left', { x: waist.x, y: -waist.y }, waist, 0.2),
          down(figured(n, 'body.waistAtMm'), waist),
        ]),
    ...(upper === null
      ? []
      : [
          outside(figured(n, 'body.upperBoutMm'), 'right', lengthMm + BOARD_ON_MM, { x: upper.x, y: -upper.y }, upper),
          down(figured(n, 'body.upperBoutAtMm'), upper),
        ]),
    down(figured(n, 'body.lowerBoutAtMm'), lower),
    outside(figured(n, 'body.lengthMm'), 'below', below, tail, { x: lengthMm, y: 0 }),
    up(figured(n, 'scale.saddleLineMm'), n.scale.saddleLineMm, -SADDLE_HALF_MM),
    up(figured(n, 'soundhole.centreMm'), n.soundhole.centreMm, -outermost),
  ]
}
