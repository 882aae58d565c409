import type { Point } from '../core/geometry/point.ts'

/** x' = a x + c y + e, y' = b x + d y + f: the six numbers of a transform, in the order SVG writes them. */
export type Affine = readonly [a: number, b: number, c: number, d: number, e: number, f: number]

export const UNMOVED: Affine = [1, 0, 0, 1, 0, 0]

/** First the inner one, then the outer. */
export const compose = (outer: Affine, inner: Affine): Affine => {
  const u = moveVector(outer, { x: inner[0], y: inner[1] })
  const v = moveVector(outer, { x: inner[2], y: inner[3] })
  const origin = movePoint(outer, { x: inner[4], y: inner[5] })
  return [u.x, u.y, v.x, v.y, origin.x, origin.y]
}

export const movePoint = ([a, b, c, d, e, f]: Affine, { x, y }: Point): Point => ({
  x: a * x + c * y + e,
  y: b * x + d * y + f,
})

/** A direction with its length: nothing is shifted. */
export const moveVector = ([a, b, c, d]: Affine, { x, y }: Point): Point => ({ x: a * x + c * y, y: b * x + d * y })
