import { describe, expect, test } from 'vitest'
import { compute } from '../../../src/core/compute.ts'
import type { Point } from '../../../src/core/geometry/point.ts'
import { type FormLine, USUAL_JIGS } from '../../../src/core/jigs.ts'
import { rimRowAt } from '../../../src/core/instrument/rim.ts'
import type { Plan } from '../../../src/core/plan.ts'
import { traceChain } from '../../core/trace.ts'
import { SMALL, STEEL_STRING } from '../../generators/demoModels.ts'
import { NYLON_STRING } from '../../generators/demoNylon.ts'
import { withField } from '../../generators/plans.ts'
import { readSteelModel } from '../../tables/readTable.ts'
import { withCutaway } from '../cutModels.ts'
import { walked } from '../walked.ts'
import { cutLine, linesOf, nearestIn } from './cutLine.ts'
import { drawn, left } from './drawn.ts'

const mirror = ({ x, y }: Point): Point => ({ x, y: -y })

/** The steel model's half by centres and spokes, both ends of the bass half included. */
const TRACED = traceChain(STEEL_STRING.plan.outline.pieces, 0.01)
const offTrace = nearestIn(TRACED)

describe('the outline', () => {
  const half = cutLine(drawn(STEEL_STRING.plan, 'outlineHalf', 'bass'))
  const whole = linesOf(drawn(STEEL_STRING.plan, 'outlineWhole', null), 'cut')

  test('lies within 0.02 mm of the compass arcs walked by their centres, and leaves none of them out', () => {
    for (const point of half) expect(offTrace(mirror(point))).toBeLessThan(0.02)
    const offHalf = nearestIn(cutLine(drawn(STEEL_STRING.plan, 'outlineHalf', 'bass'), 4000))
    for (let i = 0; i < TRACED.length; i += 50) expect(offHalf(mirror(TRACED[i]!))).toBeLessThan(0.05)
  })

  test('passes through the stations of the table', () => {
    const offHalf = nearestIn(cutLine(drawn(STEEL_STRING.plan, 'outlineHalf', 'bass'), 4000))
    const { rim_stations: rows, rim_stations_cols: columns } = readSteelModel()
    const [x, y] = [columns.indexOf('x'), columns.indexOf('y')]
    for (const row of rows) expect(offHalf({ x: row[x]!, y: -row[y]! })).toBeLessThan(0.02)
  })

  test('whole has both halves, one the mirror of the other', () => {
    expect(whole).toHaveLength(2)
    whole[0]!.forEach((point, i) => {
      expect(whole[1]![i]!.x).toBeCloseTo(point.x, 6)
      expect(whole[1]![i]!.y).toBeCloseTo(-point.y, 6)
    })
  })

  test('is closed by the straight edge of the centreline', () => {
    const [edge] = linesOf(drawn(STEEL_STRING.plan, 'outlineHalf', 'bass'), 'edge')
    const ends = [half[0]!, half.at(-1)!]
    expect(Math.hypot(edge![0]!.x - ends[1]!.x, edge![0]!.y - ends[1]!.y)).toBeLessThan(1e-5)
    expect(Math.hypot(edge!.at(-1)!.x - ends[0]!.x, edge!.at(-1)!.y - ends[0]!.y)).toBeLessThan(1e-5)
  })

  test('half has the half of either block that lies on it, from glue face to inside face', () => {
    const [tail, neck] = linesOf(drawn(STEEL_STRING.plan, 'outlineHalf', 'bass'), 'hidden')
    const t = STEEL_STRING.plan.rim.sideThicknessMm
    const reach = (points: readonly Point[], by: 'x' | 'y') => [
      Math.min(...points.map((point) => point[by])),
      Math.max(...points.map((point) => point[by])),
    ]
    for (const [points, xs, halfMm] of [
      [tail!, [t, t + 22], 38],
      [neck!, [496 - t - 36, 496 - t], 40],
    ] as const) {
      reach(points, 'x').forEach((x, i) => expect(x).toBeCloseTo(xs[i]!, 4))
      reach(points, 'y').forEach((y, i) => expect(y).toBeCloseTo([-halfMm, 0][i]!, 4))
      // Open along the centreline: it begins and ends there, and is nowhere else on it.
      expect(
        points
          .filter(({ y }) => y > -1e-9)
          .map(({ x }) => x)
          .toSorted((a, b) => a - b),
      ).toHaveLength(2)
    }
  })

  test.each(['rounded', 'pointed'] as const)('has a %s cutaway on the treble side of either hand', (form) => {
    const plan = withCutaway(STEEL_STRING.plan, form)
    const { treble } = compute(plan).geometry.outline
    const offTreble = nearestIn(walked(treble, Number.POSITIVE_INFINITY))
    const [right, other] = [
      cutLine(drawn(plan, 'outlineHalf', 'treble')),
      cutLine(drawn(left(plan), 'outlineHalf', 'treble')),
    ]
    for (const point of right) expect(offTreble(point)).toBeLessThan(0.045)
    for (const point of other) expect(offTreble(mirror(point))).toBeLessThan(0.045)
    expect(Math.min(...right.map(({ y }) => y))).toBeGreaterThan(-1e-6)
    expect(Math.max(...other.map(({ y }) => y))).toBeLessThan(1e-6)
    // In the hollow, 30 mm before the neck, the treble half is much narrower than the bass half.
    const reach = (points: readonly Point[]) =>
      Math.max(...points.filter(({ x }) => x > 465 && x < 490).map(({ y }) => Math.abs(y)))
    expect(reach(right)).toBeLessThan(reach(cutLine(drawn(plan, 'outlineHalf', 'bass'))) - 20)
  })
})

/** By the meaning of each line: outer face + clearance, inner face - slat - blanket, inner face - clearance. */
const DISTANCES: readonly [FormLine, number][] = [
  ['mould', 0.5],
  ['bendingForm', 2.2 + 0.5 + 1.5],
  ['caul', 2.2 + 1],
]

describe('a line round the outline', () => {
  test.each(DISTANCES)('%s of the mirrored half keeps %d mm all along and ends on the centreline', (line, mm) => {
    const points = cutLine(drawn(STEEL_STRING.plan, line, 'bass'))
    const both = nearestIn([...TRACED, ...TRACED.map(mirror)])
    for (const point of points) expect(Math.abs(both(point) - mm)).toBeLessThan(0.01)
    const out = line === 'mould' ? -mm : mm
    expect(points[0]!.x).toBeCloseTo(out, 4)
    expect(points.at(-1)!.x).toBeCloseTo(496 - out, 4)
    for (const end of [points[0]!, points.at(-1)!]) expect(end.y).toBeCloseTo(0, 4)
    // On the side it belongs to: the widest place is wider by it, or narrower.
    expect(Math.max(...points.map(({ y }) => -y))).toBeCloseTo(196 - out, 2)
  })

  test.each(DISTANCES)(
    '%s: the dotted line is called the body outline, on the side where nothing is cut',
    (line, mm) => {
      const drawing = drawn(STEEL_STRING.plan, line, 'bass')
      const [name, ...others] = drawing.shapes.flatMap((shape) =>
        shape.kind === 'label' && shape.word === 'bodyOutline' ? [shape] : [],
      )
      expect(others).toEqual([])
      expect(name!.isOptional).toBe(false)
      // 3 mm off the arcs, and by the clearance or the inset further off the line that is cut.
      expect(offTrace(mirror(name!.at))).toBeCloseTo(3, 1)
      expect(nearestIn(cutLine(drawing, 200))(name!.at)).toBeCloseTo(3 + mm, 1)
      // Half-widths are those of the body, whatever is cut.
      const reach = drawing.shapes.flatMap((shape) =>
        shape.kind === 'linear' && shape.side === 'left' ? [offTrace(mirror(shape.to))] : [],
      )
      expect(reach).toHaveLength(3)
      for (const off of reach) expect(off).toBeLessThan(0.02)
    },
  )

  const wide = { mouldClearanceMm: 6, slatMm: 2, blanketMm: 3, caulClearanceMm: 12 }
  const HELD = (['rounded', 'pointed'] as const).flatMap((form) =>
    [STEEL_STRING, NYLON_STRING, SMALL].flatMap(({ name, plan }) => {
      const cut = withCutaway(plan, form)
      const t = plan.rim.sideThicknessMm
      return [
        [`${name}, ${form}, mould`, { cut, line: 'mould', mm: 0.5, jigs: USUAL_JIGS }],
        [`${name}, ${form}, caul`, { cut, line: 'caul', mm: t + 1, jigs: USUAL_JIGS }],
        [`${name}, ${form}, wide mould`, { cut, line: 'mould', mm: 6, jigs: wide }],
        [`${name}, ${form}, wide caul`, { cut, line: 'caul', mm: t + 12, jigs: wide }],
      ] as const
    }),
  )
  test.each(HELD)('%s: round horn, hollow and joint it keeps its distance', (_name, { cut, line, mm, jigs }) => {
    const { treble } = compute(cut).geometry.outline
    const points = cutLine(drawn(cut, line, 'treble', jigs), 24)
    expect(points.length).toBeGreaterThan(100)
    const off = nearestIn(walked(treble, Number.POSITIVE_INFINITY))
    for (const point of points) expect(Math.abs(off(point) - mm)).toBeLessThan(0.05)
  })

  test.each([12, 20, 30])(
    'a horn too tight for a line %d mm inside to follow is left out, not turned inside out',
    (clearMm) => {
      const plan = withField(withCutaway(STEEL_STRING.plan, 'rounded'), 'outline.cutaway.hornRadiusMm', 9)
      const { cut, treble } = compute(plan).geometry.outline
      expect(cut?.fits).toBe(true)
      const points = cutLine(drawn(plan, 'caul', 'treble', { ...USUAL_JIGS, caulClearanceMm: clearMm }), 60)
      const off = nearestIn(walked(treble, Number.POSITIVE_INFINITY))
      for (const point of points) expect(Math.abs(off(point) - (2.2 + clearMm))).toBeLessThan(0.05)
      // One line without a gap: neighbours are never further apart than a step of the widest arc.
      for (let i = 1; i < points.length; i++) {
        const [a, b] = [points[i - 1]!, points[i]!]
        expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeLessThan(6)
      }
    },
  )

  test('a bending form is made for each piece of wood, from one end of it to the other', () => {
    const plan = withCutaway(STEEL_STRING.plan, 'pointed')
    const { trebleSites } = compute(plan).geometry
    ;(['treble', 'treble2'] as const).forEach((of, i) => {
      const points = cutLine(drawn(plan, 'bendingForm', of))
      const wood = walked(trebleSites[i]!.half, Number.POSITIVE_INFINITY)
      const off = nearestIn(wood)
      for (const point of points) expect(Math.abs(off(point) - 4.2)).toBeLessThan(0.02)
      for (const [end, own] of [
        [points[0]!, wood[0]!],
        [points.at(-1)!, wood.at(-1)!],
      ] as const)
        expect(Math.hypot(end.x - own.x, end.y - own.y)).toBeCloseTo(4.2, 2)
    })
  })

  test('a left-handed treble half lies above the centreline', () => {
    for (const line of ['mould', 'bendingForm', 'caul'] as const) {
      const plan = withCutaway(STEEL_STRING.plan, 'rounded')
      expect(Math.max(...cutLine(drawn(plan, line, 'treble')).map(({ y }) => y))).toBeGreaterThan(150)
      expect(Math.min(...cutLine(drawn(left(plan), line, 'treble')).map(({ y }) => y))).toBeLessThan(-150)
    }
  })

  test('an outside mould has its board at least 50 mm clear of the line', () => {
    const mould = drawn(STEEL_STRING.plan, 'mould', 'bass')
    const board = linesOf(mould, 'thin').at(-1)!
    const off = nearestIn(cutLine(mould, 400))
    for (const point of board.filter(({ y }) => y < -1)) expect(off(point)).toBeGreaterThan(49.9)
  })
})

describe('a side blank', () => {
  const cut = (plan: Plan, of: string) => cutLine(drawn(plan, 'sideBlank', of), 24)

  test('of one side is the other one turned over', () => {
    const [treble, bass] = [cut(STEEL_STRING.plan, 'treble'), cut(STEEL_STRING.plan, 'bass')]
    treble.forEach(({ x, y }, i) => {
      expect(bass[i]!.x).toBeCloseTo(-x, 6)
      expect(bass[i]!.y).toBeCloseTo(y, 6)
    })
  })

  test('is as wide as the table has it', () => {
    const points = cut(STEEL_STRING.plan, 'treble')
    const { rim_stations: rows, rim_stations_cols: columns } = readSteelModel()
    const [s, width] = [columns.indexOf('s_blank'), columns.indexOf('blank_width_to_cut')]
    for (const row of rows) {
      const x = row[s]! + STEEL_STRING.plan.rim.trimEachEndMm
      expect(Math.abs(heightAt(points, x) - row[width]!)).toBeLessThan(0.03)
    }
  })

  test.each([STEEL_STRING, NYLON_STRING, SMALL].map(({ name, plan }) => [name, plan] as const))(
    '%s: its line keeps to the rim between the stations too',
    (_name, plan) => {
      const { rimSite } = compute(plan).geometry
      const points = cut(plan, 'treble')
      for (let i = 0; i <= 500; i++) {
        const row = rimRowAt(rimSite, (rimSite.half.lengthMm * i) / 500)
        const offMm = heightAt(points, row.alongBlankMm + plan.rim.trimEachEndMm) - row.cutWidthMm
        expect(Math.abs(offMm)).toBeLessThan(0.02)
      }
    },
  )

  test('has its tail to the left on a right-handed treble side, to the right on a left-handed one, with its grain along it', () => {
    const [right, other] = [
      drawn(STEEL_STRING.plan, 'sideBlank', 'treble'),
      drawn(left(STEEL_STRING.plan), 'sideBlank', 'treble'),
    ]
    expect([right.marks.left, other.marks.left]).toEqual(['tail', 'neck'])
    const arrow = linesOf(right, 'dimension')[0]!
    expect(arrow[0]!.y).toBe(arrow.at(-1)!.y)
    expect(Math.abs(arrow[0]!.x - arrow.at(-1)!.x)).toBeGreaterThan(40)
  })

  test('has nothing wide on it but what is cut', () => {
    expect(linesOf(drawn(STEEL_STRING.plan, 'sideBlank', 'treble'), 'edge')).toHaveLength(1)
  })
})

/** The height of a line at x, between its points. */
function heightAt(points: readonly Point[], x: number): number {
  const i = Math.max(
    1,
    points.findIndex((point) => point.x >= x - 1e-9),
  )
  const [a, b] = [points[i - 1]!, points[i]!]
  return a.x === b.x ? b.y : a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x)
}
