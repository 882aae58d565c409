import type { Plan } from '../core/plan.ts'
import { PLAN_FIELDS, type PlanField } from '../core/planFields.ts'
import { isPlainObject, sameJson, valueAt } from './path.ts'

/** One field of the plan where an instrument and its model, then and now, are not all the same. A key left out: that plan is not known. */
export interface ModelDifference {
  readonly field: PlanField
  readonly here: unknown
  readonly asTaken?: unknown
  readonly today?: unknown
}

/** Fields that are each instrument's own: one taken or given as a whole leaves them as they are. */
export const OWN_FIELDS: ReadonlySet<PlanField> = new Set(['handed'])

/** The value of one field of a plan; undefined only where the plan is none. */
export function planValue(plan: Plan, field: PlanField): unknown {
  const found = valueAt(plan, field.split('.'))
  return found.here ? found.value : undefined
}

/**
 * The fields of the plan in which an instrument, its model as taken and its model of today are not all equal as JSON, in the order of
 * the plan. null: there is no such plan; where both are null nothing can differ.
 */
export function modelDifferences(here: Plan, asTaken: Plan | null, today: Plan | null): readonly ModelDifference[] {
  return PLAN_FIELDS.flatMap((field): ModelDifference[] => {
    const difference: ModelDifference = {
      field,
      here: planValue(here, field),
      ...(asTaken === null ? {} : { asTaken: planValue(asTaken, field) }),
      ...(today === null ? {} : { today: planValue(today, field) }),
    }
    const others = [asTaken, today].filter((plan) => plan !== null).map((plan) => planValue(plan, field))
    return others.every((value) => sameJson(value, difference.here)) ? [] : [difference]
  })
}

/** A plan with some fields as another has them; untouched branches are shared. */
export function planWithFields(plan: Plan, from: Plan, fields: readonly PlanField[]): Plan {
  return fields.reduce<unknown>((so, field) => withValue(so, field.split('.'), planValue(from, field)), plan) as Plan
}

function withValue(root: unknown, [step, ...rest]: readonly string[], value: unknown): unknown {
  if (step === undefined) return value
  return isPlainObject(root) ? { ...root, [step]: withValue(root[step], rest, value) } : root
}
