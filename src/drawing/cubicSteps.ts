import type { Point } from '../core/geometry/point.ts'

export type Cubic = readonly [Point, Point, Point, Point]

const MOST_STEPS = 2000

/**
 * Points along a cubic, without its first, so that straight lines through them stay within `closeMm` of it: even steps, their number from the
 * bend. A chord over 1/n of a curve departs from it by no more than |B''| / (8 n^2), and |B''| is nowhere more than 6 times the larger
 * second difference of the handles. `closeMm` under 0.001 counts as that; never more than 2000 steps.
 *
 * Source: error of linear interpolation; the hull of the second derivative.
 */
export function cubicSteps(cubic: Cubic, closeMm: number): Point[] {
  const [a, b, c, d] = cubic
  const bend = Math.max(
    Math.hypot(a.x - 2 * b.x + c.x, a.y - 2 * b.y + c.y),
    Math.hypot(b.x - 2 * c.x + d.x, b.y - 2 * c.y + d.y),
  )
  const steps = Math.min(Math.max(Math.ceil(Math.sqrt((0.75 * bend) / Math.max(closeMm, 0.001))), 1), MOST_STEPS)
  return Array.from({ length: steps }, (_, i) => (i === steps - 1 ? d : onCubic(cubic, (i + 1) / steps)))
}

function onCubic([a, b, c, d]: Cubic, t: number): Point {
  const s = 1 - t
  const at = (p: number, q: number, r: number, z: number) =>
    s * s * s * p + 3 * s * s * t * q + 3 * s * t * t * r + t * t * t * z
  return { x: at(a.x, b.x, c.x, d.x), y: at(a.y, b.y, c.y, d.y) }
}
