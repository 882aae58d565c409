import { describe, expect, it } from 'vitest'
import { beginCommission, duplicateCommission, nextFreeNumber } from '../../src/record/changes/begin.ts'
import { replayLog } from '../../src/record/log.ts'
import { beginSteel, countedIds, metaWith, STEEL_BEGINNING, valueIn } from './fixture.ts'

describe('a commission', () => {
  it('begins with the model as it was taken, its stages in order, and a log of one change', () => {
    const { row, changes } = beginSteel(countedIds())
    expect(row.doc.modelAsTaken?.plan).toEqual(row.doc.plan)
    expect(Object.values(row.doc.stages).map(({ key }) => key)).toEqual(['bendSides', 'glueBlocks', 'radiusRim'])
    expect(replayLog(changes)).toEqual(row)
  })

  it('is duplicated under another id, number and log, without the dates, and never as demo', () => {
    const newId = countedIds()
    const { row } = beginSteel(newId)
    const demo = { ...row, doc: { ...row.doc, demo: true, archivedOn: '2026-01-01' } }
    const copy = valueIn(duplicateCommission(demo, { number: '26-008', title: 'Twin' }, metaWith(newId)))
    expect(copy.row.id).not.toBe(row.id)
    expect(copy.row.doc).toMatchObject({
      number: '26-008',
      title: 'Twin',
      demo: false,
      archivedOn: null,
      plan: row.doc.plan,
    })
    expect(copy.row.doc.brief).toMatchObject({ client: 'Odile Varnham', promisedOn: null })
    expect(copy.changes).toHaveLength(1)
    expect(Object.keys(copy.row.doc.stages).some((id) => Object.hasOwn(row.doc.stages, id))).toBe(false)
  })

  it('that no schema would take is refused', () => {
    const { scale } = STEEL_BEGINNING.plan
    const plan = { ...STEEL_BEGINNING.plan, scale: { ...scale, lengthMm: 5 } }
    expect(beginCommission({ ...STEEL_BEGINNING, plan }, metaWith(countedIds()))).toMatchObject({
      ok: false,
      problem: { field: 'plan.scale.lengthMm' },
    })
  })

  it.each([
    ['26-007', ['26-007'], '26-008'],
    ['26-007', ['26-007', '26-008', '26-009'], '26-010'],
    ['26-099', [], '26-100'],
    ['No. 9 b', ['No. 9 b'], 'No. 10 b'],
    ['', [], ''],
    ['untold', [], 'untold'],
  ])('after %j with %j taken comes %j', (number, taken, next) => {
    expect(nextFreeNumber(number, taken)).toBe(next)
  })
})
