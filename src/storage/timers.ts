import { liveQuery } from 'dexie'
import type { Result } from '../record/result.ts'
import { needsNotice, readTimer, type Timer } from '../record/timer.ts'
import type { Database } from './database.ts'
import { reopening, writeDurably, type WriteProblem } from './writeDurably.ts'

/** Ended timers are only kept so that every tab learns of it. */
const KEPT_DAYS = 30
const MS_PER_DAY = 86_400_000

/** Every timer that can be read and has not been ended; a row that cannot be read stays where it is, for the rescue file. */
export async function readTimers(database: Database): Promise<readonly Timer[]> {
  const rows = await reopening(database, () => database.dexie.timers.toArray())
  return rows.flatMap((row) => {
    const timer = readTimer(row)
    return timer === null || timer.endedAt !== null ? [] : [timer]
  })
}

/** Calls back with the timers now and whenever any tab has written to one. Gives back how to stop. */
export function watchTimers(
  database: Database,
  take: (timers: readonly Timer[]) => void,
  fail: (detail: string) => void,
): () => void {
  const watching = liveQuery(() => readTimers(database)).subscribe({
    next: take,
    error: (fault: unknown) => fail(fault instanceof Error ? fault.name : 'unknown'),
  })
  return () => watching.unsubscribe()
}

/** Stores a timer as it stands; one that another tab has ended meanwhile stays ended. Long ended ones are taken out with it. */
export function putTimer(database: Database, timer: Timer, now: string): Promise<Result<Timer, WriteProblem>> {
  const { timers } = database.dexie
  return writeDurably(database, [timers], async () => {
    const stored = readTimer(await timers.get(timer.id))
    const kept = stored !== null && stored.endedAt !== null ? stored : timer
    await timers.put(kept)
    const old = new Date(Date.parse(now) - KEPT_DAYS * MS_PER_DAY).toISOString()
    await timers
      .where('endedAt')
      .below(old)
      .filter((row) => readTimer(row) !== null)
      .delete()
    return kept
  })
}

/** Changes a stored timer; null, and nothing written, where it is not there or cannot be read. */
export function changeTimer(
  database: Database,
  id: string,
  change: (timer: Timer) => Timer,
): Promise<Result<Timer | null, WriteProblem>> {
  const { timers } = database.dexie
  return writeDurably(database, [timers], async () => {
    const stored = readTimer(await timers.get(id))
    if (stored === null) return null
    const changed = change(stored)
    await timers.put(changed)
    return changed
  })
}

/** True for the one tab that is to give notice of a timer that ran out. The clock is read inside: tabs come here one after another. */
export async function claimNotice(
  database: Database,
  id: string,
  now: () => string,
): Promise<Result<boolean, WriteProblem>> {
  const { timers } = database.dexie
  return writeDurably(database, [timers], async () => {
    const stored = readTimer(await timers.get(id))
    const moment = now()
    if (stored === null || !needsNotice(stored, moment)) return false
    await timers.put({ ...stored, noticedAt: moment })
    return true
  })
}
