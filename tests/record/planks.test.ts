import { describe, expect, it } from 'vitest'
import type { Plan } from '../../src/core/plan.ts'
import { addPlank, changePlank, removePlank } from '../../src/record/changes/planks.ts'
import { editDocument } from '../../src/record/edit.ts'
import { inOrder } from '../../src/record/order.ts'
import { rangeOf } from '../../src/record/problem.ts'
import { takeBack, undoable } from '../../src/record/undo.ts'
import { beginSteel, countedIds, edited, metaWith, valueIn } from './fixture.ts'

const plank: Omit<Plan['cutting']['planks'][string], 'order'> = {
  role: 'neck',
  lengthMm: 900,
  widthMm: 120,
  thicknessMm: 52,
}
const A = 'aaaaaaaa-1111-4000-8000-000000000001'
const B = 'aaaaaaaa-1111-4000-8000-000000000002'

/** A fresh instrument with no planks, whatever its model has. */
function bare(newId: () => string) {
  let bundle = beginSteel(newId)
  for (const id of Object.keys(bundle.row.doc.plan.cutting.planks))
    bundle = edited(bundle, removePlank(id), metaWith(newId))
  return bundle
}
const planksOf = (bundle: ReturnType<typeof bare>) => bundle.row.doc.plan.cutting.planks
const idsOf = (bundle: ReturnType<typeof bare>) => inOrder(planksOf(bundle)).map(([id]) => id)

describe('planks in hand', () => {
  it('are added last, changed and taken away, each one change a maker can take back', () => {
    const newId = countedIds()
    const one = edited(bare(newId), addPlank(B, plank), metaWith(newId))
    const two = edited(one, addPlank(A, { ...plank, role: 'top' }), metaWith(newId))
    expect(idsOf(two)).toEqual([B, A])
    expect(planksOf(two)[A]).toMatchObject({ role: 'top', lengthMm: 900, widthMm: 120, thicknessMm: 52 })
    const changed = edited(two, changePlank(B, { widthMm: 140 }), metaWith(newId))
    expect(planksOf(changed)[B]).toMatchObject({ ...plank, widthMm: 140 })
    expect(changed.changes.at(-1)?.path).toEqual(['doc', 'plan', 'cutting', 'planks', B, 'widthMm'])
    const { undo } = undoable(changed.changes, [])
    const back = valueIn(takeBack(changed.row, changed.changes, [], undo?.gesture ?? '', metaWith(newId)))
    expect(back.row.doc).toEqual(two.row.doc)
    expect(idsOf(edited(changed, removePlank(B), metaWith(newId)))).toEqual([A])
  })

  it('that are not there change nothing', () => {
    const newId = countedIds()
    const { row } = edited(bare(newId), addPlank(A, plank), metaWith(newId))
    for (const recipe of [changePlank(B, { widthMm: 140 }), removePlank(B)])
      expect(valueIn(editDocument(row, [], recipe, metaWith(newId))).row.doc).toEqual(row.doc)
  })

  it('keep a figure beyond its range out, and the field is named', () => {
    const newId = countedIds()
    const { row } = edited(bare(newId), addPlank(A, plank), metaWith(newId))
    const answer = editDocument(row, [], changePlank(A, { lengthMm: 6001 }), metaWith(newId))
    if (answer.ok) throw new Error('was taken')
    expect(answer.problem).toMatchObject({
      field: `plan.cutting.planks.${A}.lengthMm`,
      detail: { kind: 'range', range: { minMm: 20, maxMm: 6000 } },
    })
    expect(rangeOf(`plan.cutting.planks.${A}.role`)).toBeNull()
  })

  it('are forty at the most', () => {
    const newId = countedIds()
    let bundle = bare(newId)
    const idOf = (place: number) => `aaaaaaaa-2222-4000-8000-${String(place).padStart(12, '0')}`
    for (let place = 0; place < 40; place++) bundle = edited(bundle, addPlank(idOf(place), plank), metaWith(newId))
    expect(idsOf(bundle)).toHaveLength(40)
    expect(editDocument(bundle.row, [], addPlank(idOf(40), plank), metaWith(newId)).ok).toBe(false)
  })
})
