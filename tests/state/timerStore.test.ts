import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import type { NoticeAnswer } from '../../src/device/notifications.ts'
import type { Timer } from '../../src/record/timer.ts'
import { createTimerStore, type TimerStore } from '../../src/state/timerStore.ts'
import { countedIds } from '../record/fixture.ts'
import { databaseOn, freshDisk } from '../storage/fixture.ts'

const START = Date.UTC(2026, 10, 27, 9)
const DOC = '0b000000-0000-4000-8000-000000000001'
const MINUTE = 60_000
const HOUR = 60 * MINUTE

/** The one clock of the device: every tab reads it. Waiting time passes on it only as a test lets it pass. */
let moment = START
const now = (): string => new Date(moment).toISOString()
const open: TimerStore[] = []

beforeEach(() => {
  moment = START
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] })
})
afterEach(() => {
  for (const timers of open.splice(0)) timers.close()
  vi.useRealTimers()
})

/** Lets the store answer; what it puts off to the next turn is called, and no time passes. */
async function settle(): Promise<void> {
  for (let i = 0; i < 40; i += 1) {
    await new Promise((done) => setImmediate(done))
    await vi.advanceTimersByTimeAsync(0)
  }
}

/** Time passes, a second at a time, as for a page that runs. */
async function pass(ms: number): Promise<void> {
  for (let left = ms; left > 0; left -= 1000) {
    moment += Math.min(left, 1000)
    await vi.advanceTimersByTimeAsync(Math.min(left, 1000))
  }
  await settle()
}

/** The clock goes on, or back, while the page sleeps: what waits has not been called. */
const jump = (ms: number): void => {
  moment += ms
}

interface Tab {
  readonly timers: TimerStore
  readonly database: ReturnType<typeof databaseOn>
  readonly rung: string[]
  readonly see: (isVisible: boolean) => void
  readonly shown: () => string[]
}

async function openTab(
  disk = freshDisk(),
  { series = 'a', answer = 'allowed' }: { series?: string; answer?: NoticeAnswer } = {},
): Promise<Tab> {
  const database = databaseOn(disk)
  const rung: string[] = []
  let isVisible = true
  let changed = (): void => undefined
  const timers = createTimerStore({
    database,
    now,
    newId: countedIds(series),
    bell: {
      sight: {
        isVisible: () => isVisible,
        watch: (act) => {
          changed = act
          return () => undefined
        },
      },
      ready: () => undefined,
      chime: () => void rung.push('chime'),
      shake: () => void rung.push('shake'),
      answer: () => answer,
      ask: async () => answer,
      tell: async ({ label }: Timer) => {
        rung.push(label)
        return answer
      },
    },
  })
  await timers.open()
  await settle()
  open.push(timers)
  return {
    timers,
    database,
    rung,
    see(next) {
      isVisible = next
      changed()
    },
    shown: () => timers.store.getState().timers.map(({ label }) => label),
  }
}

/** Makes every write of a timer fail until told otherwise, as on a full disk. */
function fillTimers({ dexie: { timers } }: Tab['database']): () => void {
  const refuse = (): never => {
    throw Object.assign(new Error('full'), { name: 'AbortError', inner: { name: 'QuotaExceededError' } })
  }
  timers.hook('creating', refuse)
  timers.hook('updating', refuse)
  return () => {
    timers.hook('creating').unsubscribe(refuse)
    timers.hook('updating').unsubscribe(refuse)
  }
}

const start = (tab: Tab, label: string, seconds: number): Promise<string> =>
  tab.timers.start({ docId: DOC, stageId: null, number: '26-07', label, seconds })

describe('timers', () => {
  it('are back after a restart, what ran out first, and are not rung again for what ran out meanwhile', async () => {
    const disk = freshDisk()
    const first = await openTab(disk)
    await start(first, 'finish', 48 * 3600)
    await start(first, 'braces', 2 * 3600)
    await start(first, 'bridge', 600)
    first.timers.close()
    jump(50 * MINUTE)
    const again = await openTab(disk)
    expect(again.shown()).toEqual(['bridge', 'braces', 'finish'])
    await pass(2000)
    expect(again.rung).toEqual([])
    await pass(71 * MINUTE)
    expect(again.rung).toEqual(['shake'])
  })

  it('of one tab stand in the other, and so does what is done to them', async () => {
    const disk = freshDisk()
    const [one, two] = [await openTab(disk), await openTab(disk, { series: 'b' })]
    const id = await start(one, 'braces', 3600)
    await settle()
    expect(two.shown()).toEqual(['braces'])
    await two.timers.addMinutes(id, 10)
    await settle()
    expect(one.timers.store.getState().timers[0]?.endsAt).toBe('2026-11-27T10:10:00.000Z')
    await one.timers.end(id)
    await settle()
    expect(two.shown()).toEqual([])
    await two.timers.addMinutes(id, 10)
    await one.timers.bringBack()
    await settle()
    expect(two.timers.store.getState().timers).toMatchObject([{ id, endsAt: '2026-11-27T10:10:00.000Z' }])
  })

  it('ring in one tab only, however many are open', async () => {
    const disk = freshDisk()
    const tabs = [await openTab(disk), await openTab(disk, { series: 'b' }), await openTab(disk, { series: 'c' })]
    for (const tab of tabs) await tab.timers.allowNotices(true)
    await start(tabs[0]!, 'braces', 5)
    await settle()
    await pass(8000)
    expect(tabs.flatMap((tab) => tab.rung)).toEqual(['shake', 'braces'])
    expect(tabs.filter((tab) => tab.timers.store.getState().lastReady !== null)).toHaveLength(1)
    expect(tabs.map((tab) => tab.shown())).toEqual([['braces'], ['braces'], ['braces']])
  })

  it('follow the clock: a sleep has passed, and a clock that was ahead rings again when it is really time', async () => {
    const tab = await openTab()
    await start(tab, 'braces', 3600)
    tab.see(false)
    jump(2 * HOUR)
    tab.see(true)
    await settle()
    expect(tab.timers.store.getState().now).toBe(now())
    expect(tab.rung).toEqual(['shake'])
    jump(-100 * MINUTE)
    tab.see(true)
    await pass(39 * MINUTE)
    expect(tab.rung).toEqual(['shake'])
    await pass(2 * MINUTE)
    expect(tab.rung).toEqual(['shake', 'shake'])
  })

  it('ring again after more time was given', async () => {
    const tab = await openTab()
    const id = await start(tab, 'braces', 5)
    await pass(6000)
    await tab.timers.addMinutes(id, 10)
    await pass(9 * MINUTE)
    expect(tab.rung).toEqual(['shake'])
    await pass(MINUTE)
    expect(tab.rung).toEqual(['shake', 'shake'])
  })

  it('tick each second in sight, wait for the end out of sight, and not at all where there is none', async () => {
    const tab = await openTab()
    expect(vi.getTimerCount()).toBe(0)
    let ticks = 0
    tab.timers.store.subscribe((state, before) => {
      if (state.now !== before.now) ticks += 1
    })
    await start(tab, 'braces', 60)
    await settle()
    await pass(10_000)
    expect(ticks).toBe(10)
    tab.see(false)
    await pass(49_000)
    expect(ticks).toBe(10)
    await pass(1000)
    expect(ticks).toBe(11)
    expect(tab.rung).toEqual(['shake'])
    expect(vi.getTimerCount()).toBe(0)
    tab.see(true)
    await pass(59_000)
    expect(ticks).toBe(11)
    await pass(1000)
    expect(ticks).toBe(12)
  })

  it('are heard, and told by the device, only where the maker allowed it, on this device from then on', async () => {
    const disk = freshDisk()
    const tab = await openTab(disk)
    await start(tab, 'first', 1)
    await pass(2000)
    expect(tab.rung).toEqual(['shake'])
    tab.timers.allowSound(true)
    await tab.timers.allowNotices(true)
    await settle()
    tab.timers.close()
    const again = await openTab(disk, { series: 'b' })
    expect(again.timers.store.getState()).toMatchObject({ sound: true, notices: 'on' })
    await start(again, 'second', 1)
    await pass(2000)
    expect(again.rung).toEqual(['chime', 'shake', 'second'])
  })

  it.each(['refused', 'none'] as const)('say so where the device answers: %s', async (answer) => {
    const tab = await openTab(freshDisk(), { answer })
    await tab.timers.allowNotices(true)
    expect(tab.timers.store.getState().notices).toBe(answer)
  })

  it('go on in memory on a full disk, say so, ring there, and are stored once there is room', async () => {
    const disk = freshDisk()
    const tab = await openTab(disk)
    const makeRoom = fillTimers(tab.database)
    const id = await start(tab, 'braces', 60)
    expect(tab.shown()).toEqual(['braces'])
    expect(tab.timers.store.getState().problem).toEqual({ code: 'diskFull' })
    await tab.timers.addMinutes(id, 1)
    expect(tab.timers.unsaved()).toMatchObject([{ id, endsAt: '2026-11-27T09:02:00.000Z' }])
    await pass(2 * MINUTE)
    expect(tab.rung).toEqual(['shake'])
    makeRoom()
    await tab.timers.flush()
    expect(tab.timers.store.getState().problem).toBeNull()
    expect(tab.timers.unsaved()).toEqual([])
    expect((await openTab(disk, { series: 'b' })).shown()).toEqual(['braces'])
  })
})
