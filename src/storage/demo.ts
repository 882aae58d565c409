import type { Result } from '../record/result.ts'
import { isPlainObject, valueAt } from '../record/path.ts'
import type { Database } from './database.ts'
import { writeDurably, type WriteProblem } from './writeDurably.ts'

/** What was taken out, row by row, so that it can be put back. */
export interface RemovedRows {
  readonly documents: readonly unknown[]
  readonly changes: readonly unknown[]
  readonly facts: readonly unknown[]
  readonly heads: readonly unknown[]
  readonly drafts: readonly unknown[]
}

const isDemo = (row: unknown): boolean => {
  const demo = valueAt(row, ['doc', 'demo'])
  return demo.here && demo.value === true
}

/** Takes the whole demo out for good, in one transaction; the only rows that are ever erased. */
export function removeDemo(database: Database): Promise<Result<RemovedRows, WriteProblem>> {
  const { documents, changes, facts, heads, drafts } = database.dexie
  return writeDurably(database, [documents, changes, facts, heads, drafts], async () => {
    const demo = await documents.filter(isDemo).toArray()
    const ids = demo.flatMap((row) => (isPlainObject(row) ? [String(row['id'])] : []))
    const ofDemo = (table: typeof changes | typeof drafts) => table.where('docId').anyOf(ids)
    const removed: RemovedRows = {
      documents: demo,
      changes: await ofDemo(changes).toArray(),
      facts: await ofDemo(facts).toArray(),
      heads: (await heads.bulkGet(ids)).filter((head) => head !== undefined),
      drafts: await ofDemo(drafts).toArray(),
    }
    for (const table of [changes, facts, drafts]) await ofDemo(table).delete()
    await documents.bulkDelete(ids)
    await heads.bulkDelete(ids)
    return removed
  })
}

/** Puts rows back that were taken out. */
export function putBack(database: Database, rows: RemovedRows): Promise<Result<null, WriteProblem>> {
  const { documents, changes, facts, heads, drafts } = database.dexie
  return writeDurably(database, [documents, changes, facts, heads, drafts], async () => {
    await documents.bulkPut([...rows.documents])
    await changes.bulkPut([...rows.changes])
    await facts.bulkPut([...rows.facts])
    await heads.bulkPut([...rows.heads])
    await drafts.bulkPut([...rows.drafts])
    return null
  })
}
