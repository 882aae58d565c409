import { createStore, type StoreApi } from 'zustand/vanilla'
import type { Tool } from '../core/catalogue/about.ts'
import type { Database } from '../storage/database.ts'
import { readDeviceValue, writeDeviceValue } from '../storage/deviceValues.ts'

/** The gauges that lie on the bench: those this device was told of, and the one in use today for each kind of tool. */
export interface GaugeState {
  readonly known: readonly string[]
  /** The day the choice holds for, ISO; '' before the first. */
  readonly on: string
  readonly chosen: Readonly<Partial<Record<Tool, string>>>
}

export interface GaugeStore {
  readonly store: StoreApi<GaugeState>
  readonly start: () => Promise<void>
  /** Takes a gauge in hand for the rest of the day; `today`: ISO. A name that is new is kept for other days. */
  readonly choose: (tool: Tool, gauge: string, today: string) => void
}

const MOST_KNOWN = 40
export const MOST_GAUGE_NAME = 60

/** What a kind of tool was chosen to be today; null: it was not asked yet. */
export const gaugeToday = (state: GaugeState, tool: Tool, today: string): string | null =>
  state.on === today ? (state.chosen[tool] ?? null) : null

export function createGaugeStore(database: Database): GaugeStore {
  const store = createStore<GaugeState>(() => ({ known: [], on: '', chosen: {} }))
  return {
    store,
    async start() {
      const kept = await readDeviceValue(database, 'gauges').catch(() => null)
      if (kept !== null) store.setState(kept)
    },
    choose(tool, gauge, today) {
      const name = gauge.trim().slice(0, MOST_GAUGE_NAME)
      const { known, on, chosen } = store.getState()
      const next = {
        known: name === '' || known.includes(name) ? [...known] : [name, ...known].slice(0, MOST_KNOWN),
        on: today,
        chosen: { ...(on === today ? chosen : {}), [tool]: name },
      }
      store.setState(next)
      void writeDeviceValue(database, 'gauges', next)
    },
  }
}
