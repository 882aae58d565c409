import { createStore, type StoreApi } from 'zustand/vanilla'
import { parseCommissionText, readCommissionBytes } from '../files/commissionFile.ts'
import { adoptFile, adoptFileAsNew, factsToMatch, rowOfFile, type TolerancesHere } from '../record/adopt.ts'
import { nextFreeNumber } from '../record/changes/begin.ts'
import type { CommissionFile, CommissionRecord, Fact, Head } from '../record/commission.ts'
import { type Bundle, seenIn } from '../record/document.ts'
import { readCommissionFile } from '../record/door.ts'
import { type EditMeta, replaceDocument } from '../record/edit.ts'
import type { DoorProblem } from '../record/problem.ts'
import { accept, type Result } from '../record/result.ts'
import { readRaw, saveDocument } from '../storage/documents.ts'
import { changeStored, metaOf, type StoredEditProblem, type StoredNeeds } from './editStored.ts'
import type { ListAction } from './listStore.ts'

/** Where the opening of a file stands. */
export type ImportState =
  | { readonly kind: 'idle' }
  | { readonly kind: 'reading' }
  /** The file was not taken; nothing stored has changed. */
  | { readonly kind: 'refused'; readonly problem: DoorProblem }
  /** This commission is here already: keep both, or replace what is here? `here` is null where what is here cannot be read. */
  | { readonly kind: 'clash'; readonly file: CommissionFile; readonly here: Head | null }
  | { readonly kind: 'opened'; readonly id: string }
  /** It could be read, but not stored. */
  | { readonly kind: 'notStored'; readonly problem: StoredEditProblem }

export interface Importer {
  readonly store: StoreApi<ImportState>
  readonly openFile: (file: Blob) => Promise<ImportState>
  readonly openText: (text: string) => Promise<ImportState>
  /** Answers a clash: the file's under a new id and the next free number. */
  readonly keepBoth: () => Promise<ImportState>
  /** Answers a clash: the file's in the place of the one here, as one gesture that undo takes back. */
  readonly replace: () => Promise<ImportState>
  readonly dismiss: () => void
}

export interface ImporterNeeds extends StoredNeeds {
  readonly tolerancesHere: () => TolerancesHere
  readonly heads: () => readonly Head[]
  readonly note: (action: ListAction, gesture: string | null) => void
  /** Replaces a commission this tab holds open; null where it does not. */
  readonly replaceHere?: (
    id: string,
  ) =>
    | ((
        next: CommissionRecord,
        addFacts: (row: CommissionRecord, meta: EditMeta) => readonly Fact[],
        gesture: string,
      ) => Result<null, StoredEditProblem>)
    | null
  /** Facts of the commission this tab holds open. */
  readonly factsHere?: () => readonly Fact[]
}

export function createImporter(needs: ImporterNeeds): Importer {
  const store = createStore<ImportState>(() => ({ kind: 'idle' }))
  const settle = (state: ImportState): ImportState => {
    store.setState(state, true)
    return state
  }

  async function take(unknown: Result<unknown, DoorProblem>): Promise<ImportState> {
    const read = unknown.ok ? readCommissionFile(unknown.value) : unknown
    if (!read.ok) return settle({ kind: 'refused', problem: read.problem })
    const file = read.value
    const stored = await readRaw(needs.database, file.id)
    if (stored.ok) {
      const here = needs.heads().find((head) => head.id === file.id) ?? null
      return settle({ kind: 'clash', file, here })
    }
    if (stored.problem.code !== 'missing') return settle({ kind: 'notStored', problem: stored.problem })
    return keep(adoptFile(file, needs.tolerancesHere(), metaOf(needs)))
  }

  async function keep(adopted: Result<Bundle, DoorProblem>): Promise<ImportState> {
    if (!adopted.ok) return settle({ kind: 'refused', problem: adopted.problem })
    const { row, changes, facts } = adopted.value
    const saved = await saveDocument(needs.database, { row, changes, facts, allFacts: facts })
    if (!saved.ok) return settle({ kind: 'notStored', problem: saved.problem })
    needs.onSaved?.()
    needs.note({ kind: 'opened', ids: [row.id], label: labelOf(row) }, null)
    return settle({ kind: 'opened', id: row.id })
  }

  async function replaceStored(file: CommissionFile, next: CommissionRecord, gesture: string) {
    const open = needs.replaceHere?.(file.id)
    if (open !== null && open !== undefined)
      return open(next, (row, meta) => factsToMatch(row, needs.factsHere?.() ?? [], file, meta), gesture)
    return changeStored(needs, 'commission', file.id, gesture, ({ row, changes, facts }, meta) => {
      const replaced = replaceDocument(row, changes, next, meta)
      if (!replaced.ok) return replaced
      const added = factsToMatch(replaced.value.row, facts, file, meta)
      const seen = seenIn(added, replaced.value.row.seen)
      return accept({ row: { ...replaced.value.row, seen }, changes: replaced.value.changes, facts: added })
    })
  }

  return {
    store,
    async openFile(file) {
      settle({ kind: 'reading' })
      return take(await readCommissionBytes(file))
    },
    async openText(text) {
      settle({ kind: 'reading' })
      return take(parseCommissionText(text))
    },
    async keepBoth() {
      const state = store.getState()
      if (state.kind !== 'clash') return state
      const taken = needs.heads().map((head) => head.number)
      const number = nextFreeNumber(state.file.number, taken)
      return keep(adoptFileAsNew(state.file, number, needs.tolerancesHere(), metaOf(needs)))
    },
    async replace() {
      const state = store.getState()
      if (state.kind !== 'clash') return state
      const { file } = state
      const gesture = needs.newId()
      const next = rowOfFile(file, needs.tolerancesHere(), metaOf(needs, gesture))
      if (!next.ok) return settle({ kind: 'refused', problem: next.problem })
      const done = await replaceStored(file, next.value, gesture)
      if (!done.ok) return settle({ kind: 'notStored', problem: done.problem })
      needs.note({ kind: 'replaced', ids: [file.id], label: labelOf(next.value) }, gesture)
      return settle({ kind: 'opened', id: file.id })
    },
    dismiss: () => void settle({ kind: 'idle' }),
  }
}

const labelOf = ({ doc }: CommissionRecord): string => `${doc.number} ${doc.title}`.trim()
