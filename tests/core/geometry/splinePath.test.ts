import { describe, expect, test } from 'vitest'
import { type Path, pointAt } from '../../../src/core/geometry/path.ts'
import type { Point } from '../../../src/core/geometry/point.ts'
import { pathOfSpline } from '../../../src/core/geometry/splinePath.ts'

const POINTS = [
  [0, 0],
  [10, 90],
  [60, 140],
  [130, 60],
  [190, 120],
  [260, 100],
  [300, 0],
] as const
const WEIGHTS = [1, 0.6, 2, 1, 0.8, 1.5, 1]

/** Knots at uneven steps, each end as often as the degree asks. */
function clampedKnots(degree: number): number[] {
  const inner = POINTS.length - degree - 1
  const last = (inner + 1) ** 1.5
  const ends = (knot: number) => Array.from({ length: degree + 1 }, () => knot)
  return [...ends(0), ...Array.from({ length: inner }, (_, i) => (i + 1) ** 1.5), ...ends(last)]
}

/** Points of a (rational) spline: Cox and de Boor's basis functions, summed. */
function splinePoints(
  points: readonly (readonly [number, number])[],
  knots: readonly number[],
  degree: number,
  weights: readonly number[],
): Point[] {
  const basis = (i: number, p: number, t: number): number => {
    if (p === 0) return t >= knots[i]! && t < knots[i + 1]! ? 1 : 0
    const part = (a: number, b: number) => (b > a ? (t - a) / (b - a) : 0)
    return (
      part(knots[i]!, knots[i + p]!) * basis(i, p - 1, t) +
      (knots[i + p + 1]! > knots[i + 1]! ? 1 - part(knots[i + 1]!, knots[i + p + 1]!) : 0) * basis(i + 1, p - 1, t)
    )
  }
  return Array.from({ length: 400 }, (_, j) => {
    const t = (knots.at(-1)! * j) / 400
    const shares = points.map((__, i) => basis(i, degree, t) * weights[i]!)
    const sum = shares.reduce((a, b) => a + b)
    return {
      x: shares.reduce((x, share, i) => x + (share * points[i]![0]) / sum, 0),
      y: shares.reduce((y, share, i) => y + (share * points[i]![1]) / sum, 0),
    }
  })
}

/** Largest distance of some points from a path: to the chords of its dense places. */
function largestAway(path: Path, points: readonly Point[]): number {
  const dense = path.strokes.flatMap((_, stroke) =>
    Array.from({ length: 601 }, (__, j) => pointAt(path, { stroke, t: j / 600 })),
  )
  return Math.max(
    ...points.map((p) =>
      Math.min(
        ...dense.slice(1).map((b, i) => {
          const a = dense[i]!
          const long = (b.x - a.x) ** 2 + (b.y - a.y) ** 2
          const t =
            long > 0 ? Math.min(Math.max(((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / long, 0), 1) : 0
          return Math.hypot(p.x - a.x - (b.x - a.x) * t, p.y - a.y - (b.y - a.y) * t)
        }),
      ),
    ),
  )
}

describe('a spline', () => {
  const points = POINTS.map(([x, y]) => ({ x, y }))

  test.each(
    [1, 2, 3, 5].flatMap(
      (degree) =>
        [
          [degree, false],
          [degree, true],
        ] as const,
    ),
  )('of degree %d, rational %s: on the sum of its basis functions', (degree, rational) => {
    const knots = clampedKnots(degree)
    const weights = rational ? WEIGHTS : null
    const path = pathOfSpline({ degree, knots, points, weights }, 0.0005)!
    const want = splinePoints(POINTS, knots, degree, weights ?? POINTS.map(() => 1))
    // The chords the distance is taken to stay within 0.0003 mm of the path themselves.
    expect(largestAway(path, want)).toBeLessThan(0.0008)
    if (!rational && degree <= 3) expect(path.strokes).toHaveLength(POINTS.length - degree)
  })

  test('without clamped ends runs over the knots that all its points share', () => {
    const knots = Array.from({ length: POINTS.length + 4 }, (_, i) => i)
    const path = pathOfSpline({ degree: 3, knots, points, weights: null }, 0.0005)!
    // A uniform cubic spline starts at (P0 + 4 P1 + P2) / 6.
    expect(path.start).toEqual({ x: expect.closeTo(100 / 6, 9), y: expect.closeTo(500 / 6, 9) })
    expect(path.strokes).toHaveLength(4)
  })

  test('that is none gives null', () => {
    const knots = clampedKnots(3)
    expect(pathOfSpline({ degree: 0, knots, points, weights: null }, 0.0005)).toBeNull()
    expect(pathOfSpline({ degree: 3, knots: knots.slice(1), points, weights: null }, 0.0005)).toBeNull()
    expect(pathOfSpline({ degree: 3, knots: knots.toReversed(), points, weights: null }, 0.0005)).toBeNull()
    expect(pathOfSpline({ degree: 3, knots: knots.map(() => 1), points, weights: null }, 0.0005)).toBeNull()
    expect(pathOfSpline({ degree: 3, knots, points, weights: [0] }, 0.0005)).toBeNull()
  })
})
