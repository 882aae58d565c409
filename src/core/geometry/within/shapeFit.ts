import { chooseTurns, signBetweenTurns } from '../fair/turnPattern.ts'
import type { BoundAim, Way } from './bounds.ts'
import { freshenBounds, makeBounds, openBound, openBounds, priceOf, sumBounds } from './bounds.ts'
import { variationOf } from './chain.ts'
import type { ChainFit } from './chainFit.ts'
import { sumFit } from './chainFit.ts'
import { fitInside } from './innerFit.ts'
import { fitSoftly } from './softFit.ts'

export interface ShapeAim {
  readonly within: number
  /** Curvature goes up, down, up, down, and is not negative at an end where it is free. */
  readonly fourPhases: boolean
}

/** The best chain found, and which way its curvature goes over each piece; null: as it likes. */
export interface ShapeFit {
  readonly z: Float64Array
  readonly t: Float64Array
  readonly signs: BoundAim['signs']
  /** Variation, and what bounds that give way cost. */
  readonly cost: number
  readonly iterations: number
}

/** The fit aims this much inside the stated error, so that what is left to rounding stays within it. */
const INSIDE = 0.998
/** How hard, in steps of the soft fit, the readings may bend the chain that shows where the turns are; the next where the last failed. */
const SOFT_STEPS = [8, 6, 4]
/** It has failed where a reading is further off than this many times its error. Many readings show the turns: what lacks there is rather short pieces. */
const FAILED = 1
const FAILED_OF_MANY = 1.5
const MANY = 100
/** How often the turns of curvature may be moved; how many pieces beyond a level stretch; steps for the first fit and each after it. */
const MOST_ROUNDS = 3
const TURN_REACH = 2
const FIRST_STEPS = 40
const LATER_STEPS = 20
/** Rises below this part of the largest are level. */
const LEVEL = 1e-3
/** A move of the turns pays when it takes off at least this part. */
const LEAST_GAIN = 5e-3
/** First product of slack and force, as a part of the variation, at least; and what part of that when turns have moved. */
const FIRST_LEVEL = 1e-4
const LATER_LEVEL = 1e-2

/**
 * The chain of least variation within the readings' error and of the shape, from a guess: softly first, then inside the bounds, with
 * the turns of curvature where the soft fit has them. Then the curve is let free about its turns, they are put where that has them, and
 * so on as long as it pays. Leaves the chain at the best.
 */
export function fitShape(fit: ChainFit, aim: ShapeAim): ShapeFit {
  const { chain, feet } = fit
  const guess = chain.z.slice()
  const feetGuess = feet.t.slice()
  let best: ShapeFit | null = null
  let iterations = 0
  for (const steps of SOFT_STEPS) {
    chain.z = guess.slice()
    feet.t.set(feetGuess)
    const weight = fitSoftly(fit, aim.within, steps)
    const found = fitFrom(fit, aim, weight)
    iterations += found.iterations
    if (best === null || !(best.cost <= found.cost)) best = found
    if (!aim.fourPhases || keepsTo(fit, best, aim.within * (feet.count > MANY ? FAILED_OF_MANY : FAILED))) break
  }
  return { ...best!, iterations }
}

/** Brings the fit to a chain found before; gives whether it stays within that of the readings. */
function keepsTo(fit: ChainFit, found: ShapeFit, within: number): boolean {
  fit.chain.z = found.z
  fit.feet.t.set(found.t)
  sumFit(fit)
  return fit.feet.off.every((off) => Math.abs(off) <= within)
}

function fitFrom(fit: ChainFit, aim: ShapeAim, weight: number): ShapeFit {
  const { chain, feet, ends } = fit
  const { shares } = chain.grid
  const within = aim.within * INSIDE
  const bound = (signs: BoundAim['signs']): BoundAim => ({
    within,
    signs,
    startNotNegative: aim.fourPhases && ends.startCurvature === null,
    endNotNegative: aim.fourPhases && ends.endCurvature === null,
  })
  const signsNow = () => {
    const turns = chooseTurns(chain.z.slice(2), shares)
    return Array.from(shares, (_, i) => signBetweenTurns(turns, i))
  }
  const forces = new Float64Array(fit.endRows.count)
  let signs: Way[] | null = aim.fourPhases ? signsNow() : null
  const bounds = makeBounds(fit, bound(signs), weight)
  const level = Math.max(weight * within ** 2, FIRST_LEVEL * (1 + variationOf(chain.grid, chain.z)))
  sumBounds(fit, bound(signs), bounds)
  openBounds(bounds, level)
  let { iterations, solved } = fitInside(fit, bound(signs), bounds, forces, FIRST_STEPS)
  const found = () => ({
    z: chain.z,
    t: feet.t.slice(),
    signs,
    cost: variationOf(chain.grid, chain.z) + priceOf(bounds),
    iterations,
  })
  let best: ShapeFit = found()
  if (signs === null) return best

  /** Fits again with other signs, from where the chain stands; gives what it costs then. */
  const refit = (next: Way[]): number => {
    const before = signs!
    signs = next
    const inner = bound(next)
    sumBounds(fit, inner, bounds)
    next.forEach((way, i) => {
      const b = 2 * feet.count + i
      bounds.counts[b] = way === 0 ? 0 : 1
      if (way !== before[i]) openBound(bounds, b, level * LATER_LEVEL)
    })
    freshenBounds(bounds, level * LATER_LEVEL)
    const again = fitInside(fit, inner, bounds, forces, LATER_STEPS)
    iterations += again.iterations
    return again.solved ? found().cost : Number.POSITIVE_INFINITY
  }
  for (let round = 1; round < MOST_ROUNDS; round++) {
    const fixed: Way[] = signs
    const freest = refit(loosenTurns(chain.z, fixed))
    if (solved && !(freest < best.cost * (1 - LEAST_GAIN))) break
    const next = signsNow()
    if (next.every((way, i) => way === fixed[i])) break
    const cost = refit(next)
    if (cost === Number.POSITIVE_INFINITY || (solved && !(cost < best.cost * (1 - LEAST_GAIN)))) break
    best = found()
    solved = true
  }
  return { ...best, iterations }
}

/** Signs with the pieces about each turn let free, as far as curvature stays level there and a little further. */
function loosenTurns(z: Float64Array, signs: readonly Way[]): Way[] {
  const loose = signs.slice()
  const least = LEVEL * z.subarray(2).reduce((most, rise) => Math.max(most, Math.abs(rise)), 0)
  const free = (from: number, by: 1 | -1) => {
    let i = from
    while (i >= 0 && i < signs.length && Math.abs(z[2 + i]!) < least) loose[(i += by) - by] = 0
    for (let more = 0; more < TURN_REACH; more++, i += by) if (i >= 0 && i < signs.length) loose[i] = 0
  }
  for (let i = 1; i < signs.length; i++) {
    if (signs[i] === signs[i - 1]) continue
    free(i, 1)
    free(i - 1, -1)
  }
  return loose
}
