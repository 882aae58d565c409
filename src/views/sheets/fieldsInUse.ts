import type { Plan } from '../../core/plan.ts'
import type { PlanField } from '../../core/planFields.ts'

const TOP_FIELDS: Readonly<Record<Plan['top']['form'], readonly PlanField[]>> = {
  sphere: ['top.form', 'top.radiusMm'],
  flatUpperBout: ['top.form', 'top.radiusMm', 'top.flatFromMm', 'top.flatSlope', 'top.flatSlopeDeg'],
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

const isFanned = ({ scale }: Plan) => scale.fan === 'fanned'
const hasPins = ({ bridge }: Plan) => bridge.holds === 'pins'
const hasPlate = ({ bridge }: Plan) => bridge.plateMm > 0
const isEntered = ({ bridge }: Plan) => bridge.compensation === 'entered'
const entersBlock = ({ neck }: Plan) => neck.joint === 'boltedTenon' || neck.joint === 'dovetail'
const hasBolts = ({ neck }: Plan) => neck.joint === 'boltedTenon' || neck.joint === 'butt'
const hasRod = ({ neck }: Plan) => neck.rod === 'fitted'

const hasHoleRing = ({ bracing }: Plan) => bracing.holeRingMm > 0
const hasPurfling = ({ binding }: Plan) => Math.max(binding.topPurflingMm, binding.backPurflingMm) > 0

/** Fields that count only with a form that is chosen beside them. */
const RULES: Readonly<Partial<Record<PlanField, (plan: Plan) => boolean>>> = {
  'scale.trebleLengthMm': isFanned,
  'scale.squareFret': isFanned,
  'board.radiusMm': ({ board }) => board.surface !== 'flat',
  'board.endRadiusMm': ({ board }) => board.surface === 'compound',
  'strings.pairGapMm': ({ strings }) => strings.set.some(({ pairedWithNext }) => pairedWithNext),
  'bridge.pinSpreadMm': hasPins,
  'bridge.tieHoleOverTopMm': ({ bridge }) => bridge.holds === 'tie',
  'bridge.compensationBassMm': isEntered,
  'bridge.compensationTrebleMm': isEntered,
  'bridge.plateFromMm': hasPlate,
  'bridge.plateToMm': hasPlate,
  'bridge.plateTailWidthMm': hasPlate,
  'bridge.plateNeckWidthMm': hasPlate,
  'bracing.crossPatchThicknessMm': ({ bracing }) => bracing.crossPatchMm > 0,
  'bracing.holeRingSetBackMm': hasHoleRing,
  'bracing.holeRingThicknessMm': hasHoleRing,
  'bracing.stripThicknessMm': ({ bracing }) => bracing.stripWidthMm > 0,
  'edges.purflingDepthMm': hasPurfling,
  'edges.wedgeDepthMm': ({ edges }) => Math.max(edges.wedgeTopMm, edges.wedgeBackMm) > 0,
  'edges.wedgePurflingMm': ({ edges }) => Math.max(edges.wedgeTopMm, edges.wedgeBackMm) > 0,
  'edges.backStripDepthMm': ({ edges }) => edges.backStripMm > 0,
  'neck.tenonWidthMm': entersBlock,
  'neck.tenonDepthMm': entersBlock,
  'neck.boltsAtMm': hasBolts,
  'neck.boltMm': hasBolts,
  'neck.rodLengthMm': hasRod,
  'neck.rodWidthMm': hasRod,
  'neck.rodDepthMm': hasRod,
  'neck.rodFromNutMm': hasRod,
}

/** Whether a field counts for the forms that are chosen; one that does not keeps its value and is not shown. */
export function isInUse(plan: Plan, field: PlanField): boolean {
  const { kind, cutaway } = plan.outline
  if (field === 'top.flatSlopeDeg' && plan.top.flatSlope !== 'entered') return false
  if (field.startsWith('top.')) return TOP_FIELDS[plan.top.form].includes(field)
  const rule = RULES[field]
  if (rule !== undefined) return rule(plan)
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
