import type { Point } from '../point.ts'
import { distanceMm } from '../point.ts'
import type { Grid } from './chain.ts'

/** Half the stretch of the readings' polyline whose chord gives a heading, part of the whole. */
const HALF_CHORD = 1 / 26

export interface Guess {
  readonly z: Float64Array
  /** Where along it each reading may be, part of the length. */
  readonly t: number[]
}

/**
 * A first chain along the readings: the polyline through the ends and them, made straight on beyond its ends, has at each place the heading of a
 * chord laid across it there; long enough a chord does not feel the readings' errors. Near them, not through them.
 */
export function guessChain(
  grid: Grid,
  readings: readonly Point[],
  end: Point,
  startHeadingRad: number,
  endHeadingRad: number | null,
): Guess {
  const stops = [{ x: 0, y: 0 }, ...readings, end]
  const along = [0]
  for (let i = 1; i < stops.length; i++) along.push(along[i - 1]! + distanceMm(stops[i - 1]!, stops[i]!))
  const whole = Math.max(along.at(-1)!, 1e-6)
  const half = whole * HALF_CHORD
  const lastHeadingRad = endHeadingRad ?? Math.atan2(end.y - pointAt(whole - half).y, end.x - pointAt(whole - half).x)
  function pointAt(s: number): Point {
    if (s <= 0) return { x: s * Math.cos(startHeadingRad), y: s * Math.sin(startHeadingRad) }
    if (s >= whole)
      return { x: end.x + (s - whole) * Math.cos(lastHeadingRad), y: end.y + (s - whole) * Math.sin(lastHeadingRad) }
    let i = 0
    while (i < stops.length - 2 && along[i + 1]! < s) i++
    const part = (s - along[i]!) / (along[i + 1]! - along[i]! || 1)
    const [a, b] = [stops[i]!, stops[i + 1]!]
    return { x: a.x + part * (b.x - a.x), y: a.y + part * (b.y - a.y) }
  }
  // From one knot to the next the heading turns the shorter way.
  const headings = [startHeadingRad]
  for (let i = 1; i <= grid.pieceCount; i++) {
    const at = whole * grid.knots[i]!
    const [a, b] = [pointAt(at - half), pointAt(at + half)]
    const before = headings[i - 1]!
    const turn = Math.atan2(b.y - a.y, b.x - a.x) - before
    headings.push(before + turn - 2 * Math.PI * Math.round(turn / (2 * Math.PI)))
  }
  const bends = headings.map((_, i) => {
    const before = Math.max(i - 1, 0)
    const after = Math.min(i + 1, grid.pieceCount)
    return (headings[before]! - headings[after]!) / (grid.knots[after]! - grid.knots[before]!)
  })
  const z = new Float64Array(grid.unknownCount)
  z[0] = whole
  z[1] = bends[0]!
  for (let i = 0; i < grid.pieceCount; i++) z[2 + i] = bends[i + 1]! - bends[i]!
  return { z, t: readings.map((_, j) => along[j + 1]! / whole) }
}
