import { describe, expect, it, test } from 'vitest'
import type { LengthQuantity, ShopUnits } from '../../src/core/quantity.ts'
import type { LengthProblem } from '../../src/format/entryProblem.ts'
import { parseLength } from '../../src/format/parseLength.ts'
import { DECIMAL, FRACTIONAL, METRIC } from './shops.ts'

// Expected values by hand from 1 in = 25.4 mm exactly and 1 ft = 304.8 mm exactly (NIST SP 811, appendix B).
type Row = readonly [typed: string, quantity: LengthQuantity, units: ShopUnits, mm: number]

const NAMED: Row[] = [
  ['15 ft', 'domeRadius', METRIC, 4572],
  ["15'", 'domeRadius', METRIC, 4572],
  ['15’', 'domeRadius', METRIC, 4572],
  ['15′', 'domeRadius', METRIC, 4572],
  [`14'8"`, 'domeRadius', METRIC, 4470.4],
  ['14′8″', 'domeRadius', METRIC, 4470.4],
  ['14’ 8”', 'domeRadius', METRIC, 4470.4],
  [`14'8''`, 'domeRadius', METRIC, 4470.4],
  [`14'8`, 'domeRadius', METRIC, 4470.4],
  [`14'-8"`, 'domeRadius', METRIC, 4470.4],
  [`14' - 8"`, 'domeRadius', METRIC, 4064],
  [`14' 8 1/2"`, 'domeRadius', METRIC, 4483.1],
  [`14'-8-1/2"`, 'domeRadius', METRIC, 4483.1],
  ['14ft 8in', 'domeRadius', METRIC, 4470.4],
  ['14ft8in.', 'domeRadius', METRIC, 4470.4],
  ['4.6 m', 'domeRadius', FRACTIONAL, 4600],
  ['4 m 20 cm', 'domeRadius', FRACTIONAL, 4200],
  ['R8m', 'domeRadius', METRIC, 8000],
  ["R 15'", 'domeRadius', METRIC, 4572],
  ["15' radius", 'domeRadius', METRIC, 4572],
  ['3 7/8"', 'bodyLength', METRIC, 98.425],
  ['3-7/8"', 'bodyLength', METRIC, 98.425],
  ['3⅞"', 'bodyLength', METRIC, 98.425],
  ['3⁷⁄₈″', 'bodyLength', METRIC, 98.425],
  ['-3 7/8"', 'bodyLength', METRIC, -98.425],
  ['½"', 'bodyLength', METRIC, 12.7],
  ['3\u00a01/2\u2009in', 'bodyLength', METRIC, 88.9],
  ['0.085 in', 'thickness', METRIC, 2.159],
  ['.085"', 'thickness', METRIC, 2.159],
  ['85 thou', 'thickness', METRIC, 2.159],
  ['98.5 mm', 'bodyLength', FRACTIONAL, 98.5],
  ['98.5MM', 'bodyLength', FRACTIONAL, 98.5],
  ['10 cm', 'bodyLength', FRACTIONAL, 100],
  ['1/2 mm', 'thickness', METRIC, 0.5],
  ['3 1/3"', 'bodyLength', METRIC, (10 / 3) * 25.4],
  ['392/2 mm', 'bodyLength', FRACTIONAL, 196],
  ['98.5/2 mm', 'bodyLength', FRACTIONAL, 49.25],
]

const BARE: Row[] = [
  ['98.5', 'bodyLength', METRIC, 98.5],
  ['98,5', 'bodyLength', METRIC, 98.5],
  ['98.', 'bodyLength', METRIC, 98],
  ['−2', 'bodyLength', METRIC, -2],
  ['2.2', 'thickness', METRIC, 2.2],
  ['4.6', 'domeRadius', METRIC, 4600],
  ['4', 'bodyLength', FRACTIONAL, 101.6],
  ['4', 'bodyLength', DECIMAL, 101.6],
  ['3 7/8', 'bodyLength', FRACTIONAL, 98.425],
  ['3-7/8', 'bodyLength', FRACTIONAL, 98.425],
  ['15', 'domeRadius', FRACTIONAL, 4572],
  ['4572', 'domeRadius', DECIMAL, 4572],
  ['85', 'thickness', FRACTIONAL, 2.159],
  ['2.5', 'thickness', FRACTIONAL, 0.0635],
  ['0.085', 'thickness', FRACTIONAL, 2.159],
  ['0,085', 'thickness', FRACTIONAL, 2.159],
  ['.085*2', 'thickness', FRACTIONAL, 4.318],
  // a bare fraction of an inch rule is in inches, in a shop of millimetres too
  ['1/2', 'bodyLength', METRIC, 12.7],
  ['3/64', 'thickness', METRIC, 1.190625],
  ['1 1/2 + 3/64', 'bodyLength', METRIC, 39.290625],
  ['1 1/2 + 3/64', 'bodyLength', FRACTIONAL, 39.290625],
  ['1 1/128', 'bodyLength', METRIC, 25.5984375],
]

const SUMS: Row[] = [
  ['98.5-2.2', 'bodyLength', METRIC, 96.3],
  ['98.5 – 2.2', 'bodyLength', METRIC, 96.3],
  ['98.5 mm - 2.2', 'bodyLength', METRIC, 96.3],
  ['0.1+0.2', 'bodyLength', METRIC, 0.3],
  ['392/2', 'bodyLength', METRIC, 196],
  ['25.4*2', 'bodyLength', METRIC, 50.8],
  ['25.4 × 2', 'bodyLength', METRIC, 50.8],
  ['25.4x2', 'bodyLength', METRIC, 50.8],
  ['100/3', 'bodyLength', METRIC, 100 / 3],
  ['10 - 2*3', 'bodyLength', METRIC, 4],
  ['(10 - 2)*3', 'bodyLength', METRIC, 24],
  ['(1 + 2) cm', 'bodyLength', METRIC, 30],
  ['3" * 1/2', 'bodyLength', METRIC, 38.1],
  ['1/2 * 3"', 'bodyLength', METRIC, 38.1],
  ['3" + 2 mm', 'bodyLength', METRIC, 78.2],
  ['3" + 2', 'bodyLength', FRACTIONAL, 127],
  ['10-3-7/8', 'bodyLength', FRACTIONAL, 155.575],
  ['3 7/8" -3 thou', 'bodyLength', METRIC, 98.3488],
  ['98.5 mm - 1/16', 'bodyLength', METRIC, 96.9125],
]

const THOUSANDS: Row[] = [
  ['1.234,5', 'bodyLength', METRIC, 1234.5],
  ['1,234.5', 'bodyLength', METRIC, 1234.5],
  ['1,234,567', 'bodyLength', METRIC, 1234567],
  ['1\u202f234.5', 'bodyLength', METRIC, 1234.5],
  ['1.234', 'bodyLength', METRIC, 1.234],
  ['12,34', 'bodyLength', METRIC, 12.34],
  ['1234,567', 'bodyLength', METRIC, 1234.567],
]

describe.each([
  ['with units', NAMED],
  ['without', BARE],
  ['sums', SUMS],
  ['thousands', THOUSANDS],
])('lengths %s', (_, rows) => {
  test.each(rows)('%s as %s', (typed, quantity, units, mm) => {
    expect(parseLength(typed, quantity, units)).toEqual({ ok: true, mm })
  })
})

describe('what could mean two things is asked', () => {
  const rows: (readonly [string, LengthQuantity, ShopUnits, string, string])[] = [
    ['1,234', 'bodyLength', METRIC, '1.234', '1234'],
    ['R 4,600 mm', 'domeRadius', METRIC, 'r 4.600 mm', 'r 4600 mm'],
    ['1,234 + 2,500', 'bodyLength', METRIC, '1.234 + 2.500', '1234 + 2500'],
    ['3" + 2', 'bodyLength', METRIC, '3" + 2 mm', '3" + 2"'],
    ['10 cm + 5', 'bodyLength', METRIC, '10 cm + 5 mm', '10 cm + 5 cm'],
    ['98.5 - 1/16', 'bodyLength', METRIC, '98.5 mm - 1/16', '98.5" - 1/16'],
    ['(3" + 2)*2', 'bodyLength', METRIC, '(3" + 2 mm)*2', '(3" + 2")*2'],
    ['3-7/8', 'bodyLength', METRIC, '3 7/8"', '3 mm - 7/8"'],
    ['15 1/2', 'domeRadius', FRACTIONAL, '15 1/2 ft', '15 1/2"'],
    ['4-1/2', 'domeRadius', METRIC, '4 1/2 m', '4 1/2"'],
    [`14'-8`, 'domeRadius', FRACTIONAL, `14' 8"`, `14' - 8 ft`],
    ['17/16', 'bodyLength', METRIC, '17/16"', '17/16 mm'],
    ['0.085+3', 'thickness', FRACTIONAL, '0.085"+3 thou', '0.085"+3"'],
    ['85*0.5', 'thickness', FRACTIONAL, '85*0.5 thou', '85*0.5"'],
  ]
  it.each(rows)('%s as %s', (typed, quantity, units, first, second) => {
    const problem: LengthProblem = { code: 'ambiguous', readings: [first, second] }
    expect(parseLength(typed, quantity, units)).toEqual({ ok: false, problem })
    const answers = problem.readings.map((reading) => parseLength(reading, quantity, units))
    expect(answers.map((answer) => answer.ok)).toEqual([true, true])
    expect(answers[0]).not.toEqual(answers[1])
  })
})

describe('what cannot be taken says why', () => {
  const rows: (readonly [string, LengthProblem])[] = [
    ['', { code: 'empty' }],
    [' \u00a0 ', { code: 'empty' }],
    ['about 98', { code: 'unreadable', at: 'about' }],
    ['98.5 furlong', { code: 'unreadable', at: 'furlong' }],
    ['98.5.2', { code: 'unreadable', at: '98.5.2' }],
    ['98 99', { code: 'unreadable', at: '99' }],
    ['98.5 1/2"', { code: 'unreadable', at: '1' }],
    ['3 9/8"', { code: 'unreadable', at: '9' }],
    ['3" 2\'', { code: 'unreadable', at: "2'" }],
    ['4 m 2"', { code: 'unreadable', at: '2"' }],
    ['1e5', { code: 'unreadable', at: 'e' }],
    ['NaN', { code: 'unreadable', at: 'nan' }],
    ['2(3)', { code: 'unreadable', at: '(' }],
    ['mm', { code: 'unreadable', at: 'mm' }],
    ['R', { code: 'unreadable', at: 'r' }],
    ['3)', { code: 'unreadable', at: ')' }],
    ['98.5 -', { code: 'unfinished' }],
    ['(98.5', { code: 'unfinished' }],
    ['1/0', { code: 'divideByZero' }],
    ['3 1/0"', { code: 'divideByZero' }],
    ['5/(2-2)', { code: 'divideByZero' }],
    ['3" * 2"', { code: 'wrongKind' }],
    ['6" / 2"', { code: 'wrongKind' }],
    ['6 / (2" + 1")', { code: 'wrongKind' }],
    ['9999999999', { code: 'tooLarge', limit: 1e9 }],
    ['1'.repeat(10_000), { code: 'tooLong', limit: 200 }],
    ['('.repeat(10_000), { code: 'tooLong', limit: 200 }],
  ]
  it.each(rows)('%s', (typed, problem) => {
    expect(parseLength(typed, 'bodyLength', METRIC)).toEqual({ ok: false, problem })
  })

  it('gives the doubt of a comma only when the rest can be read', () => {
    expect(parseLength('1,234 furlong', 'bodyLength', METRIC)).toMatchObject({ problem: { code: 'unreadable' } })
  })
})
