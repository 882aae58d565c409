import type { Plan } from '../../core/plan.ts'
import type { PlanField } from '../../core/planFields.ts'

const TOP_FIELDS: Readonly<Record<Plan['top']['form'], readonly PlanField[]>> = {
  sphere: ['top.form', 'top.radiusMm'],
  flatUpperBout: ['top.form', 'top.radiusMm', 'top.flatFromMm', 'top.flatSlopeDeg'],
  flatRim: ['top.form', 'top.radiusMm', 'top.riseAtSaddleMm'],
  flat: ['top.form'],
}

const CUTAWAY_FIELDS: Readonly<Record<Plan['outline']['cutaway']['form'], readonly PlanField[]>> = {
  none: ['outline.cutaway.form'],
  pointed: [
    'outline.cutaway.form',
    'outline.cutaway.leavesAtMm',
    'outline.cutaway.hollowRadiusMm',
    'outline.cutaway.meetsNeckAtMm',
  ],
  rounded: [
    'outline.cutaway.form',
    'outline.cutaway.leavesAtMm',
    'outline.cutaway.hornRadiusMm',
    'outline.cutaway.hollowRadiusMm',
    'outline.cutaway.meetsNeckAtMm',
  ],
}

/** Whether a field counts for the forms that are chosen; one that does not keeps its value and is not shown. */
export function isInUse(plan: Plan, field: PlanField): boolean {
  const { kind, cutaway } = plan.outline
  if (field.startsWith('top.')) return TOP_FIELDS[plan.top.form].includes(field)
  if (field === 'back.radiusMm') return plan.back.form !== 'flat'
  if (field === 'outline.pieces') return kind === 'compassArcs'
  if (field === 'outline.drawnPath') return kind === 'drawnPath'
  if (field.startsWith('outline.keyWidths.')) return kind === 'keyWidths'
  if (field.startsWith('outline.halfWidths.')) return kind === 'halfWidths'
  if (field.startsWith('outline.cutaway.')) return CUTAWAY_FIELDS[cutaway.form].includes(field)
  if (field === 'sideBraces.form') return true
  if (field === 'sideBraces.spacingMm') return plan.sideBraces.form !== 'none' && plan.sideBraces.atMm === null
  return !field.startsWith('sideBraces.') || plan.sideBraces.form !== 'none'
}
