import { describe, expect, it } from 'vitest'
import { setReadings } from '../../src/record/changes/outline.ts'
import { MOST_END_READINGS } from '../../src/record/fields.ts'
import { distanceFromEndMm, isOver, nextStepMm, readingFrom } from '../../src/record/readings.ts'
import { editDocument } from '../../src/record/edit.ts'
import { takeBack } from '../../src/record/undo.ts'
import { beginSteel, countedIds, edited, metaWith, valueIn } from './fixture.ts'

describe('a list of readings', () => {
  it('is replaced whole, by rising distance from the tail, as one change that can be taken back', () => {
    const newId = countedIds()
    const begun = beginSteel(newId)
    const before = begun.row.doc.plan.outline.halfWidths.rows
    const given = [
      [80, 150],
      [20, 101.5],
      [80, 149],
      [0, 0],
    ] as const
    const meta = metaWith(newId)
    const bundle = edited(begun, setReadings('rows', given), meta)
    expect(bundle.row.doc.plan.outline.halfWidths.rows).toEqual([
      [0, 0],
      [20, 101.5],
      [80, 149],
      [80, 150],
    ])
    expect(bundle.changes.length).toBe(begun.changes.length + 1)
    expect(bundle.changes.at(-1)?.path).toEqual(['doc', 'plan', 'outline', 'halfWidths', 'rows'])
    const back = valueIn(takeBack(bundle.row, bundle.changes, bundle.facts, meta.gesture, metaWith(newId)))
    expect(back.row.doc.plan.outline.halfWidths.rows).toEqual(before)
  })

  it('leaves the other lists alone, and is refused where it is too long', () => {
    const newId = countedIds()
    const begun = beginSteel(newId)
    const { halfWidths } = edited(begun, setReadings('neckRows', [[485, 40]]), metaWith(newId)).row.doc.plan.outline
    expect(halfWidths.neckRows).toEqual([[485, 40]])
    expect(halfWidths.rows).toEqual(begun.row.doc.plan.outline.halfWidths.rows)
    expect(halfWidths.tailRows).toEqual(begun.row.doc.plan.outline.halfWidths.tailRows)
    const tooMany = Array.from({ length: MOST_END_READINGS + 1 }, (_, i) => [i, 2 * i] as const)
    const refused = editDocument(begun.row, begun.changes, setReadings('tailRows', tooMany), metaWith(newId))
    expect(refused.ok).toBe(false)
  })
})

describe('a distance from an end', () => {
  // A body of 486 mm: what lies 7 mm short of the joint is 479 mm from the tail.
  it.each([
    ['rows', 120, 120],
    ['tailRows', 1.5, 1.5],
    ['neckRows', 7, 479],
  ] as const)('of %s: %d mm is %d mm from the tail, and back', (list, distanceMm, fromTailMm) => {
    const reading = readingFrom(list, distanceMm, 90, 486)
    expect(reading).toEqual([fromTailMm, 90])
    expect(distanceFromEndMm(list, reading, 486)).toBe(distanceMm)
  })
})

describe('the next reading', () => {
  it.each([
    [[], 'mm', 20],
    [[20], 'mm', 40],
    [[20, 40, 65], 'mm', 90],
    [[60, 60], 'mm', 80],
    [[], 'fractionalInch', 25.4],
    [[25.4, 38.1], 'decimalInch', 50.8],
  ] as const)('after %j in %s is %d mm', (given, unit, nextMm) => {
    expect(nextStepMm(given, unit)).toBeCloseTo(nextMm, 10)
  })
})

describe('a departure', () => {
  it.each([
    [0.31, 0.3, true],
    [-0.31, 0.3, true],
    [-0.3, 0.3, false],
    [0.3004, 0.3, false],
    [0, 0.01, false],
  ])('of %d mm where it was read to %d mm: over %s', (departureMm, readToMm, over) => {
    expect(isOver(departureMm, readToMm)).toBe(over)
  })
})
