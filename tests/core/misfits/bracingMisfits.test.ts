import { describe, expect, test } from 'vitest'
import type { BracePlan } from '../../../src/core/boxPlan.ts'
import type { FindingCode } from '../../../src/core/findings.ts'
import type { Plan } from '../../../src/core/plan.ts'
import { STEEL_STRING } from '../../generators/demoModels.ts'
import { withFields } from '../everyForm.ts'
import { beyond, brace, computed, here } from '../instrument/brace/braceSamples.ts'
import { expectWithin } from '../within.ts'

// L 496, sides 2.2, blocks of 22 and 36: they end at 24.2 and 457.8. Hole of 50 at 356.
const plan = withFields(STEEL_STRING.plan, { 'bridge.plateMm': 0, 'neck.rod': 'none' })
const find = (of: Plan, braces: Record<string, BracePlan>, code: FindingCode) =>
  computed(of, braces).findings.find((finding) => finding.code === code)
const across = (x: number, values: Partial<BracePlan> = {}) => brace(beyond(x, -40), beyond(x, 40), values)

describe('the soundhole', () => {
  test('a brace that just clears it, and one that reaches over its edge', () => {
    expect(find(plan, { a: across(302) }, 'braceThroughHole')).toBeUndefined()
    const found = find(plan, { a: across(302.5), b: across(309) }, 'braceThroughHole')
    expect(found?.values['brace']).toBe(1)
    expectWithin(found?.values['byMm'], 0.5, 1e-9)
    expectWithin(find(plan, { a: across(309) }, 'braceThroughHole')?.values['byMm'], 7, 1e-9)
  })

  test('aslant it is the distance of its flank from the middle that counts', () => {
    // Through (300, 0) at 45 degrees: 56 / sqrt 2 = 39.6 from the middle, less half the width of 8.
    const found = find(plan, { a: brace(here(250, -50), here(350, 50)) }, 'braceThroughHole')
    expectWithin(found?.values['byMm'], 50 - (56 / Math.SQRT2 - 4), 1e-9)
  })

  test('a brace of the back may pass under it', () => {
    expect(find(plan, { a: across(356, { plate: 'back' }) }, 'braceThroughHole')).toBeUndefined()
  })
})

describe('the ring round the hole', () => {
  // Set back 2 and 15 wide: from 52 to 67 from the middle.
  const ringed = withFields(plan, { 'bracing.holeRingMm': 15, 'bracing.holeRingSetBackMm': 2 })

  test('a brace over a part of its width, by how much, with both radii; the worst of two is named', () => {
    // Flanks at 304 and 296: 52 and 60 from the middle, so 7 and 15 of the ring's width.
    expect(find(ringed, { a: across(285) }, 'braceOverHoleRing')).toBeUndefined()
    const found = find(ringed, { a: across(287), b: across(292) }, 'braceOverHoleRing')
    expect(found?.values).toMatchObject({ brace: 2, count: 2, innerMm: 52, outerMm: 67 })
    expectWithin(found?.values['byMm'], 292 + 4 - (356 - 67), 1e-9)
  })

  test('one that parts it from edge to edge, one of the back, and no ring', () => {
    expect(find(ringed, { a: across(302) }, 'braceOverHoleRing')).toBeUndefined()
    expect(find(ringed, { a: across(292, { plate: 'back' }) }, 'braceOverHoleRing')).toBeUndefined()
    expect(
      find(withFields(ringed, { 'bracing.holeRingMm': 0 }), { a: across(292) }, 'braceOverHoleRing'),
    ).toBeUndefined()
  })
})

describe('the blocks', () => {
  test.each([
    ['tail', 29, undefined],
    ['tail', 27, 1.2],
    ['neck', 453, undefined],
    ['neck', 455, 1.2],
  ] as const)('%s, at %d', (name, x, byMm) => {
    const found = find(plan, { a: brace(here(x, -20), here(x, 20), { plate: 'back' }) }, 'braceUnderBlock')
    if (byMm === undefined) expect(found).toBeUndefined()
    else {
      expect(found?.values).toMatchObject({ brace: 1, end: name === 'tail' ? 0 : 1 })
      expectWithin(found?.values['byMm'], byMm, 1e-9)
      expect(found?.fields).toContain(`blocks.${name}.thicknessMm`)
    }
  })

  test('beside a block there is room', () => {
    expect(find(plan, { a: brace(here(470, 60), here(470, 75)) }, 'braceUnderBlock')).toBeUndefined()
  })
})

test('a brace taller than the box is deep', () => {
  const shallow = withFields(plan, {
    'rim.depthAtTailMm': 40,
    'rim.depthAtNeckMm': 40,
    'top.form': 'flat',
    'back.form': 'flat',
  })
  expect(find(shallow, { a: across(200, { heightMm: 39.9 }) }, 'braceTooTallInside')).toBeUndefined()
  const found = find(shallow, { a: across(200, { heightMm: 41 }) }, 'braceTooTallInside')
  expectWithin(found?.values['heightMm'], 41, 1e-9)
  expectWithin(found?.values['insideMm'], 40, 1e-9)
})

describe('the spanner on a bolt', () => {
  // Bolts at 25 and 65 under the top's face, 6 thick; the plate is 2.8.
  const tall = (x: number, heightMm: number) => ({ a: brace(here(x, -60), here(x, 60), { heightMm }) })

  test('a brace close to the block that comes down to the bolt', () => {
    expect(find(plan, tall(448, 17), 'rodOrBoltMeetsBrace')?.values).toEqual({ brace: 1, which: 1 })
    expect(find(plan, tall(448, 16), 'rodOrBoltMeetsBrace')).toBeUndefined()
    expect(find(plan, tall(438, 17), 'rodOrBoltMeetsBrace')).toBeUndefined()
    expect(
      find(plan, { a: brace(here(448, 15), here(448, 60), { heightMm: 20 }) }, 'rodOrBoltMeetsBrace'),
    ).toBeUndefined()
  })

  test('no bolts, no spanner', () => {
    const glued = withFields(plan, { 'neck.joint': 'dovetail' })
    expect(find(glued, tall(448, 30), 'rodOrBoltMeetsBrace')).toBeUndefined()
  })

  test('one of the back that comes up to the lowest', () => {
    const depth = computed(plan, {}).numbers.neck.heelDepthMm
    const low = withFields(plan, { 'neck.boltsAtMm': [depth - 30] })
    const back = (heightMm: number) => ({ a: brace(here(448, -60), here(448, 60), { plate: 'back', heightMm }) })
    // 30 over the outer face: the plate's 2.5, the brace, and 6 for the spanner.
    expect(find(low, back(21), 'rodOrBoltMeetsBrace')).toBeUndefined()
    expect(find(low, back(22), 'rodOrBoltMeetsBrace')?.values['which']).toBe(1)
  })
})

test('a rod that reaches into the box, and the key to its nut', () => {
  const base = withFields(plan, { 'neck.rod': 'fitted', 'neck.boltsAtMm': [] })
  const reach = (byMm: number) => {
    const ends = computed(base, {}).numbers.neck.rodEndsBeforeJointMm as number
    return withFields(base, { 'neck.rodLengthMm': base.neck.rodLengthMm + ends + byMm })
  }
  const bar = { a: brace(here(440, -60), here(440, 60)) }
  // The block's face lies 38.2 from the joint; the brace's own flank at 52.
  expect(find(reach(37), bar, 'rodOrBoltMeetsBrace')).toBeUndefined()
  expect(find(reach(39), bar, 'rodOrBoltMeetsBrace')?.values).toEqual({ brace: 1, which: 0 })
  expect(find(reach(39), { a: { ...bar.a, plate: 'back' } }, 'rodOrBoltMeetsBrace')).toBeUndefined()
  expect(find(reach(39), { a: brace(here(430, -60), here(430, 60)) }, 'rodOrBoltMeetsBrace')).toBeUndefined()
})

test('every finding about a brace names the field it stands in and the number of the brace', () => {
  const { findings } = computed(plan, {
    a: brace(here(100, 0), here(100, 300), { heightMm: 200 }),
    b: across(356),
    c: brace(here(20, 0), here(300, 3)),
  })
  const about = findings.filter(({ values }) => values['brace'] !== undefined)
  expect(new Set(about.map(({ code }) => code)).size).toBeGreaterThan(3)
  for (const { fields, values } of about) {
    expect(fields).toContain('bracing.braces')
    expect([1, 2, 3]).toContain(values['brace'])
  }
})
