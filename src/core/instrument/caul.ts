import type { CaulPlan } from '../plan.ts'

export interface CaulNumbers {
  /** Planed onto the middle of the caul, so that it lies straight when both clamps are down. */
  readonly bumpMm: number
  /** What each of the two clamps carries. */
  readonly clampForceN: number
  /** In the outermost fibre at the middle. */
  readonly stressMPa: number
}

/** No measure of a caul is taken smaller. */
const LEAST = 0.001

/**
 * The bump that makes a caul, clamped at its ends, press the middle of a joint with the force wanted; and what that asks of clamps and wood.
 *
 *   bump = F L^3 / (48 E I)      I = b h^3 / 12      L between the clamps, b width, h height; N, mm, N/mm2
 *   stress = (F L / 4) / (b h^2 / 6)
 *
 * An estimate: slender beam of even section, resting freely at both ends, load in the middle; wood varies. For measures above 0.
 * Source: Euler-Bernoulli beam theory; Roark's Formulas for Stress and Strain, table of straight beams (from memory).
 */
export function caulBump(plan: CaulPlan): CaulNumbers {
  const [spanMm, widthMm, heightMm, modulusGPa] = [plan.spanMm, plan.widthMm, plan.heightMm, plan.modulusGPa].map(
    (measure) => Math.max(measure, LEAST),
  ) as [number, number, number, number]
  const { forceN } = plan
  const modulusMPa = modulusGPa * 1000
  const secondMomentMm4 = (widthMm * heightMm ** 3) / 12
  return {
    bumpMm: (forceN * spanMm ** 3) / (48 * modulusMPa * secondMomentMm4),
    clampForceN: forceN / 2,
    stressMPa: (forceN * spanMm) / 4 / ((widthMm * heightMm ** 2) / 6),
  }
}
