import { accept, type Result } from '../record/result.ts'
import type { Database } from './database.ts'
import { type DocumentWrite, putDocument } from './documents.ts'
import { writeDurably, type WriteProblem } from './writeDurably.ts'

/** Writes several documents in one transaction: all of them, or none. */
export async function saveTogether(
  database: Database,
  writes: readonly DocumentWrite[],
): Promise<Result<null, WriteProblem>> {
  if (writes.length === 0) return accept(null)
  const { documents, changes, facts, heads } = database.dexie
  return writeDurably(database, [documents, changes, facts, heads], async () => {
    for (const write of writes) await putDocument(database, write)
    return null
  })
}
