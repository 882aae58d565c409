import type { KeptNumbers } from '../../core/keptNumbers.ts'
import type { CommissionRecord, Fact } from '../commission.ts'
import { byPlace } from '../document.ts'
import type { EditMeta } from '../edit.ts'
import { headOfFact, type StageDone, standingFacts } from '../facts.ts'

/** Work that no longer fits stays as it was built: `asked` is what the plan asks of it at that moment. */
export const keepWork = (
  row: CommissionRecord,
  { stageId, asked }: { readonly stageId: string; readonly asked: KeptNumbers },
  meta: EditMeta,
): Fact => ({ kind: 'kept', ...headOfFact(row, meta), stageId, asked: { ...asked } })

/** What was asked each time the maker let this work of a stage stand as it is; what was said of it before it was done again counts no more. */
export const keptSince = (facts: readonly Fact[], done: StageDone): readonly KeptNumbers[] =>
  standingFacts(facts).flatMap((fact) =>
    fact.kind === 'kept' && fact.stageId === done.stageId && byPlace(fact, done) > 0 ? [fact.asked] : [],
  )
