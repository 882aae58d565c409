import { liveQuery } from 'dexie'
import { isPlainObject } from '../record/path.ts'
import type { Database } from './database.ts'

/** Calls back now, and whenever any tab has written, with whether a timer waits that has not been ended. Gives back how to stop. */
export function watchAnyTimer(database: Database, take: (isThere: boolean) => void): () => void {
  const watching = liveQuery(() =>
    database.dexie.timers.filter((row) => isPlainObject(row) && row['endedAt'] === null).count(),
  ).subscribe({
    next: (count) => take(count > 0),
    // A store that cannot be read has no timers to show; everything else says so already.
    error: () => take(false),
  })
  return () => watching.unsubscribe()
}
