import type { Point } from '../../../../src/core/geometry/point.ts'
import type { WithinAim } from '../../../../src/core/geometry/within/curveWithin.ts'

/** A finely broken line in place of a curve: variation by differences of its headings, 1/mm3. */
export interface FairLine {
  readonly points: readonly Point[]
  readonly variationPerMm3: number
  /** The furthest a reading lies from it. */
  readonly largestMm: number
}

/** Weight of what must hold, and halvings of the pull that brings the readings together to the size of their errors. */
const HARD = 1e-2
const HALVINGS = 24
const STEPS_EACH = 6

/**
 * The same aim another way: a line of equal straight steps, unknown their headings and their one length, and everything asked of it
 * (ends, bounds on the readings, the way its curvature goes) a squared miss of great weight; the readings pull it as hard as brings
 * the sum of their squared distances to `squaresMm2`, found by halving. Gauss and Newton with a plain elimination. `wayAt` gives +1, -1, or 0 for as it likes, by the part of the length.
 * Starts from a curve given as points. Slow; shares no code with the core.
 */
export function fairLine(
  aim: WithinAim,
  from: readonly Point[],
  squaresMm2: number,
  wayAt: (part: number) => number,
): FairLine {
  const count = from.length - 1
  const n = count + 1
  const { start, end, readings, withinMm } = aim
  const z = new Float64Array(n)
  for (let i = 0; i < count; i++) {
    const [a, b] = [from[i]!, from[i + 1]!]
    const heading = Math.atan2(b.y - a.y, b.x - a.x)
    const before = i === 0 ? start.headingRad : z[i - 1]!
    z[i] = before + Math.atan2(Math.sin(heading - before), Math.cos(heading - before))
    z[count]! += Math.hypot(b.x - a.x, b.y - a.y) / count
  }
  const walk = (): Point[] => {
    const points = [start.point]
    for (let i = 0; i < count; i++) {
      const { x, y } = points[i]!
      points.push({ x: x + z[count]! * Math.cos(z[i]!), y: y + z[count]! * Math.sin(z[i]!) })
    }
    return points
  }
  const largest = { mm: 0 }
  let [low, high] = [1e-10, 1e-3]
  for (let halving = 0; halving < HALVINGS; halving++) {
    const pull = Math.sqrt(low * high)
    let sum = 0
    for (let step = 0; step < STEPS_EACH; step++) {
      const points = walk()
      const h = z[count]!
      const matrix = Array.from({ length: n }, () => new Float64Array(n))
      const right = new Float64Array(n)
      // Adds w (value + row . dz)^2 for a row of [index, slope].
      const add = (w: number, value: number, row: readonly (readonly [number, number])[]) => {
        for (const [i, a] of row) {
          right[i]! -= w * a * value
          for (const [j, b] of row) matrix[i]![j]! += w * a * b
        }
      }
      for (let i = 1; i < count - 1; i++) {
        const bend = z[i + 1]! - 2 * z[i]! + z[i - 1]!
        const scale = h ** -1.5
        const row: [number, number][] = [
          [i - 1, scale],
          [i, -2 * scale],
          [i + 1, scale],
          [count, (-1.5 * bend * scale) / h],
        ]
        add(1, bend * scale, row)
        const way = wayAt((i + 0.5) / count)
        // Curvature falls where the headings' second difference rises.
        const wrong = bend / h ** 2
        if (way * wrong > 0)
          add(HARD * 1e11, wrong, [
            [i - 1, h ** -2],
            [i, -2 * h ** -2],
            [i + 1, h ** -2],
          ])
      }
      const hard = HARD * 1e2
      add(hard * 1e4, (3 * z[0]! - z[1]!) / 2 - start.headingRad, [
        [0, 1.5],
        [1, -0.5],
      ])
      const last = points[count]!
      add(hard, last.x - end.point.x, alongRow(points, count, h, 1, 0))
      add(hard, last.y - end.point.y, alongRow(points, count, h, 0, 1))
      if (end.headingRad !== null) {
        add(hard * 1e4, (3 * z[count - 1]! - z[count - 2]!) / 2 - end.headingRad, [
          [count - 1, 1.5],
          [count - 2, -0.5],
        ])
      }
      sum = 0
      largest.mm = 0
      for (const reading of readings) {
        const { off, at, nx, ny } = nearest(points, reading)
        const row = alongRow(points, at, h, -nx, -ny)
        const over = Math.abs(off) - withinMm
        largest.mm = Math.max(largest.mm, Math.abs(off))
        if (over > 0) add(HARD, off - Math.sign(off) * withinMm, row)
        sum += off * off
        add(pull, off, row)
      }
      const dz = eliminate(matrix, right)
      let size = 0
      for (let i = 0; i < n; i++) {
        z[i]! += dz[i]!
        size = Math.max(size, Math.abs(dz[i]!))
      }
      if (size < 1e-7) break
    }
    if (sum > squaresMm2) low = pull
    else high = pull
  }
  let variation = 0
  for (let i = 1; i < count - 1; i++) variation += (z[i + 1]! - 2 * z[i]! + z[i - 1]!) ** 2 / z[count]! ** 3
  return { points: walk(), variationPerMm3: variation, largestMm: largest.mm }
}

/** How the line's corner `at` (a part of a step counts) moves along (x, y) with each heading and with the length of a step. */
function alongRow(points: readonly Point[], at: number, h: number, x: number, y: number): [number, number][] {
  const row: [number, number][] = []
  let stretch = 0
  for (let i = 0; i < at; i++) {
    const part = Math.min(at - i, 1)
    const cos = (points[i + 1]!.x - points[i]!.x) / h
    const sin = (points[i + 1]!.y - points[i]!.y) / h
    row.push([i, part * h * (y * cos - x * sin)])
    stretch += part * (x * cos + y * sin)
  }
  row.push([points.length - 1, stretch])
  return row
}

/** Signed distance of a reading, left positive; where along (steps); the left normal there. */
function nearest(points: readonly Point[], reading: Point): { off: number; at: number; nx: number; ny: number } {
  let best = { off: 0, at: 0, nx: 0, ny: 0 }
  let least = Number.POSITIVE_INFINITY
  for (let i = 0; i + 1 < points.length; i++) {
    const [a, b] = [points[i]!, points[i + 1]!]
    const h = Math.hypot(b.x - a.x, b.y - a.y)
    const [cos, sin] = [(b.x - a.x) / h, (b.y - a.y) / h]
    const part = Math.min(Math.max(((reading.x - a.x) * cos + (reading.y - a.y) * sin) / h, 0), 1)
    const [dx, dy] = [reading.x - a.x - part * h * cos, reading.y - a.y - part * h * sin]
    const off = cos * dy - sin * dx
    if (Math.hypot(dx, dy) >= least) continue
    least = Math.hypot(dx, dy)
    best = { off, at: i + part, nx: -sin, ny: cos }
  }
  return best
}

function eliminate(matrix: Float64Array[], right: Float64Array): Float64Array {
  const n = right.length
  for (let i = 0; i < n; i++) {
    const row = matrix[i]!
    row[i]! += 1e-12 * (1 + row[i]!)
    for (let r = i + 1; r < n; r++) {
      const other = matrix[r]!
      const factor = other[i]! / row[i]!
      if (factor === 0) continue
      for (let c = i; c < n; c++) other[c]! -= factor * row[c]!
      right[r]! -= factor * right[i]!
    }
  }
  for (let i = n - 1; i >= 0; i--) {
    for (let c = i + 1; c < n; c++) right[i]! -= matrix[i]![c]! * right[c]!
    right[i]! /= matrix[i]![i]!
  }
  return right
}
