import { asBuilt } from '../../core/asBuilt.ts'
import { type Computed, compute } from '../../core/compute.ts'
import { withKept } from '../../core/keptNumbers.ts'
import type { Plan } from '../../core/plan.ts'
import type { StageThen } from '../../papers/stageThen.ts'
import { allowsValue } from '../../record/allowsValue.ts'
import type { SignedOff } from '../../state/signedOff.ts'

/** Gives what a signed stage was built to, worked out when its sheet is laid; nothing for a stage that is not signed off. */
export function openSignedStages(signed: readonly SignedOff[]): (stageId: string) => { readonly built?: StageThen } {
  const known = new Map<string, { readonly built: StageThen }>()
  /** Stages signed one after the other mostly stand on one plan. */
  const workedOut = new Map<Plan, Map<string, { readonly plan: Plan; readonly computed: Computed }>>()

  function workOut({ plan, readings }: SignedOff): { readonly plan: Plan; readonly computed: Computed } {
    const ofPlan = workedOut.get(plan) ?? new Map<string, { readonly plan: Plan; readonly computed: Computed }>()
    workedOut.set(plan, ofPlan)
    const name = readings.map(({ id }) => id).join(' ')
    const before = ofPlan.get(name)
    if (before !== undefined) return before
    const planBuilt = asBuilt(plan, readings, allowsValue).plan
    const made = { plan: planBuilt, computed: compute(planBuilt) }
    ofPlan.set(name, made)
    return made
  }

  return (stageId) => {
    const before = known.get(stageId)
    if (before !== undefined) return before
    const one = signed.find((each) => each.stageId === stageId)
    if (one === undefined) return {}
    const worked = workOut(one)
    const { on, tolerances, kept } = one
    const computed = { ...worked.computed, numbers: withKept(worked.computed.numbers, kept) }
    const built = { on, plan: worked.plan, tolerances, computed }
    known.set(stageId, { built })
    return { built }
  }
}
