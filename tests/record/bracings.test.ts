import { describe, expect, test } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import type { Plan } from '../../src/core/plan.ts'
import { BRACE_END_RANGES, BRACE_RANGES } from '../../src/record/boxFields.ts'
import { BRACING_PATTERNS, bracingSiteOf } from '../../src/record/patterns/bracings.ts'
import { planSchema } from '../../src/record/planSchema.ts'
import { DEMO_MODELS } from '../generators/demoModels.ts'
import { withField } from '../generators/plans.ts'

type Top = keyof typeof BRACING_PATTERNS.top
const TOPS = Object.keys(BRACING_PATTERNS.top) as Top[]
const idOf = (i: number) => `b4ace000-0000-4000-8000-${String(i).padStart(12, '0')}`

function braced(plan: Plan, top: Top): Plan {
  const site = bracingSiteOf(plan, compute(plan).numbers)
  let count = 0
  const newId = () => idOf(count++)
  const list = [...BRACING_PATTERNS.top[top](site, newId), ...BRACING_PATTERNS.back.ladder(site, newId)]
  const braces = Object.fromEntries(
    list.map(({ id, brace }, i) => [id, { ...brace, order: String.fromCharCode(97 + i) }]),
  )
  expect(Object.keys(braces)).toHaveLength(list.length)
  return withField(plan, 'bracing.braces', braces)
}

const CUTS = ['none', 'rounded', 'pointed'] as const

describe.each(DEMO_MODELS)('$name', ({ plan }) => {
  test.each(TOPS.flatMap((top) => CUTS.map((form) => [top, form] as const)))(
    '%s with four across the back, cutaway %s: nothing that cannot be built, and what the record takes',
    (top, form) => {
      const bare = withField(plan, 'outline.cutaway.form', form)
      const whole = braced(bare, top)
      expect(planSchema.safeParse(whole).success).toBe(true)
      const { findings } = compute(whole)
      const before = compute(bare).findings.filter(({ weight }) => weight === 'cannot')
      expect(findings.filter(({ weight }) => weight === 'cannot')).toEqual(before)
      // All that is left to be careful with is a plate drawn wider than an X leaves it, and a ring round the hole that the X cuts into.
      const careful = findings.filter(({ code }) => /brace/i.test(code)).map(({ code }) => code)
      expect(careful.filter((code) => code !== 'plateOverBrace' && code !== 'braceOverHoleRing')).toEqual([])
    },
  )

  test('sizes and places lie well within what may be entered', () => {
    for (const top of TOPS)
      for (const brace of Object.values(braced(plan, top).bracing.braces)) {
        expect(brace.widthMm).toBeGreaterThan(BRACE_RANGES.widthMm.minMm)
        expect(brace.heightMm).toBeLessThan(BRACE_RANGES.heightMm.maxMm)
        for (const end of [brace.from, brace.to]) {
          expect(Math.abs(end.yMm)).toBeLessThan(BRACE_END_RANGES.yMm.maxMm)
          expect(end.xMm).toBeGreaterThan(0)
          expect(end.endHeightMm).toBeLessThan(brace.heightMm)
        }
      }
  })

  test('every figure is one a maker would enter: to the half millimetre', () => {
    for (const top of TOPS)
      for (const { from, to, widthMm, heightMm } of Object.values(braced(plan, top).bracing.braces)) {
        const ends = [from, to].flatMap(({ xMm, yMm, letInMm, taperMm, endHeightMm }) => [
          xMm,
          yMm,
          letInMm,
          taperMm,
          endHeightMm,
        ])
        for (const mm of [widthMm, heightMm, ...ends]) expect(Number.isInteger(mm * 2)).toBe(true)
      }
  })

  test('the X crosses behind the hole, lapped, and everything but tone bars is the same on both sides', () => {
    const { numbers } = compute(braced(plan, 'x'))
    const edge = plan.soundhole.centreMm - plan.soundhole.radiusMm
    expect(numbers.braceCrossings).toHaveLength(1)
    const [cross] = numbers.braceCrossings
    expect(cross!.xMm).toBeLessThan(edge - 15)
    expect(cross!.xMm).toBeGreaterThan(edge - 45)
    expect(cross!.acrossMm).toBeCloseTo(0, 9)
    expect(cross!.lapMm).not.toBe('none')
    expect((cross!.angleRad * 180) / Math.PI).toBeCloseTo(83, 0)
    const kinds = numbers.braces.map(({ kind }) => kind)
    expect(kinds.filter((kind) => kind === 'tone')).toHaveLength(2)
    expect(kinds.filter((kind) => kind === 'finger')).toHaveLength(4)
  })

  test('seven fans stop at the bar; three short ones between two bars', () => {
    const fans = (top: Top) =>
      compute(braced(plan, top)).geometry.bracing.placed.filter(({ plan: { kind } }) => kind === 'fan')
    expect(fans('fan')).toHaveLength(7)
    for (const fan of fans('fan')) expect([fan.from.at, fan.to.at]).toEqual(['brace', 'free'])
    expect(fans('ladder')).toHaveLength(3)
    for (const fan of fans('ladder')) expect([fan.from.at, fan.to.at]).toEqual(['brace', 'brace'])
  })
})

test('bodies of other sizes get braces of other sizes, in one proportion', () => {
  const { plan } = DEMO_MODELS[0]!
  const site = bracingSiteOf(plan, compute(plan).numbers)
  const half = Object.fromEntries(Object.entries(site).map(([name, mm]) => [name, mm / 2])) as unknown as typeof site
  for (const top of TOPS) {
    const [big, small] = [site, half].map((one) => {
      let count = 0
      return BRACING_PATTERNS.top[top](one, () => idOf(count++))
    })
    big!.forEach(({ brace }, i) => {
      const other = small![i]!.brace
      // Either is entered to the half millimetre.
      const near = (a: number, b: number) =>
        expect(Math.abs(a - b / 2)).toBeLessThanOrEqual(top === 'fan' ? 0.875 : 0.375)
      near(other.widthMm, brace.widthMm)
      near(other.from.xMm, brace.from.xMm)
      near(other.to.yMm, brace.to.yMm)
    })
  }
})
