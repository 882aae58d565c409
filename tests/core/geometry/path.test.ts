import ellipe from '@stdlib/math-base-special-ellipe'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { crossPath, partOfPath, splitPath } from '../../../src/core/geometry/cutPath.ts'
import { pathOfEllipse } from '../../../src/core/geometry/ellipsePath.ts'
import type { Path } from '../../../src/core/geometry/path.ts'
import {
  pathBounds,
  pathEnd,
  pathLengthMm,
  pointAt,
  reversePath,
  transformPath,
} from '../../../src/core/geometry/path.ts'
import { anyPath, deCasteljau } from './drawnPaths.ts'

const turnsLeft: Path = {
  start: { x: 10, y: 0 },
  strokes: [{ kind: 'arc', to: { x: 0, y: 10 }, bulge: Math.SQRT2 - 1 }],
}

describe('an arc by its bulge', () => {
  test('tan of a quarter of the sweep, turning left: a quarter circle round the origin', () => {
    for (const t of [0, 0.25, 0.5, 0.75, 1]) {
      const { x, y } = pointAt(turnsLeft, { stroke: 0, t })
      expect(x).toBeCloseTo(10 * Math.cos((t * Math.PI) / 2), 12)
      expect(y).toBeCloseTo(10 * Math.sin((t * Math.PI) / 2), 12)
    }
    expect(pathLengthMm(turnsLeft)).toBeCloseTo(5 * Math.PI, 12)
  })

  test('three quarters of a circle, to the right, and its box', () => {
    const path: Path = {
      start: { x: 0, y: 7 },
      strokes: [{ kind: 'arc', to: { x: -7, y: 0 }, bulge: -Math.tan((3 * Math.PI) / 8) }],
    }
    expect(pathLengthMm(path)).toBeCloseTo(10.5 * Math.PI, 11)
    const box = pathBounds(path)
    expect([box.minX, box.minY, box.maxX, box.maxY].map((value) => value / 7)).toEqual(
      [-1, -1, 1, 1].map((value) => expect.closeTo(value, 12)),
    )
  })

  test('nearly straight, it holds its digits', () => {
    const flat: Path = { start: { x: 0, y: 0 }, strokes: [{ kind: 'arc', to: { x: 400, y: 0 }, bulge: 1e-9 }] }
    // Sagitta: bulge x half the chord, to the right of the way of one that turns left.
    expect(pointAt(flat, { stroke: 0, t: 0.5 }).y).toBeCloseTo(-2e-7, 13)
  })
})

describe('a cubic', () => {
  const cubic: Path = {
    start: { x: 1, y: 2 },
    strokes: [{ kind: 'cubic', control1: { x: 90, y: 130 }, control2: { x: -40, y: 110 }, to: { x: 70, y: -20 } }],
  }
  const controls = [
    { x: 1, y: 2 },
    { x: 90, y: 130 },
    { x: -40, y: 110 },
    { x: 70, y: -20 },
  ]

  test('its points, box and crossings are those of de Casteljau', () => {
    const dense = Array.from({ length: 20001 }, (_, i) => deCasteljau(controls, i / 20000))
    expect(pointAt(cubic, { stroke: 0, t: 0.3 })).toEqual({
      x: expect.closeTo(deCasteljau(controls, 0.3).x, 12),
      y: expect.closeTo(deCasteljau(controls, 0.3).y, 12),
    })
    const box = pathBounds(cubic)
    expect(box.maxY).toBeCloseTo(Math.max(...dense.map(({ y }) => y)), 5)
    expect(box.minX).toBeCloseTo(Math.min(...dense.map(({ x }) => x)), 5)
    const line = { point: { x: 20, y: 40 }, headingRad: 0.4 }
    const off = (p: { x: number; y: number }) => (p.y - 40) * Math.cos(0.4) - (p.x - 20) * Math.sin(0.4)
    const changes = dense.slice(1).filter((p, i) => off(p) * off(dense[i]!) < 0).length
    const crossings = crossPath(cubic, line)
    expect(crossings).toHaveLength(changes)
    for (const place of crossings) expect(Math.abs(off(pointAt(cubic, place)))).toBeLessThan(1e-10)
  })

  test('its length is that of its chords as they grow short', () => {
    const chords = (n: number) =>
      Array.from({ length: n }, (_, i) => {
        const [a, b] = [deCasteljau(controls, i / n), deCasteljau(controls, (i + 1) / n)]
        return Math.hypot(b.x - a.x, b.y - a.y)
      }).reduce((sum, chord) => sum + chord, 0)
    // Richardson: the chords fall short by the square of their size.
    expect(pathLengthMm(cubic)).toBeCloseTo((4 * chords(4000) - chords(2000)) / 3, 7)
  })
})

describe('an ellipse', () => {
  test.each([
    [250, 190, 0],
    [250, 20, 0.7],
    [300, 299, 2],
  ])('%d by %d: on it, and as long as E(m) says', (a, b, tilt) => {
    const [c, s] = [Math.cos(tilt), Math.sin(tilt)]
    const path = pathOfEllipse(
      {
        centre: { x: 5, y: -3 },
        u: { x: a * c, y: a * s },
        v: { x: -b * s, y: b * c },
        fromRad: 0.3,
        sweepRad: 2 * Math.PI,
      },
      0.0005,
    )
    expect(pathEnd(path)).toEqual(path.start)
    const parts = path.strokes.length
    for (let i = 0; i < 1000; i++) {
      const at = pointAt(path, { stroke: Math.floor((i * parts) / 1000), t: ((i * parts) / 1000) % 1 })
      const [x, y] = [(at.x - 5) * c + (at.y + 3) * s, -(at.x - 5) * s + (at.y + 3) * c]
      // Distance to first order: the implicit form over its gradient.
      const away = ((x / a) ** 2 + (y / b) ** 2 - 1) / (2 * Math.hypot(x / a ** 2, y / b ** 2))
      expect(Math.abs(away)).toBeLessThan(0.0005)
    }
    expect(Math.abs(pathLengthMm(path) - 4 * a * ellipe(1 - (b * b) / (a * a)))).toBeLessThan(0.003)
  })

  test('round, it is arcs', () => {
    const circle = { centre: { x: 0, y: 0 }, u: { x: 8, y: 6 }, v: { x: 6, y: -8 }, fromRad: 0, sweepRad: 5 }
    const path = pathOfEllipse(circle, 0.0005)
    expect(path.strokes.map(({ kind }) => kind)).toEqual(['arc', 'arc'])
    expect(pathLengthMm(path)).toBeCloseTo(50, 10)
    for (const t of [0.2, 0.9])
      expect(Math.hypot(...Object.values(pointAt(path, { stroke: 1, t })))).toBeCloseTo(10, 10)
  })
})

describe('any path', () => {
  test('reversed twice, or moved there and back, it is itself; reversed it is as long', () => {
    fc.assert(
      fc.property(anyPath, (path) => {
        const twice = reversePath(reversePath(path))
        expect(twice).toEqual(path)
        const length = pathLengthMm(path)
        expect(Math.abs(pathLengthMm(reversePath(path)) - length)).toBeLessThan(1e-7 * (1 + length))
        const moved = transformPath(path, { scale: 2, mirrored: true, rotationRad: 1, shift: { x: 3, y: 4 } })
        expect(Math.abs(pathLengthMm(moved) - 2 * length)).toBeLessThan(1e-7 * (1 + length))
      }),
    )
  })

  test('cut in two, its halves are as long together, and meet', () => {
    fc.assert(
      fc.property(anyPath, fc.nat(12), fc.double({ min: 0, max: 1, noNaN: true }), (path, i, t) => {
        const stroke = i % path.strokes.length
        const [first, second] = splitPath(path, { stroke, t })
        expect(pathEnd(first)).toEqual(second.start)
        const length = pathLengthMm(path)
        expect(Math.abs(pathLengthMm(first) + pathLengthMm(second) - length)).toBeLessThan(1e-7 * (1 + length))
      }),
    )
  })

  test('a part between two places of one stroke starts and ends there', () => {
    const part = partOfPath(turnsLeft, { stroke: 0, t: 0.25 }, { stroke: 0, t: 0.5 })
    expect(pathLengthMm(part)).toBeCloseTo(1.25 * Math.PI, 11)
    expect(pathEnd(part).x).toBeCloseTo(10 * Math.SQRT1_2, 11)
  })
})
