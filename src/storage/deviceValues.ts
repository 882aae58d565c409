import * as z from 'zod/mini'
import type { Result } from '../record/result.ts'
import type { Database } from './database.ts'
import { reopening, writeDurably, type WriteProblem } from './writeDurably.ts'

const VALUES = {
  /** What this device calls itself in logs. */
  deviceId: z.uuid(),
  /** What the browser answered when asked to keep what is stored. */
  persistence: z.enum(['kept', 'mayBeCleared', 'unknown']),
  /** The demo was offered, and taken or not. */
  demoAnswer: z.enum(['taken', 'declined', 'removed']),
  /** A timer that runs out may be heard; may be told by the device itself. */
  timerSound: z.boolean(),
  timerNotices: z.boolean(),
} as const
export type DeviceKey = keyof typeof VALUES
export type DeviceValue<Key extends DeviceKey> = z.infer<(typeof VALUES)[Key]>

const deviceRow = z.object({ value: z.unknown() })

/** A value of this device; null where there is none, or none that can be read. */
export async function readDeviceValue<Key extends DeviceKey>(
  database: Database,
  key: Key,
): Promise<DeviceValue<Key> | null> {
  return valueIn(key, await reopening(database, () => database.dexie.device.get(key)))
}

function valueIn<Key extends DeviceKey>(key: Key, row: unknown): DeviceValue<Key> | null {
  const read = deviceRow.safeParse(row)
  const value = VALUES[key].safeParse(read.data?.value)
  return value.success ? (value.data as DeviceValue<Key>) : null
}

export function writeDeviceValue<Key extends DeviceKey>(
  database: Database,
  key: Key,
  value: DeviceValue<Key>,
): Promise<Result<null, WriteProblem>> {
  const { device } = database.dexie
  return writeDurably(database, [device], async () => {
    await device.put({ key, value })
    return null
  })
}

/** This device's own id, made at first use; two tabs that start together agree. Where it cannot be stored it holds for this visit. */
export async function ownDeviceId(database: Database, newId: () => string): Promise<string> {
  const { device } = database.dexie
  const fresh = newId()
  const stored = await writeDurably(database, [device], async () => {
    const known = valueIn('deviceId', await device.get('deviceId'))
    if (known === null) await device.put({ key: 'deviceId', value: fresh })
    return known ?? fresh
  })
  return stored.ok ? stored.value : fresh
}
