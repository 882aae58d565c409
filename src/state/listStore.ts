import { createStore, type StoreApi } from 'zustand/vanilla'
import { beginCommission, type Beginning, duplicateCommission, nextFreeNumber } from '../record/changes/begin.ts'
import { archive, keepAsOwn, markDeleted, restore } from '../record/changes/life.ts'
import type { CommissionRecord, Head } from '../record/commission.ts'
import type { Bundle } from '../record/document.ts'
import type { Recipe } from '../record/edit.ts'
import { accept, type Result } from '../record/result.ts'
import { putBack, removeDemo } from '../storage/demo.ts'
import { readDocument, saveDocument } from '../storage/documents.ts'
import { type HeadList, mendHeads, watchHeads } from '../storage/heads.ts'
import { planAsBuilt } from './planAsBuilt.ts'
import { editStored, metaOf, type StoredEditProblem, type StoredNeeds, takeBackStored } from './editStored.ts'

/** The last thing done to the list, as long as it can be taken back with one press. */
export interface ListAction {
  readonly kind:
    | 'created'
    | 'duplicated'
    | 'opened'
    | 'archived'
    | 'unarchived'
    | 'deleted'
    | 'restored'
    | 'replaced'
    | 'demoRemoved'
  /** The commissions it touched; what they are called then. */
  readonly ids: readonly string[]
  readonly label: string
  /** How many instruments of the demo stay as the maker's own, when the others are removed. */
  readonly staying?: number
}

export interface ListState {
  readonly status: 'loading' | 'ready'
  readonly heads: readonly Head[]
  /** What is stored and cannot be read: shown with the reason, never touched. */
  readonly unreadable: HeadList['unreadable']
  readonly lastAction: ListAction | null
  /** Why the last action was not carried out. */
  readonly problem: StoredEditProblem | null
}

type Answer<Value> = Promise<Result<Value, StoredEditProblem>>

export interface ListStore {
  readonly store: StoreApi<ListState>
  readonly start: () => Promise<void>
  readonly stop: () => void
  readonly create: (beginning: Beginning) => Answer<string>
  /** A copy under the next free number of its series, or under the names given; as planned, or as it was built. */
  readonly duplicate: (id: string, how?: Duplicating) => Answer<string>
  readonly archive: (id: string) => Answer<null>
  readonly unarchive: (id: string) => Answer<null>
  readonly remove: (id: string) => Answer<null>
  readonly restore: (id: string) => Answer<null>
  /** Takes out what came with the demo; an instrument of it that the maker has written to stays, and is the maker's own from then on. */
  readonly removeDemo: () => Answer<null>
  /** Takes the last action back. */
  readonly undo: () => Answer<null>
  /** Tells the list of an action done elsewhere, so that it can be taken back here. */
  readonly note: (action: ListAction, gesture: string | null) => void
  readonly dismiss: () => void
}

export interface Duplicating {
  readonly number?: string
  readonly title?: string
  readonly plan?: 'asPlanned' | 'asBuilt'
}

export interface ListNeeds extends StoredNeeds {
  /** Edits the commission this tab holds open; null where it does not hold it. */
  readonly openHere?: (id: string) => {
    readonly edit: (recipe: Recipe<CommissionRecord>, gesture: string) => Result<null, StoredEditProblem>
    readonly takeBack: (gesture: string) => Result<null, StoredEditProblem>
    readonly close: () => Promise<void>
  } | null
}

export function createListStore(needs: ListNeeds): ListStore {
  const { database, newId } = needs
  const store = createStore<ListState>(() => ({
    status: 'loading',
    heads: [],
    unreadable: [],
    lastAction: null,
    problem: null,
  }))
  let stopWatching: (() => void) | null = null
  let takeLastBack: (() => Answer<null>) | null = null

  function finish<Value>(
    answer: Result<Value, StoredEditProblem>,
    action: ListAction,
    takeActionBack: () => Answer<null>,
  ) {
    if (answer.ok) {
      takeLastBack = takeActionBack
      store.setState({ lastAction: action, problem: null })
    } else store.setState({ problem: answer.problem })
    return answer
  }

  const labelOf = (id: string): string => {
    const head = store.getState().heads.find((one) => one.id === id)
    return head === undefined ? '' : [head.number, head.title].filter((part) => part !== '').join(' ')
  }

  async function editOne(id: string, recipe: Recipe<CommissionRecord>, gesture: string): Answer<null> {
    return needs.openHere?.(id)?.edit(recipe, gesture) ?? editStored(needs, 'commission', id, recipe, gesture)
  }

  async function takeBackOne(id: string, gesture: string): Answer<null> {
    return needs.openHere?.(id)?.takeBack(gesture) ?? takeBackStored(needs, 'commission', id, gesture)
  }

  async function act(kind: ListAction['kind'], id: string, recipe: Recipe<CommissionRecord>): Answer<null> {
    const action: ListAction = { kind, ids: [id], label: labelOf(id) }
    const gesture = newId()
    return finish(await editOne(id, recipe, gesture), action, () => takeBackOne(id, gesture))
  }

  async function add(kind: 'created' | 'duplicated', begun: Result<Bundle, StoredEditProblem>): Answer<string> {
    if (!begun.ok) {
      store.setState({ problem: begun.problem })
      return begun
    }
    const { row, changes } = begun.value
    const saved = await saveDocument(database, { row, changes, facts: [], allFacts: [] })
    if (saved.ok) needs.onSaved?.()
    const action: ListAction = { kind, ids: [row.id], label: `${row.doc.number} ${row.doc.title}`.trim() }
    const answer = finish(saved, action, () => editOne(row.id, markDeleted(needs.now()), newId()))
    return answer.ok ? accept(row.id) : answer
  }

  return {
    store,
    async start() {
      await mendHeads(database).catch(() => undefined)
      await new Promise<void>((first) => {
        stopWatching = watchHeads(
          database,
          ({ heads, unreadable }) => {
            store.setState({ status: 'ready', heads, unreadable })
            first()
          },
          (detail) => {
            store.setState({ status: 'ready', problem: { code: 'failed', detail } })
            first()
          },
        )
      })
    },
    stop() {
      stopWatching?.()
      stopWatching = null
    },
    create: (beginning) => add('created', beginCommission(beginning, metaOf(needs))),
    async duplicate(id, how = {}) {
      const read = await readDocument(database, 'commission', id)
      if (!read.ok) return add('duplicated', read)
      const { doc } = read.value.row
      const taken = store.getState().heads.map((head) => head.number)
      const plan = how.plan === 'asBuilt' ? await planAsBuilt(read.value) : doc.plan
      const number = how.number ?? nextFreeNumber(doc.number, taken)
      return add(
        'duplicated',
        duplicateCommission(read.value.row, { number, title: how.title ?? doc.title }, metaOf(needs), plan),
      )
    },
    archive: (id) => act('archived', id, archive(needs.now().slice(0, 10))),
    unarchive: (id) => act('unarchived', id, archive(null)),
    remove: (id) => act('deleted', id, markDeleted(needs.now())),
    restore: (id) => act('restored', id, restore()),
    async removeDemo() {
      const demo = store.getState().heads.filter((head) => head.demo)
      const ids = demo.map((head) => head.id)
      for (const id of ids) await needs.openHere?.(id)?.close()
      const removed = await removeDemo(database)
      const stays = new Set(removed.ok ? removed.value.staying : [])
      const staying = demo.filter((head) => stays.has(head.id) && head.deletedAt === null).length
      const gesture = newId()
      for (const id of stays) await editOne(id, keepAsOwn(), gesture)
      finish(removed, { kind: 'demoRemoved', ids, label: '', staying }, async () => {
        for (const id of stays) await takeBackOne(id, gesture)
        return removed.ok ? putBack(database, removed.value) : accept(null)
      })
      return removed.ok ? accept(null) : removed
    },
    async undo() {
      const back = takeLastBack
      if (back === null) return accept(null)
      const answer = await back()
      if (answer.ok) {
        takeLastBack = null
        store.setState({ lastAction: null, problem: null })
      } else store.setState({ problem: answer.problem })
      return answer
    },
    note(action, gesture) {
      const [id] = action.ids
      if (id === undefined) return
      takeLastBack = () =>
        gesture === null ? editOne(id, markDeleted(needs.now()), newId()) : takeBackOne(id, gesture)
      store.setState({ lastAction: action, problem: null })
    },
    dismiss() {
      takeLastBack = null
      store.setState({ lastAction: null, problem: null })
    },
  }
}
