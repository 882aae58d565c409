import { expect, it } from 'vitest'
import { nextBraceMm } from '../../../src/core/instrument/nextBrace.ts'

it.each([
  // Stretches of 100, 300 and 200: the middle of the second.
  [[400, 100], 600, 250],
  [[100], 600, 350],
  [[500], 600, 250],
  [[], 600, 300],
])('beside braces at %j on a half of %s it goes to %s', (places, halfLengthMm, atMm) => {
  expect(nextBraceMm(places, halfLengthMm)).toBe(atMm)
})
