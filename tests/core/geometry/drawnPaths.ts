import fc from 'fast-check'
import type { Path, Stroke } from '../../../src/core/geometry/path.ts'
import type { Point } from '../../../src/core/geometry/point.ts'
import { real } from '../../generators/real.ts'

/** A point of a Bezier curve of any degree, by repeated halving of the differences. */
export function deCasteljau(points: readonly Point[], t: number): Point {
  if (points.length === 1) return points[0]!
  const row = points.slice(1).map((p, i) => ({
    x: points[i]!.x * (1 - t) + p.x * t,
    y: points[i]!.y * (1 - t) + p.y * t,
  }))
  return deCasteljau(row, t)
}

const point = (size: number): fc.Arbitrary<Point> => fc.record({ x: real(-size, size), y: real(-size, size) })

const strokesOf = (size: number): fc.Arbitrary<Stroke> =>
  fc.oneof(
    fc.record({ kind: fc.constant('line' as const), to: point(size) }),
    fc.record({ kind: fc.constant('arc' as const), to: point(size), bulge: real(-3, 3) }),
    fc.record({
      kind: fc.constant('cubic' as const),
      control1: point(size),
      control2: point(size),
      to: point(size),
    }),
  )

/** Paths no one would draw: strokes any way and anywhere. */
export const anyPath: fc.Arbitrary<Path> = fc
  .constantFrom(0.001, 1, 300, 100_000)
  .chain((size) =>
    fc.record({ start: point(size), strokes: fc.array(strokesOf(size), { minLength: 1, maxLength: 6 }) }),
  )
