import { describe, expect, test } from 'vitest'
import { hoursSoFar } from '../../src/record/bench/hoursSoFar.ts'
import type { Measured } from '../../src/record/bench/measured.ts'
import { readableRange, readAt } from '../../src/record/bench/readAt.ts'

const read = (id: string, more: Partial<Measured> = {}): Measured =>
  ({
    id,
    number: 'rim[].depthMm',
    row: 3,
    side: 'bass',
    alongMm: 60,
    entry: null,
    isLatest: true,
    isUsed: true,
    ...more,
  }) as Measured
const PLACE = { number: 'rim[].depthMm', row: 3, side: 'bass', alongMm: 60, entry: null } as const

describe('what stands as read at a place', () => {
  test('is the last reading there, of that side alone', () => {
    const all = [
      read('old', { isLatest: false }),
      read('other side', { side: 'treble' }),
      read('here'),
      read('next station', { row: 4, alongMm: 80 }),
    ]
    expect(readAt(all, PLACE)?.id).toBe('here')
    expect(readAt(all.slice(0, 2), PLACE)).toBeNull()
  })

  test('stays at its place along the rim when the stations are counted anew', () => {
    expect(readAt([read('here', { row: 7, alongMm: 60.2 })], PLACE)?.id).toBe('here')
    expect(readAt([read('there', { row: 3, alongMm: 61 })], PLACE)).toBeNull()
  })

  test('goes with its ring', () => {
    const ring = { number: 'rosette.rings[].widthMm', row: 0, side: 'whole', alongMm: null, entry: 'b' } as const
    const one = read('b', { ...ring, row: 1 })
    expect(readAt([one], ring)?.id).toBe('b')
    expect(readAt([one], { ...ring, entry: 'a' })).toBeNull()
  })
})

test.each([
  ['thickness', 2.2, 0, 100],
  ['thickness', 0.2, -100, 100],
  ['bodyLength', 496, 0, 1500],
  ['bodyLength', -3, -1500, 1500],
  ['across', -45, 0, 1500],
  ['domeRadius', 8500, 0, 100_000],
  ['angle', 0.02, -Math.PI / 2, Math.PI / 2],
] as const)('of %s asked to be %d, %d to %d may be read', (quantity, asked, min, max) => {
  expect(readableRange(quantity, asked)).toEqual({ min, max })
})

test('hours run on with the clock, shared, and never backward', () => {
  const running = { since: '2027-03-12T10:00:00.000Z', sharedBy: 2 }
  const work = { entries: [], hours: 1.5, running }
  expect(hoursSoFar(work, '2027-03-12T11:00:00.000Z')).toBeCloseTo(2, 12)
  expect(hoursSoFar(work, '2027-03-12T09:00:00.000Z')).toBe(1.5)
  expect(hoursSoFar({ ...work, running: null }, '2027-03-12T11:00:00.000Z')).toBe(1.5)
  expect(hoursSoFar(undefined, '2027-03-12T11:00:00.000Z')).toBe(0)
})
