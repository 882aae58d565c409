import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { curveAt, type Curve } from '../../../src/core/geometry/curve.ts'
import { pathOfEllipse } from '../../../src/core/geometry/ellipsePath.ts'
import type { Path } from '../../../src/core/geometry/path.ts'
import { pathEnd, pathLengthMm } from '../../../src/core/geometry/path.ts'
import { curveOfPath } from '../../../src/core/geometry/pathCurve.ts'
import { pointRuns } from '../../../src/core/geometry/pathRuns.ts'
import type { Point } from '../../../src/core/geometry/point.ts'
import { anyPath, deCasteljau } from './drawnPaths.ts'

const bout: readonly [Point, Point, Point, Point] = [
  { x: 0, y: 0 },
  { x: -10, y: 130 },
  { x: 90, y: 240 },
  { x: 210, y: 170 },
]
const waist: readonly [Point, Point, Point, Point] = [
  { x: 0, y: 180 },
  { x: 110, y: 190 },
  { x: 130, y: 110 },
  { x: 250, y: 130 },
]
const pathOf = ([start, control1, control2, to]: typeof bout): Path => ({
  start,
  strokes: [{ kind: 'cubic', control1, control2, to }],
})

/** Largest distance from dense places of the curve to the cubic, each against its nearest of very dense points and their chord. */
function strayMm(curve: Curve, controls: readonly Point[]): number {
  const dense = Array.from({ length: 8001 }, (_, i) => deCasteljau(controls, i / 8000))
  let most = 0
  let near = 0
  for (let i = 0; i <= 1000; i++) {
    const { point } = curveAt(curve, (curve.lengthMm * i) / 1000)
    const away = (j: number) => Math.hypot(dense[j]!.x - point.x, dense[j]!.y - point.y)
    while (near < 8000 && away(near + 1) < away(near)) near++
    const [a, b] = [dense[Math.max(near - 1, 0)]!, dense[Math.min(near + 1, 8000)]!]
    const cross = (b.x - a.x) * (point.y - a.y) - (b.y - a.y) * (point.x - a.x)
    most = Math.max(most, Math.abs(cross) / Math.hypot(b.x - a.x, b.y - a.y))
  }
  return most
}

describe('a cubic as clothoids', () => {
  test.each([
    ['a bout', bout],
    ['a waist with an inflection', waist],
  ])('%s: within 0.001 mm, and as long', (_, controls) => {
    const path = pathOf(controls)
    const { curve, largestDepartureMm } = curveOfPath(path)
    expect(strayMm(curve, controls)).toBeLessThan(0.001)
    expect(largestDepartureMm).toBeLessThanOrEqual(0.0005)
    expect(Math.abs(curve.lengthMm - pathLengthMm(path))).toBeLessThan(0.001)
    expect(curve.pieces.length).toBeLessThan(40)
    expect(curve.corners).toEqual([])
    const end = curve.places.at(-1)!
    expect(Math.hypot(end.point.x - controls[3].x, end.point.y - controls[3].y)).toBeLessThan(1e-9)
    expect(Math.sin(end.headingRad)).toBeCloseTo(
      (controls[3].y - controls[2].y) / Math.hypot(controls[3].x - controls[2].x, controls[3].y - controls[2].y),
      9,
    )
  })

  test('a quarter circle of cubics has the curvature of the circle nearly all along', () => {
    const u = { x: 190, y: 0 }
    const v = { x: 0, y: 190.001 }
    const path = pathOfEllipse({ centre: { x: 0, y: 0 }, u, v, fromRad: 0, sweepRad: Math.PI / 2 }, 0.0005)
    expect(path.strokes[0]!.kind).toBe('cubic')
    const { curve } = curveOfPath(path)
    for (const { startCurvaturePerMm } of curve.pieces) expect(startCurvaturePerMm * 190).toBeCloseTo(-1, 2)
  })

  test('a cusp becomes a corner, a cubic of one point nothing', () => {
    const cusp = pathOf([
      { x: 0, y: 0 },
      { x: 100, y: 100 },
      { x: 0, y: 100 },
      { x: 100, y: 0 },
    ])
    const { curve, largestDepartureMm } = curveOfPath(cusp)
    expect(largestDepartureMm).toBeLessThan(0.001)
    const end = curve.places.at(-1)!.point
    expect(Math.hypot(end.x - 100, end.y)).toBeLessThan(1e-9)
    const still = { x: 3, y: 4 }
    expect(curveOfPath(pathOf([still, still, still, still])).curve.pieces).toEqual([])
  })
})

describe('lines and arcs', () => {
  const path: Path = {
    start: { x: 0, y: 0 },
    strokes: [
      { kind: 'line', to: { x: 0, y: 40 } },
      { kind: 'arc', to: { x: 30, y: 70 }, bulge: -(Math.SQRT2 - 1) },
      { kind: 'line', to: { x: 60, y: 70 } },
      { kind: 'line', to: { x: 60, y: 0 } },
    ],
  }

  test('are themselves: a tangent arc of 30 mm, one corner of a right angle to the right', () => {
    const { curve, largestDepartureMm } = curveOfPath(path)
    expect(largestDepartureMm).toBe(0)
    expect(curve.pieces).toHaveLength(4)
    expect(1 / curve.pieces[1]!.startCurvaturePerMm).toBeCloseTo(30, 10)
    expect(curve.corners).toHaveLength(1)
    expect(curve.corners[0]!.turnRad).toBeCloseTo(Math.PI / 2, 12)
    expect(curve.lengthMm).toBeCloseTo(40 + 15 * Math.PI + 30 + 70, 10)
  })
})

test('any path gives a finite curve that ends where the path ends', () => {
  fc.assert(
    fc.property(anyPath, (path) => {
      const { curve, largestDepartureMm } = curveOfPath(path)
      expect(Number.isFinite(largestDepartureMm)).toBe(true)
      const end = curve.places.at(-1)!.point
      const want = pathEnd(path)
      const size = 1 + pathLengthMm(path)
      expect(Math.hypot(end.x - want.x, end.y - want.y)).toBeLessThan(1e-9 * size)
      // A piece within a hair of a cubic that nearly turns back is longer or shorter by a few parts in a million of it.
      expect(Math.abs(curve.lengthMm - pathLengthMm(path))).toBeLessThan(0.005 + 5e-6 * size)
      for (const { lengthMm, startCurvaturePerMm, endCurvaturePerMm } of curve.pieces)
        expect(Number.isFinite(lengthMm + startCurvaturePerMm + endCurvaturePerMm) && lengthMm > 0).toBe(true)
    }),
    { numRuns: 300, endOnFailure: true },
  )
})

describe('runs of points', () => {
  const circle = (n: number, from = 0) =>
    Array.from({ length: n }, (_, i) => ({
      kind: 'line' as const,
      to: { x: 100 * Math.cos(from + (i + 1) * 0.2), y: 100 * Math.sin(from + (i + 1) * 0.2) },
    }))
  const start = { x: 100, y: 0 }

  test('eight lines that turn a little are a run, seven are not', () => {
    expect(pointRuns({ start, strokes: circle(7) })).toEqual([])
    const [run] = pointRuns({ start, strokes: circle(8) })
    expect(run).toMatchObject({ firstStroke: 0, strokeCount: 8 })
    expect(run!.points).toHaveLength(9)
  })

  test('a corner of 25 degrees and a stroke that is no line end it', () => {
    const corner = { kind: 'line' as const, to: { x: 0, y: 0 } }
    const arc = { kind: 'arc' as const, to: start, bulge: 0.2 }
    const runs = pointRuns({ start, strokes: [...circle(9), corner, arc, ...circle(10)] })
    expect(runs.map(({ firstStroke, strokeCount }) => [firstStroke, strokeCount])).toEqual([
      [0, 9],
      [11, 10],
    ])
  })
})
