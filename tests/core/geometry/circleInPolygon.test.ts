import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { circleInPolygonMm2 } from '../../../src/core/geometry/circleInPolygon.ts'
import { real } from '../../generators/real.ts'
import { expectWithin } from '../within.ts'

const square = (half: number) => [
  { x: -half, y: -half },
  { x: half, y: -half },
  { x: half, y: half },
  { x: -half, y: half },
]

describe('a circle of 10 and a square about the same centre', () => {
  test('a square outside of it leaves all of the circle', () => {
    expectWithin(circleInPolygonMm2(10, square(11)), 100 * Math.PI, 1e-9)
  })
  test('a square inside of it is all there is', () => expectWithin(circleInPolygonMm2(10, square(7)), 196, 1e-9))
  test('between: the circle less four segments of height 2', () => {
    const segment = 100 * Math.acos(0.8) - 8 * 6
    expectWithin(circleInPolygonMm2(10, square(8)), 100 * Math.PI - 4 * segment, 1e-9)
  })
  test('the other way round it counts as minus', () => {
    expectWithin(circleInPolygonMm2(10, square(8).toReversed()), -circleInPolygonMm2(10, square(8)), 1e-9)
  })
})

test('a far square shares nothing, a polygon of nothing neither', () => {
  expectWithin(
    circleInPolygonMm2(
      10,
      square(5).map(({ x, y }) => ({ x: x + 40, y })),
    ),
    0,
    1e-9,
  )
  expect(circleInPolygonMm2(10, [])).toBe(0)
  expectWithin(
    circleInPolygonMm2(
      10,
      Array.from({ length: 4 }, () => ({ x: 3, y: 3 })),
    ),
    0,
    1e-12,
  )
})

test('any triangle, against the length of upright lines across both', () => {
  const place = fc.record({ x: real(-15, 15), y: real(-15, 15) })
  fc.assert(
    fc.property(place, place, place, (a, b, c) => {
      const edges = [
        [a, b],
        [b, c],
        [c, a],
      ] as const
      const lines = 4000
      let area = 0
      for (let i = 0; i < lines; i++) {
        const x = -10 + (20 * (i + 0.5)) / lines
        const crossed = edges
          .filter(([p, q]) => p.x < x !== q.x < x)
          .map(([p, q]) => p.y + ((x - p.x) / (q.x - p.x)) * (q.y - p.y))
        if (crossed.length < 2) continue
        const half = Math.sqrt(100 - x * x)
        area += (Math.max(0, Math.min(Math.max(...crossed), half) - Math.max(Math.min(...crossed), -half)) * 20) / lines
      }
      const sign = Math.sign((b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y))
      expectWithin(sign * circleInPolygonMm2(10, [a, b, c]), area, 0.02)
    }),
    { numRuns: 200, seed: 5 },
  )
})
