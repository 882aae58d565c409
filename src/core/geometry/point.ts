/** A place in the plane, millimetres. For an outline: x along the centreline from the tail, y the half-width. */
export interface Point {
  readonly x: number
  readonly y: number
}

export const distanceMm = (a: Point, b: Point): number => Math.hypot(b.x - a.x, b.y - a.y)

/** The point t of the way from a to b; t outside 0..1 extrapolates. */
export const between = (a: Point, b: Point, t: number): Point => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
})
