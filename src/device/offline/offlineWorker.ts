import { answerFrom, clearOthers, layBy, type Stock } from './shelf.ts'
import { TAKE_OVER } from './takeOver.ts'

/** What runs beside the pages, and answers for them without a net. Built into a file of its own, at the foot of the folder. */

/** The part that is used of where it runs; the page's own types know no such place. */
interface Place {
  readonly registration: { readonly scope: string }
  readonly clients: { readonly claim: () => Promise<void> }
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
  readonly fetch: { readonly request: Request; readonly respondWith: (response: Promise<Response>) => void }
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
