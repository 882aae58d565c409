import { asWriter, type Locks } from '../device/writerLock.ts'
import type { Bundle, DocumentRecord } from '../record/document.ts'
import { editDocument, type EditMeta, type Recipe } from '../record/edit.ts'
import type { DoorProblem } from '../record/problem.ts'
import { accept, type Result, refuse } from '../record/result.ts'
import { takeBack } from '../record/undo.ts'
import type { Database } from '../storage/database.ts'
import { readDocument, type ReadProblem, saveDocument } from '../storage/documents.ts'
import type { WriteProblem } from '../storage/writeDurably.ts'

export type StoredEditProblem =
  | ReadProblem
  | WriteProblem
  | { readonly code: 'openInAnotherTab' | 'readOnly' | 'notOpen' }

export interface StoredNeeds {
  readonly database: Database
  readonly deviceId: string
  readonly now: () => string
  readonly newId: () => string
  readonly locks: Locks
  readonly onSaved?: () => void
}

type Kind = DocumentRecord['kind']
type RowOf<K extends Kind> = Extract<DocumentRecord, { kind: K }>
type Step<Row extends DocumentRecord> = (bundle: Bundle<Row>, meta: EditMeta) => Result<Bundle<Row>, DoorProblem>

export const metaOf = (needs: StoredNeeds, gesture: string = needs.newId()): EditMeta => ({
  deviceId: needs.deviceId,
  at: needs.now(),
  gesture,
  newId: needs.newId,
})

/** Edits a document that lies in the store: read, changed and written while no other tab may write to it. */
export function editStored<K extends Kind>(
  needs: StoredNeeds,
  kind: K,
  id: string,
  recipe: Recipe<RowOf<K>>,
  gesture: string,
) {
  return changeStored(needs, kind, id, gesture, ({ row, changes }, meta) => {
    const edited = editDocument(row, changes, recipe, meta)
    return edited.ok ? accept({ ...edited.value, facts: [] }) : edited
  })
}

/** Takes one gesture of a stored document back. */
export function takeBackStored(needs: StoredNeeds, kind: Kind, id: string, gesture: string) {
  return changeStored(needs, kind, id, needs.newId(), ({ row, changes, facts }, meta) =>
    takeBack(row, changes, facts, gesture, meta),
  )
}

/** Runs a step that gives the new row and the entries to add. */
export async function changeStored<K extends Kind>(
  needs: StoredNeeds,
  kind: K,
  id: string,
  gesture: string,
  step: Step<RowOf<K>>,
): Promise<Result<null, StoredEditProblem>> {
  const held = await asWriter(needs.locks, id, async (): Promise<Result<null, StoredEditProblem>> => {
    const read = await readDocument(needs.database, kind, id)
    if (!read.ok) return read
    const next = step(read.value, metaOf(needs, gesture))
    if (!next.ok) return next
    const { row, changes, facts } = next.value
    if (changes.length + facts.length === 0) return accept(null)
    return saveDocument(needs.database, { row, changes, facts, allFacts: [...read.value.facts, ...facts] })
  })
  if (held === null) return refuse({ code: 'openInAnotherTab' })
  if (held.done.ok) needs.onSaved?.()
  return held.done
}
