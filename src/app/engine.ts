import type { Computed } from '../core/compute.ts'
import type { Plan } from '../core/plan.ts'
import { whenIdle } from '../device/whenIdle.ts'

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

/** The browser makes code fast that has been run a few times: the first of these sums takes five times as long as the last. */
const TRIAL_RUNS = 8

/** Runs the engine on a plan while the page is idle, so that the maker's first stroke finds it warm; gives what calls it off. */
export function warmEngine(plan: Plan): () => void {
  let callOff = (): void => undefined
  const run = (left: number): void => {
    callOff = whenIdle(() => {
      computeLoaded(plan)
      if (left > 1) run(left - 1)
    })
  }
  run(TRIAL_RUNS)
  return () => callOff()
}
