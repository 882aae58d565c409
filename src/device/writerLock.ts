/** The part of the browser's lock manager that is used; undefined where there is none. */
export type Locks = Pick<LockManager, 'request'> | undefined

export const browserLocks = (): Locks => (typeof navigator === 'undefined' ? undefined : navigator.locks)

const lockName = (docId: string): string => `ribwright-writer-${docId}`

export interface WriterLock {
  /** Gives the lock back, or stops waiting for it. */
  readonly release: () => void
}

/** How long a lock may be on its way, from a tab that is just letting go, before waiting for it is worth a word. */
const GRACE_MS = 200

/**
 * One writer for each document across tabs. Calls `onGranted` as soon as this tab may write, at once where the lock is free or the
 * browser has no locks; calls `onWaiting` first where another tab keeps it.
 */
export function takeWriterLock(
  locks: Locks,
  docId: string,
  on: { readonly onGranted: () => void; readonly onWaiting: () => void },
): WriterLock {
  if (locks === undefined) {
    on.onGranted()
    return { release: () => undefined }
  }
  const stopWaiting = new AbortController()
  const patience = setTimeout(on.onWaiting, GRACE_MS)
  let released = false
  let letGo = (): void => stopWaiting.abort()
  const hold = (): Promise<void> => {
    clearTimeout(patience)
    if (released) return Promise.resolve()
    return new Promise((done) => {
      letGo = done
      on.onGranted()
    })
  }
  locks.request(lockName(docId), { signal: stopWaiting.signal }, hold).catch(() => {
    clearTimeout(patience)
    // A wait that was given up ends here too. A browser that refuses locks outright leaves this tab to write.
    if (!released) on.onGranted()
  })
  return {
    release: () => {
      released = true
      clearTimeout(patience)
      letGo()
    },
  }
}

/** Runs `work` while holding the writer's lock of a document; null where another tab keeps it longer than `patienceMs`. */
export async function asWriter<Value>(
  locks: Locks,
  docId: string,
  work: () => Promise<Value>,
  patienceMs = 1500,
): Promise<{ readonly done: Value } | null> {
  if (locks === undefined) return { done: await work() }
  const stopWaiting = new AbortController()
  const timer = setTimeout(() => stopWaiting.abort(), patienceMs)
  try {
    return await locks.request(lockName(docId), { signal: stopWaiting.signal }, async () => {
      clearTimeout(timer)
      return { done: await work() }
    })
  } catch (fault) {
    if (stopWaiting.signal.aborted) return null
    throw fault
  } finally {
    clearTimeout(timer)
  }
}
