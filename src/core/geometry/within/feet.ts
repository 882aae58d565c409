import type { Point } from '../point.ts'
import type { Chain } from './chain.ts'
import { sumPart } from './chain.ts'

/**
 * The feet of some readings: where along a chain each is nearest; and as the last of them the chain's end.
 * Places are from the chain's start.
 */
export interface Feet {
  readonly count: number
  readonly targetX: Float64Array
  readonly targetY: Float64Array
  /** Part of the length, and the piece that holds it. */
  readonly t: Float64Array
  readonly piece: Int32Array
  /** Place over L; direction; L times curvature. */
  readonly x: Float64Array
  readonly y: Float64Array
  readonly cos: Float64Array
  readonly sin: Float64Array
  readonly bend: Float64Array
  /** As in the chain: up to the foot, and over its own piece up to it. */
  readonly turnX: Float64Array
  readonly turnY: Float64Array
  readonly ownX: Float64Array
  readonly ownY: Float64Array
  /** How far the reading lies to the left of the foot. */
  readonly off: Float64Array
}

/** `t`: a guess of each foot. */
export function makeFeet(readings: readonly Point[], t: readonly number[]): Feet {
  const count = readings.length
  const list = () => new Float64Array(count + 1)
  return {
    count,
    targetX: Float64Array.from(readings, (reading) => reading.x),
    targetY: Float64Array.from(readings, (reading) => reading.y),
    t: Float64Array.from([...t, 1]),
    piece: new Int32Array(count + 1),
    x: list(),
    y: list(),
    cos: list(),
    sin: list(),
    bend: list(),
    turnX: list(),
    turnY: list(),
    ownX: list(),
    ownY: list(),
    off: list(),
  }
}

/** Steps toward the nearest place for each time the chain has moved, and the furthest one may go, part of the length. */
const FOOT_STEPS = 2
const LONGEST_STEP = 0.04

/** Moves each foot toward the place nearest its reading, on a chain whose sums are up to date. */
export function placeFeet(chain: Chain, feet: Feet): void {
  const { count, t, cos, sin, bend, off } = feet
  const length = chain.z[0]!
  for (let j = 0; j < count; j++) {
    for (let step = 0; step <= FOOT_STEPS; step++) {
      placeFoot(chain, feet, j)
      const awayX = feet.targetX[j]! - length * feet.x[j]!
      const awayY = feet.targetY[j]! - length * feet.y[j]!
      off[j] = cos[j]! * awayY - sin[j]! * awayX
      if (step === FOOT_STEPS) break
      const ahead = (cos[j]! * awayX + sin[j]! * awayY) / length
      const move = ahead / Math.max(1 + (off[j]! * bend[j]!) / length, 0.3)
      if (Math.abs(move) < 1e-12) break
      t[j] = Math.min(Math.max(t[j]! + Math.min(Math.max(move, -LONGEST_STEP), LONGEST_STEP), 0), 1)
    }
  }
  placeFoot(chain, feet, count)
}

function placeFoot(chain: Chain, feet: Feet, j: number): void {
  const { grid, z, headings, bends } = chain
  const t = feet.t[j]!
  let i = feet.piece[j]!
  while (i > 0 && grid.knots[i]! > t) i--
  while (i < grid.pieceCount - 1 && grid.knots[i + 1]! <= t) i++
  feet.piece[j] = i
  const part = t - grid.knots[i]!
  const sums = sumPart(chain, i, part)
  feet.x[j] = chain.x[i]! + sums.x
  feet.y[j] = chain.y[i]! + sums.y
  feet.turnX[j] = chain.turnX[i]! + sums.turnX
  feet.turnY[j] = chain.turnY[i]! + sums.turnY
  feet.ownX[j] = sums.ownX
  feet.ownY[j] = sums.ownY
  const rise = z[2 + i]! * (part / grid.shares[i]!)
  const heading = headings[i]! - (bends[i]! + rise / 2) * part
  feet.bend[j] = bends[i]! + rise
  feet.cos[j] = Math.cos(heading)
  feet.sin[j] = Math.sin(heading)
}

/**
 * Writes how the place at foot j moves along (alongX, alongY) with each unknown, into `out` from `from`; 0 past its own piece.
 *
 *   d place / d u = -L integral of N (t - m_u) from the end of u's piece to the foot, and what it does over its own piece
 */
export function slopeOfFoot(
  chain: Chain,
  feet: Feet,
  j: number,
  alongX: number,
  alongY: number,
  out: Float64Array,
  from: number,
): void {
  const { grid, z } = chain
  const length = z[0]!
  const last = feet.piece[j]!
  // N integrates to the place turned a quarter to the left.
  const level = alongY * feet.x[j]! - alongX * feet.y[j]!
  const turn = alongX * feet.turnX[j]! + alongY * feet.turnY[j]!
  out[from] = alongX * feet.x[j]! + alongY * feet.y[j]!
  out[from + 1] = -length * turn
  for (let i = 0; i < last; i++) {
    const levelBefore = alongY * chain.x[i + 1]! - alongX * chain.y[i + 1]!
    const turnBefore = alongX * chain.turnX[i + 1]! + alongY * chain.turnY[i + 1]!
    const own = alongX * chain.ownX[i]! + alongY * chain.ownY[i]!
    out[from + 2 + i] = -length * (turn - turnBefore - grid.middles[i]! * (level - levelBefore) + own)
  }
  out[from + 2 + last] = -length * (alongX * feet.ownX[j]! + alongY * feet.ownY[j]!)
  out.fill(0, from + 3 + last, from + grid.unknownCount)
}

/** Writes how the heading at foot j turns to the left with each unknown, into `out`; 0 past its own piece. */
export function turnOfFoot(chain: Chain, feet: Feet, j: number, out: Float64Array): void {
  const { knots, middles, shares } = chain.grid
  const t = feet.t[j]!
  const last = feet.piece[j]!
  out[0] = 0
  out[1] = -t
  for (let i = 0; i < last; i++) out[2 + i] = middles[i]! - t
  out[2 + last] = -((t - knots[last]!) ** 2) / (2 * shares[last]!)
  out.fill(0, 3 + last)
}
