import { createStore, type StoreApi } from 'zustand/vanilla'
import type { PersistenceAnswer } from '../device/persistence.ts'
import type { Database } from '../storage/database.ts'
import { readDeviceValue, writeDeviceValue } from '../storage/deviceValues.ts'

/** What the browser answered when asked to keep what is stored; null until something has been saved. */
export interface PersistenceState {
  readonly answer: PersistenceAnswer | null
}

export interface PersistenceStore {
  readonly store: StoreApi<PersistenceState>
  readonly start: () => Promise<void>
  /** Asks at the first save of a visit unless the browser has promised already: a refusal can turn into a promise later. */
  readonly noteSaved: () => void
}

export function createPersistenceStore(needs: {
  readonly database: Database
  readonly request: () => Promise<PersistenceAnswer>
}): PersistenceStore {
  const store = createStore<PersistenceState>(() => ({ answer: null }))
  let hasAsked = false

  async function ask(): Promise<void> {
    const answer = await needs.request()
    store.setState({ answer })
    await writeDeviceValue(needs.database, 'persistence', answer)
  }

  return {
    store,
    async start() {
      const answer = await readDeviceValue(needs.database, 'persistence').catch(() => null)
      if (answer !== null && store.getState().answer === null) store.setState({ answer })
    },
    noteSaved() {
      if (hasAsked || store.getState().answer === 'kept') return
      hasAsked = true
      void ask()
    },
  }
}
