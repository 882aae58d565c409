import { describe, expect, it } from 'vitest'
import { beginCommission, beginShop, duplicateCommission } from '../../src/record/changes/begin.ts'
import { removePattern, renamePattern, savePattern } from '../../src/record/changes/patterns.ts'
import { addOwnStage, setStageDetail } from '../../src/record/changes/stages.ts'
import type { CommissionDoc } from '../../src/record/commission.ts'
import { editDocument } from '../../src/record/edit.ts'
import { inOrder } from '../../src/record/order.ts'
import { stagesInHand } from '../../src/record/stageInHand.ts'
import { takeBack, undoable } from '../../src/record/undo.ts'
import { STARTING_SHOP } from '../../src/state/shopStore.ts'
import { beginSteel, countedIds, edited, metaWith, STEEL_BEGINNING, valueIn } from './fixture.ts'

const newId = countedIds('d')
const own = newId()
const begun = edited(beginSteel(newId), addOwnStage(own, 'Photograph it', null), metaWith(newId))
const [bend = ''] = inOrder(begun.row.doc.stages).map(([id]) => id)
const bundle = edited(begun, setStageDetail(own, 'after', [bend]), metaWith(newId))
/** What a building order says, told without ids. */
const said = ({ stages, family }: Pick<CommissionDoc, 'stages' | 'family'>) => {
  const inHand = stagesInHand({ stages, family })
  return inHand.map(({ key, title, after }) => ({
    key,
    title,
    after: after.map((id) => inHand.findIndex((one) => one.id === id)),
  }))
}

describe('building orders the shop keeps', () => {
  const shop = valueIn(beginShop(STARTING_SHOP, metaWith(newId)))
  const patternId = newId()
  const saved = valueIn(
    editDocument(
      shop.row,
      shop.changes,
      savePattern(patternId, 'Mine', 'steelString', bundle.row.doc.stages, newId),
      metaWith(newId),
    ),
  )
  const pattern = saved.row.doc.patterns[patternId]!

  it('say what the instrument’s says, under ids of their own', () => {
    expect(said(pattern)).toEqual(said(bundle.row.doc))
    const ids = new Set(Object.keys(bundle.row.doc.stages))
    expect(Object.keys(pattern.stages).some((id) => ids.has(id))).toBe(false)
  })

  it('begin an instrument, and a copy of that one, each with ids of its own', () => {
    const next = valueIn(beginCommission({ ...STEEL_BEGINNING, stages: pattern.stages }, metaWith(newId)))
    const copy = valueIn(duplicateCommission(next.row, { number: '26-9', title: '' }, metaWith(newId)))
    expect(said(next.row.doc)).toEqual(said(bundle.row.doc))
    expect(said(copy.row.doc)).toEqual(said(bundle.row.doc))
    const all = [pattern.stages, next.row.doc.stages, copy.row.doc.stages].flatMap((stages) => Object.keys(stages))
    expect(new Set(all).size).toBe(all.length)
  })

  it('are renamed and removed, and come back', () => {
    const renamed = valueIn(
      editDocument(saved.row, saved.changes, renamePattern(patternId, 'Heel first, my way'), metaWith(newId)),
    )
    expect(renamed.row.doc.patterns[patternId]?.name).toBe('Heel first, my way')
    const removed = valueIn(editDocument(renamed.row, [], removePattern(patternId), metaWith(newId)))
    expect(removed.row.doc.patterns).toEqual({})
    const log = [...shop.changes, ...saved.changes, ...renamed.changes, ...removed.changes]
    const gesture = undoable(log, []).undo?.gesture ?? ''
    const back = valueIn(takeBack(removed.row, log, [], gesture, metaWith(newId)))
    expect(back.row.doc.patterns).toEqual(renamed.row.doc.patterns)
    expect(editDocument(removed.row, [], renamePattern(patternId, 'x'), metaWith(newId))).toMatchObject({
      value: { changes: [] },
    })
  })

  it('need a name', () => {
    expect(editDocument(saved.row, [], renamePattern(patternId, ''), metaWith(newId))).toMatchObject({
      ok: false,
      problem: { field: `patterns.${patternId}.name` },
    })
  })
})
