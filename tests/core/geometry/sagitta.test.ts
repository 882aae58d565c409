import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { dropMm, radiusFromSagittaMm, sagittaMm } from '../../../src/core/geometry/sagitta.ts'
import { readTable } from '../../tables/readTable.ts'
import { real } from '../../generators/real.ts'
import { expectWithin } from '../within.ts'

const rows = readTable('sagitta.csv')

describe('the sagitta of a chord', () => {
  test.each(rows.map((row) => [row.number('R'), row.number('chord'), row.number('sagitta')]))(
    'R %d over a chord of %d: %d, and back',
    (radius, chord, height) => {
      // The table is written to a millionth.
      expectWithin(sagittaMm(radius, chord), height, 6e-7)
      expectWithin(radiusFromSagittaMm(sagittaMm(radius, chord), chord), radius, 1e-9 * radius)
    },
  )

  test('the two exact cases of whole numbers', () => {
    expect(sagittaMm(5, 6)).toBe(1)
    expect(sagittaMm(13, 10)).toBe(1)
  })

  test('a bridge 155 long under a 28 ft top: 0.35', () => expectWithin(sagittaMm(8534.4, 155), 0.35, 0.005))

  test('a radius of 1000 over 80 rises 0.800', () => expectWithin(sagittaMm(1000, 80), 0.8, 0.0005))

  test('limits: the diameter is the longest chord, and flat stands at nothing', () => {
    expect(sagittaMm(100, 200)).toBe(100)
    expect(sagittaMm(100, 500)).toBe(100)
    expect(sagittaMm(1e15, 400)).toBeCloseTo(0, 9)
    expect(sagittaMm(3000, 0)).toBe(0)
  })

  test('grows with the chord, shrinks with the radius', () => {
    const radius = real(50, 60000)
    fc.assert(
      fc.property(radius, radius, real(1, 90), (r1, r2, chord) => {
        const [tight, wide] = r1 < r2 ? [r1, r2] : [r2, r1]
        expect(sagittaMm(wide, chord)).toBeLessThanOrEqual(sagittaMm(tight, chord))
        expect(sagittaMm(tight, chord * 1.01)).toBeGreaterThan(sagittaMm(tight, chord))
      }),
    )
  })

  test('a drop from the tangent is the sagitta of twice the distance, with the sign of the curvature', () => {
    for (const row of rows) {
      const [radius, chord] = [row.number('R'), row.number('chord')]
      expectWithin(dropMm(1 / radius, chord / 2), row.number('sagitta'), 6e-7)
      expectWithin(dropMm(-1 / radius, chord / 2), -row.number('sagitta'), 6e-7)
    }
    expect(dropMm(0, 300)).toBe(0)
  })
})
