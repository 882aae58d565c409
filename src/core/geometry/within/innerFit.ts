import { addPlaceBend, addSlideBend, addVariation } from './bend.ts'
import type { BoundAim, Bounds } from './bounds.ts'
import { addBoundSquares, addSlopes, slopesAlong, squaresBound, sumBounds } from './bounds.ts'
import { variationOf } from './chain.ts'
import type { ChainFit } from './chainFit.ts'
import { sumFit, trustedPart } from './chainFit.ts'
import type { Saddle } from './saddleStep.ts'
import { factorSaddle, solveSaddle } from './saddleStep.ts'

/** Part of the way to the nearest bound that a step may go. */
const NEARLY_ALL = 0.99
/** Bounds may still hold back this part of the variation, or of the second; rows are met to the third; a step as small as the last is the last. */
const LEAST_GAP = 1e-4
const LEAST_VARIATION = 1e-4
const LEAST_MISS = 1e-10
const LAST_STEP = 1e-3
/**
 * Once there, Newton's steps at one level go on until they are as small as this, or have been taken as often: so that the answer hangs on
 * the aim alone, and not on the last digits of sines on the way there, which differ between machines.
 */
const SETTLED_STEP = 1e-11
const MOST_SETTLING = 10

export interface InnerFit {
  readonly solved: boolean
  readonly iterations: number
}

/** A step of the unknowns, and what it does to slack and force of each bound and makes of the forces of the end rows. */
interface Step {
  readonly unknowns: Float64Array
  readonly slack: Float64Array
  readonly force: Float64Array
  readonly endForces: Float64Array
}

/**
 * The chain of least variation within the bounds, from where it stands: a primal-dual interior method with exact second slopes, predictor
 * and corrector; the feet of the readings are taken anew at every step. Moves the chain, the bounds and the forces of the end rows.
 *
 * Source: Mehrotra 1992, On the implementation of a primal-dual interior point method; Nocedal & Wright, Numerical Optimization,
 * chapter 19 (method, from memory).
 */
export function fitInside(
  fit: ChainFit,
  aim: BoundAim,
  bounds: Bounds,
  endForces: Float64Array,
  mostSteps: number,
): InnerFit {
  const { chain, endRows } = fit
  const { count, counts, slack, force } = bounds
  const active = counts.reduce((sum, one) => sum + one, 0)
  let level: number | null = null
  let settling = 0
  for (let iterations = 1; iterations <= mostSteps + MOST_SETTLING; iterations++) {
    if (level === null && iterations > mostSteps) return { solved: false, iterations }
    sumFit(fit)
    sumBounds(fit, aim, bounds)
    const gap = gapAfter(bounds, null, 0, 0)
    const enough = LEAST_GAP * (variationOf(chain.grid, chain.z) + LEAST_VARIATION)
    const miss = largest(endRows.value)
    const slope = new Float64Array(chain.grid.unknownCount)
    const saddle = factorBend(fit, aim, bounds, endForces, slope)
    if (saddle === null) return { solved: false, iterations }
    let step = findStep(fit, aim, bounds, saddle, slope, level ?? 0, null)
    if (level === null && active > 0) {
      const left = gapAfter(
        bounds,
        step,
        Math.min(partTo(counts, slack, step.slack), 1),
        Math.min(partTo(counts, force, step.force), 1),
      )
      step = findStep(fit, aim, bounds, saddle, slope, (gap / active) * (left / gap) ** 3, step)
    }
    const size = largest(step.unknowns)
    if (!(size < 1e12)) return { solved: false, iterations }
    const trusted = trustedPart(chain, step.unknowns)
    const part = Math.min(trusted, NEARLY_ALL * partTo(counts, slack, step.slack))
    const forcePart = Math.min(trusted, NEARLY_ALL * partTo(counts, force, step.force))
    chain.z = chain.z.map((was, u) => was + part * step.unknowns[u]!)
    for (let b = 0; b < count; b++) {
      if (counts[b] === 0) continue
      slack[b]! += part * step.slack[b]!
      force[b]! += forcePart * step.force[b]!
    }
    for (let r = 0; r < endForces.length; r++) endForces[r]! += part * (step.endForces[r]! - endForces[r]!)
    if (level !== null) {
      settling++
      if (size < SETTLED_STEP || settling === MOST_SETTLING) return { solved: true, iterations }
    } else if (gap <= enough && miss < LEAST_MISS && size < LAST_STEP) level = active > 0 ? enough / active : 0
  }
  return { solved: level !== null, iterations: mostSteps }
}

const largest = (list: Float64Array): number => list.reduce((most, value) => Math.max(most, Math.abs(value)), 0)

/** How far along a step what is above 0 may go and stay so; no further than a little over 1. */
function partTo(counts: Uint8Array, from: Float64Array, by: Float64Array): number {
  let part = 1 / NEARLY_ALL
  for (let b = 0; b < from.length; b++) if (counts[b] === 1 && by[b]! < 0) part = Math.min(part, -from[b]! / by[b]!)
  return part
}

/** Sum of slack x force after parts of a step: how much the bounds, not yet pressed or free, still hold back. */
function gapAfter(bounds: Bounds, step: Step | null, slackPart: number, forcePart: number): number {
  const { counts, slack, force } = bounds
  let gap = 0
  for (let b = 0; b < bounds.count; b++) {
    if (counts[b] === 0) continue
    if (step === null) gap += slack[b]! * force[b]!
    else gap += (slack[b]! + slackPart * step.slack[b]!) * (force[b]! + forcePart * step.force[b]!)
  }
  return gap
}

/** The step to where slack x force is `level` for every bound; with what a former step leaves of second order, where there is one. */
function findStep(
  fit: ChainFit,
  aim: BoundAim,
  bounds: Bounds,
  saddle: Saddle,
  slope: Float64Array,
  level: number,
  former: Step | null,
): Step {
  const { count, counts, value, slack, force, give } = bounds
  const aimed = new Float64Array(count)
  const missing = new Float64Array(count)
  const strength = new Float64Array(count)
  for (let b = 0; b < count; b++) {
    if (counts[b] === 0) continue
    aimed[b] = (level - (former === null ? 0 : former.slack[b]! * former.force[b]!)) / force[b]!
    missing[b] = aimed[b]! - value[b]! - force[b]! * give[b]!
    strength[b] = force[b]! + missing[b]! / (slack[b]! / force[b]! + give[b]!)
  }
  const unknowns = slope.map((part) => -part)
  addSlopes(fit, aim, strength, unknowns)
  const endForces = new Float64Array(fit.endRows.count)
  solveSaddle(saddle, unknowns, endForces)
  const slopes = new Float64Array(count)
  slopesAlong(fit, aim, unknowns, slopes)
  const step = { unknowns, slack: new Float64Array(count), force: new Float64Array(count), endForces }
  for (let b = 0; b < count; b++) {
    if (counts[b] === 0) continue
    const held = slack[b]! / force[b]!
    step.force[b] = (missing[b]! - slopes[b]!) / (held + give[b]!)
    step.slack[b] = aimed[b]! - slack[b]! - held * step.force[b]!
  }
  return step
}

/** The slope of the variation, into `slope`, and the factored system of the step; without what may be negative where it has to be. */
function factorBend(
  fit: ChainFit,
  aim: BoundAim,
  bounds: Bounds,
  endForces: Float64Array,
  slope: Float64Array,
): Saddle | null {
  const { chain } = fit
  const n = chain.grid.unknownCount
  for (const convex of [false, true]) {
    const bend = new Float64Array(n * n)
    addVariation(chain.grid, chain.z, slope.fill(0), bend, convex)
    addBoundSquares(fit, aim, bounds, bend)
    if (convex) for (let u = 0; u < n; u++) bend[u * n + u]! += 1e-6 * (1 + bend[u * n + u]!)
    else addForces(fit, bounds, endForces, bend)
    const saddle = factorSaddle(bend, n, fit.endRows)
    if (saddle !== null) return saddle
  }
  return null
}

/** Adds to `bend` the second slope of what presses on the places: the bounds on the readings' distances, and the end rows. */
function addForces(fit: ChainFit, bounds: Bounds, endForces: Float64Array, bend: Float64Array): void {
  const { chain, feet } = fit
  const m = feet.count
  const press = new Float64Array(m)
  const forceX = new Float64Array(m + 1)
  const forceY = new Float64Array(m + 1)
  for (let j = 0; j < m; j++) {
    press[j] = bounds.force[j]! - bounds.force[m + j]! + bounds.force[squaresBound(fit)]! * feet.off[j]!
    forceX[j] = press[j]! * feet.sin[j]!
    forceY[j] = -press[j]! * feet.cos[j]!
  }
  forceX[m] = endForces[0]!
  forceY[m] = endForces[1]!
  addPlaceBend(chain, feet, forceX, forceY, bend)
  addSlideBend(chain, feet, press, bend)
}
