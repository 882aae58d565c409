import { expect, test } from 'vitest'
import { parseAngle } from '../../src/format/parseAngle.ts'
import { parseCount } from '../../src/format/parseCount.ts'

test.each([
  ['1.312', 1.312],
  ['1,312', 1.312],
  ['1.5 deg', 1.5],
  ['1.5°', 1.5],
  ["1°30'", 1.5],
  ['1° 30′', 1.5],
  ['1°30', 1.5],
  [`1°30'36"`, 1.51],
  ["45'", 0.75],
  ['1 1/2', 1.5],
  ['1/2', 0.5],
  ['−0.5', -0.5],
  ['3-1/2', 2.5],
  ['90 - 1.5', 88.5],
])('angle %s', (typed, deg) => {
  expect(parseAngle(typed)).toEqual({ ok: true, deg })
})

test.each([
  ['', { code: 'empty' }],
  ['1.5 mm', { code: 'unreadable', at: 'mm' }],
  ['1/0', { code: 'divideByZero' }],
  ["30' + 1", { code: 'ambiguous', readings: ["30' + 1°", "30' + 1'"] }],
])('angle refused: %s', (typed, problem) => {
  expect(parseAngle(typed)).toEqual({ ok: false, problem })
})

test.each([
  ['6', 6],
  [' 12 ', 12],
  ['12+3', 15],
  ['-2', -2],
  ['1,234', 1234],
  ['3.0', 3],
])('count %s', (typed, count) => {
  expect(parseCount(typed)).toEqual({ ok: true, count })
})

test.each([
  ['2.5', { code: 'notWhole' }],
  ['1/2', { code: 'notWhole' }],
  ['six', { code: 'unreadable', at: 'six' }],
  ['6 mm', { code: 'unreadable', at: 'mm' }],
  ['', { code: 'empty' }],
])('count refused: %s', (typed, problem) => {
  expect(parseCount(typed)).toEqual({ ok: false, problem })
})
