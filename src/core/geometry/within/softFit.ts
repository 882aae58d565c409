import { addVariation } from './bend.ts'
import { squaresFor } from './bounds.ts'
import type { ChainFit } from './chainFit.ts'
import { addOffSquares, sumFit, trustedPart } from './chainFit.ts'
import { factorSaddle, solveSaddle } from './saddleStep.ts'

/** Part of the length over which a reading is felt at first, and how that narrows with each step. */
const FIRST_SPAN = 1 / 8
const NARROWING = 1.4

/**
 * Brings a chain near its readings by penalised least squares, variation + weight/2 x sum of squared distances, hardening the weight
 * only as far as brings them, together, to the size of their errors. Gives the last weight.
 *
 * A weight W on m readings over the length L is felt over a span l with W = 2 L / (m l^6) (the squares' pull against a third
 * derivative squared; derived).
 */
export function fitSoftly(fit: ChainFit, within: number, mostSteps: number): number {
  const { chain, feet, offSlope, endRows } = fit
  const n = chain.grid.unknownCount
  const weights = new Float64Array(feet.count)
  const forces = new Float64Array(endRows.count)
  let span = FIRST_SPAN
  let weight = 0
  for (let steps = 0; steps < mostSteps; steps++) {
    sumFit(fit)
    let squares = 0
    for (let j = 0; j < feet.count; j++) squares += feet.off[j]! ** 2
    if (steps > 2 && squares <= squaresFor(feet.count, within)) break
    if (steps > 0) span /= NARROWING
    weight = feet.count > 0 ? (2 * chain.z[0]!) / (feet.count * (span * chain.z[0]!) ** 6) : 0
    const slope = new Float64Array(n)
    const bend = new Float64Array(n * n)
    addVariation(chain.grid, chain.z, slope, bend, true)
    addOffSquares(fit, weights.fill(weight), bend)
    for (let u = 0; u < n; u++) bend[u * n + u]! += 1e-9 * (1 + bend[u * n + u]!)
    for (let j = 0; j < feet.count; j++) {
      for (let u = 0; u < n; u++) slope[u]! += weight * feet.off[j]! * offSlope[j * n + u]!
    }
    const saddle = factorSaddle(bend, n, endRows)
    if (saddle === null) break
    const step = slope.map((part) => -part)
    solveSaddle(saddle, step, forces)
    const part = trustedPart(chain, step)
    const next = chain.z.map((value, u) => value + part * step[u]!)
    if (!next.every(Number.isFinite)) break
    chain.z = next
  }
  sumFit(fit)
  return weight
}
