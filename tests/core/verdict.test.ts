import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { onAskedSide, verdictOf } from '../../src/core/verdict.ts'

describe('a reading held against what was asked', () => {
  // Read, asked, tolerance: by hand. Those on the edge differ from it in a double's last digit, either way.
  test.each([
    [2.31, 2.2, 0.05, 0.11, 'over', false],
    [98.2, 98.5, 0.1, 0.3, 'short', false],
    [98.2, 98.5, 0.5, 0.3, 'short', true],
    [2.3, 2.2, 0.1, 0.1, 'over', true],
    [2.1, 2.2, 0.1, 0.1, 'short', true],
    [2.2, 2.2, 0, 0, 'even', true],
    [-0.2, 0.1, 0.2, 0.3, 'short', false],
    [5, 4, null, 1, 'over', null],
  ] as const)('%d for %d within %s', (read, asked, tolerance, off, way, isWithin) => {
    const verdict = verdictOf(read, asked, tolerance, 'thickness')
    expect(verdict?.off).toBeCloseTo(off, 12)
    expect(verdict).toMatchObject({ way, isWithin })
  })

  test('a place across is held by how far out it lies, on the side it was asked on', () => {
    expect(verdictOf(-46, -45, 0.5, 'across')).toMatchObject({ off: 1, way: 'over', isWithin: false })
    expect(onAskedSide(46, -45, 'across')).toBe(-46)
    expect(onAskedSide(46, 45, 'across')).toBe(46)
    expect(onAskedSide(46, -45, 'thickness')).toBe(46)
  })

  test('nothing is said where no number was asked', () => {
    for (const asked of ['flat', 'none', Number.NaN] as const) expect(verdictOf(1, asked, 1, 'bodyLength')).toBeNull()
    expect(verdictOf(Number.POSITIVE_INFINITY, 1, 1, 'bodyLength')).toBeNull()
  })

  test('over and short change places with read and asked, and what is off stays', () => {
    const mm = fc.double({ min: -2000, max: 2000, noNaN: true })
    fc.assert(
      fc.property(mm, mm, fc.double({ min: 0, max: 5, noNaN: true }), (a, b, tolerance) => {
        const [one, other] = [verdictOf(a, b, tolerance, 'bodyLength')!, verdictOf(b, a, tolerance, 'bodyLength')!]
        expect(one.off).toBe(other.off)
        expect(one.isWithin).toBe(other.isWithin)
        if (one.way !== 'even') expect(other.way).toBe(one.way === 'over' ? 'short' : 'over')
      }),
    )
  })
})
