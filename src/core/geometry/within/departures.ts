import type { Curve } from '../curve.ts'
import { curveAt } from '../curve.ts'
import type { Point } from '../point.ts'

/** Steps toward the nearest place, and a step that is the last. */
const MOST_STEPS = 12
const LAST_STEP_MM = 1e-9

/**
 * Distance of a point from the place of a curve nearest to it, mm; positive where it lies to the left of the way. Sought from the nearest
 * joint of two pieces.
 */
export function departureMm(curve: Curve, point: Point): number {
  let nearest = 0
  let least = Number.POSITIVE_INFINITY
  curve.places.forEach((place, i) => {
    const square = (place.point.x - point.x) ** 2 + (place.point.y - point.y) ** 2
    if (square < least) {
      least = square
      nearest = i
    }
  })
  const low = curve.startsMm[Math.max(nearest - 1, 0)]!
  const high = curve.startsMm[Math.min(nearest + 1, curve.pieces.length)]!
  let s = curve.startsMm[nearest]!
  let off = 0
  let side = 0
  for (let steps = 0; steps < MOST_STEPS; steps++) {
    const { point: foot, normal, curvaturePerMm } = curveAt(curve, s)
    const awayX = point.x - foot.x
    const awayY = point.y - foot.y
    side = awayX * normal.x + awayY * normal.y
    off = Math.hypot(awayX, awayY)
    const ahead = awayX * normal.y - awayY * normal.x
    const next = Math.min(Math.max(s + ahead / Math.max(1 + side * curvaturePerMm, 0.3), low), high)
    if (Math.abs(next - s) < LAST_STEP_MM) break
    s = next
  }
  return side < 0 ? -off : off
}
