import type { Computed } from '../core/compute.ts'
import type { Plan } from '../core/plan.ts'

type Compute = (plan: Plan) => Computed

let loaded: Compute | null = null

/** Fetches what computes the numbers. The list of instruments does not need it, so it comes with the first instrument. */
export async function loadEngine(): Promise<void> {
  loaded = (await import('../core/compute.ts')).compute
}

/** The numbers of a plan. An instrument is only opened once the engine is there. */
export const computeLoaded: Compute = (plan) => {
  if (loaded === null) throw new Error('an instrument was opened before the engine was fetched')
  return loaded(plan)
}
