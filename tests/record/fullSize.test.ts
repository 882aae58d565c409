import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { STARTING_SHOP } from '../../src/state/shopStore.ts'
import { bundleOfFile, readBundle, readCommissionFile } from '../../src/record/door.ts'
import { stagesDone } from '../../src/record/facts.ts'
import { lastPrints, recordPrint } from '../../src/record/printed.ts'
import { recentGestures } from '../../src/record/recentGestures.ts'
import { undoable } from '../../src/record/undo.ts'
import { beginSteel, countedIds, metaWith, valueIn } from './fixture.ts'

// oxlint-disable-next-line typescript/no-explicit-any -- an older shape, known here alone
type Json = Record<string, any>
const frozen = (): Json =>
  JSON.parse(readFileSync(new URL('../records/v4-commission.json', import.meta.url), 'utf8')) as Json

describe('a record of version 4', () => {
  it('keeps every value of its plan, its log and its facts', () => {
    const old = frozen()
    const file = valueIn(readCommissionFile(frozen()))
    expect(file.plan).toEqual(old['plan'])
    expect(file.facts).toEqual(old['facts'])
    expect(file.changes.map(({ path }) => path)).toEqual((old['changes'] as Json[]).map(({ path }) => path as unknown))
  })

  it('gets a shop with the usual gear and a true printer', () => {
    const { shop } = valueIn(readCommissionFile(frozen()))
    expect(shop.jigs).toEqual(STARTING_SHOP.jigs)
    expect(shop.printing).toEqual(STARTING_SHOP.printing)
  })

  it('widens a stored shop, and the shop its log began with', () => {
    const { jigs: _jigs, printing: _printing, ...before } = STARTING_SHOP
    const id = '50000000-0000-4000-8000-000000000001'
    const row = { id, kind: 'shop', schemaVersion: 4, seen: {}, deletedAt: null, doc: before }
    const { bundle } = valueIn(readBundle('shop', { row, changes: [], facts: [] }))
    expect(bundle.row.doc).toEqual(STARTING_SHOP)
  })
})

describe('papers that left', () => {
  const { row, changes, facts } = beginSteel(countedIds('b'))
  const newId = countedIds('c')
  const print = (papers: { paper: string; print: string }[], revision: string, at: string) =>
    recordPrint(row, revision, papers, { ...metaWith(newId), at })
  const first = print([{ paper: 'label', print: 'AAAAAA' }], 'R00001', '2026-03-15T08:00:00.000Z')
  const second = print(
    [
      { paper: 'label', print: 'BBBBBB' },
      { paper: 'drawings', print: 'CCCCCC' },
    ],
    'R00002',
    '2026-03-16T08:00:00.000Z',
  )
  const all = [...facts, first, { ...second, seq: first.seq + 1 }]

  it('are known by the last time each left', () => {
    const last = lastPrints(all)
    expect([...last.keys()].toSorted()).toEqual(['drawings', 'label'])
    expect(last.get('label')).toMatchObject({ print: 'BBBBBB', revision: 'R00002', at: '2026-03-16T08:00:00.000Z' })
  })

  it('are neither undone, nor an action on the record, nor a stage', () => {
    expect(undoable(changes, all)).toEqual(undoable(changes, facts))
    expect(recentGestures(changes, all, 20)).toEqual(recentGestures(changes, facts, 20))
    expect(stagesDone(all).size).toBe(stagesDone(facts).size)
  })

  it('are read back from a file, and damaged ones are refused by name', () => {
    const old: Json = frozen()
    const bundle = bundleOfFile(valueIn(readCommissionFile(frozen())))
    const seq = Math.max(...Object.values(bundle.row.seen)) + 1
    const fact = { ...first, docId: bundle.row.id, seq }
    expect(valueIn(readCommissionFile({ ...old, facts: [...(old['facts'] as Json[]), fact] })).facts).toContainEqual(
      fact,
    )
    const bad = { ...fact, papers: [{ paper: 'label' }] }
    const refused = readCommissionFile({ ...old, facts: [...(old['facts'] as Json[]), bad] })
    expect(refused.ok).toBe(false)
    if (!refused.ok) expect(JSON.stringify(refused.problem)).toContain('papers')
  })
})
