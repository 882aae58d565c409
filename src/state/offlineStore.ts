import { createStore, type StoreApi } from 'zustand/vanilla'
import type { OfflineKeeping, OfflineNews, Readiness } from '../device/offline/keepOffline.ts'

export interface OfflineState {
  /** Whether the program works without a net here; null until that is known, and where pages are served while they are written. */
  readonly readiness: Readiness | null
  /**
   * A newer version: 'waits' until it is asked for; was asked for but 'waitsForSaving', since something could not be written; or 'taken' from
   * another tab, while this one still holds something that a reload would lose.
   */
  readonly newVersion: 'none' | 'waits' | 'waitsForSaving' | 'taken'
  /** The maker wants to hear of it later. */
  readonly isPutOff: boolean
}

export interface OfflineStore {
  readonly store: StoreApi<OfflineState>
  /** Lays the program by on this device and listens for newer versions. */
  readonly start: (keep: (news: OfflineNews) => Promise<OfflineKeeping>) => Promise<void>
  /** Writes whatever waits, then has the newer version answer and loads every tab anew; keeps this one where something cannot be written. */
  readonly takeNewVersion: () => Promise<void>
  readonly putOff: () => void
}

export interface OfflineNeeds {
  readonly flush: () => Promise<void>
  /** True while something typed here is in memory only. */
  readonly hasUnsaved: () => boolean
  readonly hasOpenDialog: () => boolean
  readonly reload: () => void
}

export function createOfflineStore(needs: OfflineNeeds): OfflineStore {
  const store = createStore<OfflineState>(() => ({ readiness: null, newVersion: 'none', isPutOff: false }))
  let keeping: OfflineKeeping | null = null

  async function onTaken(): Promise<void> {
    await needs.flush()
    if (needs.hasUnsaved() || needs.hasOpenDialog()) store.setState({ newVersion: 'taken', isPutOff: false })
    else needs.reload()
  }

  return {
    store,
    async start(keep) {
      try {
        keeping = await keep({
          onReadiness: (readiness) => store.setState({ readiness }),
          onNewVersion: () => {
            if (store.getState().newVersion === 'none') store.setState({ newVersion: 'waits' })
          },
          onTaken: () => void onTaken(),
        })
      } catch {
        // What lays the program by could not be fetched itself.
        store.setState({ readiness: 'failed' })
      }
    },
    async takeNewVersion() {
      await needs.flush()
      if (needs.hasUnsaved()) store.setState({ newVersion: 'waitsForSaving' })
      else keeping?.takeOver()
    },
    putOff: () => store.setState({ isPutOff: true }),
  }
}
