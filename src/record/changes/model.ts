import type { Draft } from 'immer'
import type { Plan } from '../../core/plan.ts'
import { PLAN_FIELDS, type PlanField } from '../../core/planFields.ts'
import { type CommissionDoc, type CommissionRecord, type ModelRecord, SCHEMA_VERSION } from '../commission.ts'
import type { Bundle } from '../document.ts'
import type { EditMeta, Recipe } from '../edit.ts'
import type { ModelDoc } from '../houseModel.ts'
import { OWN_FIELDS, planValue, planWithFields } from '../modelDifferences.ts'
import type { DoorProblem } from '../problem.ts'
import type { Result } from '../result.ts'
import { beginDocument } from './begin.ts'
import { setField } from './setField.ts'

/** What an instrument keeps of the model it goes by. */
export interface TakenModel {
  /** The model's own document; null for one that never had any. */
  readonly modelId: string | null
  readonly name: string
  readonly plan: Plan
}

/** Sets one field of an instrument's plan to what it is in its model: as taken, or of today. */
export function takeFromModel(field: PlanField, from: Plan): Recipe<CommissionRecord> {
  return setField(`plan.${field}`, structuredClone(planValue(from, field)))
}

/** Sets every field but the instrument's own to its model's, and keeps the model as it is now as the one taken. */
export function takeAllFromModel(model: TakenModel): Recipe<CommissionRecord> {
  const steps = PLAN_FIELDS.filter((field) => !OWN_FIELDS.has(field)).map((field) => takeFromModel(field, model.plan))
  return (draft) => {
    for (const step of steps) step(draft)
    goByModel(model)(draft)
  }
}

/** Lets an instrument go by a model as it is now; its plan stays. */
export function goByModel({ modelId, name, plan }: TakenModel): Recipe<CommissionRecord> {
  return ({ doc }) => {
    doc.modelAsTaken = structuredClone({ modelId, name, plan }) as Draft<CommissionDoc>['modelAsTaken']
  }
}

/** Gives an instrument's plan to a model, whole, but for what is the instrument's own. */
export function giveToModel(plan: Plan): Recipe<ModelRecord> {
  return ({ doc }) => {
    const given = planWithFields(plan, doc.plan, [...OWN_FIELDS])
    doc.plan = structuredClone(given) as Draft<ModelDoc>['plan']
    doc.demo = false
  }
}

/** Gives a model another name; from then on it is the maker's. */
export function renameModel(name: string): Recipe<ModelRecord> {
  return ({ doc }) => {
    doc.name = name
    doc.demo = false
  }
}

/** A new model with its first change; `id` is a fresh uuid, or the one it comes with. */
export function beginModel(id: string, doc: ModelDoc, meta: EditMeta): Result<Bundle<ModelRecord>, DoorProblem> {
  return beginDocument<ModelRecord>(
    { id, kind: 'model', schemaVersion: SCHEMA_VERSION, seen: {}, deletedAt: null, doc: structuredClone(doc) },
    meta,
  )
}
