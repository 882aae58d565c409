import { CUTAWAY_FORMS, HANDS, type Plan } from '../../src/core/plan.ts'
import { DEMO_MODELS } from '../generators/demoModels.ts'

export const withCutaway = (plan: Plan, form: Plan['outline']['cutaway']['form']): Plan => ({
  ...plan,
  outline: { ...plan.outline, cutaway: { ...plan.outline.cutaway, form } },
})

/** Every model uncut and with its cutaway either way, for both hands. */
export const CUT_MODELS: readonly (readonly [name: string, plan: Plan])[] = DEMO_MODELS.flatMap(({ name, plan }) =>
  CUTAWAY_FORMS.flatMap((form) =>
    HANDS.map((handed) => [`${name}, ${form}, ${handed}`, { ...withCutaway(plan, form), handed }] as const),
  ),
)
