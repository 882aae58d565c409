import type { Reading } from '../core/asBuilt/reading.ts'
import type { Computed } from '../core/compute.ts'
import type { Plan } from '../core/plan.ts'
import type { RoundOf } from '../state/askedNumbers.ts'
import type { Built } from '../state/commissionStore.ts'

type Build = (plan: Plan, readings: readonly Reading[]) => Built<Computed>

let loaded: Build | null = null
let loadedRoundOf: RoundOf | null = null

/** Fetches what computes the numbers. The list of instruments does not need it, so it comes with the first instrument. */
export async function loadEngine(): Promise<void> {
  const [{ compute }, { asBuilt, roundOf }, { allowsValue }] = await Promise.all([
    import('../core/compute.ts'),
    import('../core/asBuilt.ts'),
    import('../record/allowsValue.ts'),
  ])
  loadedRoundOf = roundOf
  loaded = (plan, readings) => {
    const built = asBuilt(plan, readings, allowsValue)
    return { ...built, computed: compute(built.plan) }
  }
}

/** The numbers of a plan with what was measured since. An instrument is only opened once the engine is there. */
export const buildLoaded: Build = (plan, readings) => {
  if (loaded === null) throw new Error('an instrument was opened before the engine was fetched')
  return loaded(plan, readings)
}

/** Which readings are solved together, as the engine knows it. */
export const roundLoaded: RoundOf = (number, plan) => loadedRoundOf?.(number, plan) ?? null
