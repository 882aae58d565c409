import type { ChainAim, FitState } from './fairAim.ts'
import { countRows, isSoftRow, makeFitState, missOfRow } from './fairAim.ts'
import { settleBounds } from './fairBounds.ts'
import { differentiateChain, sumChain } from './chainDerivative.ts'
import { findStep } from './fairStep.ts'

export interface ChainFit {
  readonly z: Float64Array
  /** true: a least one, with every row met that must be. */
  readonly solved: boolean
  readonly iterations: number
}

/** Steps a fit may take. */
const MOST_STEPS = 24
/** A step this small is the last: Newton's next would be its square. */
const LAST_STEP = 1e-6
/** Rows met to this, in units of the body, are met. */
const LEAST_MISS = 1e-9
/** A fit from a rough guess starts soft, and is harder by this factor with each of its first steps. */
const SOFT_STEPS = 7
const FIRST_SOFTNESS = 1e5
const HARDENING = 5

/**
 * The chain of least variation that does what `aim` asks, by Newton's method on the conditions of a constrained minimum
 * with exact second derivatives and a line search, started from z. `rough`: z is a guess, not a fit of nearly the same aim.
 * z always stays finite.
 */
export function fitChain(aim: ChainAim, from: Float64Array, rough: boolean): ChainFit {
  const state = makeFitState(aim, from)
  let penalty = 0
  for (let iterations = 1; iterations <= MOST_STEPS; iterations++) {
    const softening = rough && aim.softness === null && iterations <= SOFT_STEPS
    state.softness = softening ? FIRST_SOFTNESS * HARDENING ** (iterations - 1) : aim.softness
    differentiateChain(aim.space, state.z, state.forces, state.sums)
    const changed = iterations > 1 ? settleBounds(state) : 1
    if (!findStep(state)) return { z: state.z, solved: false, iterations }
    const size = state.step.reduce((most, part) => Math.max(most, Math.abs(part)), 0)
    if (!(size < 1e6)) return { z: state.z, solved: false, iterations }
    penalty = takeStep(state, penalty, size < 1e-3 || (iterations > 1 && changed > 0 && size < 3))
    if (size < LAST_STEP && changed === 0 && !softening) {
      return { z: state.z, solved: worstMiss(state) < LEAST_MISS, iterations }
    }
  }
  return { z: state.z, solved: false, iterations: MOST_STEPS }
}

/** Takes the step, or a half, a quarter ... of it where the whole does not pay; gives the weight of misses used to judge. */
function takeStep(state: FitState, formerPenalty: number, trusted: boolean): number {
  const { aim, z, step, sums } = state
  let steepest = 0
  for (let r = 0; r < countRows(state); r++) {
    if (!isSoftRow(state, r)) steepest = Math.max(steepest, Math.abs(state.forces[r]!))
  }
  const penalty = Math.max(1.5 * steepest, Math.min(formerPenalty, 10 * steepest))
  const start = z.slice()
  const before = merit(state, penalty)
  const slope = Math.min(meritSlope(state, penalty), 0)
  let t = longestStep(state)
  for (let halvings = 0; ; halvings++) {
    for (let p = 0; p < z.length; p++) z[p] = start[p]! + t * step[p]!
    sumChain(aim.space, z, sums)
    if (trusted || halvings === 6 || merit(state, penalty) <= before + 1e-4 * t * slope) return penalty
    t /= 2
  }
}

/** Variation, misses and what held unknowns lack to zero, weighted: least where the fit is (an exact penalty function). */
function merit(state: FitState, penalty: number): number {
  let sum = state.sums.variation + state.holdPenalty * heldDistance(state)
  for (let r = 0; r < countRows(state); r++) {
    const miss = missOfRow(state, r)
    sum += isSoftRow(state, r) ? (state.softness! * miss * miss) / 2 : penalty * Math.abs(miss)
  }
  return sum
}

/** How fast the merit changes along the step. */
function meritSlope(state: FitState, penalty: number): number {
  const { sums, step } = state
  const n = step.length
  let slope = -state.holdPenalty * heldDistance(state)
  for (let p = 0; p < n; p++) slope += sums.variationSlope[p]! * step[p]!
  for (let r = 0; r < countRows(state); r++) {
    const miss = missOfRow(state, r)
    if (!isSoftRow(state, r)) slope -= penalty * Math.abs(miss)
    else for (let p = 0; p < n; p++) slope += state.softness! * miss * sums.rowSlope[r * n + p]! * step[p]!
  }
  return slope
}

function heldDistance(state: FitState): number {
  let sum = 0
  for (let p = state.aim.startGiven ? 1 : 0; p <= state.aim.space.pieceCount; p++) {
    if (state.held[p] === 1) sum += Math.abs(state.z[p]!)
  }
  return sum
}

/** No span may shrink below half its length in one step, or more than double. */
function longestStep(state: FitState): number {
  let t = 1
  for (let p = 1 + state.aim.space.pieceCount; p < state.z.length; p++) {
    const part = state.step[p]!
    if (part !== 0) t = Math.min(t, part < 0 ? (-0.5 * state.z[p]!) / part : state.z[p]! / part)
  }
  return t
}

function worstMiss(state: FitState): number {
  let worst = 0
  for (let r = 0; r < countRows(state); r++) {
    if (!isSoftRow(state, r)) worst = Math.max(worst, Math.abs(missOfRow(state, r)))
  }
  return worst
}
