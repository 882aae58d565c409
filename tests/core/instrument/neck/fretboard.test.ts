import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  crossingMm,
  type Fretboard,
  type FretboardSite,
  makeFretboard,
  toSaddlePart,
} from '../../../../src/core/instrument/neck/fretboard.ts'
import type { BoardPlan, ScalePlan } from '../../../../src/core/neckPlan.ts'
import { STEEL_NECK } from '../../../generators/demoNecks.ts'
import { real } from '../../../generators/real.ts'
import { readSteelModel, readTable } from '../../../tables/readTable.ts'
import { expectWithin } from '../../within.ts'

const SITE: FretboardSite = { bodyLengthMm: 496, nutSpreadMm: 37, saddleSpreadMm: 55 }
const shapeOf = (scale: Partial<ScalePlan>, board: Partial<BoardPlan> = {}, site = SITE): Fretboard =>
  makeFretboard({ ...STEEL_NECK.scale, ...scale }, { ...STEEL_NECK.board, ...board }, site)
const fromNutMm = (shape: Fretboard, fret: number): number => shape.nutMm - shape.fretLine(fret).xMm

const FRETS_IN_TABLE = [1, 2, 3, 4, 5, 7, 9, 12, 14, 15, 19, 20, 24]

describe('places of the frets', () => {
  test.each(readTable('fret_positions.csv'))('the table of equal temperament, row %#', ({ number }) => {
    const shape = shapeOf({ lengthMm: number('scale_mm') })
    for (const fret of FRETS_IN_TABLE) expectWithin(fromNutMm(shape, fret), number(`x${fret}`), 6e-5, `fret ${fret}`)
  })

  test.each(readTable('rule_of_18.csv'))(
    'set out one by one with 17.817 nearly the same, with 18 not, row %#',
    (row) => {
      const [scaleMm, fret] = [row.number('scale'), row.number('n')]
      const stepped = (divisor: number) => {
        let leftMm = scaleMm
        for (let i = 0; i < fret; i++) leftMm -= leftMm / divisor
        return scaleMm - leftMm
      }
      const hereMm = fromNutMm(shapeOf({ lengthMm: scaleMm }), fret)
      expectWithin(hereMm, row.number('exact_12TET'), 6e-6)
      expectWithin(stepped(17.817), row.number('divisor_17.817'), 6e-6)
      expectWithin(hereMm, stepped(17.817), scaleMm * 3.2e-6)
      expectWithin(stepped(18), row.number('rule_of_18'), 6e-6)
      expect(hereMm - row.number('rule_of_18')).toBeGreaterThan(scaleMm * 5e-4)
    },
  )

  test('the octave in the middle, two at three quarters, each step by the twelfth root of 2', () => {
    fc.assert(
      fc.property(real(250, 1000), (lengthMm) => {
        const shape = shapeOf({ lengthMm })
        expectWithin(fromNutMm(shape, 0), 0, 1e-9)
        expectWithin(fromNutMm(shape, 12), lengthMm / 2, 1e-9)
        expectWithin(fromNutMm(shape, 24), (3 * lengthMm) / 4, 1e-9)
        for (let fret = 0; fret < 36; fret++) {
          const leftMm = (n: number) => shape.fretLine(n).xMm - shape.saddleLine.xMm
          expectWithin(leftMm(fret) / leftMm(fret + 1), Math.SQRT2 ** (1 / 6), 1e-9)
        }
      }),
      { seed: 31 },
    )
    expect(toSaddlePart(12)).toBe(0.5)
  })

  test('the fret of the joint over the edge of the body, nut and saddle line a scale apart', () => {
    fc.assert(
      fc.property(real(250, 1000), real(250, 1000), fc.integer({ min: 8, max: 24 }), (bass, treble, jointFret) => {
        const shape = shapeOf({ fan: 'fanned', lengthMm: bass, trebleLengthMm: treble, jointFret })
        expectWithin(shape.fretLine(jointFret).xMm, 496, 1e-9)
        expectWithin(shape.nutMm - shape.saddleLine.xMm, (bass + treble) / 2, 1e-9)
      }),
      { seed: 32 },
    )
  })

  test('the steel-string model: saddle line and end of the board', () => {
    const model = readSteelModel()
    const shape = shapeOf({})
    expectWithin(shape.saddleLine.xMm, model.scale.saddle_x_uncompensated!, 0.005)
    expectWithin(shape.jointMm - shape.saddleLine.xMm, model.scale.fret_joint_to_saddle!, 0.005)
    expectWithin(shape.endMm, model.scale.board_end_x!, 0.005)
  })
})

/** A point and the straight line through two of them, in the plane of the board, by homogeneous coordinates. */
type Point = readonly [xMm: number, yMm: number]
type Line = readonly [number, number, number]
const through = ([ax, ay]: Point, [bx, by]: Point): Line => [ay - by, bx - ax, ax * by - bx * ay]
const meet = ([a, b, c]: Line, [d, e, f]: Line): Point => {
  const w = a * e - d * b
  return [(b * f - e * c) / w, (c * d - f * a) / w]
}
const CENTRE = through([0, 0], [1, 0])

describe('fanned frets', () => {
  const fans = fc.record({
    bass: real(500, 900),
    treble: real(500, 900),
    squareFret: fc.nat(24),
    jointFret: fc.integer({ min: 8, max: 24 }),
    nutSpreadMm: real(25, 110),
    saddleSpreadMm: real(30, 130),
  })
  type Fan = typeof fans extends fc.Arbitrary<infer T> ? T : never
  const fannedOf = ({ bass, treble, squareFret, jointFret, ...spreads }: Fan): Fretboard =>
    shapeOf(
      { fan: 'fanned', lengthMm: bass, trebleLengthMm: treble, squareFret, jointFret },
      {},
      { ...SITE, ...spreads },
    )
  /** Where an outer string crosses a fret: the string goes straight from nut to saddle, the fret stops it at its own share of its own scale. */
  const stoppedAt = (fan: Fan, fret: number): { bass: Point; treble: Point } => {
    const on = (scaleMm: number, side: number): Point => {
      const [square, here] = [2 ** (-fan.squareFret / 12), 2 ** (-fret / 12)]
      return [scaleMm * (here - square), (side * (fan.nutSpreadMm * here + fan.saddleSpreadMm * (1 - here))) / 2]
    }
    return { bass: on(fan.bass, -1), treble: on(fan.treble, 1) }
  }

  test('each outer string is stopped by the law of its own scale, exactly', () => {
    fc.assert(
      fc.property(fans, (fan) => {
        const shape = fannedOf(fan)
        for (let fret = 0; fret <= 36; fret++) {
          const sideMm = shape.halfSpreadAtMm(shape.fretLine(fret).xMm)
          const nutSideMm = shape.halfSpreadAtMm(shape.nutMm)
          for (const [side, scaleMm] of [
            [-1, fan.bass],
            [1, fan.treble],
          ] as const)
            expectWithin(
              crossingMm(shape.fretLine(0), side * nutSideMm) - crossingMm(shape.fretLine(fret), side * sideMm),
              scaleMm * (1 - 2 ** (-fret / 12)),
              1e-8,
              `fret ${fret}`,
            )
        }
      }),
      { seed: 33 },
    )
  })

  test('lines laid through the points where the outer strings are stopped', () => {
    fc.assert(
      fc.property(fans, (fan) => {
        const shape = fannedOf(fan)
        const lineOf = (fret: number) => through(stoppedAt(fan, fret).bass, stoppedAt(fan, fret).treble)
        const shiftMm = 496 - meet(lineOf(fan.jointFret), CENTRE)[0]
        for (let fret = 0; fret <= 30; fret++) {
          const line = lineOf(fret)
          const { xMm, slant } = shape.fretLine(fret)
          expectWithin(xMm, meet(line, CENTRE)[0] + shiftMm, 1e-7, `fret ${fret}`)
          expectWithin(slant, -line[1] / line[0], 1e-9, `slant of fret ${fret}`)
        }
      }),
      { seed: 34 },
    )
  })

  test('the square fret is square, those before it and beyond it lean opposite ways', () => {
    const shape = shapeOf({ fan: 'fanned', lengthMm: 660, trebleLengthMm: 630, squareFret: 7 })
    expectWithin(shape.fretLine(7).slant, 0, 0)
    for (let fret = 0; fret < 7; fret++) expect(shape.fretLine(fret).slant).toBeLessThan(0)
    for (let fret = 8; fret < 25; fret++) expect(shape.fretLine(fret).slant).toBeGreaterThan(0)
    expect(shape.saddleLine.slant).toBeGreaterThan(shape.fretLine(24).slant)
  })

  test('two scales alike are square frets', () => {
    const [fanned, square] = [shapeOf({ fan: 'fanned', trebleLengthMm: 645 }), shapeOf({})]
    for (let fret = 0; fret <= 24; fret++) {
      expect(fanned.fretLine(fret).slant).toBeCloseTo(0, 12)
      expect(fanned.fretLine(fret).xMm).toBe(square.fretLine(fret).xMm)
    }
  })
})

describe('the surface', () => {
  test.each(readTable('sagitta.csv'))('the drop is the sagitta of a chord across, row %#', ({ number }) => {
    const [radiusMm, chordMm, sagittaMm] = [number('R'), number('chord'), number('sagitta')]
    const single = shapeOf({}, { surface: 'single', radiusMm })
    expectWithin(single.dropMm(700, chordMm / 2), sagittaMm, 6e-7)
    expectWithin(single.dropMm(500, -chordMm / 2), sagittaMm, 6e-7)
  })

  test('flat: nothing falls away; beyond the radius the drop stays the radius', () => {
    const flat = shapeOf({}, { surface: 'flat' })
    expect(flat.radiusAtMm(600)).toBe('flat')
    expect(flat.dropMm(600, 28)).toBe(0)
    expectWithin(shapeOf({}, { surface: 'single', radiusMm: 100 }).dropMm(600, 250), 100, 0)
  })

  test('compound: the nut has one radius, the end the other, halfway their mean', () => {
    const shape = shapeOf({}, { surface: 'compound', radiusMm: 254, endRadiusMm: 406.4 })
    expectWithin(shape.radiusAtMm(shape.nutMm), 254, 1e-9)
    expectWithin(shape.radiusAtMm(shape.endMm), 406.4, 1e-9)
    expectWithin(shape.radiusAtMm((shape.nutMm + shape.endMm) / 2), 330.2, 1e-9)
    expectWithin(shape.dropMm(shape.nutMm, 21), 0.869599, 6e-7)
    expectWithin(shape.dropMm(shape.endMm, -28.5), 1.000555, 6e-7)
  })

  test('compound is a cone: all of it grown from its point, and straight along every line toward it', () => {
    fc.assert(
      fc.property(
        real(200, 600),
        real(20, 400),
        real(0, 1),
        real(0.5, 1),
        real(-1, 1),
        (nutR, more, at, share, side) => {
          const shape = shapeOf({}, { surface: 'compound', radiusMm: nutR, endRadiusMm: nutR + more })
          // Toward the head the radius shrinks: at the point it is nothing.
          const pointMm = shape.nutMm + ((shape.nutMm - shape.endMm) * nutR) / more
          const xMm = shape.endMm + (shape.nutMm - shape.endMm) * at
          const yMm = side * 70
          const nearMm = pointMm + (xMm - pointMm) * share
          fc.pre((nutR + more) * share > 110)
          expectWithin(shape.dropMm(nearMm, yMm * share), shape.dropMm(xMm, yMm) * share, 1e-9)
        },
      ),
      { seed: 35 },
    )
  })

  test('frets fall off evenly from the joint to the end, not before', () => {
    const shape = shapeOf({}, { fallOffMm: 0.4 })
    expect(shape.fallOffMm(shape.nutMm)).toBe(0)
    expect(shape.fallOffMm(shape.jointMm)).toBe(0)
    expectWithin(shape.fallOffMm((shape.jointMm + shape.endMm) / 2), 0.2, 1e-12)
    expectWithin(shape.fallOffMm(shape.endMm), 0.4, 1e-12)
    expectWithin(shape.fallOffMm(shape.endMm - 50), 0.4, 1e-12)
    expect(shapeOf({ frets: 12, jointFret: 14 }, { fallOffMm: 0.4 }).fallOffMm(300)).toBe(0)
  })
})

describe('the edges', () => {
  test('two widths make them: at nut and fret 12 what was asked, straight between and beyond', () => {
    const shape = shapeOf({})
    expectWithin(2 * shape.halfWidthAtMm(shape.nutMm), 44, 1e-12)
    expectWithin(2 * shape.halfWidthAtMm(shape.fretLine(12).xMm), 55, 1e-12)
    expectWithin(2 * shape.halfWidthAtMm(shape.saddleLine.xMm), 66, 1e-12)
    expectWithin(2 * shape.halfSpreadAtMm(shape.saddleLine.xMm), 55, 1e-12)
    expectWithin(2 * shape.halfSpreadAtMm(shape.fretLine(12).xMm), 46, 1e-12)
  })

  test('a board that would taper past nothing has no width there', () => {
    const shape = shapeOf({}, { nutWidthMm: 120, widthAtTwelfthMm: 25 })
    expect(shape.halfWidthAtMm(shape.saddleLine.xMm)).toBe(0)
  })
})

test('every value finite, whatever the plan', () => {
  const plans = fc.record({
    scale: fc.record<ScalePlan>({
      lengthMm: real(250, 1000),
      jointFret: fc.integer({ min: 0, max: 36 }),
      fan: fc.constantFrom('square', 'fanned'),
      trebleLengthMm: real(250, 1000),
      squareFret: fc.nat(36),
      frets: fc.nat(60),
    }),
    widths: fc.tuple(real(0, 140), real(0, 140)),
    surface: fc.constantFrom('flat' as const, 'single' as const, 'compound' as const),
    radii: fc.tuple(real(100, 3000), real(100, 3000)),
    site: fc.record({ bodyLengthMm: real(100, 700), nutSpreadMm: real(0, 110), saddleSpreadMm: real(0, 130) }),
    at: fc.tuple(real(-200, 1500), real(-400, 400)),
  })
  fc.assert(
    fc.property(plans, ({ scale, widths, surface, radii, site, at: [xMm, yMm] }) => {
      const [nutWidthMm, widthAtTwelfthMm] = widths
      const [radiusMm, endRadiusMm] = radii
      const shape = shapeOf(scale, { nutWidthMm, widthAtTwelfthMm, surface, radiusMm, endRadiusMm }, site)
      const lines = [shape.saddleLine, shape.fretLine(0), shape.fretLine(scale.frets)]
      const radius = shape.radiusAtMm(xMm)
      const dropMm = shape.dropMm(xMm, yMm)
      const all = [
        ...lines.flatMap((line) => [line.xMm, line.slant, ...Object.values(shape.endsOf(line))]),
        shape.nutMm,
        shape.endMm,
        shape.halfWidthAtMm(xMm),
        shape.halfSpreadAtMm(xMm),
        shape.fallOffMm(xMm),
        dropMm,
        radius === 'flat' ? 0 : radius,
      ]
      expect(all.filter((one) => !Number.isFinite(one))).toEqual([])
      expect(dropMm).toBeGreaterThanOrEqual(0)
      expect(shape.halfWidthAtMm(xMm)).toBeGreaterThanOrEqual(0)
      expectWithin(shape.dropMm(xMm, -yMm), dropMm, 0)
    }),
    { seed: 36 },
  )
})
