import { describe, expect, it } from 'vitest'
import type { BraceEndPlan, BracePlan } from '../../src/core/boxPlan.ts'
import {
  addBrace,
  changeBrace,
  changeBraceEnd,
  moveBrace,
  removeBrace,
  startBracing,
} from '../../src/record/changes/braces.ts'
import { editDocument } from '../../src/record/edit.ts'
import { inOrder } from '../../src/record/order.ts'
import { rangeOf } from '../../src/record/problem.ts'
import { takeBack, undoable } from '../../src/record/undo.ts'
import { beginSteel, countedIds, edited, metaWith, valueIn } from './fixture.ts'

const end: BraceEndPlan = {
  stops: 'rimAt',
  side: 'bass',
  xMm: 120,
  yMm: -150,
  braceId: null,
  letInMm: 2,
  taper: 'scoop',
  taperMm: 60,
  endHeightMm: 2,
}
const brace: Omit<BracePlan, 'order'> = {
  plate: 'top',
  kind: 'ladder',
  twin: false,
  from: end,
  to: { ...end, side: 'treble', yMm: 150 },
  widthMm: 8,
  heightMm: 14,
  underside: 'dome',
  archRadiusMm: 8000,
  lapped: false,
}
const A = 'aaaaaaaa-1111-4000-8000-000000000001'
const B = 'aaaaaaaa-1111-4000-8000-000000000002'
const C = 'aaaaaaaa-1111-4000-8000-000000000003'

/** A fresh instrument with no braces, whatever its model has. */
function bare(newId: () => string) {
  let bundle = beginSteel(newId)
  for (const plate of ['top', 'back'] as const) bundle = edited(bundle, startBracing(plate, []), metaWith(newId))
  return bundle
}
const idsOf = (bundle: ReturnType<typeof bare>) => inOrder(bundle.row.doc.plan.bracing.braces).map(([id]) => id)

describe('braces', () => {
  it('are added last, moved, changed and taken away, each one change a maker can take back', () => {
    const newId = countedIds()
    const begun = bare(newId)
    const two = edited(edited(begun, addBrace(A, brace), metaWith(newId)), addBrace(B, brace), metaWith(newId))
    expect(idsOf(two)).toEqual([A, B])
    const moved = edited(two, moveBrace(B, A), metaWith(newId))
    expect(idsOf(moved)).toEqual([B, A])
    const changed = edited(moved, changeBrace(A, { twin: true }), metaWith(newId))
    const ended = edited(changed, changeBraceEnd(A, 'to', { xMm: 130 }), metaWith(newId))
    expect(ended.row.doc.plan.bracing.braces[A]).toMatchObject({ twin: true, from: { xMm: 120 }, to: { xMm: 130 } })
    expect(ended.changes.at(-1)?.path).toEqual(['doc', 'plan', 'bracing', 'braces', A, 'to', 'xMm'])
    const { undo } = undoable(ended.changes, [])
    const back = valueIn(takeBack(ended.row, ended.changes, [], undo?.gesture ?? '', metaWith(newId)))
    expect(back.row.doc).toEqual(changed.row.doc)
    expect(idsOf(edited(ended, removeBrace(A), metaWith(newId)))).toEqual([B])
  })

  it('that stopped at one taken away stop where they were entered', () => {
    const newId = countedIds()
    let bundle = edited(bare(newId), addBrace(A, brace), metaWith(newId))
    bundle = edited(
      bundle,
      addBrace(B, { ...brace, to: { ...end, stops: 'brace', braceId: A, xMm: 200 } }),
      metaWith(newId),
    )
    const { row } = edited(bundle, removeBrace(A), metaWith(newId))
    expect(row.doc.plan.bracing.braces[B]?.to).toMatchObject({ stops: 'here', braceId: null, xMm: 200 })
  })

  it('of one plate are laid out anew in one change, those of the other stay', () => {
    const newId = countedIds()
    let bundle = edited(bare(newId), addBrace(A, { ...brace, plate: 'back' }), metaWith(newId))
    bundle = edited(bundle, addBrace(B, brace), metaWith(newId))
    const anew = edited(bundle, startBracing('top', [{ id: C, brace }]), metaWith(newId))
    expect(idsOf(anew)).toEqual([C, A])
    const { undo } = undoable(anew.changes, [])
    const back = valueIn(takeBack(anew.row, anew.changes, [], undo?.gesture ?? '', metaWith(newId)))
    expect(back.row.doc).toEqual(bundle.row.doc)
    expect(
      idsOf(edited(anew, startBracing('back', [{ id: B, brace: { ...brace, plate: 'back' } }]), metaWith(newId))),
    ).toEqual([C, B])
  })

  it('keep a figure beyond its range out, and the field is named', () => {
    const newId = countedIds()
    const { row } = edited(bare(newId), addBrace(A, brace), metaWith(newId))
    const answer = editDocument(row, [], changeBraceEnd(A, 'from', { xMm: 5000 }), metaWith(newId))
    if (answer.ok) throw new Error('was taken')
    expect(answer.problem).toMatchObject({
      field: `plan.bracing.braces.${A}.from.xMm`,
      detail: { kind: 'range', range: { minMm: -20, maxMm: 820 } },
    })
  })

  it('have ranges of their own for the brace and for its ends', () => {
    expect(rangeOf(`plan.bracing.braces.${A}.widthMm`)).toMatchObject({ minMm: 1, maxMm: 60 })
    expect(rangeOf(`plan.bracing.braces.${A}.to.letInMm`)).toMatchObject({ minMm: 0, maxMm: 15 })
    expect(rangeOf(`plan.bracing.braces.${A}.to.kind`)).toBeNull()
  })
})
