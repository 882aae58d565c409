import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { asBuilt } from '../../src/core/asBuilt.ts'
import { inverseOf } from '../../src/core/asBuilt/inverses.ts'
import type { Reading } from '../../src/core/asBuilt/reading.ts'
import { NUMBER_KEYS, type NumberKey } from '../../src/core/catalogue.ts'
import { compute } from '../../src/core/compute.ts'
import { ringsInOrder } from '../../src/core/instrument/rosette.ts'
import { readNumbers } from '../../src/core/numbers.ts'
import type { Plan } from '../../src/core/plan.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { NYLON_STRING } from '../generators/demoNylon.ts'
import { withField } from '../generators/plans.ts'
import { withFields } from './everyForm.ts'

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
    // One said of the whole is said of both halves; one half read after it stands alone until the other is.
    const whole = [...readings, reading('sides.thicknessMm', 2.3)]
    expect(asBuilt(plan, whole, any).plan.rim.sideThicknessMm).toBeCloseTo(2.3, 12)
    const again = [...whole, reading('sides.thicknessMm', 2.35, { side: 'treble' })]
    expect(asBuilt(plan, again, any).plan.rim.sideThicknessMm).toBeCloseTo(2.35, 12)
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
