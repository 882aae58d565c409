import { describe, expect, test } from 'vitest'
import { STEEL_STRING } from '../../../generators/demoModels.ts'
import { withField } from '../../../generators/plans.ts'
import { expectWithin } from '../../within.ts'
import { atBrace, beyond, brace, codesOf, computed, here } from './braceSamples.ts'
import { longestWithin, sharedMm2 } from './clip.ts'

const plan = withField(STEEL_STRING.plan, 'bridge.plateMm', 0)

describe('crossings', () => {
  test('a 3-4-5 one: place, ways along, angle and lap', () => {
    const { braceCrossings } = computed(plan, {
      a: brace(here(100, -60), here(220, 100), { lapped: true, heightMm: 16 }),
      b: brace(here(140, 20), here(180, -10), { lapped: true, heightMm: 12 }),
    }).numbers
    // y = -60 + 4/3 (x - 100) meets y = 20 - 3/4 (x - 140) at x = 148.8, y = 5.0667 - and square, since 4/3 x 3/4 = 1.
    const row = braceCrossings[0]!
    const x = (60 + 400 / 3 + 20 + 105) / (4 / 3 + 3 / 4)
    expect(braceCrossings).toHaveLength(1)
    expect([row.number, row.otherNumber]).toEqual([1, 2])
    expectWithin(row.xMm, x, 1e-9)
    expectWithin(row.acrossMm, -60 + (4 / 3) * (x - 100), 1e-9)
    expectWithin(row.alongMm, ((x - 100) * 5) / 3, 1e-9)
    expectWithin(row.otherAlongMm, ((x - 140) * 5) / 4, 1e-9)
    expectWithin(row.angleRad, Math.PI / 2, 1e-9)
    expect(row.lapMm).toBe(6)
    expect(row.underNumber).toBe(2)
  })

  test('notches, against what a general library of polygons finds of either middle in the other’s footprint', () => {
    const { geometry, numbers } = computed(plan, {
      a: brace(here(100, -60), here(220, 60), { lapped: true, widthMm: 9 }),
      b: brace(here(120, 50), here(190, -70), { lapped: true, widthMm: 6 }),
      c: brace(here(120, -80), here(170, -60)),
    })
    const [a, b] = geometry.bracing.placed
    const within = (one: typeof a, other: typeof a) => {
      const { startMm, endMm } = longestWithin(other!.corners, one!.from.point, one!.way)
      return endMm - startMm
    }
    const [lapped, plain] = numbers.braceCrossings
    expectWithin(lapped!.notchMm, within(a, b), 1e-4)
    expectWithin(lapped!.otherNotchMm, within(b, a), 1e-4)
    expect(plain).toBeUndefined()
    const loose = computed(plan, { a: a!.plan, b: { ...b!.plan, lapped: false } })
    expect(loose.numbers.braceCrossings[0]).toMatchObject({
      underNumber: 'none',
      notchMm: 'none',
      otherNotchMm: 'none',
    })
    // Not lapped, they share as much of the first one's length as its notch would be, where their middles cross.
    const told = loose.findings.find(({ code }) => code === 'bracesCollide')!
    expectWithin(told.values['byMm'], within(a, b), 1e-4)
    expectWithin(told.values['crossMm'], loose.numbers.braceCrossings[0]!.xMm, 1e-12)
  })

  test('only where both are lapped is there a lap, and only then they do not collide', () => {
    const cross = (one: boolean, other: boolean) => ({
      a: brace(here(100, -60), here(220, 60), { lapped: one }),
      b: brace(here(100, 60), here(220, -60), { lapped: other }),
    })
    expect(computed(plan, cross(true, true)).numbers.braceCrossings[0]!.lapMm).toBe(8)
    expect(computed(plan, cross(true, false)).numbers.braceCrossings[0]!.lapMm).toBe('none')
    expect(codesOf(plan, cross(true, true))).toEqual([])
    for (const [one, other] of [
      [true, false],
      [false, false],
    ] as const)
      expect(codesOf(plan, cross(one, other))).toEqual(['bracesCollide'])
  })

  test('legs of an X that is its own twin cross on the centreline; patches are counted', () => {
    const leg = brace(beyond(330, -60), beyond(200, 80), { twin: true, lapped: true })
    const { numbers } = computed(withField(plan, 'bracing.crossPatchMm', 28), { x: leg })
    expectWithin(numbers.braceCrossings[0]!.acrossMm, 0, 1e-9)
    // From (330, -60) to (200, 80): 130 along for 140 across.
    expectWithin(numbers.braceCrossings[0]!.xMm, 330 - (130 * 60) / 140, 1e-9)
    expectWithin(numbers.braceCrossings[0]!.angleRad, Math.PI - 2 * Math.atan2(140, 130), 1e-9)
    expect(numbers.patches.cross).toMatchObject({ count: 1, sideMm: 28 })
    const back = computed(plan, { x: { ...leg, plate: 'back' } }).numbers
    expect([back.braceCrossings.length, back.patches.cross.count]).toEqual([1, 0])
  })

  test('one that stops at another does not cross it, nor one of the other plate', () => {
    const bar = brace(here(200, -100), here(200, 100))
    expect(computed(plan, { bar, a: brace(atBrace('bar', 195, 20), here(120, 0)) }).numbers.braceCrossings).toEqual([])
    const back = brace(here(150, 0), here(250, 0), { plate: 'back' })
    expect(computed(plan, { bar, back }).numbers.braceCrossings).toEqual([])
    expect(codesOf(plan, { bar, back })).toEqual([])
  })
})

describe('collisions, against areas shared in a general library of polygons', () => {
  test('side by side, end to side, crossing: told exactly where footprints share wood', () => {
    const bar = brace(here(120, -80), here(120, 80), { widthMm: 10 })
    let told = 0
    for (let i = 0; i < 60; i++) {
      const angle = i * 0.21
      const [x, y, size] = [120 + (i % 7) * 6 - 18, (i % 11) * 9 - 45, 30 + (i % 5) * 12]
      const other = brace(here(x, y), here(x + size * Math.cos(angle), y + size * Math.sin(angle)), { widthMm: 7 })
      const { geometry, findings } = computed(plan, { bar, other })
      const [a, b] = geometry.bracing.placed
      const shared = sharedMm2(a!.corners, b!.corners)
      const isTold = findings.some(({ code }) => code === 'bracesCollide')
      if (shared === 0) expect(isTold, `${i}`).toBe(false)
      if (shared > 2) expect(isTold, `${i}`).toBe(true)
      if (isTold) told++
    }
    expect(told).toBeGreaterThan(15)
    expect(told).toBeLessThan(55)
  })

  test('parallel ones by how much, and twins on the centreline', () => {
    const found = computed(plan, {
      a: brace(here(100, -60), here(100, 60), { widthMm: 10 }),
      b: brace(here(107, -60), here(107, 60), { widthMm: 8, lapped: true }),
    }).findings.find(({ code }) => code === 'bracesCollide')!
    expect(found.values).toMatchObject({ brace: 1, other: 2 })
    expectWithin(found.values['byMm'], 2, 1e-9)
    expect(found.values['crossMm']).toBeUndefined()
    expect(codesOf(plan, { a: brace(here(60, 0), here(250, 0), { twin: true, lapped: true }) })).toEqual([
      'bracesCollide',
    ])
  })
})
