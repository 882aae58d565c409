import { createStore, type StoreApi } from 'zustand/vanilla'
import type { Draft } from '../record/commission.ts'
import type { Database } from '../storage/database.ts'
import { readDrafts, saveDrafts } from '../storage/drafts.ts'

/** Texts as typed, by document and field. */
export interface DraftState {
  readonly status: 'loading' | 'ready'
  readonly texts: Readonly<Record<string, string>>
}

export interface DraftStore {
  readonly store: StoreApi<DraftState>
  readonly start: () => Promise<void>
  /** The text last typed into a field that was not taken; null where there is none. `docId`: a document's id, or a name such as 'new'. */
  readonly textOf: (docId: string, field: string) => string | null
  /** Keeps a text as typed; stored at most 100 ms later. */
  readonly keep: (docId: string, field: string, text: string) => void
  /** The text was taken, or given up. */
  readonly clear: (docId: string, field: string) => void
  readonly flush: () => Promise<void>
  readonly unsaved: () => readonly Draft[]
}

/** Typing that ends with the tab loses at most this and the time of one transaction, ms. */
const WAIT_MS = 100

export const draftKey = (docId: string, field: string): string => `${docId} ${field}`

export function createDraftStore(needs: { readonly database: Database; readonly now: () => string }): DraftStore {
  const store = createStore<DraftState>(() => ({ status: 'loading', texts: {} }))
  /** What waits to be written: a draft, or null for one to be cleared. */
  let waiting = new Map<string, { docId: string; field: string; draft: Draft | null }>()
  let timer: ReturnType<typeof setTimeout> | null = null
  let running: Promise<void> = Promise.resolve()

  function enter(docId: string, field: string, draft: Draft | null): void {
    const key = draftKey(docId, field)
    const texts = { ...store.getState().texts }
    if (draft === null) delete texts[key]
    else texts[key] = draft.text
    store.setState({ texts })
    waiting.set(key, { docId, field, draft })
    timer ??= setTimeout(() => void flush(), WAIT_MS)
  }

  async function write(): Promise<void> {
    if (waiting.size === 0) return
    const sent = waiting
    waiting = new Map()
    const entries = [...sent.values()]
    const answer = await saveDrafts(needs.database, {
      kept: entries.flatMap(({ draft }) => (draft === null ? [] : [draft])),
      cleared: entries.filter(({ draft }) => draft === null),
    })
    // What could not be written waits for the next stroke, unless that has already brought something newer.
    if (!answer.ok) waiting = new Map([...sent, ...waiting])
  }

  function flush(): Promise<void> {
    if (timer !== null) clearTimeout(timer)
    timer = null
    running = running.then(write)
    return running
  }

  return {
    store,
    async start() {
      const drafts = await readDrafts(needs.database).catch(() => [])
      const stored = Object.fromEntries(drafts.map(({ docId, field, text }) => [draftKey(docId, field), text]))
      store.setState(({ texts }) => ({ status: 'ready', texts: { ...stored, ...texts } }))
    },
    textOf: (docId, field) => store.getState().texts[draftKey(docId, field)] ?? null,
    keep(docId, field, text) {
      const kept = text.slice(0, 20_000)
      if (store.getState().texts[draftKey(docId, field)] !== kept)
        enter(docId, field, { docId, field, text: kept, at: needs.now() })
    },
    clear(docId, field) {
      if (Object.hasOwn(store.getState().texts, draftKey(docId, field))) enter(docId, field, null)
    },
    flush,
    unsaved: () => [...waiting.values()].flatMap(({ draft }) => (draft === null ? [] : [draft])),
  }
}
