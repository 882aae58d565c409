import fc from 'fast-check'
import { expect, test } from 'vitest'
import { clearanceMm, overlapMm, spanInBand, toPolygonMm } from '../../../src/core/geometry/convexPolygon.ts'
import { real } from '../../generators/real.ts'
import { sharedMm2 } from '../instrument/brace/clip.ts'
import { expectWithin } from '../within.ts'

const box = (x: number, y: number, length: number, width: number, angle = 0) =>
  [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([u, v]) => {
    const [a, b] = [(u! * length) / 2, (v! * width) / 2]
    return { x: x + a * Math.cos(angle) - b * Math.sin(angle), y: y + a * Math.sin(angle) + b * Math.cos(angle) }
  })

const anyBox = fc
  .tuple(real(-60, 60), real(-60, 60), real(1, 120), real(1, 20), real(-3, 3))
  .map(([x, y, length, width, angle]) => box(x, y, length, width, angle))

test('they overlap exactly where a general library of polygons finds a shared area', () => {
  fc.assert(
    fc.property(anyBox, anyBox, (a, b) => {
      const by = overlapMm(a, b)
      if (Math.abs(by) < 1e-3) return
      expect(by > 0).toBe(sharedMm2(a, b) > 1e-9)
      expectWithin(overlapMm(b, a), by, by > 0 ? 1e-9 : 200)
    }),
    { numRuns: 300, seed: 11 },
  )
})

test('moved apart by what they overlap, they just touch', () => {
  fc.assert(
    fc.property(anyBox, anyBox, (a, b) => {
      const by = overlapMm(a, b)
      if (by < 0.01) return
      // Of all ways to move one by a hair more than that, one at least frees them; by a hair less none does.
      const shifted = (mm: number, angle: number) =>
        a.map(({ x, y }) => ({ x: x + mm * Math.cos(angle), y: y + mm * Math.sin(angle) }))
      const angles = [...a, ...b].map((p, i, all) => {
        const q = all[i % 4 === 3 ? i - 3 : i + 1]!
        return Math.atan2(q.x - p.x, p.y - q.y)
      })
      const both = [...angles, ...angles.map((angle) => angle + Math.PI)]
      expect(Math.min(...both.map((angle) => sharedMm2(shifted(by + 1e-3, angle), b)))).toBeLessThan(1e-6)
      expect(Math.min(...both.map((angle) => sharedMm2(shifted(by * 0.98, angle), b)))).toBeGreaterThan(1e-9)
    }),
    { numRuns: 60, seed: 12 },
  )
})

test('distances of squares', () => {
  expectWithin(clearanceMm(box(0, 0, 10, 10), box(20, 0, 10, 10)), 10, 1e-12)
  expectWithin(clearanceMm(box(0, 0, 10, 10), box(13, 14, 10, 10)), 5, 1e-12)
  expectWithin(clearanceMm(box(0, 0, 10, 10), box(8, 1, 10, 10)), -2, 1e-12)
  expectWithin(toPolygonMm(box(0, 0, 10, 10), { x: 8, y: 9 }), 5, 1e-12)
  expect(toPolygonMm(box(0, 0, 10, 10), { x: 4, y: 1 })).toBe(0)
})

test('a span within a band: square, aslant, beside it', () => {
  expect(spanInBand(box(50, 0, 20, 200), 8)).toEqual({ fromMm: 40, toMm: 60 })
  expect(spanInBand(box(50, 40, 20, 20), 8)).toBeNull()
  const angle = Math.PI / 3
  const span = spanInBand(box(50, 0, 300, 12, angle), 8)!
  // w / sin a + 2 h / tan a.
  expectWithin(span.toMm - span.fromMm, 12 / Math.sin(angle) + 16 / Math.tan(angle), 1e-9)
  expectWithin((span.toMm + span.fromMm) / 2, 50, 1e-9)
})

test('what has shrunk to a stretch or a point stays finite', () => {
  const point = box(5, 5, 0, 0)
  for (const other of [point, box(5, 5, 10, 0), box(0, 0, 40, 40)])
    for (const value of [overlapMm(point, other), clearanceMm(point, other), toPolygonMm(point, other[0]!)])
      expect(Number.isFinite(value)).toBe(true)
})
