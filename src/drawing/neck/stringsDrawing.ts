import type { Computed } from '../../core/compute.ts'
import type { BoardPlan, BridgePlan, StringsPlan } from '../../core/neckPlan.ts'
import type { Point } from '../../core/geometry/point.ts'
import { shapesBounds } from '../bounds.ts'
import { label, ordinate } from '../dimension.ts'
import type { Drawing, Shape } from '../drawing.ts'
import { figuredAcross, figuredRow } from '../figured.ts'
import { circle, closed, drawn, through } from '../line.ts'

const STEPS = 24
/** The nut stands this much over the strings, and the two views this far apart. */
const NUT_OVER_MM = 2.5
const APART_MM = 30
/** The saddle is drawn down to here under the bridge's top. */
const BRIDGE_MM = 5

export interface StringsDrawn {
  readonly strings: StringsPlan
  readonly board: BoardPlan
  readonly bridge: BridgePlan
}

/**
 * Nut and saddle cut across where the strings lie, seen from the tail, so treble lies right: every string as thick as it is, the board's surface
 * under the nut, the bridge's top under the saddle.
 */
export function stringsDrawing({ numbers, geometry }: Computed, { strings: plan, board }: StringsDrawn): Drawing {
  const { shape } = geometry.neck
  const rows = numbers.strings
  const thickMm = (i: number) => plan.set[i]?.diameterMm ?? 1
  const halfNut = shape.halfWidthAtMm(shape.nutMm)
  const arc = (half: number, topMm: (y: number) => number): Point[] =>
    Array.from({ length: STEPS + 1 }, (_, i) => {
      const x = -half + (2 * half * i) / STEPS
      return { x, y: topMm(x) }
    })

  // The nut, its crest at 0; heights downward are positive on the sheet.
  const surface = arc(halfNut, (y) => shape.dropMm(shape.nutMm, y))
  const slots = rows.map((row, i) => ({
    x: row.nutAcrossMm,
    y: shape.dropMm(shape.nutMm, row.nutAcrossMm) - row.slotOverBoardMm - thickMm(i) / 2,
  }))
  const nutTop = Math.min(0, ...slots.map(({ y }) => y)) - NUT_OVER_MM
  const nut: Shape[] = [
    drawn(
      'edge',
      closed(through([...surface, { x: halfNut, y: board.thicknessMm }, { x: -halfNut, y: board.thicknessMm }])),
    ),
    drawn('thin', through([surface[0]!, { x: -halfNut, y: nutTop }, { x: halfNut, y: nutTop }, surface.at(-1)!])),
    ...slots.map((at, i) => drawn('edge', circle(at, thickMm(i) / 2))),
  ]

  // The saddle below it, the bridge's top at `foot`.
  const foot = board.thicknessMm + APART_MM
  const crowns = rows.map((row, i) => ({
    x: row.saddleAcrossMm,
    y: foot - row.saddleShowingMm - thickMm(i) / 2,
  }))
  const halfSaddle = Math.max(plan.saddleSpreadMm / 2 + 8, 12)
  const saddle: Shape[] = [
    drawn(
      'edge',
      closed(
        through([
          { x: -halfSaddle, y: foot },
          ...(crowns.length > 0 ? [{ x: -halfSaddle, y: crowns[0]!.y + thickMm(0) / 2 }] : []),
          ...crowns.map(({ x, y }, i) => ({ x, y: y + thickMm(i) / 2 })),
          ...(crowns.length > 0 ? [{ x: halfSaddle, y: crowns.at(-1)!.y + thickMm(crowns.length - 1) / 2 }] : []),
          { x: halfSaddle, y: foot },
        ]),
      ),
    ),
    drawn(
      'thin',
      through([
        { x: -halfSaddle - 10, y: foot + BRIDGE_MM },
        { x: -halfSaddle - 10, y: foot },
        { x: halfSaddle + 10, y: foot },
        { x: halfSaddle + 10, y: foot + BRIDGE_MM },
      ]),
    ),
    ...crowns.map((at, i) => drawn('edge', circle(at, thickMm(i) / 2))),
  ]
  const shapes = [...nut, ...saddle]
  const bounds = shapesBounds(shapes)
  const last = rows.length - 1
  const outer = (i: number) => (i === 0 || i === last ? 1 : 2)
  return {
    name: 'strings',
    seenFrom: 'tail',
    bounds,
    heightsTimes: 1,
    marks: { left: 'bass', right: 'treble' },
    shapes: [
      ...shapes,
      ...rows.map((row, i) =>
        ordinate(
          figuredRow('strings[].nutFromBassEdgeMm', i, row.nutFromBassEdgeMm),
          { x: row.nutAcrossMm, y: nutTop },
          { x: 0, y: -1 },
          outer(i),
          true,
        ),
      ),
      ...rows.map((row, i) =>
        ordinate(
          figuredRow('strings[].saddleShowingMm', i, row.saddleShowingMm),
          { x: row.saddleAcrossMm, y: foot - 4 },
          { x: 0, y: -1 },
          outer(i),
          true,
        ),
      ),
      ...rows.map((row, i) =>
        ordinate(
          figuredAcross('strings[].saddleAcrossMm', i, row.saddleAcrossMm),
          { x: row.saddleAcrossMm, y: bounds.maxY },
          { x: 0, y: 1 },
          outer(i),
          true,
        ),
      ),
      label('nut', { x: -halfNut, y: board.thicknessMm / 2 }, { x: -1, y: 0 }),
      label('saddle', { x: -halfSaddle - 10, y: foot + BRIDGE_MM / 2 }, { x: -1, y: 0 }),
    ],
  }
}
