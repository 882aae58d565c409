import { liveQuery } from 'dexie'
import type { ModelRecord } from '../record/commission.ts'
import type { Bundle } from '../record/document.ts'
import { readBundle } from '../record/door.ts'
import { isPlainObject, valueAt } from '../record/path.ts'
import type { Result } from '../record/result.ts'
import type { Database } from './database.ts'
import { putDocument, type ReadProblem } from './documents.ts'
import { reopening, writeDurably, type WriteProblem } from './writeDurably.ts'

/** The models as stored, those marked as deleted among them, and every one that cannot be read, with why. */
export interface ModelList {
  readonly models: readonly ModelRecord[]
  readonly unreadable: readonly { readonly id: string; readonly problem: ReadProblem }[]
}

/** Reads every model's row; logs are read only where one is edited. Nothing is written, also where a row is of an older shape. */
export async function readModels(database: Database): Promise<ModelList> {
  const { documents } = database.dexie
  const rows = await reopening(database, () => documents.where({ kind: 'model' }).toArray())
  const list: { models: ModelRecord[]; unreadable: { id: string; problem: ReadProblem }[] } = {
    models: [],
    unreadable: [],
  }
  for (const row of rows) {
    const read = readBundle('model', { row, changes: [], facts: [] })
    if (read.ok) list.models.push(read.value.bundle.row)
    else list.unreadable.push({ id: isPlainObject(row) ? String(row['id']) : '', problem: read.problem })
  }
  return list
}

/** Calls back with the models now and whenever any tab has written to one. Gives back how to stop. */
export function watchModels(
  database: Database,
  take: (list: ModelList) => void,
  fail: (detail: string) => void,
): () => void {
  const watching = liveQuery(() => readModels(database)).subscribe({
    next: take,
    error: (fault: unknown) => fail(fault instanceof Error ? fault.name : 'unknown'),
  })
  return () => watching.unsubscribe()
}

/** Stores new models with their logs, all or none; one whose id is here already, deleted or not, stays as it is. */
export function addModels(
  database: Database,
  bundles: readonly Bundle<ModelRecord>[],
): Promise<Result<null, WriteProblem>> {
  const { documents, changes, facts, heads } = database.dexie
  return writeDurably(database, [documents, changes, facts, heads], async () => {
    await putMissing(database, bundles)
    return null
  })
}

/** The same inside a transaction that is already open. */
export async function putMissing(database: Database, bundles: readonly Bundle<ModelRecord>[]): Promise<void> {
  for (const bundle of bundles) {
    if ((await database.dexie.documents.get(bundle.row.id)) !== undefined) continue
    await putDocument(database, { ...bundle, allFacts: bundle.facts })
  }
}

/** How many instruments that are not deleted go by each model, by the model's id. */
export async function countModelUses(database: Database): Promise<ReadonlyMap<string, number>> {
  const rows = await reopening(database, () => database.dexie.documents.where({ kind: 'commission' }).toArray())
  const uses = new Map<string, number>()
  for (const row of rows) {
    const id = modelIdOf(row)
    if (id !== null && isPlainObject(row) && row['deletedAt'] === null) uses.set(id, (uses.get(id) ?? 0) + 1)
  }
  return uses
}

/** The model a stored commission, still unchecked, goes by; null for none. */
export function modelIdOf(row: unknown): string | null {
  const found = valueAt(row, ['doc', 'modelAsTaken', 'modelId'])
  return found.here && typeof found.value === 'string' ? found.value : null
}
