import type { Point } from './point.ts'

/**
 * Area that a circle about (0, 0) and a polygon have in common, mm2: positive where the polygon runs anticlockwise, exact.
 *
 * Every edge a-b adds what its triangle with the centre has of the circle: a x b / 2 where it runs inside, r^2/2 times the angle it
 * spans where it runs outside. An edge is cut where it meets the circle, at the roots of |a + u (b - a)| = r. Source: derived.
 */
export function circleInPolygonMm2(radiusMm: number, corners: readonly Point[]): number {
  let twiceMm2 = 0
  corners.forEach((a, i) => {
    const b = corners[(i + 1) % corners.length]!
    const stops = [0, ...meetsCircleAt(radiusMm, a, b), 1]
    for (let k = 1; k < stops.length; k++) {
      const [from, to] = [stops[k - 1]!, stops[k]!]
      const isInside = distanceAt(a, b, (from + to) / 2) < radiusMm
      const [p, q] = [placeAt(a, b, from), placeAt(a, b, to)]
      const cross = p.x * q.y - p.y * q.x
      twiceMm2 += isInside ? cross : radiusMm * radiusMm * Math.atan2(cross, p.x * q.x + p.y * q.y)
    }
  })
  return twiceMm2 / 2
}

const placeAt = (a: Point, b: Point, u: number): Point => ({ x: a.x + u * (b.x - a.x), y: a.y + u * (b.y - a.y) })
const distanceAt = (a: Point, b: Point, u: number): number => {
  const { x, y } = placeAt(a, b, u)
  return Math.hypot(x, y)
}

/** The parts of the way from a to b at which it crosses the circle, inside the way, in order. */
function meetsCircleAt(radiusMm: number, a: Point, b: Point): number[] {
  const [dx, dy] = [b.x - a.x, b.y - a.y]
  const square = dx * dx + dy * dy
  const along = a.x * dx + a.y * dy
  const under = along * along - square * (a.x * a.x + a.y * a.y - radiusMm * radiusMm)
  if (square === 0 || under <= 0) return []
  const root = Math.sqrt(under)
  return [(-along - root) / square, (-along + root) / square].filter((u) => u > 0 && u < 1)
}
