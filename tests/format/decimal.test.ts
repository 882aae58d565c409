import { expect, test } from 'vitest'
import { STARTING_UNITS } from '../../src/core/quantity.ts'
import { figureText } from '../../src/format/figure.ts'
import { formatAllowedRange } from '../../src/format/formatAllowedRange.ts'
import { type DecimalUnit, formatDecimal } from '../../src/format/formatDecimal.ts'
import { formatQuantity } from '../../src/format/formatQuantity.ts'
import { parseDecimal } from '../../src/format/parseDecimal.ts'

test.each<[string, DecimalUnit, number]>([
  ['15', 'percent', 15],
  ['12,5 %', 'percent', 12.5],
  ['7 1/2 percent', 'percent', 7.5],
  ['400', 'newton', 400],
  ['0.4 kN', 'newton', 400],
  ['150 N + 25', 'newton', 175],
  ['12.5', 'gigapascal', 12.5],
  ['12,5 GPa', 'gigapascal', 12.5],
  ['12500 MPa', 'gigapascal', 12.5],
])('%s in %s', (typed, unit, amount) => {
  expect(parseDecimal(typed, unit)).toEqual({ ok: true, amount })
})

test.each<[string, DecimalUnit, unknown]>([
  ['', 'percent', { code: 'empty' }],
  ['12 mm', 'percent', { code: 'unreadable', at: 'mm' }],
  ['40 kg', 'newton', { code: 'unreadable', at: 'kg' }],
  ['400 +', 'newton', { code: 'unfinished' }],
  ['1,200', 'newton', { code: 'ambiguous', readings: ['1.200', '1200'] }],
])('refused: %s in %s', (typed, unit, problem) => {
  expect(parseDecimal(typed, unit)).toEqual({ ok: false, problem })
})

test.each<[number, DecimalUnit, string]>([
  [15, 'percent', '15%'],
  [12.5, 'percent', '12.5%'],
  [400, 'newton', '400 N'],
  [0, 'percent', '0%'],
  [11.256, 'gigapascal', '11.26 GPa'],
  [Number.NaN, 'newton', 'none'],
])('%s in %s reads as it is typed back', (amount, unit, text) => {
  expect(figureText(formatDecimal(amount, unit))).toBe(text)
  if (text === 'none') return
  const back = parseDecimal(text, unit)
  expect(back.ok && Math.abs(back.amount - amount)).toBeLessThan(0.005)
})

test('forces stand in whole newtons, stresses to a tenth', () => {
  expect(figureText(formatQuantity(199.6, 'force', STARTING_UNITS))).toBe('200 N')
  expect(figureText(formatQuantity(31.25, 'stress', STARTING_UNITS))).toBe('31.3 MPa')
  expect(formatAllowedRange(0.4, 60.6, 'force', STARTING_UNITS).text).toBe('1 N – 60 N')
  expect(formatAllowedRange(0.44, 60.66, 'stress', STARTING_UNITS).text).toBe('0.5 MPa – 60.6 MPa')
})
