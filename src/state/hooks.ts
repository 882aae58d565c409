import { createContext, useContext } from 'react'
import { useStore } from 'zustand'
import type { CommissionState } from './commissionState.ts'
import { draftKey } from './draftStore.ts'
import type { ImportState } from './importer.ts'
import type { ListState } from './listStore.ts'
import type { ModelState } from './modelStore.ts'
import type { OfflineState } from './offlineStore.ts'
import type { PersistenceState } from './persistenceStore.ts'
import type { ShopState } from './shopStore.ts'
import type { TimerStore } from './timerStore.ts'
import type { Workshop } from './workshop.ts'

/** The hooks of one workshop; `Computed` is what the numbers are computed into. Made once, where the program is wired together. */
export function createHooks<Computed>() {
  const Context = createContext<Workshop<Computed> | null>(null)

  function useWorkshop(): Workshop<Computed> {
    const workshop = useContext(Context)
    if (workshop === null) throw new Error('a view stands outside the workshop')
    return workshop
  }

  return {
    WorkshopProvider: Context.Provider,
    useWorkshop,
    useCommission: <Part>(pick: (state: CommissionState<Computed>) => Part): Part =>
      useStore(useWorkshop().commission.store, pick),
    useList: <Part>(pick: (state: ListState) => Part): Part => useStore(useWorkshop().list.store, pick),
    useModels: <Part>(pick: (state: ModelState) => Part): Part => useStore(useWorkshop().models.store, pick),
    useShop: <Part>(pick: (state: ShopState) => Part): Part => useStore(useWorkshop().shop.store, pick),
    useImport: <Part>(pick: (state: ImportState) => Part): Part => useStore(useWorkshop().importer.store, pick),
    usePersistence: <Part>(pick: (state: PersistenceState) => Part): Part =>
      useStore(useWorkshop().persistence.store, pick),
    /** The timers of this device; null while there are none to show. */
    useTimers: (): TimerStore | null => useStore(useWorkshop().timers.opened, (state) => state.timers),
    useOffline: <Part>(pick: (state: OfflineState) => Part): Part => useStore(useWorkshop().offline.store, pick),
    /** The text last typed into a field that was not taken; null where there is none. */
    useDraft: (docId: string, field: string): string | null =>
      useStore(useWorkshop().drafts.store, (state) => state.texts[draftKey(docId, field)] ?? null),
  }
}
