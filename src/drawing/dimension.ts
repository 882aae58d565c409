import type { Point } from '../core/geometry/point.ts'
import type { EdgeMark, Figured, Label, LabelWord, Linear, Ordinate, RadiusDimension, Side } from './drawing.ts'

/** A length whose line runs clear of the drawing, beyond `baseMm` on its side. */
export const outside = (
  figured: Figured,
  side: Side,
  baseMm: number,
  from: Point,
  to: Point,
  lanesFree = 0,
): Linear => ({ kind: 'linear', figured, from, to, side, line: { way: 'outside', baseMm, lanesFree } })

/** Several lengths from one origin, sharing a line. */
export const running = (
  figured: Figured,
  side: Side,
  baseMm: number,
  from: Point,
  to: Point,
  lanesFree = 0,
): Linear => ({ kind: 'linear', figured, from, to, side, line: { way: 'running', baseMm, lanesFree } })

/** A length drawn where it is. */
export const inPlace = (figured: Figured, side: Side, from: Point, to: Point, figureAt = 0.5): Linear => ({
  kind: 'linear',
  figured,
  from,
  to,
  side,
  line: { way: 'inPlace', figureAt },
})

export const ordinate = (figured: Figured, at: Point, away: Point, urgency: number, turned = false): Ordinate => ({
  kind: 'ordinate',
  figured,
  at,
  away,
  urgency,
  turned,
})

export const radius = (
  figured: Figured,
  centre: Point,
  radiusMm: number,
  towardRad: number,
  reachMm: number,
): RadiusDimension => ({ kind: 'radius', figured: { ...figured, sign: 'R' }, centre, radiusMm, towardRad, reachMm })

export const label = (word: LabelWord | EdgeMark, at: Point, away: Point): Label => ({
  kind: 'label',
  word,
  at,
  away,
  isOptional: OPTIONAL.has(word),
})

/** Words that only explain a line: where the sheet is small, the drawing can do without. */
const OPTIONAL: ReadonlySet<LabelWord | EdgeMark> = new Set([
  'rimPlane',
  'straightTaper',
  'saddleLine',
  'straightEdge',
  'cutLine',
  'lowerBout',
  'waist',
  'upperBout',
  'joint',
  'nut',
  'saddle',
  'fretPlane',
])

/** Round stations come before the others where room is short. */
export const stationUrgency = (row: number, last: number): number =>
  row === 0 || row === last ? 1 : row % 10 === 0 ? 2 : row % 5 === 0 ? 3 : row % 2 === 0 ? 4 : 5
