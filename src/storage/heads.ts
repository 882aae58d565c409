import { liveQuery } from 'dexie'
import type { Head } from '../record/commission.ts'
import { readBundle, readHead } from '../record/door.ts'
import { headOf } from '../record/headOf.ts'
import { isPlainObject } from '../record/path.ts'
import type { Result } from '../record/result.ts'
import type { Database } from './database.ts'
import { readRaw, type ReadProblem } from './documents.ts'
import { reopening, writeDurably, type WriteProblem } from './writeDurably.ts'

/** The list as stored: a head for each commission that can be read, and every one that cannot, with why. None is dropped in silence. */
export interface HeadList {
  readonly heads: readonly Head[]
  readonly unreadable: readonly { readonly id: string; readonly problem: ReadProblem }[]
}

/** Reads the list. A head that is missing or damaged is made anew from its document, which is looked at only then. */
export async function readHeads(database: Database): Promise<HeadList> {
  const { documents, heads } = database.dexie
  const [ids, rows] = await reopening(database, () =>
    Promise.all([documents.where({ kind: 'commission' }).primaryKeys(), heads.toArray()]),
  )
  const known = new Map<string, Head>()
  for (const row of rows) {
    const read = readHead(row)
    if (read.ok) known.set(read.value.id, read.value)
  }
  const list: { heads: Head[]; unreadable: { id: string; problem: ReadProblem }[] } = { heads: [], unreadable: [] }
  for (const id of ids) {
    const head = known.get(id)
    if (head !== undefined) {
      list.heads.push(head)
      continue
    }
    const made = await makeHead(database, id)
    if (made.ok) list.heads.push(made.value)
    else list.unreadable.push({ id, problem: made.problem })
  }
  return list
}

async function makeHead(database: Database, id: string): Promise<Result<Head, ReadProblem>> {
  const raw = await readRaw(database, id)
  if (!raw.ok) return raw
  const read = readBundle('commission', raw.value)
  if (!read.ok) return read
  const { row, changes, facts } = read.value.bundle
  const changedAt =
    [...changes, ...facts]
      .map(({ at }) => at)
      .sort()
      .at(-1) ?? new Date(0).toISOString()
  return { ok: true, value: headOf(row, facts, changedAt) }
}

/** Writes anew every head that is missing or damaged, and takes away those without a document. */
export async function mendHeads(database: Database): Promise<Result<null, WriteProblem>> {
  const { heads } = database.dexie
  const list = await readHeads(database)
  const wanted = new Map(list.heads.map((head) => [head.id, head]))
  const stored = await heads.toArray()
  const sound = stored.every((row) => readHead(row).ok && isPlainObject(row) && wanted.has(String(row['id'])))
  if (sound && stored.length === wanted.size) return { ok: true, value: null }
  return writeDurably(database, [heads], async () => {
    await heads.clear()
    await heads.bulkPut([...wanted.values()])
    return null
  })
}

/** Calls back with the list now and whenever any tab has written. Gives back how to stop. */
export function watchHeads(
  database: Database,
  take: (list: HeadList) => void,
  fail: (detail: string) => void,
): () => void {
  const watching = liveQuery(() => readHeads(database)).subscribe({
    next: take,
    error: (fault: unknown) => fail(fault instanceof Error ? fault.name : 'unknown'),
  })
  return () => watching.unsubscribe()
}
