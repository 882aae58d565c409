import type { Computed } from '../core/compute.ts'
import { curveAt } from '../core/geometry/curve.ts'
import type { Point } from '../core/geometry/point.ts'
import type { NumberKey } from '../core/numbers.ts'
import { shapesBounds } from './bounds.ts'
import { inPlace, label } from './dimension.ts'
import type { Drawing, LabelWord, PathCommand, Shape } from './drawing.ts'
import { figured } from './figured.ts'
import { drawn, through } from './line.ts'
import { acrossBody, profileCommands } from './profile.ts'
import { capReachMm } from './sectionDrawing.ts'

const STEP_MM = 60
/** Room between the rows for their figures, and between the columns for the names of the rows. */
const ROOM_MM = 84
const BETWEEN_MM = 170
const OVER_RIM_MM = 8

const ROWS: readonly {
  bout: 'lowerBoutMm' | 'waistMm' | 'upperBoutMm'
  top: NumberKey
  back: NumberKey
  word: LabelWord
}[] = [
  { bout: 'lowerBoutMm', top: 'top.gapAcrossLowerBoutMm', back: 'back.gapAcrossLowerBoutMm', word: 'lowerBout' },
  { bout: 'waistMm', top: 'top.gapAcrossWaistMm', back: 'back.gapAcrossWaistMm', word: 'waist' },
  { bout: 'upperBoutMm', top: 'top.gapAcrossUpperBoutMm', back: 'back.gapAcrossUpperBoutMm', word: 'upperBout' },
]
const PLATES = ['top', 'back'] as const

/**
 * Top and back cut across at the bouts and the waist, with the straightedge a maker lays from rim to rim: tops in the left column, backs in the
 * right one. Heights over the straightedge are drawn `heightsTimes` larger than they are.
 */
export function domesDrawing(computed: Computed, heightsTimes = 1): Drawing {
  const { numbers, geometry } = computed
  const { bouts, outline } = geometry
  const columnMm = curveAt(outline.half, bouts.lowerBoutMm).point.y + BETWEEN_MM / 2
  const middles = { top: -columnMm, back: columnMm }
  const shapes: Shape[] = []
  let foot = 0
  for (const row of ROWS) {
    const s = bouts[row.bout]
    if (s === null) continue
    const at = curveAt(outline.half, s).point
    if (at.y < 1) continue
    const gaps = PLATES.map((plate) => figured(numbers, row[plate]))
    const [topGapMm = 0, backGapMm = 0] = gaps.map(({ value }) =>
      typeof value === 'number' ? Math.abs(value) * heightsTimes : 0,
    )
    // Both straightedges of a row lie level: tops rise from theirs, backs hang from theirs.
    const lineY = foot + topGapMm
    foot = lineY + Math.max(backGapMm, 12) + ROOM_MM
    PLATES.forEach((plate, i) =>
      shapes.push(...strip(computed, plate, at, { x: middles[plate], y: lineY }, heightsTimes, gaps[i]!)),
    )
    shapes.push({ ...label(row.word, { x: 0, y: lineY }, { x: 0, y: 0 }), isOptional: false })
  }
  return {
    name: 'domes',
    seenFrom: 'section',
    bounds: shapesBounds(shapes),
    heightsTimes,
    marks: {},
    shapes: [
      ...shapes,
      label('topPlate', { x: middles.top, y: 0 }, { x: 0, y: -1.6 }),
      label('backPlate', { x: middles.back, y: 0 }, { x: 0, y: -1.6 }),
    ],
  }
}

/** One plate across at one place: its curve, the straightedge at `middle`, the gap between them. */
function strip(
  { geometry, numbers }: Computed,
  plate: 'top' | 'back',
  at: Point,
  middle: Point,
  heightsTimes: number,
  gap: ReturnType<typeof figured>,
): Shape[] {
  const { top, back } = geometry
  const { x, y: half } = at
  const surface = plate === 'top' ? top.plate : back.surface
  const rimMm = surface.heightMm(x, half)
  const riseMm = typeof numbers.top.riseAtSaddleMm === 'number' ? numbers.top.riseAtSaddleMm : 0
  const reach = capReachMm(riseMm, top.radiusMm)
  const cap = Math.sqrt(Math.max(reach * reach - (x - numbers.scale.saddleLineMm) ** 2, 0))
  const bends = plate === 'top' && top.form === 'flatRim' && cap > 0 && cap < half ? [-cap, cap] : []
  const profile = profileCommands(
    acrossBody(surface, x),
    [-half, ...bends, half],
    STEP_MM,
    { atZeroMm: rimMm, rise: 0 },
    heightsTimes,
  ).map((command) => shifted(command, middle.x, middle.y + rimMm))
  const crownY = middle.y - (surface.heightMm(x, 0) - rimMm) * heightsTimes
  const reachMm = half + OVER_RIM_MM
  return [
    drawn(
      'thin',
      through([
        { x: middle.x - reachMm, y: middle.y },
        { x: middle.x + reachMm, y: middle.y },
      ]),
    ),
    drawn('edge', profile),
    inPlace(gap, 'left', middle, { x: middle.x, y: crownY }),
  ]
}

function shifted(command: PathCommand, byX: number, byY: number): PathCommand {
  if (command[0] === 'C') {
    const [, x1, y1, x2, y2, x, y] = command
    return ['C', x1 + byX, y1 + byY, x2 + byX, y2 + byY, x + byX, y + byY]
  }
  return command[0] === 'M' || command[0] === 'L' ? [command[0], command[1] + byX, command[2] + byY] : command
}
