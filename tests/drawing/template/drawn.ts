import { compute } from '../../../src/core/compute.ts'
import { USUAL_JIGS } from '../../../src/core/jigs.ts'
import type { Plan } from '../../../src/core/plan.ts'
import type { Drawing } from '../../../src/drawing/drawing.ts'
import type { TemplateName } from '../../../src/drawing/template/template.ts'
import { templateDrawingOf } from '../../../src/drawing/templateDrawingOf.ts'
import { withField } from '../../generators/plans.ts'

/** One template of a plan, with the usual gear or other. */
export const drawn = (plan: Plan, name: TemplateName, of: string | null, jigs = USUAL_JIGS): Drawing =>
  templateDrawingOf({ name, of }, compute(plan), plan, jigs)

/** The same instrument for the left hand. */
export const left = (plan: Plan): Plan => withField(plan, 'handed', 'left')
