import { afterEach, describe, expect, it, vi } from 'vitest'
import { askForNotices, giveNotice, noticeAnswer } from '../../src/device/notifications.ts'

const NOTICE = { body: '26-07', tag: 'one', address: '#/i/one' }
afterEach(() => vi.unstubAllGlobals())

/** A browser that has been asked, or will be. */
function stubBrowser({
  permission = 'granted',
  answer = 'granted',
  isSecure = true,
  worker = null,
  isBarred = false,
}: {
  permission?: NotificationPermission
  answer?: NotificationPermission
  isSecure?: boolean
  worker?: { active: object | null } | null
  isBarred?: boolean
} = {}) {
  const shown: string[] = []
  class Told extends EventTarget {
    static permission = permission
    static requestPermission = async () => (Told.permission = answer)
    constructor(title: string) {
      super()
      if (isBarred) throw new TypeError('only by the worker')
      shown.push(`page: ${title}`)
    }
  }
  vi.stubGlobal('Notification', Told)
  vi.stubGlobal('isSecureContext', isSecure)
  const registration = worker && {
    ...worker,
    showNotification: async (title: string) => shown.push(`worker: ${title}`),
  }
  vi.stubGlobal('navigator', { serviceWorker: { getRegistration: async () => registration } })
  return shown
}

describe('a notice by the device', () => {
  it('is given by the page, or by its worker where one is at work', async () => {
    const byPage = stubBrowser()
    expect(await giveNotice('Ready', NOTICE)).toBe('allowed')
    expect(byPage).toEqual(['page: Ready'])
    const early = stubBrowser({ worker: { active: null } })
    await giveNotice('Ready', NOTICE)
    expect(early).toEqual(['page: Ready'])
    const byWorker = stubBrowser({ worker: { active: {} }, isBarred: true })
    expect(await giveNotice('Ready', NOTICE)).toBe('allowed')
    expect(byWorker).toEqual(['worker: Ready'])
  })

  it('is said to be missing where the page may not make one and has no worker', async () => {
    const shown = stubBrowser({ isBarred: true })
    expect(await giveNotice('Ready', NOTICE)).toBe('none')
    expect(shown).toEqual([])
  })

  it('is given to nobody who was not asked', async () => {
    const shown = stubBrowser({ permission: 'default' })
    expect(await giveNotice('Ready', NOTICE)).toBe('unasked')
    expect(shown).toEqual([])
    expect(await askForNotices()).toBe('allowed')
    expect(noticeAnswer()).toBe('allowed')
  })

  it.each([
    [{ permission: 'denied' }, 'refused'],
    [{ permission: 'default', answer: 'denied' }, 'refused'],
    [{ permission: 'default', answer: 'default' }, 'unasked'],
    [{ isSecure: false }, 'none'],
  ] as const)('%o: the answer is %s', async (browser, answer) => {
    stubBrowser(browser)
    expect(await askForNotices()).toBe(answer)
  })

  it('is none where the browser knows nothing of it', async () => {
    expect(noticeAnswer()).toBe('none')
    expect(await askForNotices()).toBe('none')
  })
})
