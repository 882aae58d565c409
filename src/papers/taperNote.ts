import type { PlateSide } from '../core/boxPlan.ts'
import type { StageKey } from '../record/patterns/stages.ts'
import { stageFigures } from './stageFigures.ts'
import type { StageOnSheet, StageSheetOrder } from './stageSheetOrder.ts'

/** Stages that are about the braces of the back; all others that are about braces are about those of the top. */
const OF_BACK: ReadonlySet<StageKey> = new Set(['stripBack', 'archBackBraces', 'braceBack', 'carveBack', 'fitBack'])
export const plateOf = (stage: StageKey): PlateSide => (OF_BACK.has(stage) ? 'back' : 'top')

/** How the ends of the braces run out, where the stage prints their tapers; null where it does not, or where there are no braces. */
export function taperNote(order: StageSheetOrder, stage: StageOnSheet): string | null {
  const { computed, words } = order
  if (!stageFigures(order, stage.key).numbers.includes('braces[].fromTaperMm')) return null
  const braces = computed.numbers.braces.filter(({ plate }) => plate === plateOf(stage.key))
  if (braces.length === 0) return null
  const ends = braces.map(({ number, fromTaper, fromTaperMm, toTaper, toTaperMm }) => ({
    number,
    from: fromTaperMm > 0 ? fromTaper : 'none',
    to: toTaperMm > 0 ? toTaper : 'none',
  }))
  return words.paper.tapers(ends)
}
