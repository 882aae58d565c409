import { expect, test } from 'vitest'
import type { OfflineNews } from '../../src/device/offline/keepOffline.ts'
import { createOfflineStore } from '../../src/state/offlineStore.ts'

/** A store over a tab whose state is set by hand; what it did is noted in order. */
async function openTab() {
  const did: string[] = []
  const tab = { isSaved: true, hasDialog: false }
  const offline = createOfflineStore({
    flush: async () => void did.push('flush'),
    hasUnsaved: () => !tab.isSaved,
    hasOpenDialog: () => tab.hasDialog,
    reload: () => void did.push('reload'),
  })
  let news: OfflineNews | null = null
  await offline.start(async (given) => {
    news = given
    return { takeOver: () => void did.push('take over') }
  })
  const settle = () => new Promise((done) => setTimeout(done))
  return { offline, did, tab, news: news as unknown as OfflineNews, shown: () => offline.store.getState(), settle }
}

test('a new version waits until it is asked for, and what is in hand is written first', async () => {
  const { offline, did, news, shown, settle } = await openTab()
  news.onReadiness('ready')
  news.onNewVersion()
  expect(shown()).toEqual({ readiness: 'ready', newVersion: 'waits', isPutOff: false })
  expect(did).toEqual([])
  await offline.takeNewVersion()
  expect(did).toEqual(['flush', 'take over'])
  news.onTaken()
  await settle()
  expect(did).toEqual(['flush', 'take over', 'flush', 'reload'])
})

test('it is not taken while something typed is in memory only', async () => {
  const { offline, did, tab, news, shown } = await openTab()
  news.onNewVersion()
  tab.isSaved = false
  await offline.takeNewVersion()
  expect([did, shown().newVersion]).toEqual([['flush'], 'waitsForSaving'])
  tab.isSaved = true
  await offline.takeNewVersion()
  expect(did).toEqual(['flush', 'flush', 'take over'])
})

test.each([
  ['something unsaved', { isSaved: false }],
  ['a dialog open', { hasDialog: true }],
])(
  'a tab with %s is not loaded anew when another takes it, and says so even where that was put off',
  async (_, state) => {
    const { offline, did, tab, news, shown, settle } = await openTab()
    news.onNewVersion()
    offline.putOff()
    Object.assign(tab, state)
    news.onTaken()
    await settle()
    expect([did, shown().newVersion, shown().isPutOff]).toEqual([['flush'], 'taken', false])
  },
)

test('says that it is not ready where even what lays by could not be fetched', async () => {
  const offline = createOfflineStore({
    flush: async () => undefined,
    hasUnsaved: () => false,
    hasOpenDialog: () => false,
    reload: () => undefined,
  })
  await offline.start(() => Promise.reject(new TypeError('no net')))
  expect(offline.store.getState().readiness).toBe('failed')
})
