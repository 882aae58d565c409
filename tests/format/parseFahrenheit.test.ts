import { expect, test } from 'vitest'
import { parseFahrenheit } from '../../src/format/parseFahrenheit.ts'

test.each([
  ['32 F', 0],
  ['212°F', 100],
  ['-40 °f', -40],
  ['68F', 20],
  ['98,6 F', 37],
])('%s', (text, celsius) => expect(parseFahrenheit(text)).toBeCloseTo(celsius, 9))

test.each(['68', '20 C', 'F', '6 8.1.2 F', ''])('“%s” is no temperature in Fahrenheit', (text) =>
  expect(parseFahrenheit(text)).toBeNull(),
)
