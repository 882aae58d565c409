import type { Draft } from '../record/commission.ts'
import { readDraft } from '../record/door.ts'
import type { Result } from '../record/result.ts'
import type { Database } from './database.ts'
import { reopening, writeDurably, type WriteProblem } from './writeDurably.ts'

export interface DraftWrite {
  readonly kept: readonly Draft[]
  readonly cleared: readonly { readonly docId: string; readonly field: string }[]
}

export function saveDrafts(database: Database, { kept, cleared }: DraftWrite): Promise<Result<null, WriteProblem>> {
  const { drafts } = database.dexie
  return writeDurably(database, [drafts], async () => {
    await drafts.bulkDelete(cleared.map(({ docId, field }): [string, string] => [docId, field]))
    await drafts.bulkPut([...kept])
    return null
  })
}

/** Every draft that can be read; one that cannot stays where it is, for the rescue file. */
export async function readDrafts(database: Database): Promise<readonly Draft[]> {
  const rows = await reopening(database, () => database.dexie.drafts.toArray())
  return rows.flatMap((row) => {
    const read = readDraft(row)
    return read.ok ? [read.value] : []
  })
}
