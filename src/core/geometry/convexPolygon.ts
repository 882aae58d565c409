import type { Point } from './point.ts'

/** Corners of a convex polygon in either order of going round; one that has shrunk to a stretch or a point is one still. */
export type ConvexPolygon = readonly Point[]

/** Edges shorter than this have no direction. */
const LEAST_EDGE_MM = 1e-9

const reach = (polygon: ConvexPolygon, way: Point): readonly [number, number] => {
  let low = Infinity
  let high = -Infinity
  for (const { x, y } of polygon) {
    const along = x * way.x + y * way.y
    low = Math.min(low, along)
    high = Math.max(high, along)
  }
  return [low, high]
}

/**
 * How far two convex polygons run into each other: the least way one has to be moved to be clear of the other, mm. Nothing or less where
 * they are clear already; then it is no distance, only at most one.
 *
 * Source: two convex shapes are apart exactly where they are apart across one of their edges (separating axis; published, from memory).
 */
export function overlapMm(a: ConvexPolygon, b: ConvexPolygon): number {
  let least = Infinity
  for (const polygon of [a, b]) {
    for (let i = 0; i < polygon.length; i++) {
      const [p, q] = [polygon[i]!, polygon[(i + 1) % polygon.length]!]
      const size = Math.hypot(q.x - p.x, q.y - p.y)
      if (size < LEAST_EDGE_MM) continue
      const across = { x: (q.y - p.y) / size, y: (p.x - q.x) / size }
      const [lowA, highA] = reach(a, across)
      const [lowB, highB] = reach(b, across)
      least = Math.min(least, highA - lowB, highB - lowA)
      if (least <= 0) return least
    }
  }
  return Number.isFinite(least) ? least : 0
}

/** Distance from a point to a stretch. */
function toStretchMm(point: Point, p: Point, q: Point): number {
  const [dx, dy] = [q.x - p.x, q.y - p.y]
  const square = dx * dx + dy * dy
  const share = square === 0 ? 0 : Math.min(Math.max(((point.x - p.x) * dx + (point.y - p.y) * dy) / square, 0), 1)
  return Math.hypot(point.x - p.x - share * dx, point.y - p.y - share * dy)
}

/** Whether a point lies in the polygon or on its edge. */
function holds(polygon: ConvexPolygon, point: Point): boolean {
  let [left, right] = [false, false]
  polygon.forEach((p, i) => {
    const q = polygon[(i + 1) % polygon.length]!
    const turn = (q.x - p.x) * (point.y - p.y) - (q.y - p.y) * (point.x - p.x)
    if (turn > 0) left = true
    if (turn < 0) right = true
  })
  return left !== right
}

const toEdgesMm = (polygon: ConvexPolygon, point: Point): number =>
  polygon.reduce((least, p, i) => Math.min(least, toStretchMm(point, p, polygon[(i + 1) % polygon.length]!)), Infinity)

/** Distance from a point to a polygon, mm: 0 within it. */
export const toPolygonMm = (polygon: ConvexPolygon, point: Point): number =>
  holds(polygon, point) ? 0 : toEdgesMm(polygon, point)

/** Clear distance of two convex polygons, mm; where they overlap, how far, as a negative number. */
export function clearanceMm(a: ConvexPolygon, b: ConvexPolygon): number {
  const over = overlapMm(a, b)
  if (over > 0) return -over
  return Math.min(...a.map((point) => toEdgesMm(b, point)), ...b.map((point) => toEdgesMm(a, point)))
}

/** From where to where along x a convex polygon lies within |y| <= half; null where it does not. */
export function spanInBand(polygon: ConvexPolygon, halfMm: number): { fromMm: number; toMm: number } | null {
  let low = Infinity
  let high = -Infinity
  const take = (x: number) => {
    low = Math.min(low, x)
    high = Math.max(high, x)
  }
  polygon.forEach((p, i) => {
    const q = polygon[(i + 1) % polygon.length]!
    if (Math.abs(p.y) <= halfMm) take(p.x)
    for (const edge of [-halfMm, halfMm])
      if (p.y < edge !== q.y < edge) take(p.x + ((q.x - p.x) * (edge - p.y)) / (q.y - p.y))
  })
  return low <= high ? { fromMm: low, toMm: high } : null
}
