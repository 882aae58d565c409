import { describe, expect, test } from 'vitest'
import {
  areaUnderMm2,
  crossingsOfXMm,
  curveAt,
  headingsAtMm,
  insetLengthMm,
  insetPoint,
  makeCurve,
  turningToRad,
} from '../../../src/core/geometry/curve.ts'
import { arc, type Piece } from '../../../src/core/geometry/piece.ts'
import { closeChain } from '../../../src/core/instrument/compassArcs.ts'
import { SMALL, STEEL_STRING } from '../../generators/demoModels.ts'
import { polylineLengthMm, shoelaceMm2, traceChain } from '../trace.ts'
import { DEG, expectWithin } from '../within.ts'

const start = { point: { x: 0, y: 0 }, headingRad: Math.PI / 2 }

describe('a circle by arcs is exact', () => {
  test.each([[[180]], [[90, 90]], [[10, 35, 45, 60, 30]]])('half of it in sweeps of %j', (sweeps) => {
    const half = makeCurve(
      start,
      sweeps.map((sweep) => arc(100, sweep * DEG)),
    )
    expectWithin(half.lengthMm, 100 * Math.PI, 1e-12)
    expectWithin(areaUnderMm2(half), (Math.PI * 100 * 100) / 2, 1e-9)
    for (let i = 0; i <= 40; i++) {
      const s = (half.lengthMm * i) / 40
      const { point, curvaturePerMm, normal } = curveAt(half, s)
      expectWithin(point.x, 100 - 100 * Math.cos(s / 100), 1e-11)
      expectWithin(point.y, 100 * Math.sin(s / 100), 1e-11)
      expect(curvaturePerMm).toBe(0.01)
      expectWithin(normal.x, (point.x - 100) / 100, 1e-12)
      expectWithin(normal.y, point.y / 100, 1e-12)
    }
    expectWithin(turningToRad(half, half.lengthMm), Math.PI, 1e-12)
    // The parallel inside is a circle too.
    expectWithin(insetLengthMm(half, half.lengthMm, 2.2), 97.8 * Math.PI, 1e-10)
    expectWithin(headingsAtMm(half, 0)[0], 50 * Math.PI, 1e-9)
    expectWithin(curveAt(half, crossingsOfXMm(half, 20)[0]!).point.y, 60, 1e-9)
  })
})

describe.each([STEEL_STRING, SMALL])('$name, traced again corner to corner', ({ plan }) => {
  const { half } = closeChain(plan.outline.pieces, plan.outline.lengthMm)
  const dense = traceChain(plan.outline.pieces, 0.01)

  test('arc length', () => expectWithin(half.lengthMm, polylineLengthMm(dense), 1e-5))

  test('area', () => expectWithin(areaUnderMm2(half), shoelaceMm2(dense), 0.01))

  test('every place', () => {
    let s = 0
    for (let i = 1; i < dense.length; i++) {
      s += Math.hypot(dense[i]!.x - dense[i - 1]!.x, dense[i]!.y - dense[i - 1]!.y)
      if (i % 997 !== 0) continue
      const { point } = curveAt(half, s)
      expectWithin(Math.hypot(point.x - dense[i]!.x, point.y - dense[i]!.y), 0, 1e-5)
    }
  })

  test('length of the parallel, against the same points moved inward', () => {
    const inset = 2.2
    const count = 40000
    const inner = Array.from({ length: count + 1 }, (_, i) => insetPoint(half, (half.lengthMm * i) / count, inset))
    expectWithin(insetLengthMm(half, half.lengthMm, inset), polylineLengthMm(inner), 1e-4)
  })
})

describe('a clothoid', () => {
  const piece: Piece = { lengthMm: 300, startCurvaturePerMm: 0, endCurvaturePerMm: 1 / 80 }
  const curve = makeCurve({ point: { x: 0, y: 0 }, headingRad: 0 }, [piece])

  test('against small steps along its heading', () => {
    const count = 300000
    const h = piece.lengthMm / count
    let [x, y] = [0, 0]
    for (let i = 0; i < count; i++) {
      const s = h * (i + 0.5)
      const heading = -(s * s) / (2 * 80 * 300)
      x += h * Math.cos(heading)
      y += h * Math.sin(heading)
    }
    const { point } = curveAt(curve, 300)
    expectWithin(point.x, x, 1e-7)
    expectWithin(point.y, y, 1e-7)
  })

  test('against the series of the Fresnel integrals (Abramowitz & Stegun 1964, 7.3.11 and 7.3.13)', () => {
    // C(z) and S(z) with z = s / sqrt(pi A^2), A^2 = R L.
    const scale = Math.sqrt(Math.PI * 80 * 300)
    const z = 300 / scale
    let [c, s] = [0, 0]
    const factorial = (n: number): number => (n < 2 ? 1 : n * factorial(n - 1))
    for (let n = 0; n < 16; n++) {
      const sign = n % 2 === 0 ? 1 : -1
      c += (sign * (Math.PI / 2) ** (2 * n) * z ** (4 * n + 1)) / (factorial(2 * n) * (4 * n + 1))
      s += (sign * (Math.PI / 2) ** (2 * n + 1) * z ** (4 * n + 3)) / (factorial(2 * n + 1) * (4 * n + 3))
    }
    const { point } = curveAt(curve, 300)
    expectWithin(point.x, scale * c, 1e-9)
    expectWithin(point.y, -scale * s, 1e-9)
  })
})

test('arc lengths outside the curve are held to its ends', () => {
  const half = makeCurve(start, [arc(100, Math.PI)])
  expect(curveAt(half, -5).sMm).toBe(0)
  expect(curveAt(half, 1e9).sMm).toBe(half.lengthMm)
})
