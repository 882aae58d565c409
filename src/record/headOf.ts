import type { CommissionRecord, Fact, Head } from './commission.ts'
import { stagesDone } from './facts.ts'
import { inOrder } from './order.ts'

/** The list's few fields of a commission. `changedAt` is an ISO moment. */
export function headOf(row: CommissionRecord, facts: readonly Fact[], changedAt: string): Head {
  const { doc } = row
  const done = stagesDone(facts)
  const stages = inOrder(doc.stages)
  const next = stages.find(([id]) => !done.has(id))?.[1]
  return {
    id: row.id,
    number: doc.number,
    client: doc.brief.client,
    title: doc.title,
    family: doc.family,
    archivedOn: doc.archivedOn,
    promisedOn: doc.brief.promisedOn,
    deletedAt: row.deletedAt,
    demo: doc.demo,
    stagesDone: stages.filter(([id]) => done.has(id)).length,
    stagesTotal: stages.length,
    nextStage: next?.key ?? null,
    nextTitle: next?.own?.title ?? '',
    changedAt,
  }
}
