import type { OutlinePlan, Plan } from '../plan.ts'
import type { PlanField } from '../planFields.ts'

export type FieldValues = Readonly<Partial<Record<PlanField, unknown>>>

/** The same outline at another length, made once: an outline is drawn once for each plan of it. */
const lengthened = new WeakMap<OutlinePlan, OutlinePlan>()

/** A plan with some of its fields set; whatever lies beside them stays the same object. */
export function withFields(plan: Plan, values: FieldValues): Plan {
  let next = plan
  for (const [field, value] of Object.entries(values)) {
    const set = withValue(next, field.split('.'), value) as Plan
    next = field === 'outline.lengthMm' ? { ...set, outline: remembered(plan.outline, set.outline) } : set
  }
  return next
}

/** What stands in a field. */
export function fieldValue(plan: Plan, field: PlanField): unknown {
  return field.split('.').reduce<unknown>((at, step) => (at as Record<string, unknown>)[step], plan)
}

function remembered(from: OutlinePlan, to: OutlinePlan): OutlinePlan {
  const before = lengthened.get(from)
  if (before?.lengthMm === to.lengthMm) return before
  lengthened.set(from, to)
  return to
}

function withValue(at: unknown, [step = '', ...rest]: readonly string[], value: unknown): unknown {
  const here = at as Record<string, unknown>
  const next = rest.length === 0 ? value : withValue(here[step], rest, value)
  return Object.is(here[step], next) ? at : { ...here, [step]: next }
}
