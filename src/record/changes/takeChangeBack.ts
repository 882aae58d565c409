import { aboutNumber, type NumberKey } from '../../core/catalogue.ts'
import type { Plan } from '../../core/plan.ts'
import { PLAN_FIELDS, type PlanField } from '../../core/planFields.ts'
import type { CommissionRecord } from '../commission.ts'
import type { Recipe } from '../edit.ts'
import { planValue } from '../modelDifferences.ts'
import { sameJson } from '../path.ts'
import { takeFromModel } from './model.ts'

/** Where the stations stand is how a number is read, not what is asked of the wood. */
const READ_BY: ReadonlySet<PlanField> = new Set(['rim.stationStepMm'])

/** The fields that any of these numbers hangs on and that two plans have otherwise, in the order of the plan. Collections are one field. */
export function fieldsBehind(numbers: readonly NumberKey[], then: Plan, now: Plan): readonly PlanField[] {
  const moving = new Set(numbers.flatMap((key) => aboutNumber(key).hangsOn))
  return PLAN_FIELDS.filter(
    (field) => moving.has(field) && !READ_BY.has(field) && !sameJson(planValue(then, field), planValue(now, field)),
  )
}

/** Sets fields of the plan back to what another plan has in them. */
export function takeChangeBack(fields: readonly PlanField[], then: Plan): Recipe<CommissionRecord> {
  const steps = fields.map((field) => takeFromModel(field, then))
  return (draft) => {
    for (const step of steps) step(draft)
  }
}
