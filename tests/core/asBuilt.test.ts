import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { asBuilt } from '../../src/core/asBuilt.ts'
import { inverseOf } from '../../src/core/asBuilt/inverses.ts'
import type { Reading } from '../../src/core/asBuilt/reading.ts'
import { aboutNumber, NUMBER_KEYS, type NumberKey } from '../../src/core/catalogue.ts'
import { compute } from '../../src/core/compute.ts'
import { readNumbers } from '../../src/core/numbers.ts'
import type { Plan } from '../../src/core/plan.ts'
import { SMALL, STEEL_STRING } from '../generators/demoModels.ts'
import { NYLON_STRING } from '../generators/demoNylon.ts'
import { withField } from '../generators/plans.ts'
import { real } from '../generators/real.ts'
import { PLANED, withFields } from './everyForm.ts'

const any = () => true
let count = 0
const reading = (number: NumberKey, value: number, more: Partial<Reading> = {}): Reading => ({
  id: `reading-${(count += 1)}`,
  number,
  row: 0,
  side: 'whole',
  value,
  alongMm: null,
  entry: null,
  ...more,
})
/** What would be read of a number on an instrument that came out like this plan. */
const readOn = (plan: Plan, number: NumberKey): Reading => {
  const value = readNumbers(compute(plan).numbers, number)[0]
  if (typeof value !== 'number') throw new Error(`${number} is ${String(value)}`)
  return reading(number, value)
}
/** All numbers of both alike: lengths to 1e-6 mm, large ones in proportion. */
function expectSameNumbers(one: Plan, other: Plan): void {
  const [a, b] = [compute(one).numbers, compute(other).numbers]
  for (const key of NUMBER_KEYS) {
    const [left, right] = [readNumbers(a, key), readNumbers(b, key)]
    expect(left.length, key).toBe(right.length)
    for (const [i, value] of left.entries()) {
      const wanted = right[i]
      if (typeof value !== 'number' || typeof wanted !== 'number') expect(value, key).toBe(wanted)
      else expect(Math.abs(value - wanted), key).toBeLessThan(2e-6 * Math.max(1, Math.abs(wanted)))
    }
  }
}

const MODELS = [STEEL_STRING, NYLON_STRING, SMALL] as const
const PLANED_STEEL = withFields(STEEL_STRING.plan, PLANED)

describe('numbers that are themselves a field', () => {
  const keys = NUMBER_KEYS.filter((key) => (aboutNumber(key).measured?.defines ?? null) !== null)
  test.each(MODELS)(
    '$name: each equals its field, and a reading of it does what the plan would have done',
    ({ plan }) => {
      const numbers = compute(plan).numbers
      let tried = 0
      for (const key of keys) {
        const inverse = inverseOf(key, plan)
        const [value] = readNumbers(numbers, key)
        if (inverse?.name !== 'itself' || typeof value !== 'number') continue
        const [field] = inverse.fields
        const as = value * 1.013 + 0.01
        const planned = withField(plan, field!, as)
        expect(readNumbers(compute(planned).numbers, key)[0], key).toBeCloseTo(as, 9)
        const built = asBuilt(plan, [reading(key, as)], any)
        expect(built.plan, key).toEqual(planned)
        expect(built.taken.map((one) => one.field)).toEqual([field])
        tried += 1
      }
      expect(tried).toBeGreaterThan(35)
    },
  )
})

describe('an instrument read in the same places as it was changed', () => {
  /** A body that came out otherwise, and what is read of it. */
  const otherwise = fc.record({
    tailMm: real(-2, 2),
    neckMm: real(-2, 2),
    topFactor: real(0.85, 1.25),
    backFactor: real(0.85, 1.25),
    topMm: real(-0.2, 0.2),
    showingMm: real(-1, 1),
    scaleMm: real(-0.6, 0.6),
    widthMm: real(-0.8, 0.8),
    bridgeMm: real(-0.4, 0.4),
    thickMm: real(-0.2, 0.2),
  })
  test.each([...MODELS.map(({ name, plan }) => [name, plan] as const), ['planed', PLANED_STEEL] as const])(
    '%s: gets the very numbers of a plan that had the values from the start',
    (_, plan) => {
      fc.assert(
        fc.property(otherwise, fc.boolean(), (by, isClosed) => {
          const came = withFields(plan, {
            'rim.depthAtTailMm': plan.rim.depthAtTailMm + by.tailMm,
            'rim.depthAtNeckMm': plan.rim.depthAtNeckMm + by.neckMm,
            'top.radiusMm': plan.top.radiusMm * by.topFactor,
            'back.radiusMm': plan.back.radiusMm * by.backFactor,
            'plates.topMm': plan.plates.topMm + by.topMm,
            'scale.lengthMm': plan.scale.lengthMm + by.scaleMm,
            'board.widthAtTwelfthMm': plan.board.widthAtTwelfthMm + by.widthMm,
            'bridge.thicknessMm': plan.bridge.thicknessMm + by.bridgeMm,
            'rim.sideThicknessMm': plan.rim.sideThicknessMm + by.thickMm,
          })
          const depths: readonly NumberKey[] = isClosed
            ? ['sides.bodyDepthAtTailMm', 'sides.bodyDepthAtNeckMm']
            : ['sides.depthAtTailMm', 'sides.depthAtNeckPlanedMm']
          const gaps: NumberKey[] = []
          if (plan.top.form !== 'flat') gaps.push('top.gapAcrossLowerBoutMm')
          if (plan.back.form !== 'flat') gaps.push('back.gapAcrossLowerBoutMm')
          const read = [
            ...depths,
            ...gaps,
            ...(['plates.topMm', 'board.nutToJointMm', 'board.widthAtEndMm', 'bridge.thicknessMm'] as const),
            'sides.thicknessMm' as const,
          ].map((key) => readOn(came, key))
          const built = asBuilt(plan, read, any)
          const isTaken = (field: string) => built.taken.some((one) => one.field === field)
          // A crown over a flat rim says next to nothing of its radius: only there it stays as planned.
          expect(isTaken('top.radiusMm')).toBe(plan.top.form === 'sphere' || plan.top.form === 'flatUpperBout')
          expect(isTaken('back.radiusMm')).toBe(plan.back.form !== 'flat')
          const unread = withFields(came, {
            'top.radiusMm': isTaken('top.radiusMm') ? came.top.radiusMm : plan.top.radiusMm,
            'back.radiusMm': isTaken('back.radiusMm') ? came.back.radiusMm : plan.back.radiusMm,
          })
          expectSameNumbers(built.plan, unread)
        }),
        { numRuns: 12 },
      )
    },
    120_000,
  )

  test('depths read round the rim, both halves, in any order', () => {
    const came = withFields(STEEL_STRING.plan, {
      'rim.depthAtTailMm': 101.3,
      'rim.depthAtNeckMm': 84.9,
      'back.radiusMm': 4470.4,
    })
    const { rim } = compute(came).numbers
    const read = rim.flatMap(({ depthMm, alongOuterMm }, row) =>
      (['bass', 'treble'] as const).map((side) =>
        reading('rim[].depthMm', depthMm, { row, alongMm: alongOuterMm, side }),
      ),
    )
    const all = [
      ...read.filter((_, i) => i % 3 === 0),
      ...read.filter((_, i) => i % 3 !== 0),
      reading('back.radiusMm', 4470.4),
    ]
    expectSameNumbers(asBuilt(STEEL_STRING.plan, all, any).plan, came)
  })

  test('one place alone: the readings come out, and neither end moves more than it has to', () => {
    const { plan } = STEEL_STRING
    const { rim } = compute(plan).numbers
    const middle = rim[Math.floor(rim.length / 2)]!
    const built = asBuilt(
      plan,
      [reading('rim[].depthMm', middle.depthMm - 0.6, { alongMm: middle.alongOuterMm })],
      any,
    ).plan
    const row = compute(built).numbers.rim[Math.floor(rim.length / 2)]!
    expect(row.depthMm).toBeCloseTo(middle.depthMm - 0.6, 7)
    const [tail, neck] = [
      built.rim.depthAtTailMm - plan.rim.depthAtTailMm,
      built.rim.depthAtNeckMm - plan.rim.depthAtNeckMm,
    ]
    for (const share of [-0.3, -0.1, 0.1, 0.3]) {
      // Every other pair with the same depth there has a greater sum of squares.
      const other = asBuilt(
        withFields(plan, { 'rim.depthAtTailMm': plan.rim.depthAtTailMm + tail + share }),
        [reading('rim[].depthMm', middle.depthMm - 0.6, { alongMm: middle.alongOuterMm })],
        any,
      ).plan
      const far = Math.hypot(
        other.rim.depthAtTailMm - plan.rim.depthAtTailMm,
        other.rim.depthAtNeckMm - plan.rim.depthAtNeckMm,
      )
      expect(far).toBeGreaterThanOrEqual(Math.hypot(tail, neck) - 1e-7)
    }
  })

  test.each([
    'neckSet.angleRad',
    'neckSet.fretPlaneOverTopMm',
    'neckSet.fretPlaneOverBridgeMm',
    'neckSet.stringsOverTopMm',
  ] as const)('%s: the saddle takes up how the neck came to stand', (key) => {
    for (const model of [STEEL_STRING.plan, NYLON_STRING.plan, SMALL.plan]) {
      // A flat that still followed the neck would turn with it.
      const plan = withField(model, 'top.flatSlope', 'entered')
      const came = withFields(plan, { 'bridge.saddleShowingMm': plan.bridge.saddleShowingMm + 0.7 })
      expectSameNumbers(asBuilt(plan, [readOn(came, key)], any).plan, came)
    }
  })

  test('a flat that was to fall as the neck asks keeps the fall it was planed to', () => {
    const before = compute(PLANED_STEEL).numbers
    const built = asBuilt(PLANED_STEEL, [reading('neckSet.angleRad', before.neckSet.angleRad + 0.004)], any).plan
    const after = compute(built).numbers
    expect(after.top.flatSlopeRad).toBeCloseTo(before.top.flatSlopeRad as number, 9)
    expect(after.neckSet.angleRad).toBeCloseTo(before.neckSet.angleRad + 0.004, 8)
    // A degree at the joint lifts the plane over the saddle by the lever: tan 0.004 x joint to saddle.
    const liftMm = after.neckSet.fretPlaneOverTopMm - before.neckSet.fretPlaneOverTopMm
    expect(liftMm / before.scale.jointToSaddleMm).toBeCloseTo(0.004, 4)
  })
})
