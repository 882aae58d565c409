import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { keepAwake, type WakeAnswer } from '../../src/device/wakeLock.ts'

/** A screen as a browser gives it: locks end when the page goes out of sight. */
class Screen extends EventTarget {
  visibilityState: DocumentVisibilityState = 'visible'
  readonly held = new Set<EventTarget>()
  refuses = false

  request = async (): Promise<EventTarget & { release: () => Promise<void> }> => {
    if (this.refuses || this.visibilityState !== 'visible') throw new DOMException('no', 'NotAllowedError')
    const lock = Object.assign(new EventTarget(), { release: async () => this.drop(lock) })
    this.held.add(lock)
    return lock
  }

  drop(lock: EventTarget): void {
    if (this.held.delete(lock)) lock.dispatchEvent(new Event('release'))
  }

  show(state: DocumentVisibilityState): void {
    this.visibilityState = state
    if (state === 'hidden') for (const lock of this.held) this.drop(lock)
    this.dispatchEvent(new Event('visibilitychange'))
  }
}

let screen: Screen
beforeEach(() => {
  screen = new Screen()
  vi.stubGlobal('document', screen)
  vi.stubGlobal('navigator', { wakeLock: { request: screen.request } })
})
afterEach(() => vi.unstubAllGlobals())
const settle = (): Promise<void> => new Promise((done) => setTimeout(done, 5))

describe('a screen that is kept awake', () => {
  it('is held, held again when the page is back, and let go', async () => {
    const told: WakeAnswer[] = []
    const letGo = keepAwake((answer) => told.push(answer))
    await settle()
    expect([told, screen.held.size]).toEqual([['held'], 1])
    screen.show('hidden')
    await settle()
    expect(screen.held.size).toBe(0)
    screen.show('visible')
    await settle()
    expect([told, screen.held.size]).toEqual([['held', 'held'], 1])
    letGo()
    await settle()
    expect(screen.held.size).toBe(0)
    screen.show('hidden')
    screen.show('visible')
    await settle()
    expect([told, screen.held.size]).toEqual([['held', 'held'], 0])
  })

  it('is let go also where that was asked before the answer came', async () => {
    const told: WakeAnswer[] = []
    keepAwake((answer) => told.push(answer))()
    await settle()
    expect([told, screen.held.size]).toEqual([[], 0])
  })

  it('says so where the browser refuses, or takes the lock back while the page is in sight', async () => {
    const told: WakeAnswer[] = []
    screen.refuses = true
    keepAwake((answer) => told.push(answer))
    await settle()
    expect(told).toEqual(['refused'])
    screen.refuses = false
    screen.show('visible')
    await settle()
    for (const lock of screen.held) screen.drop(lock)
    expect(told).toEqual(['refused', 'held', 'refused'])
  })

  it('says so where there is no such thing', () => {
    vi.stubGlobal('navigator', {})
    const told: WakeAnswer[] = []
    keepAwake((answer) => told.push(answer))()
    expect(told).toEqual(['none'])
  })
})
