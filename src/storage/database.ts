import Dexie, { type DexieOptions, type Table } from 'dexie'

/** Everything this program keeps on a device. Rows are unknown until they have passed the door. */
export interface Tables {
  /** Whole document rows. */
  readonly documents: Table<unknown, string>
  readonly changes: Table<unknown, string>
  readonly facts: Table<unknown, string>
  /** The list's few fields of each commission, written with it. */
  readonly heads: Table<unknown, string>
  /** Texts typed and not yet taken. */
  readonly drafts: Table<unknown, [docId: string, field: string]>
  /** Single values of this device: { key, value }. */
  readonly device: Table<unknown, string>
  /** Documents as they were before they were brought to a newer shape. */
  readonly setAside: Table<unknown, number>
  /** What sets or dries on this device. */
  readonly timers: Table<unknown, string>
}

export type DatabaseNotice = 'newVersionElsewhere' | 'blockedByOtherTab'

export interface Database {
  readonly dexie: Dexie & Tables
  /** True once another tab brings a newer shape: nothing is written from here any more. */
  readonly isClosing: () => boolean
  /** What is flushed before the connection is given up. */
  readonly beforeClosing: (flush: () => Promise<void>) => void
  readonly onNotice: (listen: (notice: DatabaseNotice) => void) => void
}

export const DATABASE_NAME = 'ribwright'

/** The database under a name. It opens at the first use. `options` let tests bring an IndexedDB of their own. */
export function openDatabase(name: string = DATABASE_NAME, options: DexieOptions = {}): Database {
  // No cache: what is watched is what is stored, never what a transaction hopes to store.
  const dexie = new Dexie(name, { chromeTransactionDurability: 'strict', cache: 'disabled', ...options }) as Dexie &
    Tables
  dexie.version(1).stores({
    documents: 'id, kind',
    changes: 'id, docId, &[docId+deviceId+seq]',
    facts: 'id, docId, &[docId+deviceId+seq]',
    heads: 'id',
    drafts: '[docId+field], docId',
    device: 'key',
    setAside: '++',
  })
  // A timer that has not ended has no key in `endedAt`: only ended ones stand there.
  dexie.version(2).stores({ timers: 'id, endedAt' })
  const flushes: (() => Promise<void>)[] = []
  const listeners: ((notice: DatabaseNotice) => void)[] = []
  const notify = (notice: DatabaseNotice): void => {
    for (const listen of listeners) listen(notice)
  }
  let closing = false
  dexie.on('versionchange', () => {
    const close = (): void => {
      closing = true
      dexie.close()
      notify('newVersionElsewhere')
    }
    Promise.all(flushes.map((flush) => flush())).then(close, close)
    return false
  })
  dexie.on('blocked', () => notify('blockedByOtherTab'))
  return {
    dexie,
    isClosing: () => closing,
    beforeClosing: (flush) => flushes.push(flush),
    onNotice: (listen) => listeners.push(listen),
  }
}
