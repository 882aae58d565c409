import type { CommissionRecord, Fact } from './commission.ts'
import { nextSeq } from './document.ts'
import type { EditMeta } from './edit.ts'

export type StageDone = Extract<Fact, { kind: 'stageDone' }>
export type BuiltTo = StageDone['builtTo']

/** The facts that stand: those no standing withdrawal points at. A withdrawal can itself be withdrawn. `facts` in the order of the log. */
export function standingFacts(facts: readonly Fact[]): readonly Fact[] {
  const withdrawn = new Set<string>()
  for (const fact of facts.toReversed())
    if (fact.kind === 'withdrawal' && !withdrawn.has(fact.id)) withdrawn.add(fact.of)
  return facts.filter((fact) => !withdrawn.has(fact.id))
}

/** The standing sign-off of each stage that is done, by the stage's id; one that is to be done again is done no more. */
export function stagesDone(facts: readonly Fact[]): ReadonlyMap<string, StageDone> {
  const done = new Map<string, StageDone>()
  for (const fact of standingFacts(facts)) {
    if (fact.kind === 'stageDone') done.set(fact.stageId, fact)
    if (fact.kind === 'redo') done.delete(fact.stageId)
  }
  return done
}

/** A stage signed off, with the numbers it was built to. */
export function signOff(row: CommissionRecord, stageId: string, builtTo: BuiltTo, meta: EditMeta): StageDone {
  return { kind: 'stageDone', ...headOfFact(row, meta), stageId, builtTo }
}

/** A stage that was signed off is to be done again. Its sign-off stays on record. */
export function redoStage(row: CommissionRecord, stageId: string, reason: string, meta: EditMeta): Fact {
  return { kind: 'redo', ...headOfFact(row, meta), stageId, reason }
}

/** Takes a fact back without erasing it. */
export function withdraw(row: CommissionRecord, of: string, meta: EditMeta): Fact {
  return { kind: 'withdrawal', ...headOfFact(row, meta), of }
}

/** What every fact begins with. */
export function headOfFact(row: CommissionRecord, meta: EditMeta) {
  const { deviceId, at, gesture } = meta
  return { id: meta.newId(), docId: row.id, deviceId, seq: nextSeq(row), at, gesture, undoes: null }
}
