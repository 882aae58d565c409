import type { PlateSide } from '../core/boxPlan.ts'
import type { StageKey } from '../record/patterns/stages.ts'
import { stageFigures } from './stageFigures.ts'
import type { StageOnSheet, StageSheetOrder } from './stageSheetOrder.ts'

/** Stages that are about the braces of the back; all others that are about braces are about those of the top. */
const OF_BACK: ReadonlySet<StageKey> = new Set(['stripBack', 'archBackBraces', 'braceBack', 'carveBack', 'fitBack'])
/** Whether a stage is about the braces of this plate; work without a pattern may be about those of both. */
export const isAboutPlate = (stage: StageKey, plate: PlateSide): boolean =>
  stage === 'ownWork' || OF_BACK.has(stage) === (plate === 'back')

/** How the ends of the braces run out, where the stage prints their tapers; null where it does not, or where there are no braces. */
export function taperNote(order: StageSheetOrder, stage: StageOnSheet): string | null {
  const { computed, words } = order
  if (!stageFigures(order, stage).numbers.includes('braces[].fromTaperMm')) return null
  const braces = computed.numbers.braces.filter(({ plate }) => isAboutPlate(stage.key, plate))
  if (braces.length === 0) return null
  const ends = braces.map(({ number, fromTaper, fromTaperMm, toTaper, toTaperMm }) => ({
    number,
    from: fromTaperMm > 0 ? fromTaper : 'none',
    to: toTaperMm > 0 ? toTaper : 'none',
  }))
  return words.paper.tapers(ends)
}
