import { describe, expect, test } from 'vitest'
import { STARTING_UNITS } from '../../src/core/quantity.ts'
import { figureText } from '../../src/format/figure.ts'
import { formatRunningTime } from '../../src/format/formatRunningTime.ts'
import {
  formatReading,
  parseReading,
  shopTypedUnit,
  type TypedUnit,
  typedUnits,
  withTypedUnit,
} from '../../src/format/typedReading.ts'

const INCHES = { bodyLength: 'fractionalInch', domeRadius: 'feetInches', thickness: 'thousandths' } as const

describe('a reading as it is typed', () => {
  // An inch is 25.4 mm, a foot twelve of them; a degree pi/180.
  test.each([
    ['98.5', 'mm', 98.5],
    ['98,5', 'mm', 98.5],
    ['3 7/8', 'inch', 98.425],
    ['3-7/8', 'inch', 98.425],
    ['15/64', 'inch', 5.953125],
    ['3.875', 'inch', 98.425],
    ['85', 'thou', 2.159],
    ['.085', 'thou', 2.159],
    ['2.2 mm', 'thou', 2.2],
    ['0.085 in', 'mm', 2.159],
    ["15' 6", 'feet', 4724.4],
    ['4.6', 'metres', 4600],
    ['1.5', 'degrees', 0.026179938779914945],
    ["1°30'", 'degrees', 0.026179938779914945],
    ['-0.2', 'mm', -0.2],
  ] satisfies [string, TypedUnit, number][])('%s in %s', (text, unit, value) => {
    const read = parseReading(text, unit)
    expect(read.ok && read.value).toBeCloseTo(value, 9)
  })

  test.each([
    ['9..5', 'unreadable'],
    ['3 +', 'unfinished'],
    ['1,234', 'ambiguous'],
    ['', 'empty'],
  ])('%s is not taken: %s', (text, code) => {
    expect(parseReading(text, 'mm')).toMatchObject({ ok: false, problem: { code } })
  })

  test('is kept so that any shop reads the same: what it typed, and the unit that was meant', () => {
    for (const [text, unit] of [
      ['3 7/8', 'inch'],
      ['98.5', 'mm'],
      ['85', 'thou'],
      ["1°30'", 'degrees'],
      ['2.2 mm', 'inch'],
    ] as const) {
      const kept = withTypedUnit(text, unit)
      const meant = parseReading(text, unit)
      const again = parseReading(kept, unit === 'degrees' ? 'degrees' : 'thou')
      expect(again, kept).toEqual(meant)
    }
  })

  test('begins in the shop’s own unit, which is one of those offered', () => {
    expect(shopTypedUnit('bodyLength', STARTING_UNITS)).toBe('mm')
    expect(shopTypedUnit('bodyLength', INCHES)).toBe('inch')
    expect(shopTypedUnit('thickness', INCHES)).toBe('thou')
    expect(shopTypedUnit('domeRadius', INCHES)).toBe('feet')
    for (const quantity of ['bodyLength', 'fineLength', 'across', 'thickness', 'domeRadius', 'angle'] as const)
      for (const units of [STARTING_UNITS, INCHES])
        expect(typedUnits(quantity)).toContain(shopTypedUnit(quantity, units))
    expect(typedUnits('force')).toEqual([])
  })

  test('is shown as fine as a caliper reads', () => {
    expect(figureText(formatReading(98.53, 'bodyLength', STARTING_UNITS))).toBe('98.53 mm')
    expect(figureText(formatReading(98.425, 'bodyLength', INCHES))).toBe('3 7/8"')
    expect(figureText(formatReading(2.31, 'thickness', STARTING_UNITS))).toBe('2.31 mm')
  })
})

test.each([
  [0, '0:00'],
  [0.99 / 60, '0:00'],
  [7 / 60, '0:07'],
  [12 + 40 / 60, '12:40'],
  [100.5, '100:30'],
])('%d hours run as %s', (hours, text) => {
  expect(formatRunningTime(hours)).toBe(text)
})
