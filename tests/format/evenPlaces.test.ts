import { expect, test } from 'vitest'
import { evenPlaces } from '../../src/format/evenPlaces.ts'
import { figureText } from '../../src/format/figure.ts'
import { formatQuantity } from '../../src/format/formatQuantity.ts'
import { FRACTIONAL, METRIC } from './shops.ts'

test.each([
  ['domeRadius', [8500, 8499, 4600], ['8.500 m', '8.499 m', '4.600 m']],
  ['thickness', [20.88, 11, 0.5], ['20.88 mm', '11.00 mm', '0.50 mm']],
  ['thickness', [16, 11], ['16.0 mm', '11.0 mm']],
  ['bodyLength', [303.7, 78], ['303.7 mm', '78.0 mm']],
] as const)('a column of %s: as many decimals as the longest', (quantity, values, texts) => {
  const figures = values.map((value) => formatQuantity(value, quantity, METRIC))
  expect(evenPlaces(figures).map(figureText)).toEqual(texts)
})

test('words stay, and so does what is never shortened', () => {
  const column = [8500, 'flat', 8499] as const
  expect(evenPlaces(column.map((value) => formatQuantity(value, 'domeRadius', METRIC))).map(figureText)).toEqual([
    '8.500 m',
    'flat',
    '8.499 m',
  ])
  const thou = [0.2, 2.54].map((value) => formatQuantity(value, 'thickness', FRACTIONAL))
  expect(evenPlaces(thou)).toEqual(thou)
})
