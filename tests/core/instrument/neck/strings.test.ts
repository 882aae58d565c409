import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Fretboard, makeFretboard } from '../../../../src/core/instrument/neck/fretboard.ts'
import {
  betweenOuter,
  placeStrings,
  type StringLine,
  spaceStrings,
} from '../../../../src/core/instrument/neck/strings.ts'
import type { SetupPlan, StringPlan, StringsPlan } from '../../../../src/core/neckPlan.ts'
import { STEEL_NECK } from '../../../generators/demoNecks.ts'
import { real } from '../../../generators/real.ts'
import { expectWithin } from '../../within.ts'

const BODY_MM = 496

const stringOf = (diameterMm: number, pairedWithNext = false): StringPlan => ({
  material: 'steel',
  diameterMm,
  coreMm: null,
  massGPerM: null,
  note: 60,
  pairedWithNext,
})
const planOf = (set: readonly StringPlan[], pairGapMm = 2): StringsPlan => ({ ...STEEL_NECK.strings, set, pairGapMm })

const sets = fc.array(fc.tuple(real(0.15, 3.5), fc.boolean()), { minLength: 2, maxLength: 14 })
const plans = fc.tuple(sets, real(0.3, 6)).map(([set, pairGapMm]) =>
  planOf(
    set.map(([diameterMm, isPair]) => stringOf(diameterMm, isPair)),
    pairGapMm,
  ),
)
const hasCourses = ({ set }: StringsPlan): boolean => set.slice(0, -1).some((string) => !string.pairedWithNext)

/** Ends of the strings' edges, walked from the bass with some gap between courses: where the last middle comes to lie. */
function walk({ set, pairGapMm }: StringsPlan, gapMm: number): number {
  let edge = -set[0]!.diameterMm / 2
  for (const [i, string] of set.entries()) {
    edge += string.diameterMm
    if (i < set.length - 1) edge += string.pairedWithNext ? pairGapMm : gapMm
  }
  return edge - set.at(-1)!.diameterMm / 2
}

describe('strings spread with equal gaps', () => {
  test('worked by hand: diameters 1, 2 and 3 over 20: gaps of 8', () => {
    const { acrossMm, gapMm } = spaceStrings(planOf([stringOf(1), stringOf(2), stringOf(3)]), 20)
    expectWithin(gapMm, 8, 1e-12)
    for (const [i, across] of [-10, -0.5, 10].entries()) expectWithin(acrossMm[i], across, 1e-12)
  })

  test('worked by hand: two pairs of 1, 1.5 apart, over 15: the courses 9 apart', () => {
    const set = [stringOf(1, true), stringOf(1), stringOf(1, true), stringOf(1)]
    const { acrossMm, gapMm } = spaceStrings(planOf(set, 1.5), 15)
    expectWithin(gapMm, 9, 1e-12)
    for (const [i, across] of [-7.5, -5, 5, 7.5].entries()) expectWithin(acrossMm[i], across, 1e-12)
  })

  test('a walk over the edges, its gap found by halving, ends at the same place', () => {
    fc.assert(
      fc.property(plans, real(10, 130), (plan, spreadMm) => {
        fc.pre(hasCourses(plan))
        let [low, high] = [-300, 300]
        for (let i = 0; i < 70; i++) {
          const middle = (low + high) / 2
          if (walk(plan, middle) < spreadMm) low = middle
          else high = middle
        }
        expectWithin(spaceStrings(plan, spreadMm).gapMm, low, 1e-9)
      }),
      { seed: 21 },
    )
  })

  test('outer middles at half the spread; edge to edge the gap, or that of a pair', () => {
    fc.assert(
      fc.property(plans, real(10, 130), (plan, spreadMm) => {
        fc.pre(hasCourses(plan))
        const { acrossMm, gapMm } = spaceStrings(plan, spreadMm)
        expect(acrossMm).toHaveLength(plan.set.length)
        expectWithin(acrossMm[0], -spreadMm / 2, 1e-12)
        expectWithin(acrossMm.at(-1), spreadMm / 2, 1e-10)
        for (const [i, string] of plan.set.slice(0, -1).entries()) {
          const treble = acrossMm[i + 1]! - plan.set[i + 1]!.diameterMm / 2
          const bass = acrossMm[i]! + string.diameterMm / 2
          expectWithin(treble - bass, string.pairedWithNext ? plan.pairGapMm : gapMm, 1e-10)
        }
      }),
      { seed: 22 },
    )
  })

  test('turned about it is its own mirror', () => {
    fc.assert(
      fc.property(plans, real(10, 130), (plan, spreadMm) => {
        const last = plan.set.length - 1
        const set = plan.set.map((_, i) =>
          stringOf(plan.set[last - i]!.diameterMm, plan.set[last - i - 1]?.pairedWithNext ?? false),
        )
        const mirrored = spaceStrings({ ...plan, set }, spreadMm).acrossMm.toReversed()
        for (const [i, across] of spaceStrings(plan, spreadMm).acrossMm.entries())
          expectWithin(across, -mirrored[i]!, 1e-9)
      }),
      { seed: 23 },
    )
  })

  test('one course of several: the spread holds, what is between its strings gives way evenly', () => {
    const { acrossMm, gapMm } = spaceStrings(planOf([stringOf(1, true), stringOf(2, true), stringOf(1)]), 9)
    expect(gapMm).toBe(0)
    for (const [i, across] of [-4.5, 0, 4.5].entries()) expectWithin(acrossMm[i], across, 1e-12)
  })

  test('one string in the middle, none nowhere; pairing the last with nothing changes nothing', () => {
    expect(spaceStrings(planOf([stringOf(1)]), 40)).toEqual({ acrossMm: [0], gapMm: 0 })
    expect(spaceStrings(planOf([]), 40)).toEqual({ acrossMm: [], gapMm: 0 })
    const [a, b] = [stringOf(1), stringOf(2)]
    expect(spaceStrings(planOf([a, stringOf(2, true)]), 40)).toEqual(spaceStrings(planOf([a, b]), 40))
  })

  test('too small a spread: strings that overlap, a gap under 0', () => {
    expectWithin(spaceStrings(planOf([stringOf(3), stringOf(3), stringOf(3)]), 4).gapMm, -1, 1e-12)
  })
})

test('between the outer strings straight across; without a spread the mean', () => {
  expectWithin(betweenOuter(2.4, 1.8, -18.5, 37), 2.4, 1e-12)
  expectWithin(betweenOuter(2.4, 1.8, 18.5, 37), 1.8, 1e-12)
  expectWithin(betweenOuter(2.4, 1.8, 9.25, 37), 1.95, 1e-12)
  expectWithin(betweenOuter(2.4, 1.8, 0, 0), 2.1, 1e-12)
})

type Board = Partial<typeof STEEL_NECK.board>
type Scale = Partial<typeof STEEL_NECK.scale>
const shapeOf = (board: Board, scale: Scale, { nutSpreadMm, saddleSpreadMm }: StringsPlan): Fretboard =>
  makeFretboard(
    { ...STEEL_NECK.scale, ...scale },
    { ...STEEL_NECK.board, ...board },
    { bodyLengthMm: BODY_MM, nutSpreadMm, saddleSpreadMm },
  )

/** A point of a string as a line in space: at some part of the way from nut to saddle. */
const pointOf = (line: StringLine, part: number) => ({
  xMm: line.nutMm + (line.saddleMm - line.nutMm) * part,
  yMm: line.nutAcrossMm + (line.saddleAcrossMm - line.nutAcrossMm) * part,
  zMm: line.nutHeightMm + (line.saddleHeightMm - line.nutHeightMm) * part,
})
/** A round of frets under its crest, by Pythagoras. */
const roundMm = (radiusMm: number, yMm: number): number => -(radiusMm - Math.sqrt(radiusMm ** 2 - yMm ** 2))

const { strings, setup } = STEEL_NECK
const askedAt = (bass: number, treble: number, i: number): number => {
  const across = spaceStrings(strings, strings.nutSpreadMm).acrossMm[i]!
  return ((18.5 - across) * bass + (18.5 + across) * treble) / 37
}

describe('strings in place', () => {
  test('a flat board: from nut to saddle line the scale, at the saddle 2A - n', () => {
    const lines = placeStrings(strings, setup, shapeOf({ surface: 'flat' }, {}, strings))
    expect(lines).toHaveLength(6)
    for (const [i, line] of lines.entries()) {
      expectWithin(line.nutMm, BODY_MM + 645 * (1 - 2 ** (-14 / 12)), 1e-9)
      expectWithin(line.saddleMm, BODY_MM - 645 * 2 ** (-14 / 12), 1e-9)
      expectWithin(line.scaleMm, 645, 1e-9)
      expectWithin(line.nutHeightMm, 0.5, 1e-12)
      expectWithin(line.saddleHeightMm, 2 * askedAt(2.4, 1.8, i) - 0.5, 1e-12)
    }
    expectWithin(lines[0]!.saddleHeightMm, 4.3, 1e-12)
    expectWithin(lines[5]!.saddleHeightMm, 3.1, 1e-12)
    expectWithin(lines[0]!.saddleAcrossMm, -27.5, 1e-12)
    expectWithin(lines[5]!.nutAcrossMm, 18.5, 1e-10)
  })

  test('a round board: halfway the action over the crown under it, at the nut what is asked there', () => {
    const asked: SetupPlan = { ...setup, nutBassMm: 0.7, nutTrebleMm: 0.4 }
    const lines = placeStrings(strings, asked, shapeOf({ surface: 'single', radiusMm: 300 }, {}, strings))
    for (const [i, line] of lines.entries()) {
      const twelfth = pointOf(line, 0.5)
      expectWithin(twelfth.zMm - roundMm(300, twelfth.yMm), askedAt(2.4, 1.8, i), 1e-9, `string ${i} at 12`)
      expectWithin(
        line.nutHeightMm - roundMm(300, line.nutAcrossMm),
        askedAt(0.7, 0.4, i),
        1e-9,
        `string ${i} at the nut`,
      )
    }
  })

  test('a compound board: the radius at fret 12 lies between by the way along the board', () => {
    const shape = shapeOf({ surface: 'compound', radiusMm: 250, endRadiusMm: 400 }, {}, strings)
    const toEnd = 645 * (1 - 2 ** (-20 / 12)) + 6
    const atTwelfth = 250 + (150 * 322.5) / toEnd
    for (const [i, line] of placeStrings(strings, setup, shape).entries()) {
      const twelfth = pointOf(line, 0.5)
      expectWithin(twelfth.zMm - roundMm(atTwelfth, twelfth.yMm), askedAt(2.4, 1.8, i), 1e-9, `string ${i}`)
    }
  })

  test('fanned: the outer strings have their own scales, those between lie between, every octave is halfway', () => {
    const scale: Scale = { fan: 'fanned', lengthMm: 660, trebleLengthMm: 630, squareFret: 7 }
    const shape = shapeOf({ surface: 'single', radiusMm: 300 }, scale, strings)
    const lines = placeStrings(strings, setup, shape)
    expectWithin(lines[0]!.scaleMm, 660, 1e-9)
    expectWithin(lines[5]!.scaleMm, 630, 1e-9)
    for (const [i, line] of lines.entries()) {
      expectWithin(line.scaleMm, line.nutMm - line.saddleMm, 1e-12)
      if (i > 0) expect(line.scaleMm).toBeLessThan(lines[i - 1]!.scaleMm)
      const twelfth = pointOf(line, 0.5)
      // Gaps, not middles, are equal: strings between lie a little off the straight share, so the octave too, by less than is ever set.
      const fret = shape.fretLine(12)
      expectWithin(fret.xMm + fret.slant * twelfth.yMm, twelfth.xMm, 0.05, `fret 12 under string ${i}`)
      expectWithin(twelfth.zMm - roundMm(300, twelfth.yMm), askedAt(2.4, 1.8, i), 0.002, `string ${i} at 12`)
    }
  })

  test('one string: on the centreline, between the two actions', () => {
    const [line, ...others] = placeStrings(planOf([stringOf(1)]), setup, shapeOf({}, {}, strings))
    expect(others).toEqual([])
    expectWithin(line!.saddleAcrossMm, 0, 0)
    expectWithin(line!.saddleHeightMm, 2 * 2.1 - 0.5, 1e-12)
    expectWithin(line!.scaleMm, 645, 1e-9)
  })

  test('no strings: none', () => expect(placeStrings(planOf([]), setup, shapeOf({}, {}, strings))).toEqual([]))

  test('every value finite, whatever the spreads and scales', () => {
    const any = fc.record({ nutSpreadMm: real(10, 110), saddleSpreadMm: real(15, 130) })
    fc.assert(
      fc.property(plans, any, real(300, 800), real(300, 800), fc.nat(12), (plan, spreads, bass, treble, squareFret) => {
        const placed = { ...plan, ...spreads }
        const scale: Scale = { fan: 'fanned', lengthMm: bass, trebleLengthMm: treble, squareFret }
        const shape = shapeOf({ surface: 'compound', radiusMm: 40, endRadiusMm: 3000 }, scale, placed)
        const numbers = placeStrings(placed, setup, shape).flatMap(Object.values)
        expect(numbers).toHaveLength(plan.set.length * 7)
        expect(numbers.filter((one) => !Number.isFinite(one))).toEqual([])
      }),
      { seed: 24 },
    )
  })
})
