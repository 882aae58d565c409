import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { WithinAim, WithinResult } from '../../../../src/core/geometry/within/curveWithin.ts'
import { curveWithin } from '../../../../src/core/geometry/within/curveWithin.ts'
import { countTurns } from './withinSamples.ts'

const number = (most: number) =>
  fc.oneof(fc.double({ min: -most, max: most, noNaN: true }), fc.constantFrom(0, 1e-9, 1, 400, -1e300, 1e300))
const point = fc.record({ x: number(600), y: number(600) })
const free = (most: number) => fc.option(number(most))
const aim: fc.Arbitrary<WithinAim> = fc.record({
  start: fc.record({ point, headingRad: number(4), curvaturePerMm: free(0.02) }),
  end: fc.record({ point, headingRad: free(4), curvaturePerMm: free(0.02) }),
  readings: fc.oneof(
    fc.array(point, { maxLength: 12 }),
    point.map((one) => Array.from({ length: 9 }, () => one)),
  ),
  withinMm: fc.oneof(fc.double({ min: 1e-6, max: 50, noNaN: true }), fc.constantFrom(1e-300, 0.5, 1e9)),
  shape: fc.constantFrom('guitar', 'free'),
})

function expectFinite({ curve, departuresMm, largestMm }: WithinResult): void {
  const numbers = [
    largestMm,
    ...departuresMm,
    ...curve.startsMm,
    ...curve.places.flatMap((place) => [place.point.x, place.point.y, place.headingRad]),
    ...curve.pieces.flatMap((piece) => [piece.lengthMm, piece.startCurvaturePerMm, piece.endCurvaturePerMm]),
  ]
  expect(numbers.every(Number.isFinite)).toBe(true)
  expect(curve.lengthMm).toBeGreaterThan(0)
}

describe('whatever is asked', () => {
  test('a finite curve comes back, and says truly whether it is within', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(aim, (one) => {
        const result = curveWithin(one)
        expectFinite(result)
        expect(result.departuresMm.length).toBe(one.readings.length)
        if (!result.within) return
        const end = result.curve.places.at(-1)!
        const scale = Math.hypot(end.point.x, end.point.y, one.start.point.x, one.start.point.y) + 1000
        expect(Math.abs(end.point.x - one.end.point.x)).toBeLessThan(1e-8 * scale)
        expect(Math.abs(end.point.y - one.end.point.y)).toBeLessThan(1e-8 * scale)
        expect(result.largestMm).toBeLessThanOrEqual(one.withinMm)
        if (one.shape === 'guitar') expect(countTurns(result.curve)).toBeLessThanOrEqual(3)
      }),
      { numRuns: 200, seed: 7 },
    )
  })

  test('the same aim gives the same curve', () => {
    fc.assert(
      fc.property(aim, (one) => {
        expect(curveWithin(one)).toEqual(curveWithin(one))
      }),
      { numRuns: 20, seed: 11 },
    )
  })

  test('three hundred readings without any sense', () => {
    const readings = Array.from({ length: 300 }, (_, i) => ({ x: (i * 7919) % 500, y: (i * 104729) % 211 }))
    for (const shape of ['guitar', 'free'] as const) {
      const start = { point: { x: 0, y: 0 }, headingRad: Math.PI / 2, curvaturePerMm: null }
      const end = { point: { x: 500, y: 0 }, headingRad: -Math.PI / 2, curvaturePerMm: null }
      const result = curveWithin({ start, end, readings, withinMm: 0.5, shape })
      expectFinite(result)
      expect(result.within).toBe(false)
    }
  })
})
