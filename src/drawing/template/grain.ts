import type { Point } from '../../core/geometry/point.ts'
import { label } from '../dimension.ts'
import type { Shape } from '../drawing.ts'
import { drawn, through } from '../line.ts'

const HEAD_MM = 4
const HEAD_HALF_MM = 1.3

/** An arrow with a head at either end along the grain, its middle at a place, with the word over it; along x, or along y. */
export function grainArrow(middle: Point, lengthMm: number, along: 'x' | 'y' = 'x'): Shape[] {
  const half = lengthMm / 2
  const at = (u: number, v: number): Point =>
    along === 'x' ? { x: middle.x + u, y: middle.y + v } : { x: middle.x + v, y: middle.y + u }
  const head = (way: 1 | -1) =>
    drawn(
      'dimension',
      through([at(way * (half - HEAD_MM), -HEAD_HALF_MM), at(way * half, 0), at(way * (half - HEAD_MM), HEAD_HALF_MM)]),
    )
  return [
    drawn('dimension', through([at(-half, 0), at(half, 0)])),
    head(1),
    head(-1),
    label('grain', middle, along === 'x' ? { x: 0, y: -1 } : { x: 1, y: 0 }),
  ]
}
