import { describe, expect, test } from 'vitest'
import { FIXTURE_KEYS, type FixtureKey } from '../../src/record/patterns/fixtureKeys.ts'
import { PART_KEYS } from '../../src/record/patterns/partKeys.ts'
import { patternOf, STAGES } from '../../src/record/patterns/stagePatterns.ts'
import { type Family, STAGE_KEYS, type StageKey, startingStages } from '../../src/record/patterns/stages.ts'
import { heldUntil, predecessors } from '../../src/record/patterns/stagesWithin.ts'
import { readTable, type TableRow } from '../tables/readTable.ts'
import { ROW_STAGES, stagesOfRow } from '../tables/stageRows.ts'

const FAMILIES = ['steelString', 'nylonString', 'small'] as const satisfies readonly Family[]
const rows = readTable('stages.csv')
const named = rows.map((row) => [row.text('stage'), row] as const)
const patternsOf = (row: TableRow, family: Family = 'steelString') =>
  stagesOfRow(row).map((key) => patternOf(key, family))
const at = (order: readonly StageKey[], key: StageKey): number => order.indexOf(key)

test('every row has its stages, and every stage of the table one row', () => {
  expect(Object.keys(ROW_STAGES).map(Number)).toEqual(rows.map((row) => row.number('id')))
  const told = Object.values(ROW_STAGES).flat()
  expect(new Set(told).size).toBe(told.length)
  // The heel's slots stand in no row of their own: they are told in the column of differences.
  expect(STAGE_KEYS.filter((key) => !told.includes(key))).toEqual(['slotSides', 'ownWork'])
})

describe('steel-string', () => {
  test.each(named)('%s: hours and waits', (_, row) => {
    const patterns = patternsOf(row)
    for (const which of ['low', 'likely', 'high'] as const) {
      const hands = patterns.reduce((sum, { handsH, times }) => sum + handsH[which] * times, 0)
      const waits = patterns.reduce((sum, { waitH, times }) => sum + waitH[which] * times, 0)
      expect(hands).toBeCloseTo(row.number(`hands_${which}_h`), 9)
      expect(waits).toBeCloseTo(row.number(`wait_${which}_h`), 9)
    }
  })

  test.each(named)('%s: one sitting, humidity', (_, row) => {
    for (const pattern of patternsOf(row)) {
      expect(pattern.oneSitting).toBe(row.text('one_sitting') === 'y')
      expect(pattern.inHumidity).toBe(row.text('rh_window') === 'y')
    }
  })

  test.each(named)('%s: waits for the rows that come before it', (_, row) => {
    const keys = stagesOfRow(row)
    const asked = row
      .text('after')
      .split(';')
      .filter((id) => id !== '')
      .flatMap((id) => ROW_STAGES[id] ?? [])
    const waited = keys.flatMap((key) => STAGES[key].after).filter((key) => !keys.includes(key))
    // Rows 5 and 21 are two stages each: of 5 the last is waited for, of 21 those of the same plate.
    const isAsked = (key: StageKey) => asked.includes(key)
    expect(waited.filter((key) => !isAsked(key))).toEqual([])
    for (const id of row
      .text('after')
      .split(';')
      .filter((one) => one !== ''))
      expect(
        waited.some((key) => ROW_STAGES[id]?.includes(key)),
        `row ${id}`,
      ).toBe(true)
  })
})

/** Fixtures as the table names them. The iron is hot only while hands are on it; a case is a part. */
const NAMED: readonly (readonly [RegExp, readonly FixtureKey[]])[] = [
  [/drying shelf/, ['dryingShelf']],
  [/bending form/, ['bendingForm']],
  [/mould/, ['mould']],
  [/block clamps/, ['blockClamps']],
  [/small clamps/, ['smallClamps']],
  [/clips/, ['clips']],
  [/joining board/, ['joiningBoard']],
  [/caul/, ['caul']],
  [/top dish/, ['topDish']],
  [/back dish/, ['backDish']],
  [/deck/, ['deck']],
  [/straps/, ['straps']],
  [/^clamps/, ['clamps']],
  [/drying rack/, ['dryingRack']],
  [/bridge clamps/, ['bridgeClamps']],
  [/hanging place/, ['hangingPlace']],
]

describe('fixtures of a steel-string', () => {
  const order = startingStages('steelString')
  /** What is on the instrument while a stage waits: its own, and what earlier ones hold on. */
  const heldIn = (key: StageKey): ReadonlySet<FixtureKey> =>
    new Set(
      order.flatMap((from) =>
        patternOf(from, 'steelString').fixtures.flatMap((use) => {
          if (use.held === 'working') return []
          const last = heldUntil(use, order) ?? from
          return at(order, from) <= at(order, key) && at(order, key) <= at(order, last) ? [use.fixture] : []
        }),
      ),
    )

  test.each(named.filter(([, row]) => row.number('wait_likely_h') > 0))('%s: those held in its wait', (_, row) => {
    const text = row.text('fixtures_held_in_wait')
    const asked = NAMED.flatMap(([pattern, keys]) => (pattern.test(text) ? keys : []))
    for (const key of stagesOfRow(row).filter((one) => order.includes(one)))
      expect([...heldIn(key)], text).toEqual(expect.arrayContaining([...asked]))
  })

  test('spans: the mould until the box is closed, the form until the sides have settled, the rack until the finish is through', () => {
    const spans = order.flatMap((key) =>
      STAGES[key].fixtures.flatMap((use) => (use.held === 'until' ? [[use.fixture, key, use.until]] : [])),
    )
    expect(spans).toEqual([
      ['bendingForm', 'bendSides', 'settleInMould'],
      ['mould', 'settleInMould', 'closeBox'],
      ['dryingRack', 'sandAndFill', 'cure'],
      ['hangingPlace', 'stringUp', 'settleSetUp'],
    ])
    // The table: mould until 34, rack until levelling (56) begins, hanging until 64 begins.
    expect(ROW_STAGES['34']).toEqual(['closeBox'])
    expect(at(order, 'cure') + 1).toBe(at(order, 'polish'))
    expect(at(order, 'settleSetUp') + 1).toBe(at(order, 'inspect'))
  })

  test('the iron and the spray space are free as soon as hands leave them', () => {
    const uses = STAGE_KEYS.flatMap((key) => STAGES[key].fixtures)
    const ofHands = uses.filter(({ fixture }) => fixture === 'bendingIron' || fixture === 'sprayRoom')
    expect(ofHands.map(({ held }) => held)).toEqual(['working', 'working'])
  })
})

describe.each(FAMILIES)('%s', (family) => {
  const order = startingStages(family)

  test('has 45 to 70 stages', () => {
    expect(order.length).toBeGreaterThanOrEqual(45)
    expect(order.length).toBeLessThanOrEqual(70)
    expect(new Set(order).size).toBe(order.length)
  })

  test('every stage comes after all it waits for, skipped or not', () => {
    for (const key of order) {
      for (const before of patternOf(key, family).after)
        if (order.includes(before)) expect(at(order, before), `${before} before ${key}`).toBeLessThan(at(order, key))
      for (const before of predecessors(order, key, family)) {
        expect(order).toContain(before)
        expect(at(order, before), `${before} before ${key}`).toBeLessThan(at(order, key))
      }
      if (key !== 'chooseWood') expect(predecessors(order, key, family), key).not.toEqual([])
    }
  })

  test('what is waited for never leads back: all stages can be taken one after the other', () => {
    const left = new Set<StageKey>(STAGE_KEYS)
    for (let taken = -1; taken !== left.size; ) {
      taken = left.size
      for (const key of left) if (patternOf(key, family).after.every((before) => !left.has(before))) left.delete(key)
    }
    expect([...left]).toEqual([])
  })

  test('every name stands for something that is there, hours rise, and what is held ends later', () => {
    for (const key of STAGE_KEYS) {
      const { handsH, waitH, times, after, fixtures, parts, within } = patternOf(key, family)
      for (const { low, likely, high } of [handsH, waitH]) {
        expect(0 <= low && low <= likely && likely <= high, key).toBe(true)
      }
      expect(Number.isInteger(times) && times >= 1).toBe(true)
      expect(STAGE_KEYS).toEqual(expect.arrayContaining([...after, ...(within === null ? [] : [within])]))
      expect(FIXTURE_KEYS).toEqual(expect.arrayContaining(fixtures.map(({ fixture }) => fixture)))
      expect(PART_KEYS).toEqual(expect.arrayContaining([...parts]))
      for (const use of fixtures) {
        expect(use.until === null).toBe(use.held !== 'until')
        const last = heldUntil(use, order)
        if (last !== null && order.includes(key)) expect(at(order, last), key).toBeGreaterThan(at(order, key))
      }
    }
  })
})

test('a stage that is skipped hands on what it waits for', () => {
  const order = startingStages('steelString')
  const without = (...left: StageKey[]) => order.filter((key) => !left.includes(key))
  expect(predecessors(order, 'glueBoard', 'steelString')).toEqual(['cutRodChannel', 'shapeHead', 'makeBoard'])
  expect(predecessors(without('inlayEndWedge', 'trimPlates'), 'cutLedges', 'steelString')).toEqual(['closeBox'])
  expect(predecessors([...order, 'bindBoard'], 'glueBoard', 'steelString')).toContain('bindBoard')
  expect(predecessors(['deliver'], 'deliver', 'steelString')).toEqual([])
})

test('a fixture whose last stage is skipped stays until the stage that does its work, or is free with its own', () => {
  const order = startingStages('steelString')
  const rack = STAGES.sandAndFill.fixtures[0]!
  expect(
    heldUntil(
      rack,
      order.filter((key) => key !== 'cure'),
    ),
  ).toBe('finish')
  expect(
    heldUntil(
      STAGES.bendSides.fixtures[0]!,
      order.filter((key) => key !== 'settleInMould'),
    ),
  ).toBeNull()
})

describe('families differ where the trade does', () => {
  const rowOf = (id: number) => rows.find((row) => row.number('id') === id)!
  const total = (row: TableRow, family: Family, which: 'low' | 'likely' | 'high') =>
    patternsOf(row, family).reduce((sum, { handsH, times }) => sum + handsH[which] * times, 0)

  test('the table’s columns of differences, where they say hours', () => {
    const [head, finish] = [rowOf(44), rowOf(54)]
    expect(head.text('nylon_difference')).toContain('add 2 h')
    expect(finish.text('nylon_difference')).toContain('12-20 h over 3 weeks')
    expect(finish.text('small_body_difference')).toBe('half the hours')
    for (const which of ['low', 'likely', 'high'] as const) {
      expect(total(head, 'nylonString', which)).toBe(head.number(`hands_${which}_h`) + 2)
      expect(total(finish, 'small', which)).toBe(finish.number(`hands_${which}_h`) / 2)
    }
    expect([total(finish, 'nylonString', 'low'), total(finish, 'nylonString', 'high')]).toEqual([12, 20])
    const { handsH, waitH, times } = patternOf('finish', 'nylonString')
    expect(Math.abs((times * (handsH.likely + waitH.likely)) / 24 - 21)).toBeLessThan(1)
  })

  test('where the table says “no stage”, a nylon-string has none', () => {
    const none = rows.filter((row) => row.text('nylon_difference').startsWith('no stage')).flatMap(stagesOfRow)
    expect(none).toEqual(['cutBlockJoint', 'cutNeckJoint', 'fitNeck', 'setNeck'])
    for (const key of none) expect(startingStages('nylonString')).not.toContain(key)
    for (const key of none) expect(startingStages('steelString')).toContain(key)
  })

  test('heel first: neck before top and rim, harmonic bars before the fan, the workboard where a mould would stand', () => {
    const order = startingStages('nylonString')
    for (const [first, then] of [
      ['slotSides', 'joinTop'],
      ['carveTop', 'bendSides'],
      ['braceTopFine', 'braceTop'],
      ['glueTop', 'glueLinings'],
      ['scrapeBox', 'glueBoard'],
    ] as const)
      expect(at(order, first), `${first} before ${then}`).toBeLessThan(at(order, then))
    const uses = order.flatMap((key) => patternOf(key, 'nylonString').fixtures)
    expect(uses.map(({ fixture }) => fixture)).not.toContain('mould')
    expect(uses).toContainEqual({ fixture: 'workboard', held: 'until', until: 'closeBox' })
  })

  test('a small body has fewer stages', () => {
    expect(startingStages('small').length).toBeLessThan(startingStages('steelString').length)
  })
})
