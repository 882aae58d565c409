import { createStore, type StoreApi } from 'zustand/vanilla'
import type { Reading } from '../core/asBuilt/reading.ts'
import type { Plan } from '../core/plan.ts'
import { type Locks, takeWriterLock, type WriterLock } from '../device/writerLock.ts'
import { setField } from '../record/changes/setField.ts'
import { type NewReading, readingsInUse, recordReading, switchReading } from '../record/bench/measured.ts'
import type { CommissionDoc, CommissionRecord, Fact } from '../record/commission.ts'
import type { Bundle } from '../record/document.ts'
import type { EditMeta, Recipe } from '../record/edit.ts'
import { type BuiltTo, signOff, stagesDone, withdraw } from '../record/facts.ts'
import type { Path } from '../record/path.ts'
import { type PaperPrint, recordPrint } from '../record/printed.ts'
import type { DoorProblem } from '../record/problem.ts'
import { accept, type Result, refuse } from '../record/result.ts'
import { type GestureLabel, undoable } from '../record/undo.ts'
import type { Database } from '../storage/database.ts'
import { readDocument, type ReadProblem, saveDocument, watchDocument } from '../storage/documents.ts'
import { type Built, CLOSED, type CommissionState, type EditAnswer } from './commissionState.ts'
import { createKeeper, type Kept, type Keeper } from './keeper.ts'

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
  /** Facts of the bench, in one action; they are written at once. */
  readonly addFacts: (make: MakeFacts) => EditAnswer
  readonly addReading: (reading: NewReading) => EditAnswer
  readonly switchReading: (readingId: string, used: boolean) => EditAnswer
  /** Notes papers that left; no part of undo. */
  readonly notePrint: (revision: string, papers: readonly PaperPrint[]) => EditAnswer
  /** Writes what waits, now. After a failed write this tries again. */
  readonly flush: () => Promise<void>
  /** Commissions whose last edits are in memory only, with everything in them. */
  readonly unsaved: () => readonly Kept<CommissionRecord>[]
  /** True while this tab is the one that may write to the commission. */
  readonly writes: (id: string) => boolean
}

export type MakeFacts = (row: CommissionRecord, meta: EditMeta) => readonly Fact[]

export interface CommissionNeeds<Computed> {
  readonly database: Database
  readonly deviceId: string
  readonly now: () => string
  readonly newId: () => string
  readonly locks: Locks
  readonly build: (plan: Plan, readings: readonly Reading[]) => Built<Computed>
  /** Fetches what `build` needs for readings, before a record that has any is shown; null: it is there. */
  readonly prepareReadings: () => Promise<void> | null
  /** Called when an edit has been stored. */
  readonly onSaved?: () => void
}

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
  /** The readings in use, the same list as long as they are the same, and what they and the plan gave. */
  let readings: readonly Reading[] = []
  let built: { readonly from: readonly Reading[]; readonly of: Built<Computed> } | null = null

  /** Fetches what puts readings in their place, where there are any to be shown; null: nothing is to be waited for. */
  const prepareFor = (facts: readonly Fact[]): Promise<void> | null =>
    facts.some(({ kind }) => kind === 'reading') ? needs.prepareReadings() : null

  function show(bundle: Bundle, more: Partial<CommissionState<Computed>>): void {
    const preparing = prepareFor(bundle.facts)
    if (preparing !== null) {
      // The first readings of this visit: they show as soon as there is what puts them in their place.
      const mine = visit
      const showThen = async (): Promise<void> => {
        await preparing
        if (mine === visit) show(keeper?.kept() ?? bundle, more)
      }
      void showThen()
      return
    }
    const before = store.getState()
    const { doc } = bundle.row
    if (before.facts !== bundle.facts || before.id !== bundle.row.id) readings = keptReadings(readings, bundle.facts)
    const isSame = before.record?.doc.plan === doc.plan && before.computed !== null && built?.from === readings
    if (!isSame || built === null) built = { from: readings, of: needs.build(doc.plan, readings) }
    const { plan, computed, taken, outside } = built.of
    const isSameDoc = before.record?.doc === doc && isSame
    const builtDoc = isSameDoc && before.builtDoc !== null ? before.builtDoc : withPlan(doc, plan)
    const { undo, redo } = undoable(bundle.changes, bundle.facts)
    store.setState({
      status: 'open',
      id: bundle.row.id,
      problem: null,
      record: bundle.row,
      changes: bundle.changes,
      facts: bundle.facts,
      computed,
      builtDoc,
      taken,
      outside,
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
    await prepareFor(read.value.facts)
    if (mine !== visit) return
    keeper = keep(read.value)
    show(read.value, { readOnly: null, save: 'saved', saveProblem: null })
  }

  function startWatching(id: string, mine: number): void {
    let newest = 0
    const take = async (read: Result<Bundle, ReadProblem>): Promise<void> => {
      newest += 1
      const turn = newest
      if (read.ok) await prepareFor(read.value.facts)
      if (mine !== visit || keeper !== null || turn !== newest) return
      if (read.ok) show(read.value, { readOnly: 'openInAnotherTab', save: 'saved', saveProblem: null })
      else refuseOpening(read.problem)
    }
    stopWatching = watchDocument(database, 'commission', id, (read) => void take(read))
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

  /** What was done at the bench is not typed: it is written at once. */
  const addFacts = (make: MakeFacts): EditAnswer =>
    withKeeper((writer) => {
      const answer = writer.addFacts(make, newId())
      if (answer.ok) void writer.flush()
      return answer
    })

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
    addFacts,
    addReading: (reading) => addFacts((row, meta) => [recordReading(row, reading, meta)]),
    switchReading: (readingId, used) => addFacts((row, meta) => [switchReading(row, readingId, used, meta)]),
    markStageDone: (stageId, builtTo) => addFacts((row, meta) => [signOff(row, stageId, builtTo, meta)]),
    withdrawStage: (stageId) =>
      withKeeper((writer) => {
        const done = stagesDone(writer.kept().facts).get(stageId)
        return done === undefined ? accept(null) : addFacts((row, meta) => [withdraw(row, done.id, meta)])
      }),
    notePrint: (revision, papers) => addFacts((row, meta) => [recordPrint(row, revision, papers, meta)]),
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

/** The document as built: itself where nothing was measured. */
const withPlan = (doc: CommissionDoc, plan: Plan): CommissionDoc =>
  plan === doc.plan ? doc : { ...doc, plan: plan as CommissionDoc['plan'] }

/** The readings in use: the list there was, where they are the same ones. */
function keptReadings(before: readonly Reading[], facts: readonly Fact[]): readonly Reading[] {
  const now = readingsInUse(facts)
  return now.length === before.length && now.every(({ id }, i) => id === before[i]?.id) ? before : now
}
