import type { PlateSide } from '../core/boxPlan.ts'
import { STAGES } from '../record/patterns/stagePatterns.ts'
import type { StageKey } from '../record/patterns/stages.ts'
import type { StageOnSheet, StageSheetOrder } from './stageSheetOrder.ts'

/** Stages that are about the braces of the back; all others that are about braces are about those of the top. */
const OF_BACK: ReadonlySet<StageKey> = new Set(['braceBack', 'fitBack'])
export const plateOf = (stage: StageKey): PlateSide => (OF_BACK.has(stage) ? 'back' : 'top')

/** How the ends of the braces run out, where the stage prints their tapers; null where it does not, or where there are no braces. */
export function taperNote({ computed, words }: StageSheetOrder, stage: StageOnSheet): string | null {
  if (!STAGES[stage.key].numbers.includes('braces[].fromTaperMm')) return null
  const braces = computed.numbers.braces.filter(({ plate }) => plate === plateOf(stage.key))
  if (braces.length === 0) return null
  const ends = braces.map(({ number, fromTaper, fromTaperMm, toTaper, toTaperMm }) => ({
    number,
    from: fromTaperMm > 0 ? fromTaper : 'none',
    to: toTaperMm > 0 ? toTaper : 'none',
  }))
  return words.paper.tapers(ends)
}
