import { describe, expect, test } from 'vitest'
import { pathEnd, pathLengthMm, pointAt, type Path } from '../../src/core/geometry/path.ts'
import { strokeLengthMm } from '../../src/core/geometry/stroke.ts'
import { strokesFrom } from '../../src/core/geometry/path.ts'
import { readSvgOutline } from '../../src/files/svgOutline.ts'
import type { DrawnFile } from '../../src/record/drawnFile.ts'
import { deCasteljau } from '../core/geometry/drawnPaths.ts'

const page = (inside: string, attributes = 'width="400mm" height="300mm" viewBox="0 0 400 300"') =>
  `<svg xmlns="http://www.w3.org/2000/svg" ${attributes}>${inside}</svg>`

const read = (text: string): DrawnFile => {
  const result = readSvgOutline(text)
  if (!result.ok) expect.fail(result.problem)
  return result.value
}
const pathOf = (inside: string, attributes?: string): Path => read(page(inside, attributes)).paths[0]!.path
const drawn = (d: string): Path => pathOf(`<path d="${d}"/>`)

/** Corners of a path, with y down again as it was written. */
const corners = ({ start, strokes }: Path) => [start, ...strokes.map(({ to }) => to)].map(({ x, y }) => [x, 0 - y])
const near = (rows: readonly (readonly number[])[]) => rows.map((row) => row.map((value) => expect.closeTo(value, 9)))

/** Points all along a path, y down as written. */
function pointsAlong(path: Path, count = 60): { x: number; y: number }[] {
  return path.strokes.flatMap((_, stroke) =>
    Array.from({ length: count + 1 }, (__, j) => {
      const { x, y } = pointAt(path, { stroke, t: j / count })
      return { x, y: -y }
    }),
  )
}

describe('every path command', () => {
  test('M L H V Z and their small letters draw the same', () => {
    const want = near([
      [10, 20],
      [60, 20],
      [60, 50],
      [30, 70],
      [10, 20],
    ])
    expect(corners(drawn('M10 20 H60 V50 L30 70 Z'))).toEqual(want)
    expect(corners(drawn('m10 20 h50 v30 l-30 20 z'))).toEqual(want)
    expect(corners(drawn('M10,20L60,20 60,50 30,70z'))).toEqual(want)
    expect(corners(drawn('m10 20 50 0 0 30-30 20z'))).toEqual(want)
  })

  test('C and S, c and s: de Casteljau, the handle of S mirrored', () => {
    const first = [
      { x: 10, y: 10 },
      { x: 20, y: 60 },
      { x: 70, y: 80 },
      { x: 90, y: 40 },
    ]
    const second = [
      { x: 90, y: 40 },
      { x: 110, y: 0 },
      { x: 150, y: 5 },
      { x: 160, y: 50 },
    ]
    for (const d of ['M10 10C20 60 70 80 90 40S150 5 160 50', 'm10 10c10 50 60 70 80 30s60-35 70 10']) {
      const path = drawn(d)
      for (const t of [0.2, 0.5, 0.9]) {
        ;[first, second].forEach((controls, stroke) => {
          const { x, y } = pointAt(path, { stroke, t })
          expect(x).toBeCloseTo(deCasteljau(controls, t).x, 9)
          expect(-y).toBeCloseTo(deCasteljau(controls, t).y, 9)
        })
      }
    }
  })

  test('Q and T, q and t: the parabola, its control point mirrored on and on', () => {
    const parts = [
      [
        { x: 0, y: 100 },
        { x: 20, y: 60 },
        { x: 40, y: 100 },
      ],
      [
        { x: 40, y: 100 },
        { x: 60, y: 140 },
        { x: 80, y: 100 },
      ],
      [
        { x: 80, y: 100 },
        { x: 100, y: 60 },
        { x: 130, y: 90 },
      ],
    ]
    for (const d of ['M0 100Q20 60 40 100T80 100 130 90', 'm0 100q20-40 40 0t40 0t50-10']) {
      const path = drawn(d)
      parts.forEach((controls, stroke) => {
        for (const t of [0.25, 0.6]) {
          const { x, y } = pointAt(path, { stroke, t })
          expect(x).toBeCloseTo(deCasteljau(controls, t).x, 9)
          expect(-y).toBeCloseTo(deCasteljau(controls, t).y, 9)
        }
      })
    }
  })

  test('S after a line, T after a line: the handle is the point itself', () => {
    const s = drawn('M0 0L10 0S30 10 40 0')
    expect(s.strokes[1]).toMatchObject({ control1: { x: 10 } })
    const t = drawn('M0 0L10 0T40 0')
    expect(pathLengthMm(t)).toBeCloseTo(40, 9)
  })

  test.each([
    [0, 0, 1],
    [0, 1, 1],
    [1, 0, 3],
    [1, 1, 3],
  ])('A with flags %d %d: a circle of 50 from (50, 0) to (0, 50), exactly', (large, sweep, quarters) => {
    // Both circles of radius 50 through the ends; their centres are the origin and (50, 50).
    for (const d of [`M50 0A50 50 0 ${large} ${sweep} 0 50`, `m50 0a50 50 17 ${large}${sweep}-50 50`]) {
      const path = drawn(d)
      expect(path.strokes.every(({ kind }) => kind === 'arc')).toBe(true)
      expect(pathLengthMm(path)).toBeCloseTo(25 * Math.PI * quarters, 9)
      // Sweep 1 turns clockwise on a page with y down, about (0, 0) for the short way, about (50, 50) for the long one.
      const centre = (large === 0) === (sweep === 1) ? 0 : 50
      for (const { x, y } of pointsAlong(path)) expect(Math.hypot(x - centre, y - centre)).toBeCloseTo(50, 9)
      expect(pathEnd(path)).toEqual({ x: expect.closeTo(0, 9), y: expect.closeTo(-50, 9) })
    }
  })

  test('A of an ellipse, turned: on the ellipse to 0.0005 mm', () => {
    const path = drawn('M 180 150 A 120 40 30 1 0 180.001 150')
    const [c, s] = [Math.cos(Math.PI / 6), Math.sin(Math.PI / 6)]
    // Nearly all of the ellipse: its middle is that of its box.
    const points = pointsAlong(path, 400)
    const middle = (of: (p: { x: number; y: number }) => number) =>
      (Math.max(...points.map(of)) + Math.min(...points.map(of))) / 2
    const [cx, cy] = [middle(({ x }) => x), middle(({ y }) => y)]
    for (const { x, y } of points) {
      const [u, v] = [(x - cx) * c + (y - cy) * s, -(x - cx) * s + (y - cy) * c]
      const away = ((u / 120) ** 2 + (v / 40) ** 2 - 1) / (2 * Math.hypot(u / 120 ** 2, v / 40 ** 2))
      expect(Math.abs(away)).toBeLessThan(0.003)
    }
  })

  test('A with radii too short is grown; with none is a line', () => {
    expect(pathLengthMm(drawn('M0 0A1 1 0 0 1 100 0'))).toBeCloseTo(50 * Math.PI, 6)
    expect(drawn('M0 0A0 5 0 0 1 100 0').strokes).toEqual([{ kind: 'line', to: { x: 100, y: 0 } }])
  })

  test('a pen lifted begins another path, at the start of the last after Z', () => {
    const { paths } = read(page('<path id="two" d="M0 0h10v10z l5 5 M50 50h9"/>'))
    expect(paths.map(({ isClosed, name }) => [name, isClosed])).toEqual([
      ['two', true],
      ['two', false],
      ['two', false],
    ])
    expect(corners(paths[1]!.path)).toEqual(
      near([
        [0, 0],
        [5, 5],
      ]),
    )
  })
})

describe('shapes', () => {
  test('line, polyline, polygon', () => {
    expect(corners(pathOf('<line x1="1" y1="2" x2="3" y2="4"/>'))).toEqual(
      near([
        [1, 2],
        [3, 4],
      ]),
    )
    expect(corners(pathOf('<polyline points="0,0 10,0 10,5"/>'))).toEqual(
      near([
        [0, 0],
        [10, 0],
        [10, 5],
      ]),
    )
    expect(corners(pathOf('<polygon points="0 0 10 0 10 5"/>'))).toEqual(
      near([
        [0, 0],
        [10, 0],
        [10, 5],
        [0, 0],
      ]),
    )
  })

  test('circle and ellipse', () => {
    const circle = pathOf('<circle cx="100" cy="80" r="45"/>')
    expect(circle.strokes.map(({ kind }) => kind)).toEqual(['arc', 'arc'])
    for (const { x, y } of pointsAlong(circle)) expect(Math.hypot(x - 100, y - 80)).toBeCloseTo(45, 9)
    for (const { x, y } of pointsAlong(pathOf('<ellipse cx="10" cy="20" rx="90" ry="30"/>'))) {
      const [u, v] = [x - 10, y - 20]
      const away = ((u / 90) ** 2 + (v / 30) ** 2 - 1) / (2 * Math.hypot(u / 8100, v / 900))
      expect(Math.abs(away)).toBeLessThan(0.0005)
    }
  })

  test('rect, with and without round corners', () => {
    expect(pathLengthMm(pathOf('<rect x="5" y="6" width="70" height="30"/>'))).toBeCloseTo(200, 9)
    const round = pathOf('<rect x="5" y="6" width="70" height="30" rx="10"/>')
    expect(pathLengthMm(round)).toBeCloseTo(120 + 20 * Math.PI, 9)
    expect(
      strokesFrom(round)
        .filter(({ stroke }) => stroke.kind === 'arc')
        .map(({ from, stroke }) => strokeLengthMm(from, stroke)),
    ).toEqual(Array(4).fill(expect.closeTo(5 * Math.PI, 9)))
  })
})

describe('transforms', () => {
  test('nested, the inner first', () => {
    const path = pathOf(
      '<g transform="translate(100 50)"><g transform="rotate(90) scale(2,3)"><path transform="translate(1,-1)" d="M0 0H10V5"/></g></g>',
    )
    // By hand: shifted by (1, -1), scaled to (2x, 3y), turned (x, y) -> (-y, x), shifted by (100, 50).
    expect(corners(path)).toEqual(
      near([
        [103, 52],
        [103, 72],
        [88, 72],
      ]),
    )
  })

  test('matrix, skews, rotation about a point', () => {
    expect(corners(pathOf('<path transform="matrix(1 2 3 4 5 6)" d="M1 1L2 0"/>'))).toEqual(
      near([
        [9, 12],
        [7, 10],
      ]),
    )
    expect(corners(pathOf('<path transform="skewX(45)" d="M0 0L0 10"/>'))).toEqual(
      near([
        [0, 0],
        [10, 10],
      ]),
    )
    expect(corners(pathOf('<path transform="skewY(45)" d="M0 0L10 0"/>'))).toEqual(
      near([
        [0, 0],
        [10, 10],
      ]),
    )
    expect(corners(pathOf('<path transform="rotate(180,10,20)" d="M0 0L10 0"/>'))).toEqual(
      near([
        [20, 40],
        [10, 40],
      ]),
    )
    expect(corners(pathOf('<path transform="translate(3-4)scale(-1)" d="M0 0L10 0"/>'))).toEqual(
      near([
        [3, -4],
        [-7, -4],
      ]),
    )
  })

  test('a circle stays arcs when mirrored and scaled evenly, and becomes an ellipse when not', () => {
    const even = pathOf('<circle transform="rotate(33) scale(-2 2)" r="10"/>')
    expect(even.strokes.map(({ kind }) => kind)).toEqual(['arc', 'arc'])
    expect(pathLengthMm(even)).toBeCloseTo(40 * Math.PI, 9)
    const uneven = pathOf('<circle transform="scale(9 2)" r="10"/>')
    expect(uneven.strokes[0]!.kind).toBe('cubic')
    for (const { x, y } of pointsAlong(uneven)) expect(Math.hypot(x / 90, y / 20)).toBeCloseTo(1, 4)
  })
})

describe('size', () => {
  const square = '<path d="M0 0H96V96"/>'
  test.each([
    ['width="200mm" height="100mm" viewBox="0 0 2000 1000"', 9.6, 'mm'],
    ['width="20cm" viewBox="0 0 2000 1000"', 9.6, 'cm'],
    ['width="10in" height="10in" viewBox="0 0 960 960"', 25.4, 'inch'],
    ['width="72pt" height="72pt" viewBox="0 0 96 96"', 25.4, 'point'],
    ['width="6pc" height="6pc"', 25.4, 'point'],
    ['width="210mm" height="297mm"', 25.4, 'mm'],
    ['width="960" height="960" viewBox="0 0 960 960"', 96, null],
    ['width="100%" viewBox="0 0 960 960"', 96, null],
    ['', 96, null],
  ])('%s: 96 units are %d, unit %s', (attributes, side, unit) => {
    const file = read(page(square, attributes))
    expect(file.unit).toBe(unit)
    expect(file.paths[0]!.path.strokes[0]!.to.x).toBeCloseTo(side, 9)
  })

  test('the view box is shifted; a page of another shape keeps circles round', () => {
    const shifted = pathOf(square, 'width="100mm" height="100mm" viewBox="-10 -20 100 100"')
    expect(corners(shifted)[0]).toEqual([expect.closeTo(10, 9), expect.closeTo(20, 9)])
    const other = pathOf('<circle r="10"/>', 'width="100mm" height="300mm" viewBox="0 0 100 100"')
    expect(pathLengthMm(other)).toBeCloseTo(20 * Math.PI, 9)
  })
})
