import type { Curve } from './curve.ts'
import { curveAt } from './curve.ts'
import type { Point } from './point.ts'
import { distanceMm } from './point.ts'

const PLACES = 300
const GOLDEN_STEPS = 40

/** How far two curves are apart where they are farthest from each other, each place against the nearest of the other; at 300 places of each. */
export const largestDistanceMm = (a: Curve, b: Curve): number => Math.max(farthestMm(a, b), farthestMm(b, a))

const spread = (curve: Curve, count: number): Point[] =>
  Array.from({ length: count + 1 }, (_, j) => curveAt(curve, (curve.lengthMm * j) / count).point)

function farthestMm(from: Curve, to: Curve): number {
  const stops = spread(to, 2 * PLACES)
  const step = to.lengthMm / (2 * PLACES)
  return spread(from, PLACES).reduce((most, p) => {
    let nearest = 0
    stops.forEach((stop, j) => {
      if (distanceMm(p, stop) < distanceMm(p, stops[nearest]!)) nearest = j
    })
    // Already nearer than the worst so far: no need to look closer.
    if (distanceMm(p, stops[nearest]!) <= most) return most
    return Math.max(most, nearestMm(p, to, (nearest - 1) * step, (nearest + 1) * step))
  }, 0)
}

/** Least distance from a point to a stretch of the curve on which it falls and rises again. */
function nearestMm(p: Point, curve: Curve, low: number, high: number): number {
  const away = (s: number) => distanceMm(p, curveAt(curve, s).point)
  const share = (Math.sqrt(5) - 1) / 2
  let [a, b] = [Math.max(low, 0), Math.min(high, curve.lengthMm)]
  let least = Math.min(away(a), away(b))
  for (let i = 0; i < GOLDEN_STEPS; i++) {
    const [c, d] = [b - share * (b - a), a + share * (b - a)]
    const [atC, atD] = [away(c), away(d)]
    least = Math.min(least, atC, atD)
    if (atC <= atD) b = d
    else a = c
  }
  return least
}
