import type { Plan, PlanField } from '../../core/plan.ts'

const TOP_FIELDS: Readonly<Record<Plan['top']['form'], readonly PlanField[]>> = {
  sphere: ['top.form', 'top.radiusMm'],
  flatUpperBout: ['top.form', 'top.radiusMm', 'top.flatFromMm', 'top.flatSlopeDeg'],
  flatRim: ['top.form', 'top.radiusMm', 'top.riseAtSaddleMm'],
  flat: ['top.form'],
}

/** Whether a field counts for the forms that are chosen; one that does not keeps its value and is not shown. */
export function isInUse(plan: Plan, field: PlanField): boolean {
  if (field.startsWith('top.')) return TOP_FIELDS[plan.top.form].includes(field)
  if (field === 'back.radiusMm') return plan.back.form !== 'flat'
  if (field === 'outline.pieces') return plan.outline.kind === 'compassArcs'
  return !field.startsWith('outline.keyWidths.') || plan.outline.kind === 'keyWidths'
}
