import ellipe from '@stdlib/math-base-special-ellipe'
import { describe, expect, test } from 'vitest'
import type { Point } from '../../../../src/core/geometry/point.ts'
import type { WithinResult } from '../../../../src/core/geometry/within/curveWithin.ts'
import { curveWithin } from '../../../../src/core/geometry/within/curveWithin.ts'
import { expectWithin } from '../../within.ts'
import { countInflections, furthestMm, halfAim, readTrace, sampleCurve } from './withinSamples.ts'

/** Half an ellipse, tail to neck, by equal steps of its angle: its points are exact, its polyline within 1e-4 mm. */
const traceEllipse = (a: number, b: number): Point[] =>
  Array.from({ length: 4001 }, (_, i) => {
    const angle = Math.PI * (1 - i / 4000)
    return { x: a + a * Math.cos(angle), y: b * Math.sin(angle) }
  })

/** Half the round of an ellipse: 2 a E(m), m = 1 - b^2/a^2. Source: Abramowitz & Stegun 17.3.3 (E by the library). */
const halfRoundMm = (a: number, b: number): number =>
  2 * Math.max(a, b) * ellipe(1 - (Math.min(a, b) / Math.max(a, b)) ** 2)

const toHundredth = (valueMm: number): number => Math.round(valueMm * 100) / 100

function fitEllipse(a: number, b: number, stepMm: number): { result: WithinResult; trace: Point[] } {
  const trace = traceEllipse(a, b)
  const across = [20, 40, 60, 80, 100]
  const readings = readTrace(trace, stepMm, across, across, 0, toHundredth)
  return { result: curveWithin(halfAim(readings, 2 * a, 0, 0.01)), trace }
}

test('the library takes the parameter m: a circle, and a flat ellipse', () => {
  expectWithin(halfRoundMm(1, 1), Math.PI, 1e-14)
  expectWithin(halfRoundMm(1, 0), 2, 1e-14)
})

describe('readings off a known curve, rounded to a hundredth, give it back', () => {
  const rows: [a: number, b: number, stepMm: number][] = [
    [200, 200, 10],
    [200, 200, 20],
    [150, 150, 15],
    [240, 180, 10],
    [240, 180, 20],
    [180, 240, 10],
    [250, 140, 10],
  ]
  test.each(rows)('half axes %d and %d, every %d mm', (a, b, stepMm) => {
    const { result, trace } = fitEllipse(a, b, stepMm)
    expect(result.within).toBe(true)
    const found = sampleCurve(result.curve, 500)
    expectWithin(furthestMm(found, trace), 0, 0.02, 'curve off the ellipse')
    expectWithin(
      furthestMm(
        trace.filter((_, i) => i % 10 === 0),
        found,
      ),
      0,
      0.02,
      'ellipse off the curve',
    )
    expectWithin(result.curve.lengthMm, halfRoundMm(a, b), 0.02, 'length')
    expect(countInflections(result.curve)).toBe(0)
  })
})

describe('without readings', () => {
  test('the ends of a half circle, its curvature free, give it', () => {
    const { curve, within } = curveWithin(halfAim([], 400, 0, 1))
    expect(within).toBe(true)
    expectWithin(curve.lengthMm, Math.PI * 200, 1e-3)
    for (const { x, y } of sampleCurve(curve, 100)) expectWithin(Math.hypot(x - 200, y), 200, 1e-3)
  })
  test('a straight way ahead is a straight', () => {
    const start = { point: { x: 10, y: 20 }, headingRad: 0.5, curvaturePerMm: null }
    const point = { x: 10 + 300 * Math.cos(0.5), y: 20 + 300 * Math.sin(0.5) }
    const end = { point, headingRad: 0.5, curvaturePerMm: null }
    const { curve } = curveWithin({ start, end, readings: [], withinMm: 1, shape: 'free' })
    expectWithin(curve.lengthMm, 300, 1e-9)
    for (const piece of curve.pieces) expectWithin(piece.startCurvaturePerMm, 0, 1e-12)
  })
})
