import { type Curve, curveAt } from './curve.ts'
import { pieceCurvaturePerMm } from './piece.ts'
import type { Point } from './point.ts'

/** A curve at many places along it, made once, to be asked many times how far points stand off it. */
export interface CurveTable {
  readonly stepMm: number
  readonly x: Float64Array
  readonly y: Float64Array
  /** Direction of the way. */
  readonly alongX: Float64Array
  readonly alongY: Float64Array
  /** Curvature just before and just after each place: they differ where pieces meet. */
  readonly beforePerMm: Float64Array
  readonly afterPerMm: Float64Array
  readonly isCorner: Uint8Array
}

const COUNT = 768
const COARSE = 8
/** A corner stands in the table three times: itself, and just before and after it. */
const BESIDE_CORNER_MM = 1e-4

/** What a curve was tabulated as before: one curve always gives the same. */
const known = new WeakMap<Curve, CurveTable>()

/** Places a step apart, those where pieces meet, and corners. */
export function tabulate(curve: Curve): CurveTable {
  const table = known.get(curve) ?? tableOf(curve)
  known.set(curve, table)
  return table
}

function tableOf(curve: Curve): CurveTable {
  const stepMm = curve.lengthMm / COUNT
  const places = [...curve.startsMm, ...Array.from({ length: COUNT }, (_, i) => i * stepMm)]
  for (const { sMm } of curve.corners) places.push(sMm - BESIDE_CORNER_MM, sMm + BESIDE_CORNER_MM)
  const starts = new Map(curve.startsMm.map((sMm, i) => [sMm, i]))
  const corners = new Map(curve.corners.map(({ sMm, turnRad }) => [sMm, turnRad]))
  const rows = [...new Set(places)]
    .sort((a, b) => a - b)
    .map((sMm) => {
      const at = curveAt(curve, sMm)
      const turnRad = corners.get(sMm)
      // A corner looks halfway between its two ways.
      if (turnRad !== undefined)
        return { ...at, headingRad: at.headingRad + turnRad / 2, beforePerMm: 0, afterPerMm: 0, isCorner: true }
      const piece = curve.pieces[(starts.get(sMm) ?? 0) - 1]
      const beforePerMm = piece === undefined ? at.curvaturePerMm : pieceCurvaturePerMm(piece, piece.lengthMm)
      return { ...at, beforePerMm, afterPerMm: at.curvaturePerMm, isCorner: false }
    })
  return {
    stepMm,
    x: Float64Array.from(rows, ({ point }) => point.x),
    y: Float64Array.from(rows, ({ point }) => point.y),
    alongX: Float64Array.from(rows, ({ headingRad }) => Math.cos(headingRad)),
    alongY: Float64Array.from(rows, ({ headingRad }) => Math.sin(headingRad)),
    beforePerMm: Float64Array.from(rows, (row) => row.beforePerMm),
    afterPerMm: Float64Array.from(rows, (row) => row.afterPerMm),
    isCorner: Uint8Array.from(rows, (row) => Number(row.isCorner)),
  }
}

/** The row of the table nearest to a point: every eighth first, then those around the best. */
function nearestRow(table: CurveTable, x: number, y: number): number {
  const last = table.x.length - 1
  let best = last
  let least = Number.POSITIVE_INFINITY
  const look = (i: number) => {
    const dx = x - table.x[i]!
    const dy = y - table.y[i]!
    const dd = dx * dx + dy * dy
    if (dd < least) {
      least = dd
      best = i
    }
  }
  for (let i = 0; i < last; i += COARSE) look(i)
  look(last)
  const coarse = best
  for (let i = Math.max(0, coarse - COARSE); i <= Math.min(last, coarse + COARSE); i++) look(i)
  return best
}

/**
 * How far a point stands off a curve, mm: positive to the left of its way, outside for an outline. The circle that hugs the curve at the
 * nearest row stands for it there,
 *
 *   d = (k (u^2 + v^2) + 2 v) / (sqrt(k^2 u^2 + (1 + k v)^2) + 1)      u along, v to the left of that row
 *
 * exact on straights and arcs, and on clothoids to the third order of half a step: some 1e-7 mm on a body. Beyond the curve's ends it
 * goes on as it ended, so that halves closed square to the centreline are good on it too. Source: derived.
 */
export function signedDistanceMm(table: CurveTable, point: Point): number {
  const i = nearestRow(table, point.x, point.y)
  const dx = point.x - table.x[i]!
  const dy = point.y - table.y[i]!
  const u = dx * table.alongX[i]! + dy * table.alongY[i]!
  const v = dy * table.alongX[i]! - dx * table.alongY[i]!
  // Nearest to a corner, or well beyond an end: the distance to that place itself.
  if (table.isCorner[i] === 1 || Math.abs(u) > 2 * table.stepMm) return v < 0 ? -Math.hypot(u, v) : Math.hypot(u, v)
  const k = u < 0 ? table.beforePerMm[i]! : table.afterPerMm[i]!
  return (k * (u * u + v * v) + 2 * v) / (Math.hypot(k * u, 1 + k * v) + 1)
}
