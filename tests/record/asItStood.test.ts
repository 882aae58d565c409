import { describe, expect, it } from 'vitest'
import { docAtSigning, docsAt } from '../../src/record/asItStood.ts'
import { isChangedSinceSigning } from '../../src/record/changedSinceSigning.ts'
import { recordReading, switchReading } from '../../src/record/bench/measured.ts'
import { setField } from '../../src/record/changes/setField.ts'
import type { Fact } from '../../src/record/commission.ts'
import { type Bundle, seenIn } from '../../src/record/document.ts'
import { signOff, withdraw } from '../../src/record/facts.ts'
import { takeBack } from '../../src/record/undo.ts'
import { beginSteel, countedIds, edited, metaWith, valueIn } from './fixture.ts'

const newId = countedIds('e')
const TAIL = 'plan.rim.depthAtTailMm'
const begun = beginSteel(newId)
const [stageId = ''] = Object.keys(begun.row.doc.stages)

/** A fact at the end of the log. */
function noted(bundle: Bundle, make: (row: Bundle['row']) => Fact): Bundle {
  const fact = make(bundle.row)
  return { ...bundle, row: { ...bundle.row, seen: seenIn([fact], bundle.row.seen) }, facts: [...bundle.facts, fact] }
}
const depthSet = (bundle: Bundle, mm: number) => edited(bundle, setField(TAIL, mm), metaWith(newId))
const signed = (bundle: Bundle) => noted(bundle, (row) => signOff(row, stageId, {}, metaWith(newId)))
const readAt = (bundle: Bundle, value: number) =>
  noted(bundle, (row) =>
    recordReading(
      row,
      {
        stageId,
        number: 'sides.thicknessMm',
        row: 0,
        side: 'whole',
        value,
        alongMm: null,
        entry: null,
        typed: String(value),
        gauge: '',
        planned: 2.2,
        replaces: null,
      },
      metaWith(newId),
    ),
  )

describe('an instrument as it stood', () => {
  it('when a stage was signed off has the plan and the readings of then, whatever came later', () => {
    const before = readAt(depthSet(begun, 107), 2.31)
    const done = signed(before)
    const fact = done.facts.at(-1)!
    const later = readAt(depthSet(done, 99), 2.12)
    const off = noted(later, (row) => switchReading(row, before.facts[0]!.id, false, metaWith(newId)))
    const then = docAtSigning(off.changes, off.facts, fact)
    expect(then?.doc).toEqual(before.row.doc)
    expect(then?.doc.plan.rim.depthAtTailMm).toBe(107)
    expect(then?.readings.map(({ value }) => value)).toEqual([2.31])
  })

  it('is told for many moments in one go: one plan is one object while it stands', () => {
    let bundle = begun
    for (const depth of [107, 108]) bundle = signed(signed(depthSet(bundle, depth)))
    const docs = docsAt(bundle.changes, bundle.facts.toReversed())
    const plans = bundle.facts.map(({ id }) => docs.get(id)?.plan)
    expect(plans.map((plan) => plan?.rim.depthAtTailMm)).toEqual([107, 107, 108, 108])
    expect(plans[0]).toBe(plans[1])
    expect(plans[2]).toBe(plans[3])
    expect(plans[1]).not.toBe(plans[2])
  })

  it('follows an undo', () => {
    const set = depthSet(begun, 107)
    const back = valueIn(takeBack(set.row, set.changes, set.facts, set.changes.at(-1)!.gesture, metaWith(newId)))
    const bundle = signed({ row: back.row, changes: [...set.changes, ...back.changes], facts: [] })
    expect(docAtSigning(bundle.changes, bundle.facts, bundle.facts[0]!)?.doc).toEqual(begun.row.doc)
  })

  it('is not told by a log that does not begin with a whole document, or leads to none', () => {
    const bundle = signed(depthSet(begun, 107))
    const [fact] = bundle.facts
    expect(docAtSigning(bundle.changes.slice(1), bundle.facts, fact!)).toBeNull()
    const wrong = bundle.changes.map((change) => (change.path.length === 0 ? change : { ...change, value: 'deep' }))
    expect(docAtSigning(wrong, bundle.facts, fact!)).toBeNull()
  })
})

describe('whether finished work can no longer fit', () => {
  it('is asked once the plan was touched after a sign-off that stands and kept numbers', () => {
    const asks = ({ changes, facts }: Bundle) => isChangedSinceSigning(changes, facts)
    const kept = (bundle: Bundle) =>
      noted(bundle, (row) => signOff(row, stageId, { 'sides.thicknessMm': 2.2 }, metaWith(newId)))
    expect(asks(depthSet(begun, 107))).toBe(false)
    expect(asks(kept(depthSet(begun, 107)))).toBe(false)
    expect(asks(depthSet(signed(begun), 107))).toBe(false)
    expect(asks(edited(kept(begun), setField('brief.notes', 'Rings true'), metaWith(newId)))).toBe(false)
    const touched = depthSet(kept(begun), 107)
    expect(asks(touched)).toBe(true)
    expect(asks(noted(touched, (row) => withdraw(row, touched.facts[0]!.id, metaWith(newId))))).toBe(false)
  })
})
