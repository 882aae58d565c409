import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { asBuilt } from '../../src/core/asBuilt.ts'
import { inverseOf } from '../../src/core/asBuilt/inverses.ts'
import type { Reading } from '../../src/core/asBuilt/reading.ts'
import { aboutNumber, NUMBER_KEYS, type NumberKey } from '../../src/core/catalogue.ts'
import { compute } from '../../src/core/compute.ts'
import { ringsInOrder } from '../../src/core/instrument/rosette.ts'
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

describe('against closed forms', () => {
  // The table of sagittas (closed form, tests/tables/sagitta.csv): R = c^2/(8 s) + s/2 for a chord over the axis.
  test('a dish really 14 ft 8 in: the gap across a chord over its axis gives 4470.4 mm back', () => {
    const radiusMm = 14 * 304.8 + 8 * 25.4
    const plan = withFields(NYLON_STRING.plan, {
      'back.form': 'sphere',
      'rim.depthAtTailMm': 95,
      'rim.depthAtNeckMm': 95,
    })
    const { body } = compute(plan).numbers
    // Depths alike: the axis stands over the middle of the body; the place lies d before it, so the circle across is smaller there.
    const d = body.lowerBoutAtMm - body.lengthMm / 2
    const half = body.lowerBoutMm / 2
    const gapMm = Math.sqrt(radiusMm ** 2 - d ** 2) - Math.sqrt(radiusMm ** 2 - d ** 2 - half ** 2)
    const built = asBuilt(plan, [reading('back.gapAcrossLowerBoutMm', gapMm)], any)
    expect(built.plan.back.radiusMm).toBeCloseTo(radiusMm, 4)
  })

  test('the scale from one fret, and from several by least squares', () => {
    const { plan } = STEEL_STRING
    const at = (fret: number) => 1 - 2 ** (-fret / 12) // equal temperament, ISO 16
    const one = asBuilt(plan, [reading('frets[].fromNutMm', 645 * at(12), { row: 11 })], any)
    expect(one.plan.scale.lengthMm).toBeCloseTo(645, 9)
    const frets = [5, 7, 12, 19]
    const misread = [0.1, -0.1, 0.05, 0.02]
    const several = frets.map((fret, i) =>
      reading('frets[].fromNutMm', 645 * at(fret) + misread[i]!, { row: fret - 1 }),
    )
    const top = frets.reduce((sum, fret, i) => sum + at(fret) * (645 * at(fret) + misread[i]!), 0)
    const below = frets.reduce((sum, fret) => sum + at(fret) ** 2, 0)
    expect(asBuilt(plan, several, any).plan.scale.lengthMm).toBeCloseTo(top / below, 9)
  })

  test('a rosette cut off target: ring, width and channel', () => {
    const { plan } = STEEL_STRING
    const [first] = ringsInOrder(plan.rosette)
    const built = asBuilt(
      plan,
      [
        reading('rosette.rings[].innerRadiusMm', first!.ring.innerRadiusMm + 0.4, { entry: first!.id }),
        reading('rosette.rings[].widthMm', 3.2, { entry: first!.id }),
        reading('rosette.channelDepthMm', plan.rosette.inlayMm - 0.35),
      ],
      any,
    ).plan
    const ring = compute(built).numbers.rosette.rings[0]!
    expect(ring.innerRadiusMm).toBeCloseTo(first!.ring.innerRadiusMm + 0.4, 9)
    expect(ring.widthMm).toBeCloseTo(3.2, 9)
    expect(built.rosette.standsProudMm).toBeCloseTo(0.35, 9)
    // Half the strip of a closed ring of this middle radius, the gap apart: 2 pi r.
    const middleMm = first!.ring.innerRadiusMm + 0.4 + 1.6
    expect(ring.stripLengthMm + ring.gapMm).toBeCloseTo(2 * Math.PI * middleMm, 6)
  })
})

describe('which reading counts', () => {
  const { plan } = STEEL_STRING
  test('of one place the last; of both halves the middle', () => {
    const readings = [
      reading('sides.thicknessMm', 2.5, { side: 'bass' }),
      reading('sides.thicknessMm', 2.4, { side: 'bass' }),
      reading('sides.thicknessMm', 2.1, { side: 'treble' }),
    ]
    expect(asBuilt(plan, readings, any).plan.rim.sideThicknessMm).toBeCloseTo(2.25, 12)
  })
  test('of two that speak of one field the later', () => {
    const gap = readOn(withField(plan, 'top.radiusMm', 9000), 'top.gapAcrossLowerBoutMm')
    const dish = reading('top.radiusMm', 8000)
    expect(asBuilt(plan, [gap, dish], any).plan.top.radiusMm).toBeCloseTo(8000, 6)
    expect(asBuilt(plan, [dish, gap], any).plan.top.radiusMm).toBeCloseTo(9000, 2)
  })
  test('what a field cannot hold changes nothing, and is told', () => {
    const wrong = reading('sides.thicknessMm', 40)
    const built = asBuilt(plan, [wrong], (field, value) => field !== 'rim.sideThicknessMm' || (value as number) < 6)
    expect(built.plan).toBe(plan)
    expect(built.outside).toEqual([wrong.id])
  })
  test('what defines no field changes nothing', () => {
    expect(asBuilt(plan, [reading('body.waistMm', 250)], any).plan).toBe(plan)
    expect(asBuilt(plan, [], any).plan).toBe(plan)
  })
  test('total: whatever is read, every number stays finite', () => {
    const measured = NUMBER_KEYS.filter((key) => inverseOf(key, plan) !== null)
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.constantFrom(...measured), fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.nat(60)), {
          maxLength: 6,
        }),
        (list) => {
          const built = asBuilt(
            plan,
            list.map(([key, value, row]) => reading(key, value, { row, alongMm: row * 10 })),
            (_, value) => typeof value !== 'number' || (value > 0.1 && value < 60000),
          ).plan
          for (const value of Object.values(built.rim))
            expect(typeof value !== 'number' || Number.isFinite(value)).toBe(true)
          expect(Number.isFinite(built.bridge.saddleShowingMm)).toBe(true)
        },
      ),
      { numRuns: 60 },
    )
  })
})
