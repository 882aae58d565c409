import { type Curve, curveAt } from '../geometry/curve.ts'
import type { Point } from '../geometry/point.ts'

const SAMPLES = 96

/**
 * Whether a half outline crosses itself or its mirror: runs under the centreline, or back over its own line.
 * A half that goes steadily from tail to neck cannot; only others are looked at chord by chord, on 96 chords.
 */
export function crossesItself(half: Curve): boolean {
  const points: Point[] = []
  let steady = true
  for (let i = 0; i <= SAMPLES; i++) {
    const { point } = curveAt(half, (half.lengthMm * i) / SAMPLES)
    if (i > 0 && i < SAMPLES && point.y < -1e-6) return true
    if (i > 0 && point.x < points[i - 1]!.x - 1e-9) steady = false
    points.push(point)
  }
  if (steady) return false
  for (let i = 0; i + 1 < points.length; i++)
    for (let j = i + 2; j + 1 < points.length; j++)
      if (chordsCross(points[i]!, points[i + 1]!, points[j]!, points[j + 1]!)) return true
  return false
}

const side = (a: Point, b: Point, c: Point): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)

const chordsCross = (a: Point, b: Point, c: Point, d: Point): boolean =>
  side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0
