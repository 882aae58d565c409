import { describe, expect, test } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import type { Plan } from '../../src/core/plan.ts'
import { SMALL, STEEL_STRING } from '../generators/demoModels.ts'
import { NYLON_STRING } from '../generators/demoNylon.ts'
import { withFields } from './everyForm.ts'
import { expectWithin } from './within.ts'

const MODELS = [STEEL_STRING, NYLON_STRING, SMALL]
const airOf = (plan: Plan) => compute(plan).numbers.air
const asNumber = (value: unknown): number => (typeof value === 'number' ? value : Number.NaN)
/** 1200 to the octave, by natural logarithms. */
const centsOver = (hz: number, over: number) => (1200 * Math.log(hz / over)) / Math.LN2

describe.each(MODELS)('$name', ({ plan }) => {
  const air = airOf(plan)

  test('air left is the empty box less the wood, and wood is a small part of it', () => {
    expectWithin(air.netMm3, air.grossMm3 - air.takenUpMm3, 1e-6)
    expect(air.takenUpMm3 / air.grossMm3).toBeGreaterThan(0.01)
    expect(air.takenUpMm3 / air.grossMm3).toBeLessThan(0.1)
  })

  test('the band lies 12 to 30 % under the rigid box', () => {
    const rigid = asNumber(air.rigidHz)
    expectWithin(air.highHz, rigid * (1 - 0.12), 1e-9)
    expectWithin(air.lowHz, rigid * (1 - 0.3), 1e-9)
    expect(air.ratio).toBe('none')
  })

  test('a deeper rim is what the plan with a deeper rim is', () => {
    const { depthChangeMm } = plan.air
    const { depthAtTailMm, depthAtNeckMm } = plan.rim
    const deeper = airOf(
      withFields(plan, {
        'rim.depthAtTailMm': depthAtTailMm + depthChangeMm,
        'rim.depthAtNeckMm': depthAtNeckMm + depthChangeMm,
      }),
    )
    expect(depthChangeMm).not.toBe(0)
    expectWithin(air.depthChanged.rigidHz, asNumber(deeper.rigidHz), 1e-6)
    expectWithin(air.depthChanged.highHz, asNumber(deeper.highHz), 1e-6)
    expectWithin(air.depthChanged.lowHz, asNumber(deeper.lowHz), 1e-6)
    expectWithin(air.depthChanged.cents, centsOver(asNumber(deeper.rigidHz), asNumber(air.rigidHz)), 1e-4)
    expect(asNumber(air.depthChanged.cents)).toBeLessThan(0)
  })

  test('another hole is what the plan with that hole is', () => {
    // Without the ring, which would move with the edge of the hole.
    const bare = withFields(plan, { 'bracing.holeRingMm': 0 })
    const other = airOf(withFields(bare, { 'soundhole.radiusMm': plan.soundhole.radiusMm + plan.air.holeChangeMm }))
    const { holeChanged, rigidHz } = airOf(bare)
    expect(plan.air.holeChangeMm).not.toBe(0)
    expectWithin(holeChanged.rigidHz, asNumber(other.rigidHz), 1e-9)
    expectWithin(holeChanged.cents, centsOver(asNumber(other.rigidHz), asNumber(rigidHz)), 1e-6)
    expect(asNumber(holeChanged.cents)).toBeGreaterThan(0)
  })

  test('what was heard is told as a part of the rigid box', () => {
    const rigid = asNumber(air.rigidHz)
    const heard = (hz: number) => compute(withFields(plan, { 'air.heardHz': hz }))
    expectWithin(heard(rigid * 0.8).numbers.air.ratio, 0.8, 1e-9)
    const isUnlikely = (hz: number) => heard(hz).findings.some(({ code }) => code === 'heardUnlikely')
    expect([0.59, 0.61, 0.99, 1.01].map((part) => isUnlikely(part * rigid))).toEqual([true, false, false, true])
  })

  test('a hole under the board lets nothing out', () => {
    const covered = compute(
      withFields(plan, {
        'soundhole.centreMm': plan.outline.lengthMm! + 0.5,
        'soundhole.radiusMm': 4,
        'air.heardHz': 100,
      }),
    )
    const { holeMm2, rigidHz, lowHz, ratio, holeChanged, depthChanged } = covered.numbers.air
    expect(holeMm2).toBe(0)
    expect([rigidHz, lowHz, ratio, holeChanged.cents, depthChanged.rigidHz]).toEqual(Array(5).fill('none'))
    expect(covered.findings.map(({ code }) => code)).toContain('noFreeHole')
    expect(compute(plan).findings.map(({ code }) => code)).not.toContain('noFreeHole')
  })
})

describe('the ring round the hole', () => {
  const withRing = (setBackMm: number) =>
    airOf(
      withFields(STEEL_STRING.plan, {
        'bracing.holeRingMm': 15,
        'bracing.holeRingSetBackMm': setBackMm,
        'bracing.holeRingThicknessMm': 2,
      }),
    )
  const none = airOf(withFields(STEEL_STRING.plan, { 'bracing.holeRingMm': 0 }))

  test('makes the edge thicker where it reaches it, and only there', () => {
    // By how much a longer neck lowers the air alone: the square root of the lengths, V being the same but for the ring's wood.
    const end = (16 * none.holeRadiusMm) / (3 * Math.PI)
    const { topMm } = STEEL_STRING.plan.plates
    const longer = Math.sqrt((topMm + end) / (topMm + 2 + end))
    const lessAir = (air: typeof none) => Math.sqrt(none.netMm3 / air.netMm3)
    const [at, back] = [withRing(0), withRing(3)]
    expectWithin(asNumber(at.rigidHz) / asNumber(none.rigidHz), longer * lessAir(at), 1e-9)
    expectWithin(asNumber(back.rigidHz) / asNumber(none.rigidHz), lessAir(back), 1e-9)
  })
})

test('a box without room has no air', () => {
  const shut = compute(
    withFields(SMALL.plan, {
      'rim.depthAtTailMm': 1,
      'rim.depthAtNeckMm': 1,
      'back.form': 'flat',
      'top.form': 'flat',
      'linings.top.heightMm': 60,
    }),
  )
  expect(shut.numbers.air.netMm3).toBeLessThan(0)
  expect([shut.numbers.air.rigidHz, shut.numbers.air.depthChanged.cents]).toEqual(['none', 'none'])
  expect(shut.findings.find(({ code }) => code === 'noAirLeft')?.weight).toBe('cannot')
})
