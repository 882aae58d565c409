import { describe, expect, test } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import { makeCurve } from '../../src/core/geometry/curve.ts'
import type { Point } from '../../src/core/geometry/point.ts'
import { curveCommands } from '../../src/drawing/curvePath.ts'
import { svgPath } from '../../src/drawing/svgPath.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { pointsAlong } from './svgArc.ts'

/** A curve walked by its curvature alone in very small steps (midpoint rule), from (0, 0) up the y axis; inset to its right. */
function walked(pieces: readonly { length: number; from: number; to: number }[], inset: number): Point[] {
  const points: Point[] = []
  let [x, y, heading] = [0, 0, Math.PI / 2]
  for (const piece of pieces) {
    const steps = Math.ceil(piece.length / 0.02)
    const ds = piece.length / steps
    for (let i = 0; i < steps; i++) {
      const turn = (piece.from + ((piece.to - piece.from) * (i + 0.5)) / steps) * ds
      x += Math.cos(heading - turn / 2) * ds
      y += Math.sin(heading - turn / 2) * ds
      heading -= turn
      points.push({ x: x + inset * Math.sin(heading), y: y - inset * Math.cos(heading) })
    }
  }
  return points
}

const furthest = (from: readonly Point[], to: readonly Point[]): number =>
  Math.max(...from.map((p) => Math.min(...to.map((q) => Math.hypot(p.x - q.x, p.y - q.y)))))

describe('a curve as a path', () => {
  const CLOTHOIDS = [
    { length: 180, from: 1 / 900, to: 1 / 110 },
    { length: 140, from: 1 / 110, to: -1 / 75 },
    { length: 160, from: -1 / 75, to: 1 / 60 },
  ]
  test.each([0, 2.2, 6])('clothoids and their parallel at %d mm stay within 0.005 mm', (insetMm) => {
    const curve = makeCurve(
      { point: { x: 0, y: 0 }, headingRad: Math.PI / 2 },
      CLOTHOIDS.map(({ length, from, to }) => ({ lengthMm: length, startCurvaturePerMm: from, endCurvaturePerMm: to })),
    )
    const drawn = pointsAlong(svgPath(curveCommands(curve, { insetMm })))
    const truth = walked(CLOTHOIDS, insetMm)
    // The walked points stand 0.02 mm apart, so the nearest one to a point of the curve is at most 0.01 mm along it.
    const along = 0.0103
    expect(Math.sqrt(Math.max(furthest(drawn, truth) ** 2 - along ** 2, 0))).toBeLessThan(0.005)
  })

  test('the compass arcs of an outline stay arcs of their radii, the inner face of theirs less the side', () => {
    const { bass: half } = compute(STEEL_STRING.plan).geometry.outline
    const radii = (insetMm: number) =>
      curveCommands(half, { insetMm }).flatMap((command) =>
        command[0] === 'A' ? [Math.round(command[1] * 1e6) / 1e6] : [],
      )
    expect(radii(0)).toEqual([950, 135, 120, 80, 138, 95, 500])
    expect(radii(2.2)).toEqual([947.8, 132.8, 117.8, 82.2, 135.8, 92.8, 497.8])
  })

  test('the arcs of the outline bend the way its radii say', () => {
    // Radii and sweeps of the model, walked in small steps without any of the program's geometry.
    const chain: [number, number][] = [
      [950, 4.2924098],
      [135, 85.7075902],
      [120, 47.1209334],
      [0, 17.864066],
      [-80, 71.5935367],
      [0, 15.484941],
      [138, 24.4726033],
      [95, 86.886104],
      [500, 3.113896],
      [0, 28],
    ]
    const truth = walked(
      chain.map(([radius, much]) =>
        radius === 0
          ? { length: much, from: 0, to: 0 }
          : { length: (Math.abs(radius) * much * Math.PI) / 180, from: 1 / radius, to: 1 / radius },
      ),
      0,
    )
    const { bass: half } = compute(STEEL_STRING.plan).geometry.outline
    expect(furthest(pointsAlong(svgPath(curveCommands(half))), truth)).toBeLessThan(0.0105)
  })

  test('the outline runs from the tail to the neck, and the other half is its mirror', () => {
    const { bass: half } = compute(STEEL_STRING.plan).geometry.outline
    const treble = pointsAlong(svgPath(curveCommands(half), 9))
    const bass = pointsAlong(svgPath(curveCommands(half, { mirrored: true }), 9))
    expect(treble.at(-1)!.x).toBeCloseTo(496, 4)
    expect(Math.max(...treble.map(({ y }) => y))).toBeCloseTo(196, 1)
    treble.forEach((point, i) => {
      expect(bass[i]!.x).toBeCloseTo(point.x, 6)
      expect(bass[i]!.y).toBeCloseTo(-point.y, 6)
    })
  })

  test('a stretch begins and ends where it is told', () => {
    const curve = makeCurve({ point: { x: 0, y: 0 }, headingRad: Math.PI / 2 }, [
      { lengthMm: Math.PI * 100, startCurvaturePerMm: 0.01, endCurvaturePerMm: 0.01 },
    ])
    const quarter = curveCommands(curve, { fromMm: 0, toMm: Math.PI * 50 })
    const end = quarter.at(-1)!
    expect(end[0]).toBe('A')
    expect(end.at(-2)).toBeCloseTo(100, 9)
    expect(end.at(-1)).toBeCloseTo(100, 9)
  })
})
