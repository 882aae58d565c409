import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { compute } from '../../../src/core/compute.ts'
import type { Plan } from '../../../src/core/plan.ts'
import { cutList } from '../../../src/core/wood/cutList.ts'
import { type CuttingAllowances, DEFAULT_CUTTING } from '../../../src/core/wood/cutting.ts'
import { type CutPart, type PartKey, ROLE_OF_PART } from '../../../src/core/wood/part.ts'
import type { PlateBlanks } from '../../../src/core/wood/woodNumbers.ts'
import { SMALL, STEEL_STRING } from '../../generators/demoModels.ts'
import { NYLON_STRING } from '../../generators/demoNylon.ts'
import { anyPlan, withField } from '../../generators/plans.ts'
import { real } from '../../generators/real.ts'
import steel from '../../tables/steelModel.json' with { type: 'json' }

/** Two braces, one lapped crossing, and a strip in two stretches: by hand, whatever the model's own plates carry. */
const PLATES: PlateBlanks = {
  braces: [
    {
      number: 1,
      plate: 'top',
      finishedLengthMm: 400,
      widthMm: 8,
      heightMm: 15,
      blankLengthMm: 420,
      blankWidthMm: 8.5,
      blankHeightMm: 17,
    },
    {
      number: 2,
      plate: 'back',
      finishedLengthMm: 250,
      widthMm: 7,
      heightMm: 12,
      blankLengthMm: 270,
      blankWidthMm: 7.5,
      blankHeightMm: 14,
    },
  ],
  patches: { cross: { count: 1 } },
  jointStrip: [{ lengthMm: 100 }, { lengthMm: 130 }],
}
/** The steel-string with what its box and its bridge plate are given here. */
const STEEL: Plan = {
  ...STEEL_STRING.plan,
  bridge: {
    ...STEEL_STRING.plan.bridge,
    plateMm: 2.4,
    plateFromMm: 168,
    plateToMm: 228,
    plateTailWidthMm: 190,
    plateNeckWidthMm: 140,
  },
  bracing: {
    ...STEEL_STRING.plan.bracing,
    crossPatchMm: 30,
    crossPatchThicknessMm: 1.5,
    holeRingMm: 0,
    holeRingSetBackMm: 3,
    holeRingThicknessMm: 2,
    stripWidthMm: 18,
    stripThicknessMm: 2.5,
  },
  edges: {
    purflingDepthMm: 1.8,
    trimMm: 15,
    wedgeTopMm: 18,
    wedgeBackMm: 12,
    wedgeDepthMm: 2.2,
    wedgePurflingMm: 0.6,
    backStripMm: 6,
    backStripDepthMm: 1.2,
  },
}
const ALLOWANCES: CuttingAllowances = { plateMarginMm: 6, lengthMm: 10, widthMm: 3, thicknessMm: 1, sawKerfMm: 1.2 }

const listOf = (plan: Plan, cutting = ALLOWANCES): readonly CutPart[] =>
  cutList(plan, { ...compute(plan).numbers, ...PLATES }, cutting)
const find = (list: readonly CutPart[], key: PartKey, more: Partial<CutPart> = {}): CutPart =>
  list.find(
    (one) => one.key === key && Object.entries(more).every(([name, value]) => one[name as keyof CutPart] === value),
  )!
const sizes = ({ finished, rough }: CutPart): number[] => [
  finished.lengthMm,
  finished.widthMm,
  finished.thicknessMm,
  rough.lengthMm,
  rough.widthMm,
  rough.thicknessMm,
]

describe('the steel-string, by hand', () => {
  const list = listOf(STEEL)
  const rad = (deg: number) => (deg * Math.PI) / 180
  // The lower bout of the compass chain: the arc of 135 goes on from the arc of 950 after 4.29 degrees, and stands upright where it is widest.
  const halfMm = (950 - 135) * Math.sin(rad(4.2924098)) + 135
  const outerMm = steel.found.half_length_outer
  const nutToJointMm = 645 * (1 - 2 ** (-14 / 12))
  const boardMm = 645 * (1 - 2 ** (-20 / 12)) + 6
  const hollowMm = (155 * 155 + 32 * 32) / (8 * 8500)
  // The ring's strip: once round at mid radius less the hidden gap, which keeps 4 mm of margin on both sides.
  const ringMm = 2 * Math.PI * 60.5 - (rad(steel.rings[1]!.hidden_deg) * 60.5 - 8)

  test.each<[PartKey, Partial<CutPart>, readonly number[]]>([
    // Margin 6 at both ends; on the width once, and 3 for the joint.
    ['topHalf', { quantity: 2, isBookmatched: true }, [496, halfMm, 2.8, 508, halfMm + 9, 3.8]],
    ['backHalf', { quantity: 2, isBookmatched: true }, [496, halfMm, 2.5, 508, halfMm + 9, 3.5]],
    [
      'side',
      { quantity: 2, isBookmatched: true },
      [759.84, 106, 2.2, steel.blank_to_buy.length, steel.blank_to_buy.width, 3.2],
    ],
    ['topBrace', { row: 1 }, [400, 8, 15, 420, 8.5, 17]],
    ['backBrace', { row: 2 }, [250, 7, 12, 270, 7.5, 14]],
    ['crossPatch', { quantity: 1 }, [30, 30, 1.5, 40, 33, 2.5]],
    ['innerBackStrip', { row: 1, quantity: 1, grain: 'acrossLength' }, [100, 18, 2.5, 110, 21, 3.5]],
    ['innerBackStrip', { row: 2, quantity: 2, grain: 'acrossLength' }, [65, 18, 2.5, 75, 21, 3.5]],
    // A strip keeps its length in its middle: half a turn times the way inward is lost.
    ['topBinding', { quantity: 2 }, [outerMm - Math.PI, 6, 2, outerMm - Math.PI + 30, 9, 3]],
    ['backBinding', { quantity: 2 }, [outerMm - Math.PI, 6, 2, outerMm - Math.PI + 30, 9, 3]],
    ['topPurfling', { quantity: 2 }, [outerMm - 2.75 * Math.PI, 1.8, 1.5, outerMm - 2.75 * Math.PI + 30, 4.8, 2.5]],
    // 18 at the top, less a purfling of 0.6 on both sides.
    ['endWedge', { quantity: 1 }, [111.3, 16.8, 2.2, 121.3, 19.8, 3.2]],
    ['neckShaft', {}, [nutToJointMm + 28 + 175, 76, 20, nutToJointMm + 213 + 1.2 / Math.sin(rad(15)), 79, 21]],
    // 106 - 16 deep at the neck and 5.3 of plates, less 20 of shaft: 75.3 in four layers.
    [
      'heelLayer',
      { quantity: 4 },
      [88, steel.board.width_at_joint, 18.825, 98, steel.board.width_at_joint + 3, 19.825],
    ],
    ['fingerboard', {}, [boardMm, steel.board.width_at_end, 6.2, boardMm + 10, steel.board.width_at_end + 3, 7.2]],
    ['bridge', {}, [155, 32, 9 + hollowMm, 165, 35, 10 + hollowMm]],
    ['bridgePlate', {}, [190, 60, 2.4, 200, 63, 3.4]],
    ['nut', { grain: 'any' }, [44, 6.2 + 1.1 + 0.5 + 0.675, 6, 54, 11.475, 7]],
    ['saddle', { grain: 'any' }, [74, 9.7, 3, 84, 12.7, 4]],
    ['headFace', {}, [175, 76, 1.5, 185, 79, 2.5]],
    ['rosetteTile', { row: 2, quantity: 48 }, [ringMm / 48, 4, 2, ringMm / 48 + 10, 7, 3]],
    ['tailBlock', { grain: 'acrossLength' }, [107.13, 76, 22, 117.13, 79, 23]],
  ])('%s %o', (key, more, expected) => {
    const part = find(list, key, more)
    expect(part, 'is listed').toBeDefined()
    // Figures of the table are good to 0.01 and rounded to 0.05 where they are to be bought.
    sizes(part).forEach((mm, i) => expect(Math.abs(mm - expected[i]!), `measure ${i}`).toBeLessThan(0.06))
  })

  test('linings: the inner face from block to block, a tenth for waste, two strips an edge', () => {
    // Of the inner half-perimeter, half the width of either block, on nearly flat ends.
    const innerMm = outerMm - 2.2 * Math.PI - 38 - 40
    for (const key of ['topLining', 'backLining'] as const) {
      const { quantity, finished, rough } = find(list, key)
      expect(quantity).toBe(2)
      expect(Math.abs(finished.lengthMm - innerMm)).toBeLessThan(0.3)
      expect(rough.lengthMm).toBeCloseTo(1.1 * finished.lengthMm, 9)
      expect([rough.widthMm, rough.thicknessMm]).toEqual([18, 7.5])
    }
  })

  test('side braces: five places, a pair each, between linings of 15', () => {
    const braces = list.filter(({ key }) => key === 'sideBrace')
    expect(braces.map(({ row, quantity }) => [row, quantity])).toEqual([1, 2, 3, 4, 5].map((row) => [row, 2]))
    // At 560 along the rim the model's depths stand between 100.49 and 95.27.
    expect(braces[3]!.finished.lengthMm).toBeGreaterThan(95.27 - 30)
    expect(braces[3]!.finished.lengthMm).toBeLessThan(100.49 - 30)
  })

  test('what the model has not is not listed', () => {
    const keys = new Set(list.map(({ key }) => key))
    for (const key of ['holeRing', 'backPurfling', 'boardBinding', 'headBack'] as const)
      expect(keys.has(key)).toBe(false)
  })
})

describe('what a field changes', () => {
  test('cloth side braces and sides held in the heel are no wood of their own', () => {
    const cloth = listOf(withField(STEEL, 'sideBraces.form', 'cloth'))
    expect(find(cloth, 'sideBrace')).toBeUndefined()
    const heel = listOf(withField(STEEL, 'neck.joint', 'sidesInHeel'))
    expect(find(heel, 'neckBlock')).toBeUndefined()
    // 60 before the joint and the block's 36 in the body.
    expect(find(heel, 'heelLayer').finished.lengthMm).toBe(96)
  })

  test('a bound board is narrower by both bindings, and they are listed', () => {
    const list = listOf(withField(STEEL, 'board.bindingMm', 1.5))
    expect(find(list, 'fingerboard').finished.widthMm).toBeCloseTo(steel.board.width_at_end - 3, 2)
    expect(find(list, 'boardBinding')).toMatchObject({ quantity: 2, finished: { widthMm: 6.2, thicknessMm: 1.5 } })
  })

  test('a ring round the hole is sawn from a square: radius, set back and width, both ways', () => {
    const list = listOf(withField(STEEL, 'bracing.holeRingMm', 12))
    // 2 x (50 + 3 + 12).
    expect(find(list, 'holeRing').finished).toEqual({ lengthMm: 130, widthMm: 130, thicknessMm: 2 })
  })

  test('a neck with a level head has no scarf to saw', () => {
    const { finished, rough } = find(listOf(withField(STEEL, 'head.angleDeg', 0)), 'neckShaft')
    expect(rough.lengthMm - finished.lengthMm).toBeCloseTo(10, 9)
  })

  test('a rounded cutaway: still a pair of sides, bindings by halves; a pointed one: three pieces of side', () => {
    const rounded = listOf(withField(STEEL, 'outline.cutaway.form', 'rounded'))
    expect(rounded.filter(({ key }) => key === 'side')).toMatchObject([{ quantity: 2, isBookmatched: true }])
    expect(rounded.filter(({ key }) => key === 'topBinding').map(({ half }) => half)).toEqual(['bass', 'treble'])
    const pointed = listOf(withField(STEEL, 'outline.cutaway.form', 'pointed'))
    expect(pointed.filter(({ key }) => key === 'side')).toMatchObject([
      { half: 'bass', row: 'none', quantity: 1, isBookmatched: false },
      { half: 'treble', row: 1, quantity: 1 },
      { half: 'treble', row: 2, quantity: 1 },
    ])
  })

  test('each allowance adds what it says', () => {
    const none = { plateMarginMm: 0, lengthMm: 0, widthMm: 0, thicknessMm: 0, sawKerfMm: 0 }
    for (const part of listOf(STEEL, none)) {
      // Blanks of sides, braces and edges, and linings, carry allowances of the plan's own.
      if (/side$|Brace$|Lining$|Binding$|Purfling$|outerBackStrip/.test(part.key) && part.key !== 'sideBrace') continue
      expect(part.rough, part.id).toEqual(part.finished)
    }
  })
})

describe.each([STEEL_STRING, SMALL, NYLON_STRING])('$name', ({ plan }) => {
  test('takes the numbers as they are', () => {
    expect(cutList(plan, compute(plan).numbers).length).toBeGreaterThan(15)
  })
})

test('of any plan: finite, over nothing, rough not under finished, one name each, in the order of the parts', () => {
  const order = Object.keys(ROLE_OF_PART)
  const allowances = fc.record({
    plateMarginMm: real(0, 40),
    lengthMm: real(0, 100),
    widthMm: real(-5, 30),
    thicknessMm: real(0, 20),
    sawKerfMm: real(0, 6),
  })
  fc.assert(
    fc.property(anyPlan, fc.oneof(fc.constant(DEFAULT_CUTTING), allowances), (plan, cutting) => {
      const list = cutList(plan, compute(plan).numbers, cutting)
      expect(new Set(list.map(({ id }) => id)).size).toBe(list.length)
      const places = list.map(({ key }) => order.indexOf(key))
      expect(places).toEqual(places.toSorted((a, b) => a - b))
      for (const { quantity, finished, rough, id } of list) {
        expect(Number.isInteger(quantity) && quantity >= 1, id).toBe(true)
        for (const measure of ['lengthMm', 'widthMm', 'thicknessMm'] as const) {
          expect(finished[measure], id).toBeGreaterThan(0)
          expect(Number.isFinite(rough[measure]), id).toBe(true)
          expect(rough[measure], id).toBeGreaterThanOrEqual(finished[measure])
        }
      }
    }),
    { numRuns: 20 },
  )
})
