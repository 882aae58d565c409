import { liveQuery } from 'dexie'
import type { Change, Fact } from '../record/commission.ts'
import { type Bundle, byPlace, type DocumentRecord } from '../record/document.ts'
import { readBundle } from '../record/door.ts'
import { headOf } from '../record/headOf.ts'
import { isBeginning } from '../record/log.ts'
import { MIGRATIONS, type Migration, type RawBundle } from '../record/migrations/migrate.ts'
import { isPlainObject, valueAt } from '../record/path.ts'
import type { DoorProblem } from '../record/problem.ts'
import { accept, type Result, refuse } from '../record/result.ts'
import type { Database } from './database.ts'
import { DocumentGone, PlaceTaken, reopening, writeDurably, type WriteProblem } from './writeDurably.ts'

type Kind = DocumentRecord['kind']
type RowOf<K extends Kind> = Extract<DocumentRecord, { kind: K }>
export type ReadProblem =
  | DoorProblem
  | { readonly code: 'missing' }
  | { readonly code: 'failed'; readonly detail: string }

/** A document row with the entries that are new since it was last written. */
export interface DocumentWrite<Row extends DocumentRecord = DocumentRecord> {
  readonly row: Row
  readonly changes: readonly Change[]
  readonly facts: readonly Fact[]
  /** All facts of the document, for the list's fields. */
  readonly allFacts: readonly Fact[]
}

/** Writes documents, their new entries and their heads in one transaction: all of them, or none. Writing the same entries twice leaves them once. */
export function saveDocument(
  database: Database,
  ...writes: readonly DocumentWrite[]
): Promise<Result<null, WriteProblem>> {
  const { documents, changes, facts, heads } = database.dexie
  return writeDurably(database, [documents, changes, facts, heads], async () => {
    for (const write of writes) await putDocument(database, write)
    return null
  })
}

/** The same inside a transaction that is already open. */
export async function putDocument(database: Database, write: DocumentWrite): Promise<void> {
  const { documents, changes, facts, heads } = database.dexie
  const stored = await documents.get(write.row.id)
  if (stored === undefined && !write.changes.some(isBeginning)) throw new DocumentGone()
  if (stored !== undefined && (await isPlaceTaken(database, stored, write))) throw new PlaceTaken()
  await changes.bulkPut([...write.changes])
  await facts.bulkPut([...write.facts])
  await documents.put(write.row)
  const moment = latestMoment(write)
  if (write.row.kind === 'commission' && moment !== null) await heads.put(headOf(write.row, write.allFacts, moment))
}

/** True where somebody else has written to the log since these entries got their places; false where they are there already. */
async function isPlaceTaken(database: Database, stored: unknown, write: DocumentWrite): Promise<boolean> {
  const first = [...write.changes, ...write.facts].toSorted(byPlace)[0]
  const seen = valueAt(stored, ['seen'])
  if (first === undefined || !seen.here || !isPlainObject(seen.value)) return false
  const highest = Math.max(0, ...Object.values(seen.value).map(Number))
  if (highest < first.seq) return false
  const { changes, facts } = database.dexie
  return (await changes.get(first.id)) === undefined && (await facts.get(first.id)) === undefined
}

function latestMoment(write: DocumentWrite): string | null {
  return (
    [...write.changes, ...write.facts]
      .map(({ at }) => at)
      .toSorted()
      .at(-1) ?? null
  )
}

/** A document with its whole log, through the door. One of an older shape is set aside as it was and written back in the new one. */
export async function readDocument<K extends Kind>(
  database: Database,
  kind: K,
  id: string,
  migrations: readonly Migration[] = MIGRATIONS,
): Promise<Result<Bundle<RowOf<K>>, ReadProblem>> {
  const raw = await readRaw(database, id)
  if (!raw.ok) return raw
  const read = readBundle(kind, raw.value, migrations)
  if (!read.ok) return read
  if (read.value.migrated) await keepMigrated(database, raw.value, read.value.bundle)
  return accept(read.value.bundle)
}

async function keepMigrated(database: Database, before: RawBundle, after: Bundle<DocumentRecord>): Promise<void> {
  const { documents, changes, facts, setAside } = database.dexie
  await writeDurably(database, [documents, changes, facts, setAside], async () => {
    await setAside.add(before)
    await changes.bulkPut([...after.changes])
    await facts.bulkPut([...after.facts])
    await documents.put(after.row)
  })
}

/** The stored rows of one document as they are. */
export async function readRaw(database: Database, id: string): Promise<Result<RawBundle, ReadProblem>> {
  const { documents, changes, facts } = database.dexie
  try {
    return await reopening(database, () =>
      database.dexie.transaction('r', [documents, changes, facts], async () => {
        const row = await documents.get(id)
        if (row === undefined) return refuse({ code: 'missing' } as const)
        const ofDocument = { docId: id }
        return accept({
          row,
          changes: await changes.where(ofDocument).toArray(),
          facts: await facts.where(ofDocument).toArray(),
        })
      }),
    )
  } catch (fault) {
    return refuse({ code: 'failed', detail: fault instanceof Error ? fault.name : 'unknown' })
  }
}

/** Calls back with a document now and whenever any tab has written to it. Gives back how to stop. */
export function watchDocument<K extends Kind>(
  database: Database,
  kind: K,
  id: string,
  take: (read: Result<Bundle<RowOf<K>>, ReadProblem>) => void,
): () => void {
  const stored = liveQuery(() => readRaw(database, id))
  const watching = stored.subscribe({
    next: (raw) => {
      if (!raw.ok) return take(raw)
      const read = readBundle(kind, raw.value)
      take(read.ok ? accept(read.value.bundle) : read)
    },
    error: (fault: unknown) =>
      take(refuse({ code: 'failed', detail: fault instanceof Error ? fault.name : 'unknown' })),
  })
  return () => watching.unsubscribe()
}
