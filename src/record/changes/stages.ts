import type { CommissionRecord } from '../commission.ts'
import type { Recipe } from '../edit.ts'
import { placeBefore } from '../order.ts'
import type { StageKey } from '../patterns/stages.ts'

/** Puts a stage before another in this instrument's building order; null: last. */
export function moveStage(id: string, beforeId: string | null): Recipe<CommissionRecord> {
  return ({ doc }) => placeBefore(doc.stages, id, beforeId)
}

/** Takes a stage out of this instrument's building order. What was signed off for it stays among the facts. */
export function skipStage(id: string): Recipe<CommissionRecord> {
  return ({ doc }) => {
    delete doc.stages[id]
  }
}

/** Adds a stage before another (null: last); `id` is a fresh uuid, or the one it had before it was skipped. */
export function addStage(id: string, key: StageKey, beforeId: string | null): Recipe<CommissionRecord> {
  return ({ doc }) => {
    doc.stages[id] = { order: '', key }
    placeBefore(doc.stages, id, beforeId)
  }
}
