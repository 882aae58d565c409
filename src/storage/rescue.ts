import type { Database } from './database.ts'
import { reopening } from './writeDurably.ts'

/** The format a rescue file names itself by. */
export const RESCUE_FILE = 'ribwright-rescue'

/**
 * Everything on this device as one JSON text, row by row and unread, with `unsaved` from memory beside it: for the download after an
 * unexpected fault. A table that cannot be read is named with the reason; this never throws.
 */
export async function collectEverything(database: Database, savedAt: string, unsaved: unknown = null): Promise<string> {
  const tables: Record<string, unknown> = {}
  for (const name of ['documents', 'changes', 'facts', 'drafts', 'device', 'setAside', 'timers'] as const) {
    try {
      tables[name] = await reopening(database, () => database.dexie[name].toArray())
    } catch (fault) {
      tables[name] = { notRead: fault instanceof Error ? fault.name : 'unknown' }
    }
  }
  return JSON.stringify({ format: RESCUE_FILE, savedAt, unsaved, ...tables }, null, 1)
}
