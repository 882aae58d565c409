import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { FairCurveAim } from '../../../../src/core/geometry/fair/fairCurve.ts'
import { fairCurve } from '../../../../src/core/geometry/fair/fairCurve.ts'

describe('whatever is asked, something finite comes back', () => {
  const check = (aim: FairCurveAim) => {
    const { curve, fair, missMm, culprit } = fairCurve(aim)
    expect(curve.pieces.length).toBeGreaterThan(0)
    for (const piece of curve.pieces) for (const value of Object.values(piece)) expect(value).toSatisfy(Number.isFinite)
    for (const { point, headingRad } of curve.places) {
      expect([point.x, point.y, headingRad].every(Number.isFinite)).toBe(true)
    }
    expect(missMm).toSatisfy(Number.isFinite)
    if (fair) {
      expect(missMm).toBeLessThan(0.051)
      expect(culprit).toBeNull()
    } else if (aim.through.length > 0) expect(aim.through[culprit ?? -1]).toBeDefined()
  }
  const point = (value: fc.Arbitrary<number>) => fc.record({ x: value, y: value })

  test('for any numbers at all', () => {
    const any = fc.oneof(fc.double(), fc.double({ min: -500, max: 500, noNaN: true }))
    const aim = fc.record({
      lengthMm: any,
      through: fc.array(point(any), { maxLength: 5 }),
      tailCurvaturePerMm: fc.option(any),
      neckFlatHalfWidthMm: any,
      neckCurvaturePerMm: fc.option(any),
    })
    fc.assert(fc.property(aim, check), { seed: 3, numRuns: 400 })
  })

  test('for points strewn about a body', () => {
    const aim = fc.record({
      lengthMm: fc.double({ min: 200, max: 500, noNaN: true }),
      through: fc
        .array(point(fc.double({ min: 1, max: 400, noNaN: true })), { maxLength: 5 })
        .map((points) => points.toSorted((a, b) => a.x - b.x)),
      tailCurvaturePerMm: fc.option(fc.double({ min: -0.01, max: 0.03, noNaN: true })),
      neckFlatHalfWidthMm: fc.constantFrom(0, 20, 60),
      neckCurvaturePerMm: fc.option(fc.constantFrom(0, 0.004, 0.02)),
    })
    fc.assert(fc.property(aim, check), { seed: 4, numRuns: 100 })
  })
})
