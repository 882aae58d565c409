import type { asBuilt } from '../core/asBuilt.ts'
import type { Reading } from '../core/asBuilt/reading.ts'
import type { Computed } from '../core/compute.ts'
import type { Plan } from '../core/plan.ts'
import type { RoundOf } from '../state/askedNumbers.ts'
import type { Built } from '../state/commissionState.ts'
import { whenIdle } from '../device/whenIdle.ts'

/** What computes the numbers of a plan; the list of instruments does not need it, so it comes with the first instrument. */
let compute: ((plan: Plan) => Computed) | null = null
/** What puts readings in the place of what was planned: it comes with the first instrument that has any, or where they are taken. */
let build: ((plan: Plan, readings: readonly Reading[]) => ReturnType<typeof asBuilt>) | null = null

let round: RoundOf | null = null

export async function loadEngine(): Promise<void> {
  compute = (await import('../core/compute.ts')).compute
}

export async function loadAsBuilt(): Promise<void> {
  const [core, { allowsValue }] = await Promise.all([import('../core/asBuilt.ts'), import('../record/allowsValue.ts')])
  round = core.roundOf
  build = (plan, readings) => core.asBuilt(plan, readings, allowsValue)
}

/** Fetches what readings need, where it is not there yet. */
export const prepareReadings = (): Promise<void> | null => (build === null ? loadAsBuilt() : null)

/** What followed from each plan, by the readings: finished work asks again and again for the plans it was built to. */
const known = new WeakMap<Plan, Map<string, Built<Computed>>>()
/** A plan is asked for with today's readings, without any, and with those of a few moments before. */
const MOST_FOR_A_PLAN = 4

/** The numbers of a plan with what was measured since. What it takes has been fetched before an instrument, or a place to read at, is opened. */
export function buildLoaded(plan: Plan, readings: readonly Reading[]): Built<Computed> {
  if (compute === null) throw new Error('an instrument was opened before the engine was fetched')
  const ofPlan = known.get(plan) ?? new Map<string, Built<Computed>>()
  known.set(plan, ofPlan)
  const name = readings.map(({ id }) => id).join(' ')
  const before = ofPlan.get(name)
  if (before !== undefined) return before
  const built = withReadings(plan, readings)
  const made = { ...built, computed: compute(built.plan) }
  const [oldest] = ofPlan.keys()
  if (ofPlan.size >= MOST_FOR_A_PLAN && oldest !== undefined) ofPlan.delete(oldest)
  ofPlan.set(name, made)
  return made
}

function withReadings(plan: Plan, readings: readonly Reading[]): ReturnType<typeof asBuilt> {
  if (readings.length === 0) return { plan, taken: [], outside: [] }
  if (build === null) throw new Error('readings came before what puts them into a plan was fetched')
  return build(plan, readings)
}

/** Which readings are solved together, as the engine knows it. */
export const roundLoaded: RoundOf = (number, plan) => round?.(number, plan) ?? null

/** The browser makes code fast that has been run a few times: the first of these sums takes five times as long as the last. */
const TRIAL_RUNS = 8

/** Runs the engine on a plan while the page is idle, so that the maker's first stroke finds it warm; gives what calls it off. */
export function warmEngine(plan: Plan): () => void {
  let callOff = (): void => undefined
  const run = (left: number): void => {
    callOff = whenIdle(() => {
      compute?.(plan)
      if (left > 1) run(left - 1)
    })
  }
  run(TRIAL_RUNS)
  return () => callOff()
}
