import { circleInPolygonMm2 } from '../geometry/circleInPolygon.ts'
import type { BoardEnd } from './rosette.ts'

/**
 * Area of a round hole that the board leaves open, mm2: the circle less what lies under the board, which is square at its end and
 * tapers as entered. 0 where it covers the hole. Exact. Source: derived.
 */
export function freeHoleMm2(radiusMm: number, board: BoardEnd): number {
  if (radiusMm <= 0) return 0
  const { fromCentreMm: endMm, halfWidthMm, taper } = board
  const wholeMm2 = Math.PI * radiusMm * radiusMm
  if (endMm >= radiusMm || halfWidthMm <= 0) return wholeMm2
  // Followed to beyond the hole, or to where its edges would meet.
  const farMm = taper > 0 ? Math.min(2 * radiusMm, endMm + halfWidthMm / taper) : 2 * radiusMm
  const farHalfMm = halfWidthMm - taper * (farMm - endMm)
  const coveredMm2 = circleInPolygonMm2(radiusMm, [
    { x: endMm, y: -halfWidthMm },
    { x: farMm, y: -farHalfMm },
    { x: farMm, y: farHalfMm },
    { x: endMm, y: halfWidthMm },
  ])
  const freeMm2 = wholeMm2 - coveredMm2
  return freeMm2 > wholeMm2 * 1e-12 ? freeMm2 : 0
}

/** Radius of the round hole of the same area, mm. */
export const equivalentRadiusMm = (areaMm2: number): number => Math.sqrt(Math.max(areaMm2, 0) / Math.PI)
