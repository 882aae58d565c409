import type { Figure } from '../figure.ts'
import type { Curve } from '../geometry/curve.ts'
import type { Outline } from './outline.ts'

/** How the outline lies to what it was drawn from, and how it bends. */
export interface FitNumbers {
  /** Largest distance of a reading, or of a drawn path, from the curve; 'none' where nothing was read. */
  readonly largestDepartureMm: Figure
  /** Where the bass half turns from round to hollow or back. */
  readonly inflections: number
}

/** Curvature flatter than this, per mm, counts as straight: a radius of 50 m. */
const STRAIGHT_PER_MM = 2e-5

export function measureFit({ bass, reading, drawn }: Outline): FitNumbers {
  return {
    largestDepartureMm: reading?.largestMm ?? drawn?.largestDepartureMm ?? 'none',
    inflections: countInflections(bass),
  }
}

/** How often a curve changes the side it bends to; straights between are passed over. Exact: curvature is linear on every piece. */
export function countInflections({ pieces }: Curve): number {
  let count = 0
  let side = 0
  for (const { startCurvaturePerMm, endCurvaturePerMm } of pieces) {
    for (const k of [startCurvaturePerMm, endCurvaturePerMm]) {
      if (Math.abs(k) < STRAIGHT_PER_MM) continue
      if (side !== 0 && Math.sign(k) !== side) count += 1
      side = Math.sign(k)
    }
  }
  return count
}
