import { asBuilt, roundOf } from '../../src/core/asBuilt.ts'
import type { Reading } from '../../src/core/asBuilt/reading.ts'
import type { Plan } from '../../src/core/plan.ts'
import type { Locks } from '../../src/device/writerLock.ts'
import type { Database } from '../../src/storage/database.ts'
import { openWorkshop, type Workshop } from '../../src/state/workshop.ts'
import { countedIds } from '../record/fixture.ts'
import { databaseOn } from '../storage/fixture.ts'

type Grant = (lock: Lock | null) => unknown

/** Locks shared by several tabs of a test: named, exclusive, first come first served. */
export function sharedLocks(): NonNullable<Locks> {
  const held = new Map<string, Promise<unknown>>()
  const request = async (name: string, options: LockOptions, grant: Grant): Promise<unknown> => {
    if (options.ifAvailable && held.has(name)) return grant(null)
    for (let before = held.get(name); before !== undefined; before = held.get(name)) {
      const aborted = new Promise<never>((_, fail) =>
        options.signal?.addEventListener('abort', () => fail(new DOMException('left', 'AbortError'))),
      )
      await Promise.race([before, aborted])
    }
    const done = Promise.resolve(grant({ name, mode: 'exclusive' }))
    const settled = done.catch(() => undefined)
    held.set(name, settled)
    void settled.then(() => held.get(name) === settled && held.delete(name))
    return done
  }
  return { request } as NonNullable<Locks>
}

export interface Tab {
  readonly workshop: Workshop<{ depthMm: number }>
  readonly database: Database
  readonly computed: () => number
}

/** One tab of the program on a disk. */
export async function openTab(
  disk: IDBFactory,
  given: { locks?: Locks | undefined; series?: string } = {},
): Promise<Tab> {
  const { series = 'f' } = given
  const locks = 'locks' in given ? given.locks : sharedLocks()
  const database = databaseOn(disk)
  let computed = 0
  let second = 0
  const workshop = await openWorkshop({
    database,
    locks,
    newId: countedIds(series),
    clock: { now: () => new Date(Date.UTC(2026, 2, 14, 9, 0, (second += 1))).toISOString() },
    build: (plan: Plan, readings: readonly Reading[]) => {
      computed += 1
      const built = asBuilt(plan, readings, () => true)
      return { ...built, computed: { depthMm: built.plan.rim.depthAtTailMm } }
    },
    prepareReadings: () => null,
    roundOf,
    startingTolerance: () => null,
    onNotice: () => undefined,
    requestPersistence: () => Promise.resolve('kept'),
  })
  return { workshop, database, computed: () => computed }
}

/** Makes every write to documents fail until told otherwise, as on a full disk. */
export function fillDisk(database: Database): () => void {
  const refuse = (): never => {
    throw Object.assign(new Error('full'), { name: 'AbortError', inner: { name: 'QuotaExceededError' } })
  }
  const { documents } = database.dexie
  documents.hook('creating', refuse)
  documents.hook('updating', refuse)
  return () => {
    documents.hook('creating').unsubscribe(refuse)
    documents.hook('updating').unsubscribe(refuse)
  }
}
