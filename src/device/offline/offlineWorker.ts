import { answerFrom, clearOthers, layBy, type Stock } from './shelf.ts'
import { TAKE_OVER } from './takeOver.ts'

/** What runs beside the pages, and answers for them without a net. Built into a file of its own, at the foot of the folder. */

/** The part that is used of where it runs; the page's own types know no such place. */
interface Place {
  readonly registration: { readonly scope: string }
  readonly clients: {
    readonly claim: () => Promise<void>
    readonly matchAll: (of: { readonly type: 'window'; readonly includeUncontrolled: true }) => Promise<readonly Page[]>
    readonly openWindow: (address: string) => Promise<unknown>
  }
  readonly skipWaiting: () => Promise<void>
  readonly addEventListener: <Name extends keyof Happenings>(
    name: Name,
    listen: (event: Happenings[Name]) => void,
  ) => void
}
interface Happenings {
  readonly install: Extendable
  readonly activate: Extendable
  readonly message: MessageEvent<unknown>
  readonly notificationclick: Tapped
  readonly fetch: { readonly request: Request; readonly respondWith: (response: Promise<Response>) => void }
}
/** A page that is open. */
interface Page {
  readonly url: string
  readonly focus: () => Promise<unknown>
  readonly navigate: (address: string) => Promise<unknown>
}
interface Tapped extends Extendable {
  readonly notification: { readonly data: unknown; readonly close: () => void }
}
interface Extendable {
  readonly waitUntil: (work: Promise<unknown>) => void
}

/** Written in by the build. */
declare const BUILT: Omit<Stock, 'folder'>

const place = self as unknown as Place
const stock: Stock = { ...BUILT, folder: place.registration.scope }
const fetchFile = (request: Request): Promise<Response> => fetch(request)

place.addEventListener('install', (event) => event.waitUntil(layBy(caches, fetchFile, stock)))
// The page of a first visit is answered for from now on too: it may be open when the net goes.
place.addEventListener('activate', (event) =>
  event.waitUntil(clearOthers(caches, stock).then(() => place.clients.claim())),
)
// A newer version waits until it is asked for.
place.addEventListener('message', ({ data }) => {
  if (data === TAKE_OVER) void place.skipWaiting()
})
place.addEventListener('fetch', (event) => {
  if (event.request.method !== 'GET' || !event.request.url.startsWith(stock.folder)) return
  event.respondWith(answerFrom(caches, fetchFile, stock, event.request))
})
// A tapped message leads to what it is about: in a page that is open, else in a new one.
place.addEventListener('notificationclick', (event) => {
  event.notification.close()
  event.waitUntil(openAddress(event.notification.data))
})

async function openAddress(data: unknown): Promise<void> {
  const { address } = (data ?? {}) as { readonly address?: unknown }
  const wanted = `${stock.folder}${typeof address === 'string' && address.startsWith('#') ? address : ''}`
  const pages = await place.clients.matchAll({ type: 'window', includeUncontrolled: true })
  const page = pages.find(({ url }) => url.startsWith(stock.folder))
  if (page === undefined) return void (await place.clients.openWindow(wanted))
  await page.focus().catch(() => undefined)
  await page.navigate(wanted).catch(() => undefined)
}
