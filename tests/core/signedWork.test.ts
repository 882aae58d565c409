import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Reading } from '../../src/core/asBuilt/reading.ts'
import { aboutNumber, NUMBER_KEYS, type NumberKey } from '../../src/core/catalogue.ts'
import { compute } from '../../src/core/compute.ts'
import { type KeptNumbers, keptName } from '../../src/core/keptNumbers.ts'
import { figureAt, placeOf, rowAt, type Worked } from '../../src/core/numberPlace.ts'
import { readNumbers } from '../../src/core/numbers.ts'
import type { Plan } from '../../src/core/plan.ts'
import type { PlanField } from '../../src/core/planFields.ts'
import { readingAt, type SignedWork, stillSpecified, unfitWork, withStationsOf } from '../../src/core/signedWork.ts'
import { SMALL, STEEL_STRING } from '../generators/demoModels.ts'
import { NYLON_STRING } from '../generators/demoNylon.ts'
import { withField } from '../generators/plans.ts'

const worked = (plan: Plan): Worked => ({ plan, numbers: compute(plan).numbers })
const keptOf = ({ numbers }: Worked): KeptNumbers =>
  Object.fromEntries(
    NUMBER_KEYS.flatMap((key) => readNumbers(numbers, key).map((value, row) => [keptName(key, row), value])),
  )
const isMeasured = (key: NumberKey) => aboutNumber(key).measured !== null
const TERMS = {
  readings: [],
  isRead: (_: string, key: NumberKey) => isMeasured(key),
  toleranceOf: (key: NumberKey) => aboutNumber(key).tolerance,
}
/** One stage that was built to every number of a plan. */
const signedOn = (then: Worked, now: Worked, more: Partial<SignedWork> = {}): SignedWork => ({
  stageId: 'all',
  kept: keptOf(then),
  builtThen: then,
  askedThen: worked(withStationsOf(then.plan, now.plan)),
  excused: [],
  ...more,
})
const listed = (now: Worked, stage: SignedWork, readings: readonly Reading[] = []) =>
  unfitWork(now, [stage], { ...TERMS, readings })[0]?.numbers ?? []

const MODELS = [STEEL_STRING.plan, NYLON_STRING.plan, SMALL.plan]
/** Fields that move no place round the rim and no row of a list. */
const CHANGES: readonly (readonly [field: PlanField, by: number])[] = [
  ['rim.depthAtTailMm', 3],
  ['rim.depthAtNeckMm', -2],
  ['rim.sideThicknessMm', 0.3],
  ['plates.topMm', 0.3],
  ['back.radiusMm', -900],
  ['top.radiusMm', 1500],
  ['board.nutWidthMm', 0.6],
  ['neck.thicknessAtFirstMm', 0.8],
  ['scale.lengthMm', 1.5],
  ['bridge.saddleShowingMm', 0.5],
  ['soundhole.radiusMm', 1],
  ['rosette.inlayMm', 0.2],
]
const change = fc
  .constantFrom(...CHANGES)
  .chain(([field, most]) => fc.double({ min: 0.02, max: 1, noNaN: true }).map((part) => ({ field, by: part * most })))
function changed(plan: Plan, { field, by }: { readonly field: PlanField; readonly by: number }): Plan {
  const before = field.split('.').reduce<unknown>((at, step) => (at as Record<string, unknown>)[step], plan)
  return typeof before === 'number' ? withField(plan, field, before + by) : plan
}

describe('work that no longer fits', () => {
  it('is exactly what a change of the plan moved by more than its tolerance, worst first', () => {
    let found = 0
    fc.assert(
      fc.property(fc.constantFrom(...MODELS), fc.array(change, { minLength: 1, maxLength: 3 }), (plan, changes) => {
        const [then, now] = [worked(plan), worked(changes.reduce(changed, plan))]
        const numbers = listed(now, signedOn(then, now))
        const expected = NUMBER_KEYS.filter(isMeasured).flatMap((key) => {
          const tolerance = aboutNumber(key).tolerance
          const [before, after] = [readNumbers(then.numbers, key), readNumbers(now.numbers, key)]
          return before.flatMap((value, row) => {
            const asked = after[row]
            const isOff =
              typeof value === 'number' &&
              typeof asked === 'number' &&
              tolerance !== null &&
              Math.abs(value - asked) > tolerance
            return isOff ? [keptName(key, row)] : []
          })
        })
        expect(numbers.map(({ name }) => name).toSorted()).toEqual(expected.toSorted())
        const inTolerances = numbers.map(({ by, tolerance }) => Math.abs(by) / tolerance)
        expect(inTolerances).toEqual(inTolerances.toSorted((a, b) => b - a))
        for (const { wood, asked, by, from } of numbers) expect([wood - asked, from]).toEqual([by, 'kept'])
        found += numbers.length
      }),
      { numRuns: 25, seed: 5 },
    )
    expect(found).toBeGreaterThan(100)
  })

  it('is none where only the stations moved', () => {
    for (const plan of MODELS)
      for (const stepMm of [3, 5, 7]) {
        const [then, now] = [worked(plan), worked(withField(plan, 'rim.stationStepMm', stepMm))]
        expect(now.numbers.rim.length).not.toBe(then.numbers.rim.length)
        expect(listed(now, signedOn(then, now))).toEqual([])
      }
  })

  it('round the rim is judged where the wood stands, on a longer body too', () => {
    const { plan } = STEEL_STRING
    const longer = withField(withField(plan, 'rim.depthAtTailMm', 108), 'rim.stationStepMm', 7)
    const [then, now] = [worked(plan), worked(longer)]
    const fine = worked(withField(longer, 'rim.stationStepMm', 2)).numbers.rim
    const off = listed(now, signedOn(then, now)).filter(({ place }) => place.key === 'rim[].depthMm')
    expect(off.length).toBeGreaterThan(5)
    for (const { place, asked, wood } of off) {
      const { alongOuterMm, depthMm } = then.numbers.rim[place.row]!
      expect(wood).toBe(depthMm)
      expect(place.alongMm).toBe(alongOuterMm)
      // Found between stations 2 mm apart.
      const after = fine.findIndex((row) => row.alongOuterMm >= alongOuterMm)
      const [a, b] = [fine[Math.max(after - 1, 0)]!, fine[after]!]
      const part = b === a ? 0 : (alongOuterMm - a.alongOuterMm) / (b.alongOuterMm - a.alongOuterMm)
      expect(Math.abs(asked - (a.depthMm + part * (b.depthMm - a.depthMm)))).toBeLessThan(0.02)
    }
  })

  it('is judged by what was read last at that very place, both halves together', () => {
    const { plan } = STEEL_STRING
    const [then, now] = [worked(plan), worked(withField(plan, 'rim.depthAtTailMm', 108))]
    const place = placeOf(then, 'rim[].depthMm', 3)
    let count = 0
    const read = (value: number, more: Partial<Reading> = {}): Reading => ({
      id: `r${(count += 1)}`,
      number: 'rim[].depthMm',
      row: 3,
      side: 'whole',
      value,
      alongMm: place.alongMm,
      entry: null,
      ...more,
    })
    const asked = figureAt(now, place) as number
    const near = [
      read(asked - 3, { side: 'bass' }),
      read(asked + 0.2, { side: 'bass' }),
      read(asked, { side: 'treble' }),
    ]
    expect(readingAt(near, place)).toBeCloseTo(asked + 0.1, 9)
    const names = (readings: readonly Reading[]) => listed(now, signedOn(then, now), readings).map(({ name }) => name)
    expect(names([])).toContain('rim[3].depthMm')
    expect(names(near)).not.toContain('rim[3].depthMm')
    expect(names([...near, read(asked - 2)])).toContain('rim[3].depthMm')
    expect(names([read(asked, { alongMm: place.alongMm! + 4 })])).toContain('rim[3].depthMm')
  })

  it('that was let stand is not listed again while the same is asked', () => {
    const { plan } = STEEL_STRING
    const [then, now] = [worked(plan), worked(withField(plan, 'rim.depthAtTailMm', 108))]
    const all = listed(now, signedOn(then, now))
    const asked = Object.fromEntries(all.map((one) => [one.name, one.asked]))
    expect(listed(now, signedOn(then, now, { excused: [asked] }))).toEqual([])
    const further = worked(withField(plan, 'rim.depthAtTailMm', 108.2))
    expect(listed(further, signedOn(then, further, { excused: [asked] })).length).toBeGreaterThan(0)
  })

  it('knows a ring by itself when others come, and says when a whole list is gone', () => {
    const { plan } = NYLON_STRING
    const then = worked(plan)
    const [[firstId, first]] = Object.entries(plan.rosette.rings) as [[string, Plan['rosette']['rings'][string]]]
    const inner = {
      ...first,
      order: '0',
      innerRadiusMm: first.innerRadiusMm - 4,
      outerRadiusMm: first.innerRadiusMm - 2,
    }
    const rings = { ...plan.rosette.rings, 'aaaaaaaa-0000-4000-8000-000000000001': inner }
    const more = worked({ ...plan, rosette: { ...plan.rosette, rings } })
    const radii = (now: Worked) =>
      listed(now, signedOn(then, now)).filter(({ place }) => /rings\[\]\.(inner|outer)RadiusMm/u.test(place.key))
    expect(more.numbers.rosette.rings.length).toBe(then.numbers.rosette.rings.length + 1)
    expect(radii(more)).toEqual([])
    expect(rowAt(more, placeOf(then, 'rosette.rings[].innerRadiusMm', 0))).toBe(1)
    const moved = { ...plan.rosette.rings, [firstId]: { ...first, outerRadiusMm: first.outerRadiusMm + 2 } }
    expect(radii(worked({ ...plan, rosette: { ...plan.rosette, rings: moved } }))).toHaveLength(1)
    const none = worked({ ...plan, rosette: { ...plan.rosette, rings: {} } })
    const [stage] = unfitWork(none, [signedOn(then, none)], TERMS)
    expect(stage?.gone.map(({ list }) => list)).toEqual(['rosette.rings'])
    const excused = [{ [stage!.gone[0]!.name]: 'none' }] as const
    expect(unfitWork(none, [signedOn(then, none, { excused })], TERMS)[0]?.gone ?? []).toEqual([])
  })
})

describe('a reading', () => {
  it('holds while the plan asks of its number what it asked then, whatever else changed', () => {
    const { plan } = STEEL_STRING
    const then = worked(plan)
    const alongMm = then.numbers.rim[5]!.alongOuterMm
    const depth: Reading = { id: 'd', number: 'rim[].depthMm', row: 5, side: 'bass', value: 99, alongMm, entry: null }
    const thick: Reading = { ...depth, number: 'sides.thicknessMm', row: 0, alongMm: null }
    const holds = (now: Plan) =>
      [depth, thick].map((one) => stillSpecified(one, worked(withStationsOf(plan, now)), worked(now)))
    expect(holds(plan)).toEqual([true, true])
    expect(holds(withField(plan, 'rim.stationStepMm', 7))).toEqual([true, true])
    expect(holds(withField(plan, 'rim.depthAtTailMm', 106.01))).toEqual([false, true])
    expect(holds(withField(plan, 'rim.sideThicknessMm', 2.5))).toEqual([true, false])
  })
})
