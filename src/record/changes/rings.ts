import type { RingPlan } from '../../core/plan.ts'
import type { CommissionRecord } from '../commission.ts'
import type { Recipe } from '../edit.ts'
import { placeBefore } from '../order.ts'

type RingValues = Omit<RingPlan, 'order'>

/** Adds a rosette ring as the last; `id` is a fresh uuid. */
export function addRing(id: string, ring: RingValues): Recipe<CommissionRecord> {
  return ({ doc }) => {
    const { rings } = doc.plan.rosette
    rings[id] = { ...ring, order: '' }
    placeBefore(rings, id, null)
  }
}

export function removeRing(id: string): Recipe<CommissionRecord> {
  return ({ doc }) => {
    delete doc.plan.rosette.rings[id]
  }
}

/** Puts a ring before another; null: last. */
export function moveRing(id: string, beforeId: string | null): Recipe<CommissionRecord> {
  return ({ doc }) => placeBefore(doc.plan.rosette.rings, id, beforeId)
}

/** Sets some values of one ring; an id that is not there changes nothing. */
export function changeRing(id: string, values: Partial<RingValues>): Recipe<CommissionRecord> {
  return ({ doc }) => {
    const ring = doc.plan.rosette.rings[id]
    if (ring !== undefined) Object.assign(ring, values)
  }
}
