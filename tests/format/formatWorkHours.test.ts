import { describe, expect, it } from 'vitest'
import { formatWorkHours } from '../../src/format/formatWorkHours.ts'

describe('hours of work', () => {
  it.each([
    [0, '0 min'],
    [-3, '0 min'],
    [Number.NaN, '0 min'],
    [0.04, '0 min'],
    [0.05, '5 min'],
    [0.96, '1 h'],
    [0.95, '55 min'],
    [1.1, '1 h'],
    [1.13, '1.25 h'],
    [2.5, '2.5 h'],
    [9.9, '10 h'],
    [17.4, '17 h'],
    [111.5, '112 h'],
    [2000, '2000 h'],
  ])('%f is said as %s, and never in days', (hours, said) => {
    const { amount, unit } = formatWorkHours(hours)
    expect(`${amount} ${unit}`).toBe(said)
  })
})
