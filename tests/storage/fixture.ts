import Dexie from 'dexie'
import { IDBFactory, IDBKeyRange } from 'fake-indexeddb'
import { type Database, openDatabase } from '../../src/storage/database.ts'

// Live queries ask for the surroundings' own IndexedDB before they run at all.
Dexie.dependencies.indexedDB = new IDBFactory()
Dexie.dependencies.IDBKeyRange = IDBKeyRange

/** A fresh disk: databases opened on it by the same name are two connections to one store, as two tabs are. */
export const freshDisk = (): IDBFactory => new IDBFactory()

const names = new Map<IDBFactory, string>()

/** The one database of a disk; live queries tell databases apart by name alone. */
export function nameOn(disk: IDBFactory): string {
  const name = names.get(disk) ?? `disk ${names.size + 1}`
  names.set(disk, name)
  return name
}

export const databaseOn = (disk: IDBFactory): Database => openDatabase(nameOn(disk), { indexedDB: disk, IDBKeyRange })

/** Waits until something holds, at most two seconds. */
export async function until(holds: () => boolean): Promise<void> {
  for (let left = 400; left > 0; left -= 1) {
    if (holds()) return
    await new Promise((done) => setTimeout(done, 5))
  }
  throw new Error('waited in vain')
}
