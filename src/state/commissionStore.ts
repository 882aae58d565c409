import { createStore, type StoreApi } from 'zustand/vanilla'
import type { Plan } from '../core/plan.ts'
import { type Locks, takeWriterLock, type WriterLock } from '../device/writerLock.ts'
import { setField } from '../record/changes/setField.ts'
import type { Change, CommissionRecord, Fact } from '../record/commission.ts'
import type { Bundle } from '../record/document.ts'
import type { Recipe } from '../record/edit.ts'
import { type BuiltTo, signOff, stagesDone, withdraw } from '../record/facts.ts'
import type { Path } from '../record/path.ts'
import { type PaperPrint, recordPrint } from '../record/printed.ts'
import type { DoorProblem } from '../record/problem.ts'
import { accept, type Result, refuse } from '../record/result.ts'
import { type GestureLabel, undoable } from '../record/undo.ts'
import type { Database } from '../storage/database.ts'
import { readDocument, type ReadProblem, saveDocument, watchDocument } from '../storage/documents.ts'
import type { WriteProblem } from '../storage/writeDurably.ts'
import { createKeeper, type Kept, type Keeper, type SaveStatus } from './keeper.ts'

/** One commission on the bench. `Computed` is what the numbers are computed into. */
export interface CommissionState<Computed> {
  readonly status: 'closed' | 'opening' | 'open' | 'refused'
  readonly id: string | null
  /** Why it could not be opened; what is stored stays as it is. */
  readonly problem: ReadProblem | null
  readonly record: CommissionRecord | null
  readonly changes: readonly Change[]
  readonly facts: readonly Fact[]
  /** What follows from the plan that stands in `record`; always of the same moment. */
  readonly computed: Computed | null
  /** Why nothing can be changed from here, if so; the record stays live. */
  readonly readOnly: 'openInAnotherTab' | null
  readonly save: SaveStatus
  readonly saveProblem: WriteProblem | null
  readonly undo: GestureLabel | null
  readonly redo: GestureLabel | null
}

export type EditRefused = DoorProblem | { readonly code: 'readOnly' } | { readonly code: 'notOpen' }
export type EditAnswer = Result<null, EditRefused>

export interface CommissionStore<Computed> {
  readonly store: StoreApi<CommissionState<Computed>>
  /** Opens a commission, for writing where no other tab has it, else live and read-only until that tab lets go. */
  readonly open: (id: string) => Promise<void>
  readonly close: () => Promise<void>
  /** Sets one value of the document; all strokes of one visit to a field carry the same gesture and are undone together. */
  readonly change: (field: string | Path, value: unknown, gesture: string) => EditAnswer
  /** Runs a named change. */
  readonly edit: (recipe: Recipe<CommissionRecord>, gesture?: string) => EditAnswer
  readonly undo: () => EditAnswer
  readonly redo: () => EditAnswer
  readonly takeBack: (gesture: string) => EditAnswer
  readonly replaceWhole: Keeper<CommissionRecord>['replaceWhole']
  readonly markStageDone: (stageId: string, builtTo: BuiltTo) => EditAnswer
  readonly withdrawStage: (stageId: string) => EditAnswer
  /** Notes papers that left; no part of undo. */
  readonly notePrint: (revision: string, papers: readonly PaperPrint[]) => EditAnswer
  /** Writes what waits, now. After a failed write this tries again. */
  readonly flush: () => Promise<void>
  /** Commissions whose last edits are in memory only, with everything in them. */
  readonly unsaved: () => readonly Kept<CommissionRecord>[]
  /** True while this tab is the one that may write to the commission. */
  readonly writes: (id: string) => boolean
}

export interface CommissionNeeds<Computed> {
  readonly database: Database
  readonly deviceId: string
  readonly now: () => string
  readonly newId: () => string
  readonly locks: Locks
  readonly compute: (plan: Plan) => Computed
  /** Called when an edit has been stored. */
  readonly onSaved?: () => void
}

const CLOSED = {
  status: 'closed',
  id: null,
  problem: null,
  record: null,
  changes: [],
  facts: [],
  computed: null,
  readOnly: null,
  save: 'saved',
  saveProblem: null,
  undo: null,
  redo: null,
} as const

export function createCommissionStore<Computed>(needs: CommissionNeeds<Computed>): CommissionStore<Computed> {
  const { database, newId } = needs
  const store = createStore<CommissionState<Computed>>(() => CLOSED)
  /** Keepers whose edits could not be written when they were left: they go on where they were when opened again. */
  const left = new Map<string, { keeper: Keeper<CommissionRecord>; lock: WriterLock }>()
  let keeper: Keeper<CommissionRecord> | null = null
  let lock: WriterLock | null = null
  let stopWatching: (() => void) | null = null
  let visit = 0
  let settleOpening: () => void = () => undefined

  function show(bundle: Bundle, more: Partial<CommissionState<Computed>>): void {
    const before = store.getState()
    const samePlan = before.record?.doc.plan === bundle.row.doc.plan && before.computed !== null
    const { undo, redo } = undoable(bundle.changes, bundle.facts)
    store.setState({
      status: 'open',
      id: bundle.row.id,
      problem: null,
      record: bundle.row,
      changes: bundle.changes,
      facts: bundle.facts,
      computed: samePlan ? before.computed : needs.compute(bundle.row.doc.plan),
      undo,
      redo,
      ...more,
    })
  }

  function keep(bundle: Bundle): Keeper<CommissionRecord> {
    const made: Keeper<CommissionRecord> = createKeeper<CommissionRecord>(bundle, {
      deviceId: needs.deviceId,
      now: needs.now,
      newId,
      save: async (write) => {
        const answer = await saveDocument(database, write)
        if (answer.ok) needs.onSaved?.()
        return answer
      },
      reload: async () => {
        const read = await readDocument(database, 'commission', bundle.row.id)
        return read.ok ? read.value : null
      },
      onChange: (kept) => {
        if (keeper === made) show(kept, { save: kept.save, saveProblem: kept.saveProblem })
      },
    })
    return made
  }

  function refuseOpening(problem: ReadProblem): void {
    store.setState({ ...CLOSED, status: 'refused', id: store.getState().id, problem })
  }

  /** This tab may write: what is stored by now is taken up, and edits go through a keeper from here on. */
  async function startWriting(id: string, mine: number): Promise<void> {
    const read = await readDocument(database, 'commission', id)
    if (mine !== visit) return
    stopWatching?.()
    stopWatching = null
    if (!read.ok) return refuseOpening(read.problem)
    keeper = keep(read.value)
    show(read.value, { readOnly: null, save: 'saved', saveProblem: null })
  }

  function startWatching(id: string, mine: number): void {
    stopWatching = watchDocument(database, 'commission', id, (read) => {
      if (mine !== visit || keeper !== null) return
      if (read.ok) show(read.value, { readOnly: 'openInAnotherTab', save: 'saved', saveProblem: null })
      else refuseOpening(read.problem)
    })
  }

  async function leave(): Promise<void> {
    settleOpening()
    const [closing, held] = [keeper, lock]
    const id = store.getState().id
    stopWatching?.()
    stopWatching = null
    keeper = null
    lock = null
    store.setState(CLOSED)
    await closing?.flush()
    if (closing?.hasUnsaved() && held !== null && id !== null) left.set(id, { keeper: closing, lock: held })
    else held?.release()
  }

  async function close(): Promise<void> {
    visit += 1
    await leave()
  }

  async function open(id: string): Promise<void> {
    visit += 1
    const mine = visit
    await leave()
    if (mine !== visit) return
    const again = left.get(id)
    if (again !== undefined) {
      left.delete(id)
      keeper = again.keeper
      lock = again.lock
      const kept = again.keeper.kept()
      show(kept, { readOnly: null, save: kept.save, saveProblem: kept.saveProblem })
      return again.keeper.flush()
    }
    store.setState({ ...CLOSED, status: 'opening', id })
    await new Promise<void>((settled) => {
      settleOpening = settled
      lock = takeWriterLock(needs.locks, id, {
        onGranted: () => {
          if (mine !== visit) return settled()
          startWriting(id, mine).then(settled, settled)
        },
        onWaiting: () => {
          if (mine === visit) startWatching(id, mine)
          settled()
        },
      })
    })
  }

  function withKeeper(act: (writer: Keeper<CommissionRecord>) => EditAnswer): EditAnswer {
    if (keeper !== null) return act(keeper)
    return refuse({ code: store.getState().readOnly === null ? 'notOpen' : 'readOnly' })
  }

  function takeBackLabelled(label: GestureLabel | null): EditAnswer {
    return withKeeper((writer) => (label === null ? accept(null) : writer.takeBack(label.gesture)))
  }

  return {
    store,
    open,
    close,
    change: (field, value, gesture) => withKeeper((writer) => writer.edit(setField(field, value), gesture)),
    edit: (recipe, gesture = newId()) => withKeeper((writer) => writer.edit(recipe, gesture)),
    undo: () => takeBackLabelled(store.getState().undo),
    redo: () => takeBackLabelled(store.getState().redo),
    takeBack: (gesture) => withKeeper((writer) => writer.takeBack(gesture)),
    replaceWhole: (next, addFacts, gesture) => {
      const answer = withKeeper((writer) => writer.replaceWhole(next, addFacts, gesture))
      return answer as Result<null, DoorProblem>
    },
    markStageDone: (stageId, builtTo) =>
      withKeeper((writer) => writer.addFact((row, meta) => signOff(row, stageId, builtTo, meta), newId())),
    withdrawStage: (stageId) =>
      withKeeper((writer) => {
        const done = stagesDone(writer.kept().facts).get(stageId)
        return done === undefined ? accept(null) : writer.addFact((row, meta) => withdraw(row, done.id, meta), newId())
      }),
    notePrint: (revision, papers) =>
      withKeeper((writer) => writer.addFact((row, meta) => recordPrint(row, revision, papers, meta), newId())),
    flush: async () => {
      await Promise.all([keeper?.flush(), ...[...left.values()].map((one) => one.keeper.flush())])
      for (const [id, one] of left) {
        if (one.keeper.hasUnsaved()) continue
        left.delete(id)
        one.lock.release()
      }
    },
    unsaved: () =>
      [...(keeper === null ? [] : [keeper]), ...[...left.values()].map((one) => one.keeper)]
        .filter((one) => one.hasUnsaved())
        .map((one) => one.kept()),
    writes: (id) => keeper !== null && store.getState().id === id,
  }
}
