import { createStore, type StoreApi } from 'zustand/vanilla'
import { USUAL_JIGS } from '../core/jigs.ts'
import { STARTING_UNITS } from '../core/quantity.ts'
import { beginShop, SHOP_ID } from '../record/changes/begin.ts'
import { setField } from '../record/changes/setField.ts'
import type { ShopDoc, ShopRecord } from '../record/commission.ts'
import type { Recipe } from '../record/edit.ts'
import { USUAL_PRINTING } from '../record/fullSizeFields.ts'
import type { DoorProblem } from '../record/problem.ts'
import { accept, type Result, refuse } from '../record/result.ts'
import { type GestureLabel, undoable } from '../record/undo.ts'
import { readDocument, type ReadProblem, saveDocument, watchDocument } from '../storage/documents.ts'
import type { WriteProblem } from '../storage/writeDurably.ts'
import { metaOf, type StoredNeeds } from './editStored.ts'
import { createKeeper, type Kept, type Keeper, type SaveStatus } from './keeper.ts'

/** A shop before its maker has said anything. */
export const STARTING_SHOP: ShopDoc = {
  name: '',
  units: STARTING_UNITS,
  tolerances: {},
  origin: 'tail',
  paperSize: 'A4',
  fixtures: {},
  taps: {},
  jigs: USUAL_JIGS,
  printing: USUAL_PRINTING,
  patterns: {},
}

export interface ShopState {
  readonly status: 'loading' | 'ready' | 'refused'
  /** Always there: the starting shop until the stored one is read, or where it cannot be. */
  readonly shop: ShopDoc
  readonly problem: ReadProblem | null
  readonly save: SaveStatus
  readonly saveProblem: WriteProblem | null
  readonly undo: GestureLabel | null
  readonly redo: GestureLabel | null
}

export type ShopAnswer = Result<null, DoorProblem | { readonly code: 'notOpen' }>

export interface ShopStore {
  readonly store: StoreApi<ShopState>
  readonly start: () => Promise<void>
  readonly stop: () => void
  /** Sets one value: 'units.bodyLength', 'origin', 'paperSize', 'name'. */
  readonly change: (field: string, value: unknown, gesture: string) => ShopAnswer
  readonly edit: (recipe: Recipe<ShopRecord>, gesture?: string) => ShopAnswer
  readonly undo: () => ShopAnswer
  readonly redo: () => ShopAnswer
  readonly flush: () => Promise<void>
  readonly unsaved: () => Kept<ShopRecord> | null
}

export function createShopStore(needs: StoredNeeds): ShopStore {
  const { database } = needs
  const store = createStore<ShopState>(() => ({
    status: 'loading',
    shop: STARTING_SHOP,
    problem: null,
    save: 'saved',
    saveProblem: null,
    undo: null,
    redo: null,
  }))
  let keeper: Keeper<ShopRecord> | null = null
  let stopWatching: (() => void) | null = null

  function show(kept: Kept<ShopRecord>): void {
    const { undo, redo } = undoable(kept.changes, kept.facts)
    store.setState({ status: 'ready', shop: kept.row.doc, save: kept.save, saveProblem: kept.saveProblem, undo, redo })
  }

  async function start(): Promise<void> {
    const read = await readDocument(database, 'shop', SHOP_ID)
    if (!read.ok && read.problem.code !== 'missing') {
      store.setState({ status: 'refused', problem: read.problem })
      return
    }
    const begun = read.ok ? read : beginShop(STARTING_SHOP, metaOf(needs))
    if (!begun.ok) return
    keeper = createKeeper<ShopRecord>(
      begun.value,
      {
        ...needs,
        save: async (write) => {
          const answer = await saveDocument(database, write)
          if (answer.ok) needs.onSaved?.()
          return answer
        },
        reload: async () => {
          const stored = await readDocument(database, 'shop', SHOP_ID)
          return stored.ok ? stored.value : null
        },
        onChange: show,
      },
      read.ok ? [] : begun.value.changes,
    )
    show(keeper.kept())
    stopWatching = watchDocument(database, 'shop', SHOP_ID, (stored) => {
      if (stored.ok) keeper?.take(stored.value)
    })
  }

  function withKeeper(act: (writer: Keeper<ShopRecord>) => ShopAnswer): ShopAnswer {
    return keeper === null ? refuse({ code: 'notOpen' }) : act(keeper)
  }

  const takeBack = (label: GestureLabel | null): ShopAnswer =>
    withKeeper((writer) => (label === null ? accept(null) : writer.takeBack(label.gesture)))

  return {
    store,
    start,
    stop: () => stopWatching?.(),
    change: (field, value, gesture) => withKeeper((writer) => writer.edit(setField(field, value), gesture)),
    edit: (recipe, gesture = needs.newId()) => withKeeper((writer) => writer.edit(recipe, gesture)),
    undo: () => takeBack(store.getState().undo),
    redo: () => takeBack(store.getState().redo),
    flush: async () => keeper?.flush(),
    unsaved: () => (keeper?.hasUnsaved() ? keeper.kept() : null),
  }
}
