import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { adoptFile, adoptFileAsNew } from '../../src/record/adopt.ts'
import type { CommissionFile } from '../../src/record/commission.ts'
import { bundleOfFile, readBundle, readCommissionFile } from '../../src/record/door.ts'
import { stagesDone } from '../../src/record/facts.ts'
import { replayLog } from '../../src/record/log.ts'
import { undoable } from '../../src/record/undo.ts'
import { countedIds, metaWith, valueIn } from './fixture.ts'

const text = readFileSync(new URL('../records/v1-commission.json', import.meta.url), 'utf8')
const file = (): CommissionFile => valueIn(readCommissionFile(JSON.parse(text)))
const sameShop = { shop: file().shop.tolerances, starting: () => null }
const meta = () => metaWith(countedIds('e'))

describe('a file taken in', () => {
  it('is what it was, log and facts included', () => {
    expect(valueIn(adoptFile(file(), sameShop, meta()))).toEqual(bundleOfFile(file()))
  })

  it('without a log gets one that tells what it holds, and nothing to undo', () => {
    const { row, changes, facts } = valueIn(
      adoptFile({ ...file(), changes: [], facts: [], seen: {} }, sameShop, meta()),
    )
    expect(changes).toHaveLength(1)
    expect(replayLog(changes, facts)).toEqual(row)
    expect(undoable(changes, facts).undo).toBeNull()
  })

  it('mended by hand gets one more change, which can be taken back', () => {
    const mended = file()
    mended.plan.rim.depthAtTailMm = 99
    const { row, changes, facts } = valueIn(adoptFile(mended, sameShop, meta()))
    expect(row.doc.plan.rim.depthAtTailMm).toBe(99)
    expect(changes).toHaveLength(mended.changes.length + 1)
    expect(replayLog(changes, facts)).toEqual(row)
    expect(undoable(changes, facts).undo?.gesture).toBe(changes.at(-1)?.gesture)
  })

  it('with a log that cannot be followed keeps it, but cannot be undone into it', () => {
    const broken = file()
    broken.changes = broken.changes.map((one, i) => (i === 2 ? { ...one, path: ['doc', 'nowhere', 'at'] } : one))
    const { row, changes, facts } = valueIn(adoptFile(broken, sameShop, meta()))
    expect(row.doc).toEqual(bundleOfFile(file()).row.doc)
    expect(undoable(changes, facts).undo).toBeNull()
    expect(readBundle('commission', { row, changes, facts }).ok).toBe(true)
  })

  it('keeps the tolerances it was made with, where the shop here has others', () => {
    const here = { shop: { 'sides.depthAtNeckMm': 3 }, starting: () => 0.7 } as const
    const made = { ...file(), tolerances: {} }
    made.shop = { ...made.shop, tolerances: { 'body.lengthMm': 1 } }
    const { row, changes, facts } = valueIn(adoptFile({ ...made, changes: [], facts: [] }, here, meta()))
    expect(row.doc.tolerances).toEqual({ 'body.lengthMm': 1, 'sides.depthAtNeckMm': 0.7 })
    expect(replayLog(changes, facts)).toEqual(row)
  })

  it('beside one that is here has ids of its own everywhere, and tells the same story', () => {
    const { row, changes, facts } = valueIn(adoptFileAsNew({ ...file(), demo: true }, '26-020', sameShop, meta()))
    const old = bundleOfFile(file())
    expect(row.doc).toEqual({ ...old.row.doc, number: '26-020', demo: false })
    const oldIds = new Set([old.row.id, ...old.changes.map((one) => one.id), ...old.facts.map((one) => one.id)])
    const entries = JSON.stringify({ id: row.id, changes, facts })
    for (const id of oldIds) expect(entries).not.toContain(id)
    expect(readBundle('commission', { row, changes, facts }).ok).toBe(true)
    expect(replayLog(changes, facts)).toEqual(row)
    expect([...stagesDone(facts).keys()]).toEqual([...stagesDone(old.facts).keys()])
  })
})
