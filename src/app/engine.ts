import type { Reading } from '../core/asBuilt/reading.ts'
import type { Computed } from '../core/compute.ts'
import type { KeptNumbers } from '../core/keptNumbers.ts'
import type { Plan } from '../core/plan.ts'
import type { Built } from '../state/commissionStore.ts'

type Build = (plan: Plan, readings: readonly Reading[], kept?: KeptNumbers) => Built<Computed>

/** A plan is asked for with today's readings, without any, and with those of a few moments before. */
const MOST_FOR_A_PLAN = 4

let loaded: Build | null = null

/** Fetches what computes the numbers. The list of instruments does not need it, so it comes with the first instrument. */
export async function loadEngine(): Promise<void> {
  const [{ compute }, { asBuilt }, { withKept }, { allowsValue }] = await Promise.all([
    import('../core/compute.ts'),
    import('../core/asBuilt.ts'),
    import('../core/keptNumbers.ts'),
    import('../record/allowsValue.ts'),
  ])
  /** What followed from each plan, by the readings: signed stages ask again and again for the plans they were built to. */
  const known = new WeakMap<Plan, Map<string, Built<Computed>>>()
  const build = (plan: Plan, readings: readonly Reading[]): Built<Computed> => {
    const ofPlan = known.get(plan) ?? new Map<string, Built<Computed>>()
    known.set(plan, ofPlan)
    const name = readings.map(({ id }) => id).join(' ')
    const before = ofPlan.get(name)
    if (before !== undefined) return before
    const built = asBuilt(plan, readings, allowsValue)
    const made = { ...built, computed: compute(built.plan) }
    const [oldest] = ofPlan.keys()
    if (ofPlan.size >= MOST_FOR_A_PLAN && oldest !== undefined) ofPlan.delete(oldest)
    ofPlan.set(name, made)
    return made
  }
  loaded = (plan, readings, kept) => {
    const built = build(plan, readings)
    if (kept === undefined) return built
    const { computed } = built
    return { ...built, computed: { ...computed, numbers: withKept(computed.numbers, kept) } }
  }
}

/** The numbers of a plan with what was measured since. An instrument is only opened once the engine is there. */
export const buildLoaded: Build = (plan, readings, kept) => {
  if (loaded === null) throw new Error('an instrument was opened before the engine was fetched')
  return loaded(plan, readings, kept)
}
