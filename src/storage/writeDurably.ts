import type { Table } from 'dexie'
import { accept, type Result, refuse } from '../record/result.ts'
import type { Database } from './database.ts'

/**
 * diskFull        the device has no room left
 * closing         another tab brings a newer shape; reload
 * changedElsewhere  another tab has written to the same place in a log
 * gone            the document is no longer here
 * failed          anything else; `detail` is the browser's own name for it
 */
export interface WriteProblem {
  readonly code: 'diskFull' | 'closing' | 'changedElsewhere' | 'gone' | 'failed'
  readonly detail?: string
}

/** Thrown inside a transaction to end it without a trace, for a document that is not there. */
export class DocumentGone extends Error {
  override readonly name = 'DocumentGone'
}

/** Thrown inside a transaction to end it without a trace, where the place in the log is no longer free. */
export class PlaceTaken extends Error {
  override readonly name = 'PlaceTaken'
}

/**
 * The one way anything is written: all of `work` in one transaction, or nothing. It gives its answer only when the transaction is
 * complete. A connection lost in the background is opened anew and the work tried once more, so `work` must bear running twice.
 */
export async function writeDurably<Value>(
  database: Database,
  tables: readonly Table[],
  work: () => Promise<Value>,
): Promise<Result<Value, WriteProblem>> {
  if (database.isClosing()) return refuse({ code: 'closing' })
  try {
    return accept(await reopening(database, () => database.dexie.transaction('rw', [...tables], work)))
  } catch (fault) {
    return refuse(database.isClosing() ? { code: 'closing' } : problemOfFault(fault))
  }
}

/** Runs `work`; where the connection turns out to be lost, opens it anew and runs it once more. Also for reading. */
export async function reopening<Value>(database: Database, work: () => PromiseLike<Value>): Promise<Value> {
  try {
    return await work()
  } catch (fault) {
    if (database.isClosing() || !namesOf(fault).some((name) => LOST_CONNECTION.has(name))) throw fault
    database.dexie.close()
    await database.dexie.open()
    return await work()
  }
}

const LOST_CONNECTION: ReadonlySet<string> = new Set(['DatabaseClosedError', 'UnknownError', 'InvalidStateError'])

function problemOfFault(fault: unknown): WriteProblem {
  const names = namesOf(fault)
  if (names.includes('QuotaExceededError')) return { code: 'diskFull' }
  if (names.includes('DocumentGone')) return { code: 'gone' }
  if (names.includes('PlaceTaken') || names.includes('ConstraintError')) return { code: 'changedElsewhere' }
  return { code: 'failed', detail: names[0] ?? 'unknown' }
}

/** The names of a fault, of what caused it, and of what went wrong one by one in a bulk write; a full disk hides one level down. */
function namesOf(fault: unknown): string[] {
  const names: string[] = []
  const waiting: unknown[] = [fault]
  while (waiting.length > 0 && names.length < 20) {
    const one = waiting.shift()
    if (typeof one !== 'object' || one === null) continue
    const { name, inner, cause, failures } = one as Readonly<Record<string, unknown>>
    if (typeof name === 'string') names.push(name)
    waiting.push(inner, cause, ...(Array.isArray(failures) ? failures.slice(0, 3) : []))
  }
  return names
}
