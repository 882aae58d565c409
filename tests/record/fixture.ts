import { type Beginning, beginCommission } from '../../src/record/changes/begin.ts'
import type { CommissionRecord } from '../../src/record/commission.ts'
import type { Bundle } from '../../src/record/document.ts'
import { editDocument, type EditMeta, type Recipe } from '../../src/record/edit.ts'
import type { Result } from '../../src/record/result.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'

export const DEVICE = 'dddddddd-0000-4000-8000-000000000001'

/** Ids that count up, so that a failing run can be repeated. */
export function countedIds(series = 'a'): () => string {
  let count = 0
  return () => {
    count += 1
    return `${series.repeat(8)}-0000-4000-8000-${count.toString(16).padStart(12, '0')}`
  }
}

export const metaWith = (newId: () => string, gesture = newId()): EditMeta => ({
  deviceId: DEVICE,
  at: '2026-03-14T09:26:53.000Z',
  gesture,
  newId,
})

export const STEEL_BEGINNING: Beginning = {
  number: '26-007',
  title: 'Meadow fourteen-fret',
  family: 'steelString',
  model: { modelId: STEEL_STRING.id, name: STEEL_STRING.name, plan: STEEL_STRING.plan },
  plan: STEEL_STRING.plan,
  stages: ['bendSides', 'glueBlocks', 'radiusRim'],
  brief: { client: 'Odile Varnham', promisedOn: '2026-11-30' },
}

export function valueIn<Value, Problem>(result: Result<Value, Problem>): Value {
  if (!result.ok) throw new Error(`refused: ${JSON.stringify(result.problem)}`)
  return result.value
}

export const beginSteel = (newId: () => string): Bundle => valueIn(beginCommission(STEEL_BEGINNING, metaWith(newId)))

/** The bundle after one named change. */
export function edited(bundle: Bundle, recipe: Recipe<CommissionRecord>, meta: EditMeta): Bundle {
  const { row, changes } = valueIn(editDocument(bundle.row, bundle.changes, recipe, meta))
  return { row, changes: [...bundle.changes, ...changes], facts: bundle.facts }
}
