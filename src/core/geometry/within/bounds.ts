import type { ChainFit } from './chainFit.ts'
import { addOffSquares } from './chainFit.ts'

/**
 * What a chain must keep to, as quantities that are not to be negative:
 *
 *   within - r_j,  within + r_j      r_j distance of reading j
 *   sign_i e_i                       each rise, where the shape says which way curvature goes
 *   c,  c + sum of e_i               curvature at the ends, where free and not to be negative
 *   (squares - sum r_j^2) / 2         `squaresFor`: what errors of that size leave, all together
 *
 * The first kind and the last give way at a price, so that there is always an answer.
 */
export interface Bounds {
  readonly count: number
  /** 0: this one does not count. */
  readonly counts: Uint8Array
  readonly value: Float64Array
  /** What each still has in hand, and the force with which it presses; both above 0. */
  readonly slack: Float64Array
  readonly force: Float64Array
  /** How far each gives way to a force of 1. */
  readonly give: Float64Array
  /** Slack each starts with, at least. */
  readonly least: Float64Array
}

/** Which way curvature may go over a piece: up, down, 0 either. */
export type Way = 1 | -1 | 0

export interface BoundAim {
  readonly within: number
  /** For each piece; null: curvature goes as it likes throughout. */
  readonly signs: readonly Way[] | null
  readonly startNotNegative: boolean
  readonly endNotNegative: boolean
}

export const startBound = (fit: ChainFit): number => 2 * fit.feet.count + fit.chain.grid.pieceCount
export const endBound = (fit: ChainFit): number => startBound(fit) + 1
export const squaresBound = (fit: ChainFit): number => startBound(fit) + 2

export function makeBounds(fit: ChainFit, aim: BoundAim, weight: number): Bounds {
  const m = fit.feet.count
  const count = squaresBound(fit) + 1
  const counts = new Uint8Array(count).fill(1, 0, 2 * m)
  if (aim.signs !== null) counts.fill(1, 2 * m, startBound(fit))
  if (aim.startNotNegative) counts[startBound(fit)] = 1
  if (aim.endNotNegative) counts[endBound(fit)] = 1
  if (m > 0) counts[squaresBound(fit)] = 1
  const give = new Float64Array(count).fill(1 / (STIFFNESS * weight), 0, 2 * m)
  if (m > 0) give[count - 1] = (aim.within ** 2 * m) / (SQUARES_STIFFNESS * weight)
  const least = new Float64Array(count).fill(LEAST_RISE)
  least.fill(LEAST_SLACK * aim.within, 0, 2 * m)
  least[count - 1] = LEAST_SLACK * m * aim.within ** 2
  return {
    count,
    counts,
    value: new Float64Array(count),
    slack: new Float64Array(count),
    force: new Float64Array(count),
    give,
    least,
  }
}

/** Slack a bound starts with at least: of a distance, part of the error; of a rise or curvature. */
const LEAST_SLACK = 0.3
const LEAST_RISE = 1e-3
/** A bound on a distance, and the one on their squares, presses this many times harder than the readings did in the soft fit before it gives way. */
const STIFFNESS = 1e6
const SQUARES_STIFFNESS = 300

/** So many readings' errors the curve itself takes up, by bending with them; at least this part of them is left. */
const BENT_ALONG = 18
const LEAST_LEFT = 0.45

/**
 * What the squares of the distances of m readings from a curve should come to: errors spread evenly over +-within have the mean
 * square within^2 / 3, less what the curve follows of them (as many as it has free numbers: for a body about eighteen, by trial
 * against known curves, smooth ones and compass arcs, with seeded errors).
 */
export const squaresFor = (m: number, within: number): number =>
  (m * Math.max(1 - BENT_ALONG / Math.max(m, 1), LEAST_LEFT) * within ** 2) / 3

/** Brings the values up to the fit. */
export function sumBounds(fit: ChainFit, aim: BoundAim, bounds: Bounds): void {
  const { feet, chain } = fit
  const m = feet.count
  const { value } = bounds
  let squares = 0
  for (let j = 0; j < m; j++) {
    const r = feet.off[j]!
    value[j] = aim.within - r
    value[m + j] = aim.within + r
    squares += r * r
  }
  if (aim.signs !== null) {
    for (let i = 0; i < chain.grid.pieceCount; i++) value[2 * m + i] = aim.signs[i]! * chain.z[2 + i]!
  }
  value[startBound(fit)] = chain.bends[0]!
  value[endBound(fit)] = chain.bends[chain.grid.pieceCount]!
  value[squaresBound(fit)] = (squaresFor(m, aim.within) - squares) / 2
}

/** How fast each bound's value grows along a step, into `out`. */
export function slopesAlong(fit: ChainFit, aim: BoundAim, step: Float64Array, out: Float64Array): void {
  const { feet, chain, offSlope, reach } = fit
  const m = feet.count
  const n = chain.grid.unknownCount
  let squares = 0
  for (let j = 0; j < m; j++) {
    let along = 0
    for (let u = 0; u < reach[j]!; u++) along += offSlope[j * n + u]! * step[u]!
    out[j] = -along
    out[m + j] = along
    squares -= feet.off[j]! * along
  }
  let bend = step[1]!
  out[startBound(fit)] = bend
  for (let i = 0; i < chain.grid.pieceCount; i++) {
    out[2 * m + i] = (aim.signs?.[i] ?? 1) * step[2 + i]!
    bend += step[2 + i]!
  }
  out[endBound(fit)] = bend
  out[squaresBound(fit)] = squares
}

/** Adds to `push` the sum of strength_b x slope of bound b. */
export function addSlopes(fit: ChainFit, aim: BoundAim, strength: Float64Array, push: Float64Array): void {
  const { feet, chain, offSlope, reach } = fit
  const m = feet.count
  const n = chain.grid.unknownCount
  for (let j = 0; j < m; j++) {
    const along = strength[m + j]! - strength[j]! - strength[squaresBound(fit)]! * feet.off[j]!
    for (let u = 0; u < reach[j]!; u++) push[u]! += along * offSlope[j * n + u]!
  }
  const ends = strength[endBound(fit)]!
  push[1]! += strength[startBound(fit)]! + ends
  for (let i = 0; i < chain.grid.pieceCount; i++) {
    push[2 + i]! += (aim.signs?.[i] ?? 1) * strength[2 * m + i]! + ends
  }
}

/** Opens a bound that is new: room in hand, and a force with which their product is `level`. */
export function openBound(bounds: Bounds, b: number, level: number): void {
  bounds.slack[b] = Math.max(bounds.value[b]!, bounds.least[b]!)
  bounds.force[b] = level / bounds.slack[b]
}

export function openBounds(bounds: Bounds, level: number): void {
  for (let b = 0; b < bounds.count; b++) openBound(bounds, b, level)
}

/** Lifts the bounds that are all but settled, so that they can move again. */
export function freshenBounds(bounds: Bounds, level: number): void {
  const { counts, slack, force } = bounds
  for (let b = 0; b < bounds.count; b++) {
    if (counts[b] === 0 || slack[b]! * force[b]! >= level) continue
    if (slack[b]! * Math.sqrt(level) > force[b]!) force[b] = level / slack[b]!
    else slack[b] = level / force[b]!
  }
}

/** What it costs that some bounds have given way. */
export function priceOf(bounds: Bounds): number {
  let price = 0
  for (let b = 0; b < bounds.count; b++)
    if (bounds.counts[b] === 1) price += (bounds.force[b]! ** 2 * bounds.give[b]!) / 2
  return price
}

/** Adds, for each bound, slope slope' over what it has in hand for its force, to the lower triangle of `bend`. */
export function addBoundSquares(fit: ChainFit, aim: BoundAim, bounds: Bounds, bend: Float64Array): void {
  const { chain, feet, offSlope, reach } = fit
  const { counts, slack, force, give } = bounds
  const m = feet.count
  const n = chain.grid.unknownCount
  const stiffness = (b: number) => (counts[b] === 1 ? 1 / (slack[b]! / force[b]! + give[b]!) : 0)
  const squares = squaresBound(fit)
  const weights = new Float64Array(m)
  for (let j = 0; j < m; j++) weights[j] = stiffness(j) + stiffness(m + j) + force[squares]!
  addOffSquares(fit, weights, bend)
  if (aim.signs !== null) {
    for (let i = 0; i < chain.grid.pieceCount; i++) bend[(2 + i) * (n + 1)]! += stiffness(2 * m + i)
  }
  bend[n + 1]! += stiffness(startBound(fit))
  const ends = stiffness(endBound(fit))
  if (ends > 0) for (let u = 1; u < n; u++) for (let v = 1; v <= u; v++) bend[u * n + v]! += ends
  const all = stiffness(squares)
  if (all === 0) return
  const pull = new Float64Array(n)
  for (let j = 0; j < m; j++) for (let u = 0; u < reach[j]!; u++) pull[u]! += feet.off[j]! * offSlope[j * n + u]!
  for (let u = 0; u < n; u++) for (let v = 0; v <= u; v++) bend[u * n + v]! += all * pull[u]! * pull[v]!
}
