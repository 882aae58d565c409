import { createStore } from 'zustand/vanilla'
import type { Workshop } from '../state/workshop.ts'
import { openDatabase } from '../storage/database.ts'
import { collectEverything } from '../storage/rescue.ts'
import { saveFile } from '../device/saveFile.ts'

/** What has gone wrong outside of any view, or what another tab asks of this one. */
export interface FaultState {
  readonly kind: 'none' | 'unexpected' | 'newVersion' | 'blocked'
}

export const faults = createStore<FaultState>(() => ({ kind: 'none' }))

/** A browser says this when a layout took two rounds; nothing is wrong. */
const isHarmless = (message: string): boolean => message.startsWith('ResizeObserver loop')

/** Listens for what no view has caught: from here on it is said, and a copy of everything is offered. */
export function listenForFaults(): void {
  window.addEventListener('error', (event) => {
    if (!isHarmless(event.message)) faults.setState({ kind: 'unexpected' })
  })
  window.addEventListener('unhandledrejection', () => faults.setState({ kind: 'unexpected' }))
}

let workshop: Pick<Workshop<unknown>, 'collectEverything'> | null = null

/** From now on a copy of everything also holds what is in memory only. */
export function rescueFrom(opened: Pick<Workshop<unknown>, 'collectEverything'>): void {
  workshop = opened
}

/** Saves a copy of everything on this device, and in memory, as a file; works where nothing else does. */
export async function saveEverything(): Promise<void> {
  const savedAt = new Date().toISOString()
  const text = await (workshop?.collectEverything() ?? collectEverything(openDatabase(), savedAt))
  saveFile(`ribwright-everything-${savedAt.slice(0, 10)}.json`, text, 'application/json')
}
