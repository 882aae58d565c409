import { describe, expect, it } from 'vitest'
import { daysUntil } from '../../src/format/daysUntil.ts'

describe('days until a promised day', () => {
  // Counted on a calendar; 2028 is a leap year, and Central Europe's clocks change on 28 March 2027.
  it.each([
    ['2027-03-19', '2026-11-25', 114],
    ['2026-11-25', '2026-11-25', 0],
    ['2026-11-24', '2026-11-25', -1],
    ['2028-03-01', '2028-02-28', 2],
    ['2027-03-29', '2027-03-27', 2],
  ])('%s from %s', (day, today, days) => {
    expect(daysUntil(day, today)).toBe(days)
  })

  it('gives nothing for what is no day', () => {
    expect(daysUntil('soon', '2026-11-25')).toBeNull()
  })
})
