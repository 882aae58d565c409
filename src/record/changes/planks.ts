import type { PlankPlan } from '../../core/woodPlan.ts'
import type { CommissionRecord } from '../commission.ts'
import type { Recipe } from '../edit.ts'
import { placeBefore } from '../order.ts'

type PlankValues = Omit<PlankPlan, 'order'>

/** Adds a plank in hand as the last; `id` is a fresh uuid. */
export function addPlank(id: string, plank: PlankValues): Recipe<CommissionRecord> {
  return ({ doc }) => {
    const { planks } = doc.plan.cutting
    planks[id] = { ...plank, order: '' }
    placeBefore(planks, id, null)
  }
}

export function removePlank(id: string): Recipe<CommissionRecord> {
  return ({ doc }) => {
    delete doc.plan.cutting.planks[id]
  }
}

/** Sets some values of one plank; an id that is not there changes nothing. */
export function changePlank(id: string, values: Partial<PlankValues>): Recipe<CommissionRecord> {
  return ({ doc }) => {
    const plank = doc.plan.cutting.planks[id]
    if (plank !== undefined) Object.assign(plank, values)
  }
}
