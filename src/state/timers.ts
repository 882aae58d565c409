import { createStore, type StoreApi } from 'zustand/vanilla'
import type { Timer } from '../record/timer.ts'
import { watchAnyTimer } from '../storage/anyTimer.ts'
import type { Database } from '../storage/database.ts'
import type { Bell, TimerStore } from './timerStore.ts'

/** The timers of this device. What runs them is fetched only once there is one: the list must not wait for it. */
export interface Timers {
  /** Their store; null while none has been started on this device, here or in another tab. */
  readonly opened: StoreApi<{ readonly timers: TimerStore | null }>
  readonly open: () => Promise<TimerStore>
  /** Opens them as soon as there are any. */
  readonly watch: () => void
  readonly stop: () => void
  readonly flush: () => Promise<void>
  readonly unsaved: () => readonly Timer[]
}

export interface TimersNeeds {
  readonly database: Database
  readonly now: () => string
  readonly newId: () => string
  readonly loadBell: (() => Promise<Bell>) | undefined
}

/** A bench without a page: nothing to be heard or seen. */
const SILENT: Bell = {
  sight: { isVisible: () => true, watch: () => () => undefined },
  ready: () => undefined,
  chime: () => undefined,
  shake: () => undefined,
  answer: () => 'none',
  ask: async () => 'none',
  tell: async () => 'none',
}

export function createTimers({ loadBell, ...needs }: TimersNeeds): Timers {
  const opened = createStore<{ readonly timers: TimerStore | null }>(() => ({ timers: null }))
  let opening: Promise<TimerStore> | null = null
  let stopWatching: (() => void) | null = null

  async function load(): Promise<TimerStore> {
    const [{ createTimerStore }, bell] = await Promise.all([import('./timerStore.ts'), loadBell?.() ?? SILENT])
    const timers = createTimerStore({ ...needs, bell })
    await timers.open()
    opened.setState({ timers })
    return timers
  }

  function open(): Promise<TimerStore> {
    opening ??= load().catch((fault: unknown) => {
      // What could not be fetched is asked for again the next time.
      opening = null
      throw fault
    })
    return opening
  }

  return {
    opened,
    open,
    watch() {
      stopWatching = watchAnyTimer(needs.database, (isThere) => {
        if (isThere) void open().catch(() => undefined)
      })
    },
    stop() {
      stopWatching?.()
      opened.getState().timers?.close()
    },
    flush: async () => opened.getState().timers?.flush(),
    unsaved: () => opened.getState().timers?.unsaved() ?? [],
  }
}
