import { createStore, type StoreApi } from 'zustand/vanilla'
import type { NoticeAnswer } from '../device/notifications.ts'
import type { PageSight } from '../device/pageSight.ts'
import {
  addMinutes,
  beginTimer,
  bringBackTimer,
  endTimer,
  type Timer,
  type TimerBeginning,
  timeLeftMs,
} from '../record/timer.ts'
import type { Database } from '../storage/database.ts'
import { readDeviceValue, writeDeviceValue } from '../storage/deviceValues.ts'
import { changeTimer, claimNotice, putTimer, readTimers, watchTimers } from '../storage/timers.ts'
import type { WriteProblem } from '../storage/writeDurably.ts'

/** How a timer makes itself known beyond the page, and whether the page is seen. */
export interface Bell {
  readonly sight: PageSight
  /** To be called under a finger. */
  readonly ready: () => void
  readonly chime: () => void
  readonly shake: () => void
  readonly answer: () => NoticeAnswer
  readonly ask: () => Promise<NoticeAnswer>
  readonly tell: (timer: Timer) => Promise<NoticeAnswer>
}

/** Whether the device tells of timers, by the maker's wish; or why it does not. */
export type Notices = 'off' | 'on' | 'refused' | 'none'

export interface TimerState {
  /** Not yet ended: what ran out first, then what ends next. */
  readonly timers: readonly Timer[]
  /** The moment they are told for. */
  readonly now: string
  /** Why something is kept in memory only; null where all is stored. */
  readonly problem: WriteProblem | null
  /** What this tab last gave notice of. */
  readonly lastReady: Timer | null
  /** What this tab last ended, as long as it can be brought back. */
  readonly lastEnded: Timer | null
  readonly sound: boolean
  readonly notices: Notices
}

export interface TimerNeeds {
  readonly database: Database
  readonly now: () => string
  readonly newId: () => string
  readonly bell: Bell
}

export interface TimerStore {
  readonly store: StoreApi<TimerState>
  readonly open: () => Promise<void>
  readonly close: () => void
  /** Starts a timer and gives its id; where it cannot be stored it runs in memory, and `problem` says why. */
  readonly start: (beginning: TimerBeginning) => Promise<string>
  readonly addMinutes: (id: string, minutes: number) => Promise<void>
  /** Stops one that runs, or says that one which ran out is seen to. */
  readonly end: (id: string) => Promise<void>
  /** Takes the last end back. */
  readonly bringBack: () => Promise<void>
  readonly allowSound: (isAllowed: boolean) => void
  /** Asks the device for leave the first time; under a finger. */
  readonly allowNotices: (isAllowed: boolean) => Promise<void>
  /** Tries anew to store what is in memory only. */
  readonly flush: () => Promise<void>
  readonly unsaved: () => readonly Timer[]
}

const SECOND_MS = 1000
const MINUTE_MS = 60_000
/** A browser counts no further than 24 days in one go, and a sleeping one loses count: it is looked at anew. */
const LONGEST_WAIT_MS = 3_600_000

/** A notice is due once for each end: adding time makes a new one. */
const endOf = ({ id, endsAt }: Timer): string => `${id} ${endsAt}`
const hasRunOut = (timer: Timer, now: string): boolean => timeLeftMs(timer, now) <= 0

export function createTimerStore(needs: TimerNeeds): TimerStore {
  const { database, now, bell } = needs
  const { sight } = bell
  const store = createStore<TimerState>(() => ({
    timers: [],
    now: now(),
    problem: null,
    lastReady: null,
    lastEnded: null,
    sound: false,
    notices: 'off',
  }))
  let stored: readonly Timer[] = []
  /** As they stand here, where that could not be stored. */
  const inMemory = new Map<string, Timer>()
  /** Ends that are past noticing: noticed here or in another tab, or run out while no page was open. */
  const heard = new Set<string>()
  let wait: ReturnType<typeof setTimeout> | null = null
  let stops: (() => void)[] = []

  function show(): void {
    const byId = new Map([...stored.map((timer) => [timer.id, timer] as const), ...inMemory])
    const timers = [...byId.values()]
      .filter(({ endedAt }) => endedAt === null)
      .toSorted((a, b) => Date.parse(a.endsAt) - Date.parse(b.endsAt))
    store.setState({ timers })
    look()
  }

  /** Reads the clock, gives the notices that are due, and waits for when there is next something to see. */
  function look(): void {
    if (wait !== null) clearTimeout(wait)
    wait = null
    const moment = now()
    const { timers } = store.getState()
    store.setState({ now: moment })
    for (const timer of timers) {
      if (!hasRunOut(timer, moment)) heard.delete(endOf(timer))
      else if (!heard.has(endOf(timer))) void notice(timer)
    }
    if (stops.length === 0 || timers.length === 0) return
    const running = timers.find((timer) => !hasRunOut(timer, moment))
    if (running === undefined) {
      // Only how long ago it was still changes.
      if (sight.isVisible()) wait = setTimeout(look, MINUTE_MS)
      return
    }
    const leftMs = timeLeftMs(running, moment)
    wait = setTimeout(look, sight.isVisible() ? leftMs % SECOND_MS || SECOND_MS : Math.min(leftMs, LONGEST_WAIT_MS))
  }

  async function notice(timer: Timer): Promise<void> {
    heard.add(endOf(timer))
    if (!inMemory.has(timer.id)) {
      const claim = await claimNotice(database, timer.id, now)
      // Where it cannot be written who gave notice, twice is better than not at all.
      if (claim.ok && !claim.value) return
    }
    store.setState({ lastReady: timer })
    if (store.getState().sound) bell.chime()
    bell.shake()
    if (store.getState().notices === 'on') takeAnswer(await bell.tell(timer))
  }

  function takeAnswer(answer: NoticeAnswer): void {
    store.setState({ notices: answer === 'allowed' ? 'on' : answer === 'unasked' ? 'off' : answer })
  }

  /** Known here at once, also before what is watched has come round. */
  function takeStored(timer: Timer): void {
    stored = [...stored.filter(({ id }) => id !== timer.id), timer]
    inMemory.delete(timer.id)
  }

  async function keep(timer: Timer): Promise<void> {
    inMemory.set(timer.id, timer)
    await flush()
  }

  async function change(id: string, alter: (timer: Timer) => Timer): Promise<void> {
    const held = inMemory.get(id)
    if (held !== undefined) return keep(alter(held))
    const answer = await changeTimer(database, id, alter)
    if (answer.ok) {
      if (answer.value !== null) takeStored(answer.value)
      return show()
    }
    const known = stored.find((timer) => timer.id === id)
    if (known !== undefined) inMemory.set(id, alter(known))
    store.setState({ problem: answer.problem })
    show()
  }

  async function flush(): Promise<void> {
    let problem: WriteProblem | null = null
    for (const timer of inMemory.values()) {
      const answer = await putTimer(database, timer, now())
      // What was changed meanwhile waits for the next round.
      if (!answer.ok) problem = answer.problem
      else if (inMemory.get(timer.id) === timer) takeStored(answer.value)
    }
    store.setState({ problem: inMemory.size > 0 ? problem : null })
    show()
  }

  return {
    store,
    async open() {
      const [sound, wished] = await Promise.all([
        readDeviceValue(database, 'timerSound').catch(() => null),
        readDeviceValue(database, 'timerNotices').catch(() => null),
      ])
      store.setState({ sound: sound === true })
      if (sound === true) bell.ready()
      if (wished === true) takeAnswer(bell.answer())
      stored = await readTimers(database).catch(() => [])
      const opened = now()
      for (const timer of stored) if (hasRunOut(timer, opened)) heard.add(endOf(timer))
      stops = [
        sight.watch(look),
        watchTimers(
          database,
          (timers) => {
            stored = timers
            show()
          },
          (detail) => store.setState({ problem: { code: 'failed', detail } }),
        ),
      ]
      show()
    },
    close() {
      for (const stop of stops) stop()
      stops = []
      if (wait !== null) clearTimeout(wait)
    },
    async start(beginning) {
      const timer = beginTimer(needs.newId(), beginning, now())
      await keep(timer)
      return timer.id
    },
    addMinutes: (id, minutes) => change(id, (timer) => addMinutes(timer, minutes, now())),
    async end(id) {
      const ended = store.getState().timers.find((timer) => timer.id === id) ?? null
      await change(id, (timer) => endTimer(timer, now()))
      store.setState({ lastEnded: ended })
    },
    async bringBack() {
      const { lastEnded } = store.getState()
      if (lastEnded === null) return
      store.setState({ lastEnded: null })
      await change(lastEnded.id, bringBackTimer)
    },
    allowSound(isAllowed) {
      store.setState({ sound: isAllowed })
      if (isAllowed) {
        bell.ready()
        bell.chime()
      }
      void writeDeviceValue(database, 'timerSound', isAllowed)
    },
    async allowNotices(isAllowed) {
      if (isAllowed) takeAnswer(await bell.ask())
      else store.setState({ notices: 'off' })
      await writeDeviceValue(database, 'timerNotices', isAllowed)
    },
    flush,
    unsaved: () => [...inMemory.values()],
  }
}
