import type { ShopRecord } from '../commission.ts'
import type { Recipe } from '../edit.ts'
import type { Tap } from '../tapSchema.ts'

/** Keeps what a finished box was heard to sound, in place of what was kept of the same instrument before. */
export function keepTap(instrumentId: string, tap: Tap): Recipe<ShopRecord> {
  return ({ doc }) => {
    doc.taps[instrumentId] = { ...tap }
  }
}

export function dropTap(instrumentId: string): Recipe<ShopRecord> {
  return ({ doc }) => {
    delete doc.taps[instrumentId]
  }
}
