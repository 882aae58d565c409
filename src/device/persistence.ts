/** Whether the browser promises to keep what is stored: 'kept', 'mayBeCleared', or 'unknown' where it cannot be asked. */
export type PersistenceAnswer = 'kept' | 'mayBeCleared' | 'unknown'

/** Asks the browser to keep what is stored on this device. Never throws. */
export async function requestPersistence(): Promise<PersistenceAnswer> {
  try {
    if (typeof navigator === 'undefined' || typeof navigator.storage?.persist !== 'function') return 'unknown'
    return (await navigator.storage.persist()) ? 'kept' : 'mayBeCleared'
  } catch {
    return 'unknown'
  }
}
