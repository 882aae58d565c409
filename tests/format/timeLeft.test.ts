import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { formatTypedHours } from '../../src/format/formatTypedHours.ts'
import { formatTimeLeft, formatTimePast } from '../../src/format/formatTimeLeft.ts'
import { parseDuration } from '../../src/format/parseDuration.ts'

const plain = (text: string | null): string | null => text?.replaceAll('\u00a0', ' ') ?? null
const ms = ({ d = 0, h = 0, min = 0, s = 0, ms: rest = 0 }): number =>
  (((d * 24 + h) * 60 + min) * 60 + s) * 1000 + rest

describe('time left', () => {
  // Read off a clock.
  it.each([
    [ms({ h: 3, min: 12 }), '3 h 12 min'],
    [ms({ h: 3, min: 11, s: 1 }), '3 h 12 min'],
    [ms({ min: 4, s: 59 }), '04:59'],
    [ms({ min: 4, s: 58, ms: 1 }), '04:59'],
    [ms({ min: 59, s: 59 }), '59:59'],
    [ms({ min: 59, s: 59, ms: 1 }), '1 h 0 min'],
    [ms({ h: 1, ms: 1 }), '1 h 1 min'],
    [ms({ h: 47, min: 59 }), '47 h 59 min'],
    [ms({ d: 2 }), '2 d 0 h'],
    [ms({ d: 6, h: 23, ms: 1 }), '7 d 0 h'],
    [1, '00:01'],
    [0, '00:00'],
    [-5000, '00:00'],
    [Number.NaN, '00:00'],
    [Number.POSITIVE_INFINITY, '00:00'],
  ])('%d ms is %s', (left, text) => {
    expect(plain(formatTimeLeft(left))).toBe(text)
  })

  it('read back by the reader of typed lengths is never less than what is left, and at most one of its smallest unit more', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: ms({ d: 90 }) }), (left) => {
        const text = formatTimeLeft(left)
        const [minutes, seconds] = text.split(':')
        const typed = seconds === undefined ? text : `${minutes} min ${seconds} s`
        const read = parseDuration(typed, 'hours')
        if (!read.ok) throw new Error(`${text}: ${read.problem.code}`)
        const step = text.includes(':') ? 1000 : text.includes('d') ? ms({ h: 1 }) : ms({ min: 1 })
        const over = read.seconds * 1000 - left
        expect(over).toBeGreaterThanOrEqual(0)
        expect(over).toBeLessThan(step)
      }),
    )
  })
})

describe('how long ago', () => {
  it.each([
    [ms({ s: 59, ms: 999 }), null],
    [ms({ min: 1 }), '1 min'],
    [ms({ min: 40, s: 59 }), '40 min'],
    [ms({ h: 3, min: 12, s: 59 }), '3 h 12 min'],
    [ms({ d: 2, h: 4, min: 59 }), '2 d 4 h'],
    [-1, null],
    [Number.NaN, null],
  ])('%d ms is %s', (past, text) => {
    expect(plain(formatTimePast(past))).toBe(text)
  })
})

describe('a length of time as typed', () => {
  it.each([
    ['12', 'hours', 12 * 3600],
    ['1.5', 'hours', 5400],
    ['1,5', 'hours', 5400],
    ['1 1/2', 'hours', 5400],
    ['1 h 30 min', 'hours', 5400],
    ['1h30', 'hours', 5400],
    ['90 min', 'hours', 5400],
    ['2 d', 'hours', 172_800],
    ['45', 'minutes', 2700],
    ['1 h', 'minutes', 3600],
    ['20 s', 'minutes', 20],
  ] as const)('%s in %s', (text, bare, seconds) => {
    expect(parseDuration(text, bare)).toEqual({ ok: true, seconds })
  })

  it.each([
    ['', 'empty'],
    ['soon', 'unreadable'],
    ['3 mm', 'unreadable'],
  ])('%s is refused', (text, code) => {
    expect(parseDuration(text, 'hours')).toMatchObject({ ok: false, problem: { code } })
  })

  it.each([
    [12, '12'],
    [0.5, '0.5'],
    [1.25, '1.25'],
    [100, '100'],
    [-1, '0'],
    [Number.NaN, '0'],
  ])('%d h proposed is typed as %s', (hours, text) => {
    expect(formatTypedHours(hours)).toBe(text)
  })
})
