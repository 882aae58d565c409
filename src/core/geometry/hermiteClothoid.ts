import type { Piece, Place } from './piece.ts'
import { integrate } from './quadrature.ts'

const MOST_STEPS = 20

/** An angle brought within half a turn of zero. */
export const nearZeroRad = (angleRad: number): number => angleRad - 2 * Math.PI * Math.round(angleRad / (2 * Math.PI))

/**
 * The one piece (straight, arc or clothoid) that leads from a place to another with both headings, turning by less than half a turn
 * on the way; null where the two points are one or the search does not settle.
 *
 *   0 = integral over [0,1] of sin(A t^2 + (d - A) t + f)      f, f + d: headings at the ends from the chord; A sought by Newton
 *
 * Source: Bertolazzi & Frego 2015, G1 fitting with clothoids (the equation and the first guess A = 3 (2 f + d); code our own).
 */
export function clothoidBetween(start: Place, end: Place): Piece | null {
  const dx = end.point.x - start.point.x
  const dy = end.point.y - start.point.y
  const chordMm = Math.hypot(dx, dy)
  if (!(chordMm > 0)) return null
  const chordRad = Math.atan2(dy, dx)
  const f = nearZeroRad(start.headingRad - chordRad)
  const d = nearZeroRad(end.headingRad - chordRad) - f
  let A = 3 * (2 * f + d)
  const angle = (t: number) => (A * t + d - A) * t + f
  for (let step = 0; step < MOST_STEPS; step++) {
    const miss = integrate((t) => Math.sin(angle(t)), 0, 1)
    const slope = integrate((t) => Math.cos(angle(t)) * (t * t - t), 0, 1)
    const change = miss / slope
    if (!Number.isFinite(change)) return null
    A -= change
    if (Math.abs(change) < 1e-14) break
  }
  const share = integrate((t) => Math.cos(angle(t)), 0, 1)
  if (!(share > 0.1) || Math.abs(integrate((t) => Math.sin(angle(t)), 0, 1)) > 1e-12) return null
  const lengthMm = chordMm / share
  // Ours is positive to the right.
  return { lengthMm, startCurvaturePerMm: (A - d) / lengthMm, endCurvaturePerMm: -(A + d) / lengthMm }
}
