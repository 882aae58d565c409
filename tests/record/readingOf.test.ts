import { describe, expect, it } from 'vitest'
import { asBuilt } from '../../src/core/asBuilt.ts'
import { compute } from '../../src/core/compute.ts'
import { ringsInOrder } from '../../src/core/instrument/rosette.ts'
import { allowsValue } from '../../src/record/allowsValue.ts'
import { measured, recordReading, readingsInUse, switchReading } from '../../src/record/bench/measured.ts'
import {
  askedOfBox,
  type Box,
  correctionOf,
  placeOfBox,
  readingOf,
  type ReadingSite,
} from '../../src/record/bench/readingOf.ts'
import { chainsOf, readingStanding } from '../../src/record/bench/readingStanding.ts'
import type { Fact } from '../../src/record/commission.ts'
import { readFact } from '../../src/record/door.ts'
import { withdraw } from '../../src/record/facts.ts'
import { beginSteel, countedIds, metaWith } from './fixture.ts'

const newId = countedIds('c')
const { row } = beginSteel(newId)
const { plan } = row.doc
let second = 0
const meta = () => ({ ...metaWith(newId), at: `2026-03-14T09:00:${String((second += 1)).padStart(2, '0')}.000Z` })
const box = (number: Box['number'], at = 0, side: Box['side'] = 'whole'): Box => ({ number, row: at, side })

/** The instrument after these facts, as the bench sees it. */
const siteAfter = (facts: readonly Fact[]) => {
  const built = asBuilt(plan, readingsInUse(facts), allowsValue)
  return { ...built, numbers: compute(built.plan).numbers, all: measured(facts) }
}
const read = (site: ReadingSite, at: Box, value: number): Fact =>
  recordReading(row, readingOf(site, at, { value, typed: String(value), gauge: ' rule ', stageId: null }), meta())

describe('a reading of a box', () => {
  const bare = siteAfter([])

  it('is of the place it was taken at: along the rim in mm, of a ring by its id, else by its row', () => {
    const { numbers } = bare
    expect(placeOfBox(bare, box('rim[].depthMm', 7, 'bass')).alongMm).toBe(numbers.rim[7]!.alongOuterMm)
    expect(placeOfBox(bare, box('places[].depthMm', 2)).alongMm).toBe(numbers.places[2]!.alongOuterMm)
    expect(placeOfBox(bare, box('rosette.rings[].widthMm', 1)).entry).toBe(ringsInOrder(plan.rosette)[1]!.id)
    expect(placeOfBox(bare, box('braces[].heightMm', 3))).toEqual({
      ...box('braces[].heightMm', 3),
      alongMm: null,
      entry: null,
    })
  })

  it('passes the door, and keeps what was typed, the gauge and what was asked', () => {
    const fact = read(bare, box('sides.thicknessMm'), 2.31)
    expect(readFact(fact).ok).toBe(true)
    expect(fact).toMatchObject({ typed: '2.31', gauge: 'rule', planned: plan.rim.sideThicknessMm, replaces: null })
  })

  it('is held against what was asked before it, not against itself; a second one corrects the first', () => {
    const first = read(bare, box('sides.depthAtTailMm'), plan.rim.depthAtTailMm + 2)
    const site = siteAfter([first])
    expect(site.numbers.sides.depthAtTailMm).toBeCloseTo(plan.rim.depthAtTailMm + 2, 9)
    expect(askedOfBox(site, box('sides.depthAtTailMm'))).toBeCloseTo(plan.rim.depthAtTailMm, 9)
    // What follows the reading is asked as it follows.
    expect(askedOfBox(site, box('sides.bodyDepthAtTailMm'))).toBe(site.numbers.sides.bodyDepthAtTailMm)
    const again = read(site, box('sides.depthAtTailMm'), plan.rim.depthAtTailMm + 1)
    expect(again).toMatchObject({ replaces: first.id })
    // Turned off, it is held against the plan again.
    const off = siteAfter([first, switchReading(row, first.id, false, meta())])
    expect(askedOfBox(off, box('sides.depthAtTailMm'))).toBe(plan.rim.depthAtTailMm)
  })
})

describe('what became of a reading', () => {
  const bare = siteAfter([])
  const kindOf = (facts: readonly Fact[], id: string) => {
    const site = siteAfter(facts)
    return readingStanding(site.all.find((one) => one.id === id)!, { ...site, plan })
  }
  const thin = read(bare, box('sides.thicknessMm'), 2.31)

  it('rules, is as planned, is out of reach, is turned off, or is for the record', () => {
    expect(kindOf([thin], thin.id)).toEqual({ kind: 'rules', inverse: 'itself', fields: ['rim.sideThicknessMm'] })
    const same = read(bare, box('sides.thicknessMm'), plan.rim.sideThicknessMm)
    expect(kindOf([same], same.id).kind).toBe('asPlanned')
    const far = read(bare, box('sides.thicknessMm'), 60)
    expect(kindOf([far], far.id).kind).toBe('outside')
    expect(kindOf([thin, switchReading(row, thin.id, false, meta())], thin.id).kind).toBe('off')
    const bevel = read(bare, box('rim[].topBevelRad', 5, 'bass'), 0.02)
    expect(kindOf([bevel], bevel.id).kind).toBe('record')
  })
  it('is overruled by one of the same field that came later', () => {
    const before = read(bare, box('sides.bodyDepthAtTailMm'), 104)
    const after = read(siteAfter([before]), box('sides.depthAtTailMm'), 99)
    expect(kindOf([before, after], after.id).kind).toBe('rules')
    expect(kindOf([before, after], before.id).kind).toBe('overruled')
  })
  it('corrections stand under what they correct; the newest chain comes first; one whose first is withdrawn stands alone', () => {
    const other = read(siteAfter([thin]), box('plates.topMm'), 2.9)
    const mended = recordReading(row, correctionOf(measured([thin])[0]!, { value: 2.13, typed: '2.13' }), meta())
    const facts = [thin, other, mended]
    expect(
      chainsOf(measured(facts)).map(({ first, corrections }) => [first.id, corrections.map(({ id }) => id)]),
    ).toEqual([
      [thin.id, [mended.id]],
      [other.id, []],
    ])
    expect(kindOf(facts, thin.id).kind).toBe('again')
    expect(siteAfter(facts).plan.rim.sideThicknessMm).toBe(2.13)
    const gone = [...facts, withdraw(row, thin.id, meta())]
    expect(chainsOf(measured(gone)).map(({ first }) => first.id)).toEqual([mended.id, other.id])
    // The correction taken back, the first reading rules again.
    expect(siteAfter([...facts, withdraw(row, mended.id, meta())]).plan.rim.sideThicknessMm).toBe(2.31)
  })
})
