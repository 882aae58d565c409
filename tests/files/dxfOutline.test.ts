import ellipe from '@stdlib/math-base-special-ellipe'
import { DxfWriter, LWPolylineFlags, point2d, point3d, SplineFlags, Units } from '@tarikjabiri/dxf'
import DxfParser from 'dxf-parser'
import { describe, expect, test } from 'vitest'
import { pathEnd, pathLengthMm, type Path, pointAt } from '../../src/core/geometry/path.ts'
import type { Point } from '../../src/core/geometry/point.ts'
import { tracePath } from '../../src/core/geometry/tracePath.ts'
import { readDxfOutline } from '../../src/files/dxfOutline.ts'
import type { DrawnFile } from '../../src/record/drawnFile.ts'
import { deCasteljau } from '../core/geometry/drawnPaths.ts'

const read = (text: string): DrawnFile => {
  const result = readDxfOutline(text)
  if (!result.ok) expect.fail(result.problem)
  return result.value
}
/** A file as another program writes it. */
function write(draw: (dxf: DxfWriter) => void, units = Units.Millimeters): string {
  const dxf = new DxfWriter()
  dxf.setUnits(units)
  draw(dxf)
  return dxf.stringify()
}
const drawn = (draw: (dxf: DxfWriter) => void, units?: Units): Path => read(write(draw, units)).paths[0]!.path

/** A file by hand: groups of entities, each [code, value, code, value, ...]. */
const byHand = (...entities: (readonly (string | number)[])[]) =>
  ['0', 'SECTION', '2', 'ENTITIES', ...entities.flat(), '0', 'ENDSEC', '0', 'EOF', ''].join('\r\n')

const pointsAlong = (path: Path, count = 80): Point[] =>
  path.strokes.flatMap((_, stroke) =>
    Array.from({ length: count + 1 }, (__, j) => pointAt(path, { stroke, t: j / count })),
  )

describe('entities written by another program', () => {
  test('line', () => {
    const path = drawn((dxf) => dxf.addLine(point3d(1, 2), point3d(30, 40)))
    expect([path.start, pathEnd(path)]).toEqual([
      { x: 1, y: 2 },
      { x: 30, y: 40 },
    ])
  })

  test('circle, as arcs', () => {
    const { paths } = read(write((dxf) => dxf.addCircle(point3d(10, -20), 55.5)))
    expect(paths[0]!.isClosed).toBe(true)
    expect(paths[0]!.path.strokes.map(({ kind }) => kind)).toEqual(['arc', 'arc'])
    for (const { x, y } of pointsAlong(paths[0]!.path)) expect(Math.hypot(x - 10, y + 20)).toBeCloseTo(55.5, 9)
  })

  test('arc across 0 degrees, anticlockwise', () => {
    const path = drawn((dxf) => dxf.addArc(point3d(0, 0), 100, 330, 60))
    expect(pathLengthMm(path)).toBeCloseTo(50 * Math.PI, 9)
    expect(path.start.y).toBeCloseTo(-50, 9)
    expect(pathEnd(path).x).toBeCloseTo(50, 9)
    expect(pointsAlong(path).some(({ x, y }) => Math.hypot(x - 100, y) < 1)).toBe(true)
  })

  test('light polyline with bulges, closed: two straights of 100 and two half circles of 30', () => {
    const { paths } = read(
      write((dxf) =>
        dxf.addLWPolyline(
          [
            { point: point2d(0, 0) },
            { point: point2d(100, 0), bulge: 1 },
            { point: point2d(100, 60) },
            { point: point2d(0, 60), bulge: 1 },
          ],
          { flags: LWPolylineFlags.Closed },
        ),
      ),
    )
    const { path, isClosed } = paths[0]!
    expect(isClosed).toBe(true)
    expect(pathLengthMm(path)).toBeCloseTo(200 + 60 * Math.PI, 9)
    expect(Math.max(...pointsAlong(path).map(({ x }) => x))).toBeCloseTo(130, 6)
    expect(pathEnd(path)).toEqual(path.start)
  })

  test('polyline of the old kind', () => {
    const path = drawn((dxf) =>
      dxf.addPolyline3D([{ point: point3d(0, 0) }, { point: point3d(5, 5) }, { point: point3d(9, 5) }]),
    )
    expect(path.strokes.map(({ to }) => to)).toEqual([
      { x: 5, y: 5 },
      { x: 9, y: 5 },
    ])
  })

  test('spline of one cubic: itself', () => {
    const controls = [
      { x: 0, y: 0 },
      { x: -20, y: 150 },
      { x: 90, y: 220 },
      { x: 180, y: 170 },
    ]
    const path = drawn((dxf) => dxf.addSpline({ controlPoints: controls.map(({ x, y }) => point3d(x, y)) }))
    expect(path.strokes).toHaveLength(1)
    for (const t of [0, 0.3, 0.7, 1]) {
      const want = deCasteljau(controls, t)
      expect(pointAt(path, { stroke: 0, t })).toEqual({ x: expect.closeTo(want.x, 9), y: expect.closeTo(want.y, 9) })
    }
  })

  test('rational spline: a quarter circle by its weights', () => {
    const path = drawn((dxf) =>
      dxf.addSpline({
        controlPoints: [point3d(200, 0), point3d(200, 200), point3d(0, 200)],
        degreeCurve: 2,
        knots: [0, 0, 0, 1, 1, 1],
        weights: [1, Math.SQRT1_2, 1],
        flags: SplineFlags.Rational,
      }),
    )
    for (const { x, y } of pointsAlong(path)) expect(Math.abs(Math.hypot(x, y) - 200)).toBeLessThan(0.0005)
    expect(pathLengthMm(path)).toBeCloseTo(100 * Math.PI, 3)
  })

  test('ellipse: as long as E(m) says; its half by its parameters', () => {
    const whole = drawn((dxf) => dxf.addEllipse(point3d(5, 5), point3d(0, 250), 0.6, 0, 2 * Math.PI))
    expect(Math.abs(pathLengthMm(whole) - 1000 * ellipe(1 - 0.36))).toBeLessThan(0.003)
    for (const { x, y } of pointsAlong(whole)) {
      const [u, v] = [x - 5, y - 5]
      const away = ((u / 150) ** 2 + (v / 250) ** 2 - 1) / (2 * Math.hypot(u / 150 ** 2, v / 250 ** 2))
      expect(Math.abs(away)).toBeLessThan(0.0005)
    }
    const half = drawn((dxf) => dxf.addEllipse(point3d(0, 0), point3d(250, 0), 0.6, 0, Math.PI))
    expect(pathEnd(half)).toEqual({ x: expect.closeTo(-250, 6), y: expect.closeTo(0, 6) })
    expect(Math.max(...pointsAlong(half).map(({ y }) => y))).toBeCloseTo(150, 3)
  })

  test('an outline of loose lines and arcs is traced to one closed chain', () => {
    const { paths } = read(
      write((dxf) => {
        dxf.addArc(point3d(0, 0), 50, 90, 270)
        dxf.addLine(point3d(200, 50), point3d(0, 50))
        dxf.addArc(point3d(200, 0), 50, 270, 90)
        dxf.addLine(point3d(0, -50), point3d(200, -50))
      }),
    )
    const { chains, healed } = tracePath(paths)
    expect(chains).toHaveLength(1)
    expect(chains[0]!.isClosed).toBe(true)
    expect(pathLengthMm(chains[0]!.path)).toBeCloseTo(400 + 100 * Math.PI, 9)
    expect(healed).toEqual({ gapsClosed: 0, largestGapMm: 0, tinyDropped: 0, duplicatesDropped: 0 })
  })

  test('another reader sees the same entities, of the same numbers', () => {
    const text = write((dxf) => {
      dxf.addLine(point3d(1, 2), point3d(3, 4))
      dxf.addArc(point3d(5, 6), 7, 10, 80)
      dxf.addLWPolyline([{ point: point2d(0, 0), bulge: 0.25 }, { point: point2d(8, 9) }])
    })
    const other = new DxfParser().parseSync(text)!.entities as unknown as {
      vertices?: { x: number; y: number; bulge?: number }[]
      radius?: number
      startAngle?: number
      center?: Point
    }[]
    const [line, arc, polyline] = read(text).paths.map(({ path }) => path)
    expect(other).toHaveLength(3)
    expect(line).toMatchObject({
      start: { x: other[0]!.vertices![0]!.x },
      strokes: [{ to: { y: other[0]!.vertices![1]!.y } }],
    })
    const { center, radius, startAngle } = other[1]!
    expect(arc!.start.x).toBeCloseTo(center!.x + radius! * Math.cos(startAngle!), 12)
    expect(polyline!.strokes[0]).toMatchObject({ bulge: other[2]!.vertices![0]!.bulge })
  })
})

describe('units', () => {
  test.each([
    [Units.Inches, 'inch', 25.4],
    [Units.Feet, 'foot', 304.8],
    [Units.Millimeters, 'mm', 1],
    [Units.Centimeters, 'cm', 10],
    [Units.Meters, 'm', 1000],
    [Units.Unitless, null, 1],
    [Units.Parsecs, null, 1],
  ])('%d: %s', (units, unit, mm) => {
    const file = read(write((dxf) => dxf.addLine(point3d(0, 0), point3d(10, 0)), units))
    expect(file.unit).toBe(unit)
    expect(pathLengthMm(file.paths[0]!.path)).toBeCloseTo(10 * mm, 9)
  })

  test('a file without a header does not say', () => {
    expect(read(byHand([0, 'LINE', 10, 0, 20, 0, 11, 5, 21, 0])).unit).toBeNull()
  })
})

describe('what other programs also write', () => {
  test('shapes seen from behind are mirrored', () => {
    const behind = [210, 0, 220, 0, 230, -1]
    const { paths } = read(
      byHand(
        [0, 'ARC', 10, 10, 20, 0, 40, 5, 50, 0, 51, 90, ...behind],
        [0, 'LWPOLYLINE', 90, 2, 70, 0, 10, 1, 20, 2, 42, 1, 91, 7, 10, 3, 20, 2, ...behind],
        [0, 'ELLIPSE', 10, 0, 20, 0, 11, 10, 21, 0, 40, 0.5, 41, 0, 42, Math.PI / 2, ...behind],
      ),
    )
    expect(paths[0]!.path.start).toEqual({ x: expect.closeTo(-15, 9), y: expect.closeTo(0, 9) })
    expect(pathEnd(paths[0]!.path)).toEqual({ x: expect.closeTo(-10, 9), y: expect.closeTo(5, 9) })
    expect(paths[1]!.path).toMatchObject({ start: { x: -1 }, strokes: [{ bulge: -1 }] })
    expect(pathEnd(paths[2]!.path)).toEqual({ x: expect.closeTo(0, 9), y: expect.closeTo(-5, 9) })
  })

  test('old polylines keep their bulges and lose the frame of their smoothing', () => {
    const vertex = (x: number, y: number, flags: number, bulge = 0) => [0, 'VERTEX', 10, x, 20, y, 70, flags, 42, bulge]
    const { paths } = read(
      byHand([0, 'POLYLINE', 66, 1, 70, 4, 10, 0, 20, 0], vertex(50, 50, 16), vertex(0, 0, 8, 1), vertex(10, 0, 8), [
        0,
        'SEQEND',
      ]),
    )
    expect(paths[0]!.path).toEqual({ start: { x: 0, y: 0 }, strokes: [{ kind: 'arc', to: { x: 10, y: 0 }, bulge: 1 }] })
  })

  test('what is not read is counted; what lies in paper space is passed over', () => {
    const line = [0, 'LINE', 8, 'body', 10, 0, 20, 0, 11, 5, 21, 0]
    const { paths, leftOut } = read(
      byHand(
        line,
        [...line, 67, 1],
        [...line, 60, 1],
        [...line, 31, 9],
        [0, 'INSERT', 2, 'frame'],
        [0, 'MTEXT', 1, 'words'],
        [0, 'HATCH', 70, 1],
        [0, 'SPLINE', 70, 0, 71, 3, 74, 2, 11, 0, 21, 0, 11, 5, 21, 5],
      ),
    )
    expect(paths.map(({ name }) => name)).toEqual(['body'])
    expect(Object.fromEntries(leftOut.map(({ kind, count }) => [kind, count]))).toEqual({
      hidden: 1,
      tilted: 1,
      reference: 1,
      text: 1,
      other: 1,
      fitSpline: 1,
    })
  })
})
