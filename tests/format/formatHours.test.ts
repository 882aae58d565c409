import { expect, test } from 'vitest'
import { formatHours } from '../../src/format/formatHours.ts'

test.each([
  [0, '0', 'min'],
  [0.1, '5', 'min'],
  [0.25, '15', 'min'],
  [0.75, '45', 'min'],
  [0.95, '55', 'min'],
  [0.99, '1', 'h'],
  [1, '1', 'h'],
  [1.25, '1.25', 'h'],
  [1.5, '1.5', 'h'],
  [10, '10', 'h'],
  [24, '24', 'h'],
  [47.9, '48', 'h'],
  [48, '2', 'day'],
  [60, '2.5', 'day'],
  [168, '7', 'day'],
  [720, '30', 'day'],
] as const)('%s hours are %s %s', (hours, amount, unit) => {
  expect(formatHours(hours)).toEqual({ amount, unit })
})

test('what is no time counts as none', () => {
  for (const odd of [-1, Number.NaN, Number.POSITIVE_INFINITY])
    expect(formatHours(odd)).toEqual({ amount: '0', unit: 'min' })
})
