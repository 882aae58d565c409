import type { NumberKey } from '../core/numbers.ts'
import type { Plan } from '../core/plan.ts'
import { type Clock, systemClock } from '../device/clock.ts'
import { newId } from '../device/newId.ts'
import { type PersistenceAnswer, requestPersistence } from '../device/persistence.ts'
import { hasOpenDialog, reloadPage } from '../device/reload.ts'
import { askBeforeLeaving, whenHidden } from '../device/visibility.ts'
import { browserLocks, type Locks } from '../device/writerLock.ts'
import { writeCommissionFile } from '../files/commissionFile.ts'
import { fetchModels } from '../files/packedFiles.ts'
import type { TolerancesHere } from '../record/adopt.ts'
import { type Database, type DatabaseNotice, openDatabase } from '../storage/database.ts'
import { ownDeviceId } from '../storage/deviceValues.ts'
import { readDocument } from '../storage/documents.ts'
import { collectEverything } from '../storage/rescue.ts'
import { type Asked, createAsked, type RoundOf } from './askedNumbers.ts'
import { type CommissionNeeds, type CommissionStore, createCommissionStore } from './commissionStore.ts'
import { answerDemo, installDemo, isDemoUnanswered } from './demo.ts'
import { createDraftStore, type DraftStore } from './draftStore.ts'
import type { StoredNeeds } from './editStored.ts'
import { createGaugeStore, type GaugeStore } from './gaugeStore.ts'
import { createImporter, type Importer } from './importer.ts'
import { createListStore, type ListStore } from './listStore.ts'
import { createModelStore, type ModelStore } from './modelStore.ts'
import { createOfflineStore, type OfflineStore } from './offlineStore.ts'
import { createPersistenceStore, type PersistenceStore } from './persistenceStore.ts'
import type { Sharing } from './sharing.ts'
import { createShopStore, type ShopStore } from './shopStore.ts'
import { createTimers, type Timers } from './timers.ts'
import type { Bell } from './timerStore.ts'

export interface WorkshopNeeds<Computed> {
  /** The numbers of a plan with what was measured since. */
  readonly build: CommissionNeeds<Computed>['build']
  readonly prepareReadings: CommissionNeeds<Computed>['prepareReadings']
  /** Which readings are solved together with those of a number. */
  readonly roundOf: RoundOf
  readonly startingTolerance: (key: NumberKey) => number | null
  readonly onNotice: (notice: DatabaseNotice) => void
  readonly database?: Database
  readonly locks?: Locks
  readonly clock?: Clock
  readonly newId?: () => string
  readonly requestPersistence?: () => Promise<PersistenceAnswer>
  /** Brings what makes timers heard; fetched with the first of them. */
  readonly loadBell?: () => Promise<Bell>
}

/** Everything a maker works with: all stores, bound to one database. Made once, when the program starts. */
export interface Workshop<Computed> {
  readonly shop: ShopStore
  readonly list: ListStore
  readonly models: ModelStore
  readonly commission: CommissionStore<Computed>
  readonly drafts: DraftStore
  readonly importer: Importer
  readonly persistence: PersistenceStore
  readonly timers: Timers
  readonly offline: OfflineStore
  readonly gauges: GaugeStore
  readonly demo: {
    readonly isUnanswered: () => Promise<boolean>
    readonly install: (files: readonly unknown[]) => ReturnType<typeof installDemo>
    readonly decline: () => Promise<unknown>
  }
  /** What follows from any plan with any readings. */
  readonly build: CommissionNeeds<Computed>['build']
  /** What writes to several instruments at once: fetched with the first work they share. */
  readonly openSharing: () => Promise<Sharing<Computed>>
  /** The numbers of a plan that is not on the bench: worked out once for each. */
  readonly computedOf: (plan: Plan) => Computed
  /** What a number of the open instrument is asked to be, its own readings left out. */
  readonly askedOf: (number: NumberKey) => Asked<Computed> | null
  /** The text of the file of one stored commission; null where it cannot be read. What waits is written first. */
  readonly fileOf: (id: string) => Promise<string | null>
  /** Writes whatever waits anywhere. */
  readonly flush: () => Promise<void>
  /** Everything on this device and in memory as one text, whatever has gone wrong. */
  readonly collectEverything: () => Promise<string>
  readonly newGesture: () => string
  readonly stop: () => void
}

export async function openWorkshop<Computed>(given: WorkshopNeeds<Computed>): Promise<Workshop<Computed>> {
  const database = given.database ?? openDatabase()
  database.onNotice(given.onNotice)
  const makeId = given.newId ?? newId
  const { now } = given.clock ?? systemClock
  const locks = 'locks' in given ? given.locks : browserLocks()
  const persistence = createPersistenceStore({ database, request: given.requestPersistence ?? requestPersistence })
  const needs: StoredNeeds = {
    database,
    deviceId: await ownDeviceId(database, makeId),
    now,
    newId: makeId,
    locks,
    onSaved: persistence.noteSaved,
  }
  const shop = createShopStore(needs)
  const drafts = createDraftStore({ database, now })
  const commission = createCommissionStore({
    ...needs,
    build: given.build,
    prepareReadings: given.prepareReadings,
  })
  const list = createListStore({
    ...needs,
    openHere: (id) =>
      commission.writes(id) ? { edit: commission.edit, takeBack: commission.takeBack, close: commission.close } : null,
  })
  const models = createModelStore({ ...needs, fetchPacked: fetchModels })
  const timers = createTimers({ database, now, newId: makeId, loadBell: given.loadBell })
  const gauges = createGaugeStore(database)
  const computed = new WeakMap<Plan, { readonly of: Computed }>()
  const computedOf = (plan: Plan): Computed => {
    const known = computed.get(plan) ?? { of: given.build(plan, []).computed }
    computed.set(plan, known)
    return known.of
  }
  const tolerancesHere = (): TolerancesHere => ({
    shop: shop.store.getState().shop.tolerances,
    starting: given.startingTolerance,
  })
  const importer = createImporter({
    ...needs,
    tolerancesHere,
    heads: () => list.store.getState().heads,
    note: list.note,
    replaceHere: (id) => (commission.writes(id) ? commission.replaceWhole : null),
    factsHere: () => commission.store.getState().facts,
  })

  const flush = async (): Promise<void> => {
    await Promise.all([commission.flush(), shop.flush(), drafts.flush(), timers.flush()])
  }
  const unsaved = () => ({
    commissions: commission.unsaved(),
    shop: shop.unsaved(),
    drafts: drafts.unsaved(),
    timers: timers.unsaved(),
  })
  const hasUnsaved = (): boolean =>
    commission.unsaved().length > 0 || shop.unsaved() !== null || timers.unsaved().length > 0
  const offline = createOfflineStore({
    flush,
    hasUnsaved: () => hasUnsaved() || drafts.unsaved().length > 0,
    hasOpenDialog,
    reload: reloadPage,
  })
  database.beforeClosing(flush)
  const hasPage = typeof document !== 'undefined'
  const stopListening = hasPage ? [whenHidden(() => void flush()), askBeforeLeaving(hasUnsaved)] : []
  await Promise.all([persistence.start(), shop.start(), drafts.start(), list.start(), models.start(), gauges.start()])
  timers.watch()

  return {
    shop,
    list,
    models,
    commission,
    drafts,
    importer,
    persistence,
    timers,
    offline,
    gauges,
    demo: {
      isUnanswered: () => isDemoUnanswered(needs),
      install: async (commissions) => {
        const packed = await fetchModels().catch(() => [])
        return installDemo(needs, { commissions, models: packed }, tolerancesHere())
      },
      decline: () => answerDemo(needs, 'declined'),
    },
    build: given.build,
    computedOf,
    askedOf: createAsked({ store: commission.store, build: given.build, roundOf: given.roundOf, computedOf }),
    openSharing: async () =>
      (await import('./sharing.ts')).createSharing({
        ...needs,
        build: given.build,
        prepareReadings: given.prepareReadings,
        commission,
      }),
    async fileOf(id) {
      await flush()
      const held = commission.unsaved().find((kept) => kept.row.id === id)
      const read =
        held === undefined ? await readDocument(database, 'commission', id) : { ok: true as const, value: held }
      if (!read.ok) return null
      // Which fixtures serve it follows from its numbers; what computes them is only fetched when a file is written.
      const { shopForFile } = await import('../files/shopForFile.ts')
      return writeCommissionFile(read.value, shopForFile(shop.store.getState().shop, read.value.row.doc.plan), now())
    },
    flush,
    collectEverything: () => collectEverything(database, now(), unsaved()),
    newGesture: makeId,
    stop() {
      for (const stop of stopListening) stop()
      list.stop()
      models.stop()
      shop.stop()
      timers.stop()
    },
  }
}
