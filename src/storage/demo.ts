import type { Result } from '../record/result.ts'
import { isPlainObject, valueAt } from '../record/path.ts'
import type { Database } from './database.ts'
import { modelIdOf } from './models.ts'
import { writeDurably, type WriteProblem } from './writeDurably.ts'

/** What was taken out, row by row, so that it can be put back. */
export interface RemovedRows {
  readonly documents: readonly unknown[]
  readonly changes: readonly unknown[]
  readonly facts: readonly unknown[]
  readonly heads: readonly unknown[]
  readonly drafts: readonly unknown[]
}

export interface DemoRemoval extends RemovedRows {
  /** Instruments of the demo that stay, because the maker has written to them. */
  readonly staying: readonly string[]
}

type Json = Record<string, unknown>

const isOfDemo = (row: unknown): row is Json => {
  const demo = valueAt(row, ['doc', 'demo'])
  return demo.here && demo.value === true
}

/** Putting away and deleting say nothing of what is in a document. */
const isHousekeeping = (entry: Json): boolean => {
  const { path } = entry
  return Array.isArray(path) && (path[0] === 'deletedAt' || path[1] === 'archivedOn')
}

/** True where somebody has written to a document on another device than the one it was begun on: a demo's own is nobody's device. */
function isTouched(entries: readonly Json[]): boolean {
  const first = entries.reduce<Json | null>(
    (least, entry) => (least === null || Number(entry['seq']) < Number(least['seq']) ? entry : least),
    null,
  )
  return entries.some((entry) => entry['deviceId'] !== first?.['deviceId'] && !isHousekeeping(entry))
}

/**
 * Takes the demo out for good, in one transaction; the only rows that are ever erased. What the maker has written to stays, and so do
 * models that an instrument which stays goes by, and those the maker deleted.
 */
export function removeDemo(database: Database): Promise<Result<DemoRemoval, WriteProblem>> {
  const { documents, changes, facts, heads, drafts } = database.dexie
  return writeDurably(database, [documents, changes, facts, heads, drafts], async () => {
    const entriesOf = async (id: string): Promise<Json[]> =>
      [
        ...(await changes.where('docId').equals(id).toArray()),
        ...(await facts.where('docId').equals(id).toArray()),
      ].filter(isPlainObject)
    const going: Json[] = []
    const staying: Json[] = []
    const demo = (await documents.filter(isOfDemo).toArray()).filter(isPlainObject)
    for (const row of demo) (isTouched(await entriesOf(String(row['id']))) ? staying : going).push(row)

    const gone = new Set(going.map((row) => row['id']))
    const isUsed = new Set<string>()
    await documents.where({ kind: 'commission' }).each((row) => {
      const modelId = modelIdOf(row)
      if (modelId !== null && isPlainObject(row) && !gone.has(row['id'])) isUsed.add(modelId)
    })
    // A model that was deleted stays so: taken out, it would be offered again.
    const out = going.filter(
      (row) => row['kind'] !== 'model' || (row['deletedAt'] === null && !isUsed.has(String(row['id']))),
    )
    const ids = out.map((row) => String(row['id']))
    const ofThose = (table: typeof changes | typeof drafts) => table.where('docId').anyOf(ids)
    const removal: DemoRemoval = {
      documents: out,
      changes: await ofThose(changes).toArray(),
      facts: await ofThose(facts).toArray(),
      heads: (await heads.bulkGet(ids)).filter((head) => head !== undefined),
      drafts: await ofThose(drafts).toArray(),
      staying: staying.filter((row) => row['kind'] === 'commission').map((row) => String(row['id'])),
    }
    for (const table of [changes, facts, drafts]) await ofThose(table).delete()
    await documents.bulkDelete(ids)
    await heads.bulkDelete(ids)
    return removal
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
