import type { Computed } from '../core/compute.ts'
import { curveAt } from '../core/geometry/curve.ts'
import type { Point } from '../core/geometry/point.ts'
import { halfWidthAtMm } from '../core/instrument/body.ts'
import type { NumberKey } from '../core/numbers.ts'
import { shapesBounds } from './bounds.ts'
import { inPlace, label } from './dimension.ts'
import type { Across } from '../core/instrument/straightedge.ts'
import { changeCommand } from './changeShape.ts'
import type { Drawing, LabelWord, Shape } from './drawing.ts'
import { figured } from './figured.ts'
import { drawn, through } from './line.ts'
import { shiftBy } from './moved.ts'
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
 * right one. Seen from the tail, so treble lies right; it is marked where the two halves differ. Heights over the straightedge are drawn
 * `heightsTimes` larger than they are.
 */
export function domesDrawing(computed: Computed, heightsTimes = 1): Drawing {
  const { numbers, geometry } = computed
  const { bouts, outline } = geometry
  const columnMm = geometry.halfWidthAtMm(curveAt(outline.bass, bouts.lowerBoutMm).point.x) + BETWEEN_MM / 2
  const middles = { top: -columnMm, back: columnMm }
  const shapes: Shape[] = []
  let foot = 0
  for (const row of ROWS) {
    const s = bouts[row.bout]
    if (s === null) continue
    const { x, y } = curveAt(outline.bass, s).point
    if (y < 1) continue
    const at = { x, bassY: y, trebleY: outline.isMirrored ? y : halfWidthAtMm(outline.treble, x) }
    const gaps = PLATES.map((plate) => figured(numbers, row[plate]))
    const [topGapMm = 0, backGapMm = 0] = gaps.map(({ value }) =>
      typeof value === 'number' ? Math.abs(value) * heightsTimes : 0,
    )
    // Both straightedges of a row lie level: tops rise from theirs, backs hang from theirs.
    const lineY = foot + topGapMm
    foot = lineY + Math.max(backGapMm, 12) + ROOM_MM
    PLATES.forEach((plate, i) => {
      const middle = { x: middles[plate], y: lineY }
      shapes.push(...strip(computed, plate, at, middle, heightsTimes, gaps[i]!))
      if (!outline.isMirrored) shapes.push(...sideMarks(plate, at, middle))
    })
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

/** Which half lies where, on the side of the straightedge that the plate leaves free. */
function sideMarks(plate: 'top' | 'back', at: Across, middle: Point): Shape[] {
  const away = { x: 0, y: plate === 'top' ? 1 : -1 }
  return [
    label('bass', { x: middle.x - at.bassY, y: middle.y }, away),
    label('treble', { x: middle.x + at.trebleY, y: middle.y }, away),
  ]
}

/** One plate across at one place: its curve, the straightedge over the middle at `middle`, the gap between them. */
function strip(
  { geometry, numbers }: Computed,
  plate: 'top' | 'back',
  { x, bassY, trebleY }: Across,
  middle: Point,
  heightsTimes: number,
  gap: ReturnType<typeof figured>,
): Shape[] {
  const { top, back } = geometry
  const surface = plate === 'top' ? top.plate : back.surface
  // The straightedge lies on both rims: where they stand unlike high it slants.
  const bassMm = surface.heightMm(x, bassY)
  const rise = (surface.heightMm(x, trebleY) - bassMm) / (bassY + trebleY)
  const lineMm = bassMm + rise * bassY
  const riseMm = typeof numbers.top.riseAtSaddleMm === 'number' ? numbers.top.riseAtSaddleMm : 0
  const reach = capReachMm(riseMm, top.radiusMm)
  const cap = Math.sqrt(Math.max(reach * reach - (x - numbers.scale.saddleLineMm) ** 2, 0))
  const bends = plate === 'top' && top.form === 'flatRim' && cap > 0 ? [-cap, cap] : []
  const toSheet = shiftBy({ x: middle.x, y: middle.y + lineMm })
  const profile = profileCommands(
    acrossBody(surface, x),
    [-bassY, ...bends.filter((y) => y > -bassY && y < trebleY), trebleY],
    STEP_MM,
    { atZeroMm: lineMm, rise },
    heightsTimes,
  ).map((command) => changeCommand(command, toSheet))
  const crownY = middle.y - (surface.heightMm(x, 0) - lineMm) * heightsTimes
  const onLine = (y: number): Point => ({ x: middle.x + y, y: middle.y - rise * y })
  return [
    drawn('thin', through([onLine(-bassY - OVER_RIM_MM), onLine(trebleY + OVER_RIM_MM)])),
    drawn('edge', profile),
    inPlace(gap, 'left', middle, { x: middle.x, y: crownY }),
  ]
}
