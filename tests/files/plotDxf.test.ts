import DxfParser from 'dxf-parser'
import { describe, expect, test } from 'vitest'
import type { Point } from '../../src/core/geometry/point.ts'
import type { PathCommand } from '../../src/drawing/drawing.ts'
import { circle, rectangle, through } from '../../src/drawing/line.ts'
import type { Plot } from '../../src/drawing/plot.ts'
import { cubicSteps } from '../../src/drawing/cubicSteps.ts'
import { writePlotDxf } from '../../src/files/dxf/writePlotDxf.ts'
import { deCasteljau } from '../core/geometry/drawnPaths.ts'
import { cutBody, distanceMm, oneBrace, OUTLINES, plotWith, strokeOf } from './plottedDrawings.ts'
import { canReadDxf, readDxf, type ReadEntity } from './readDxf.ts'

const SPLINES = { curves: 'splines', toleranceMm: 0.02 } as const
const write = (plot: Plot) => writePlotDxf(plot, SPLINES)
const read = (commands: readonly PathCommand[]) => readDxf(write(plotWith([strokeOf(commands)]))).entities

/** Millimetres in the DXF reference's list of units. */
const MM = 4

describe.runIf(canReadDxf())('read by ezdxf', () => {
  test('a DXF of 2007 in millimetres, with four layers by purpose, that its audit finds nothing in', () => {
    const found = readDxf(write(cutBody('right')))
    expect(found).toMatchObject({ version: 'AC1021', units: MM, measurement: 1, errors: [], fixes: [] })
    expect(found.layers).toMatchObject({ CUT: 1, SCORE: 5, MARK: 7, TEXT: 8 })
    expect(new Set(found.entities.map(({ layer }) => layer))).toEqual(new Set(['CUT', 'SCORE', 'MARK', 'TEXT']))
    // What is cut through has no dashes, and what is hidden has.
    expect(found.entities.filter(({ layer, lineType }) => layer === 'CUT' && lineType !== 'BYLAYER')).toEqual([])
    const dashed = new Set(found.entities.filter(({ layer }) => layer === 'SCORE').map(({ lineType }) => lineType))
    expect([...dashed].some((name) => name.startsWith('DASHES'))).toBe(true)
    expect([...dashed].filter((name) => name !== 'BYLAYER' && !found.lineTypes.includes(name))).toEqual([])
  })

  test('lines: one is a LINE, a run of them one LWPOLYLINE, closed where it is closed; y up', () => {
    const [line, ...rest] = read(
      through([
        { x: 10, y: 20 },
        { x: 110, y: 20 },
      ]),
    )
    expect(rest).toEqual([])
    expect(line).toMatchObject({ type: 'LINE', layer: 'CUT' })
    expect(line!.points).toEqual([
      { x: 10, y: -20 },
      { x: 110, y: -20 },
    ])
    const angle = through([
      { x: 0, y: 0 },
      { x: 5, y: 0 },
      { x: 5, y: 7 },
    ])
    expect(read(angle)).toMatchObject([{ type: 'LWPOLYLINE', isClosed: false, vertices: 3 }])
    expect(read(rectangle(0, 0, 30, 40))).toMatchObject([{ type: 'LWPOLYLINE', isClosed: true, vertices: 4 }])
  })

  test('a whole circle is a CIRCLE', () => {
    expect(read(circle({ x: 30, y: 40 }, 25))).toMatchObject([{ type: 'CIRCLE', radius: 25, centre: [30, -40] }])
  })

  // Quarter and three quarters of the circle of 10 about the origin, from (10, 0) to the point that lies below it on the sheet.
  test.each([
    [0, 1, Math.SQRT1_2, -Math.SQRT1_2, 90],
    [1, 0, -Math.SQRT1_2, Math.SQRT1_2, 270],
  ] as const)('an arc, longer way %d, clockwise %d', (isLong, isClockwise, x, y, sweptDeg) => {
    const [arc] = read([
      ['M', 10, 0],
      ['A', 10, isLong, isClockwise, 0, 10],
    ])
    expect(arc).toMatchObject({ type: 'ARC', radius: 10 })
    expect(arc!.centre![0]).toBeCloseTo(0, 6)
    expect(arc!.centre![1]).toBeCloseTo(0, 6)
    expect(lengthOf(arc!.points)).toBeCloseTo((sweptDeg / 360) * 20 * Math.PI, 2)
    // Its middle: half way between the two directions.
    expect(distanceMm({ x: 10 * x, y: 10 * y }, arc!.points)).toBeLessThan(0.001)
    for (const { x: px, y: py } of arc!.points) expect(Math.hypot(px, py)).toBeCloseTo(10, 5)
  })

  test('one SPLINE for every cubic, with the knots of a Bezier curve', () => {
    const handles: [Point, Point, Point, Point] = [
      { x: 0, y: 0 },
      { x: 20, y: 60 },
      { x: 90, y: -10 },
      { x: 100, y: 30 },
    ]
    const [a, b, c, d] = handles
    const splines = read([
      ['M', a.x, a.y],
      ['C', b.x, b.y, c.x, c.y, d.x, d.y],
      ['C', 110, 70, 150, 60, 170, 10],
    ])
    expect(splines).toHaveLength(2)
    for (const spline of splines)
      expect(spline).toMatchObject({ type: 'SPLINE', degree: 3, knots: [0, 0, 0, 0, 1, 1, 1, 1], controlPoints: 4 })
    for (let i = 0; i <= 50; i++) {
      const { x, y } = deCasteljau(handles, i / 50)
      expect(distanceMm({ x, y: -y }, splines[0]!.points)).toBeLessThan(0.001)
    }
  })

  test('text with its height, turned to be read from the right, its special signs whole', () => {
    const text = 'R\u20094°½ × 3⁄8″ −2 “Ω” 100 % a\\b^c é'
    const { entities, errors } = readDxf(
      write(
        plotWith(
          [],
          [
            { text, at: { x: 12, y: 34 }, sizeMm: 4, heightMm: 3, turnDeg: 0 },
            { text: 'waist', at: { x: -5, y: 0 }, sizeMm: 4, heightMm: 2.5, turnDeg: -90 },
          ],
        ),
      ),
    )
    expect(errors).toEqual([])
    expect(entities).toMatchObject([
      {
        type: 'TEXT',
        layer: 'TEXT',
        text: 'R 4°½ × 3/8" -2 "Ω" 100 % a\\b^c é',
        height: 3,
        rotation: 0,
        points: [{ x: 12, y: -34 }],
      },
      { type: 'TEXT', text: 'waist', height: 2.5, rotation: 90, points: [{ x: -5, y: 0 }] },
    ])
    expect(entities.map(({ align }) => align)).toEqual(['MIDDLE_CENTER', 'MIDDLE_CENTER'])
  })

  describe.each(OUTLINES)('outline of $name', ({ plot, points }) => {
    // y up.
    const core = points.map(({ x, y }) => ({ x, y: -y }))
    const coreLines = [core.slice(0, core.length / 2), core.slice(core.length / 2)]

    test.each([
      ['splines', 0.02],
      ['polylines', 0.05],
      ['polylines', 0.01],
    ] as const)(
      'as %s: every point within %d mm of the curve of the core, and all of it there',
      (curves, toleranceMm) => {
        const { entities, errors, fixes } = readDxf(writePlotDxf(plot, { curves, toleranceMm }))
        expect([errors, fixes]).toEqual([[], []])
        expect(entities.some(({ type }) => type === 'SPLINE')).toBe(
          curves === 'splines' && entities.length > 2 && hasCubics(plot),
        )
        const drawn = entities.map((entity) => entity.points)
        const off = drawn.flat().map((point) => Math.min(...coreLines.map((line) => distanceMm(point, line))))
        expect(Math.max(...off)).toBeLessThan(toleranceMm)
        const missing = core
          .filter((_, i) => i % 10 === 0)
          .map((point) => Math.min(...drawn.map((line) => distanceMm(point, line))))
        expect(Math.max(...missing)).toBeLessThan(toleranceMm)
      },
    )
  })

  test('a treble cutaway lies below for the right hand and above for the left', () => {
    const reach = (entities: readonly ReadEntity[], sign: 1 | -1) =>
      Math.max(
        ...entities
          .filter(({ layer, type }) => layer === 'CUT' && type !== 'CIRCLE')
          .flatMap((entity) => entity.points)
          .filter(({ x, y }) => x > 470 && x < 490 && y * sign > 0)
          .map(({ y }) => Math.abs(y)),
      )
    const [right, left] = (['right', 'left'] as const).map((hand) => readDxf(write(cutBody(hand))).entities)
    expect(reach(right!, -1)).toBeLessThan(reach(right!, 1) - 20)
    expect(reach(left!, 1)).toBeLessThan(reach(left!, -1) - 20)
  })

  // From inside, a top lies on its face, so bass is below for the right hand; into the open back one looks as from the front.
  test.each([
    ['top', 'right', -1],
    ['top', 'left', 1],
    ['back', 'right', 1],
    ['back', 'left', -1],
  ] as const)('a brace on the bass side of the %s, %s-handed, seen from inside', (plate, hand, side) => {
    const braces = readDxf(write(oneBrace(plate, hand))).entities.filter(
      ({ layer, type, isClosed, points }) =>
        layer === 'CUT' && type === 'LWPOLYLINE' && isClosed === true && points.every(({ x }) => x > 60 && x < 200),
    )
    expect(braces).toHaveLength(1)
    for (const { x, y } of braces[0]!.points) {
      expect(y * side).toBeGreaterThan(30)
      expect(x).toBeGreaterThan(90)
      expect(x).toBeLessThan(170)
    }
  })
})

test('a second reader finds the same entities, and millimetres', () => {
  const plot = cutBody('right')
  const file = new DxfParser().parseSync(write(plot))!
  expect(file.header['$INSUNITS']).toBe(MM)
  const hole = file.entities.filter(({ type, layer }) => type === 'CIRCLE' && layer === 'CUT')
  expect(hole).toMatchObject([{ radius: 50 }])
  expect((hole[0] as unknown as { center: Point }).center.x).toBeCloseTo(356, 6)
  expect(file.entities.filter(({ type }) => type === 'TEXT')).toHaveLength(plot.letterings.length)
})

test('a line of 100 mm is 100 units long', () => {
  const line = through([
    { x: -3.7, y: 12.1 },
    { x: 56.3, y: 92.1 },
  ])
  const file = new DxfParser().parseSync(write(plotWith([strokeOf(line)])))!
  const [{ vertices }] = file.entities as unknown as [{ vertices: readonly [Point, Point] }]
  expect(Math.hypot(vertices[1].x - vertices[0].x, vertices[1].y - vertices[0].y)).toBeCloseTo(100, 6)
})

test('no figure has an exponent, whatever its size', () => {
  const tiny = through([
    { x: 1e-7, y: 3e-5 },
    { x: 4e-6, y: 1234.5678912 },
  ])
  expect(write(plotWith([strokeOf(tiny)]))).not.toMatch(/\d[eE][-+]?\d/)
})

test('steps along a cubic: never further from it than asked, and not many more than it takes', () => {
  // A quarter circle by the usual handles: a chord of n equal steps departs by r (1 - cos(pi / 4n)).
  const k = (4 / 3) * Math.tan(Math.PI / 8)
  const handles: [Point, Point, Point, Point] = [
    { x: 100, y: 0 },
    { x: 100, y: 100 * k },
    { x: 100 * k, y: 100 },
    { x: 0, y: 100 },
  ]
  for (const closeMm of [0.5, 0.1, 0.02, 0.005]) {
    const steps = cubicSteps(handles, closeMm)
    const line = [handles[0], ...steps]
    const off = Array.from({ length: 2000 }, (_, i) => distanceMm(deCasteljau(handles, i / 1999), line))
    expect(Math.max(...off)).toBeLessThanOrEqual(closeMm)
    const enough = Math.PI / (4 * Math.acos(1 - closeMm / 100))
    expect(steps.length).toBeLessThan(2 * enough + 1)
  }
})

const hasCubics = (plot: Plot) => plot.strokes.some(({ commands }) => commands.some(([letter]) => letter === 'C'))
const lengthOf = (points: readonly Point[]) =>
  points.reduce(
    (sum, point, i) => (i === 0 ? 0 : sum + Math.hypot(point.x - points[i - 1]!.x, point.y - points[i - 1]!.y)),
    0,
  )
