/** A place in the plane, millimetres. For an outline: x along the centreline from the tail, y the half-width. */
export interface Point {
  readonly x: number
  readonly y: number
}

export const distanceMm = (a: Point, b: Point): number => Math.hypot(b.x - a.x, b.y - a.y)
