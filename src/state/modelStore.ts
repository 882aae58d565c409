import { createStore, type StoreApi } from 'zustand/vanilla'
import type { Plan } from '../core/plan.ts'
import { beginModel, giveToModel, renameModel } from '../record/changes/model.ts'
import { markDeleted, restore } from '../record/changes/life.ts'
import type { ModelRecord } from '../record/commission.ts'
import type { Recipe } from '../record/edit.ts'
import { FAMILIES, type Family } from '../record/family.ts'
import { type PackedModel, readPackedModel } from '../record/houseModel.ts'
import { accept, type Result } from '../record/result.ts'
import { addModels, countModelUses, type ModelList, watchModels } from '../storage/models.ts'
import { editStored, metaOf, type StoredEditProblem, type StoredNeeds, takeBackStored } from './editStored.ts'

/** A model of the house as the stores hand it out. */
export interface HouseModel {
  readonly id: string
  readonly name: string
  readonly family: Family
  readonly plan: Plan
  /** Came with the program and was not changed since. */
  readonly demo: boolean
  /** ISO moment; null while it is among the models. */
  readonly deletedAt: string | null
}

/** The last thing done to a model, as long as it can be taken back with one press. */
export interface ModelAction {
  readonly kind: 'created' | 'renamed' | 'given' | 'deleted' | 'restored'
  readonly id: string
  /** What the model is called then. */
  readonly label: string
}

export interface ModelState {
  readonly status: 'loading' | 'ready'
  /** All that are stored, deleted ones among them, by kind and name. */
  readonly models: readonly HouseModel[]
  /** What is stored and cannot be read: never touched. */
  readonly unreadable: ModelList['unreadable']
  /** Those that come with the program; null until they were asked for. */
  readonly packed: readonly PackedModel[] | null
  readonly lastAction: ModelAction | null
  readonly problem: StoredEditProblem | null
}

type Answer<Value> = Promise<Result<Value, StoredEditProblem>>

export interface ModelStore {
  readonly store: StoreApi<ModelState>
  readonly start: () => Promise<void>
  readonly stop: () => void
  /** Fetches the models that come with the program; where they cannot be fetched there are none. */
  readonly fetchPacked: () => Promise<void>
  /** Stores a model that comes with the program under its own id, unless one of that id is here. */
  readonly keepPacked: (model: Omit<StartingModel, 'isStored'>) => Answer<null>
  /** A new model, under the id given or a fresh one. `alsoBack` runs where its undo is pressed. */
  readonly create: (
    model: { readonly id?: string; readonly name: string; readonly family: Family; readonly plan: Plan },
    alsoBack?: () => unknown,
  ) => Answer<string>
  readonly rename: (id: string, name: string) => Answer<null>
  /** Gives an instrument's plan to a model, but for what is the instrument's own. */
  readonly give: (id: string, plan: Plan) => Answer<null>
  readonly remove: (id: string) => Answer<null>
  readonly restore: (id: string) => Answer<null>
  /** How many instruments go by each model, by its id. */
  readonly countUses: () => Promise<ReadonlyMap<string, number>>
  /** Takes the last action back. */
  readonly undo: () => Answer<null>
  readonly dismiss: () => void
}

export interface ModelNeeds extends StoredNeeds {
  readonly fetchPacked: () => Promise<readonly unknown[]>
}

export function createModelStore(needs: ModelNeeds): ModelStore {
  const { database, newId } = needs
  const store = createStore<ModelState>(() => ({
    status: 'loading',
    models: [],
    unreadable: [],
    packed: null,
    lastAction: null,
    problem: null,
  }))
  let stopWatching: (() => void) | null = null
  let takeLastBack: (() => Answer<null>) | null = null

  const labelOf = (id: string): string => {
    const { models, packed } = store.getState()
    return [...models, ...(packed ?? [])].find((one) => one.id === id)?.name ?? ''
  }

  function finish(answer: Result<null, StoredEditProblem>, action: ModelAction, back: () => Answer<null>) {
    if (answer.ok) {
      takeLastBack = back
      store.setState({ lastAction: action, problem: null })
    } else store.setState({ problem: answer.problem })
    return answer
  }

  async function act(
    kind: ModelAction['kind'],
    id: string,
    recipe: Recipe<ModelRecord>,
    label = labelOf(id),
  ): Answer<null> {
    const gesture = newId()
    const done = await editStored(needs, 'model', id, recipe, gesture)
    return finish(done, { kind, id, label }, () => takeBackStored(needs, 'model', id, gesture))
  }

  return {
    store,
    start: () =>
      new Promise<void>((first) => {
        stopWatching = watchModels(
          database,
          ({ models, unreadable }) => {
            store.setState({ status: 'ready', models: inHouseOrder(models.map(houseModelOf)), unreadable })
            first()
          },
          (detail) => {
            store.setState({ status: 'ready', problem: { code: 'failed', detail } })
            first()
          },
        )
      }),
    stop() {
      stopWatching?.()
      stopWatching = null
    },
    async fetchPacked() {
      if (store.getState().packed !== null) return
      const files = await needs.fetchPacked().catch(() => [])
      const packed = files.flatMap((file) => {
        const read = readPackedModel(file)
        return read.ok ? [read.value] : []
      })
      store.setState({ packed: inHouseOrder(packed) })
    },
    async keepPacked({ id, name, family, plan }) {
      const doc = { name, family, demo: true, plan: plan as ModelRecord['doc']['plan'] }
      const begun = beginModel(id, doc, metaOf(needs))
      return begun.ok ? addModels(database, [begun.value]) : begun
    },
    async create({ id = newId(), name, family, plan }, alsoBack) {
      const doc = { name, family, demo: false, plan: plan as ModelRecord['doc']['plan'] }
      const begun = beginModel(id, doc, metaOf(needs))
      const saved = begun.ok ? await addModels(database, [begun.value]) : begun
      if (saved.ok) needs.onSaved?.()
      const done = finish(saved, { kind: 'created', id, label: name }, () => {
        alsoBack?.()
        return editStored(needs, 'model', id, markDeleted(needs.now()), newId())
      })
      return done.ok ? accept(id) : done
    },
    rename: (id, name) => act('renamed', id, renameModel(name), name),
    give: (id, plan) => act('given', id, giveToModel(plan)),
    remove: (id) => act('deleted', id, markDeleted(needs.now())),
    restore: (id) => act('restored', id, restore()),
    countUses: () => countModelUses(database),
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
    dismiss() {
      takeLastBack = null
      store.setState({ lastAction: null, problem: null })
    },
  }
}

const houseModelOf = ({ id, deletedAt, doc }: ModelRecord): HouseModel => ({ id, deletedAt, ...doc })

/** By kind, then by name. */
function inHouseOrder<Model extends { readonly family: Family; readonly name: string }>(
  models: readonly Model[],
): readonly Model[] {
  const place = ({ family }: Model): number => FAMILIES.indexOf(family)
  return models.toSorted((a, b) => place(a) - place(b) || a.name.localeCompare(b.name, 'en', { numeric: true }))
}

/** What an instrument can be begun from: the models of the house, and those that come with the program and were never stored here. */
export interface StartingModel {
  readonly id: string
  readonly name: string
  readonly family: Family
  readonly plan: Plan
  readonly isStored: boolean
}

export function startingModels({ models, packed }: Pick<ModelState, 'models' | 'packed'>): readonly StartingModel[] {
  const known = new Set(models.map(({ id }) => id))
  const stored = models.filter(({ deletedAt }) => deletedAt === null)
  return inHouseOrder([
    ...stored.map((model) => ({ ...model, isStored: true })),
    ...(packed ?? []).filter(({ id }) => !known.has(id)).map((model) => ({ ...model, isStored: false })),
  ])
}
