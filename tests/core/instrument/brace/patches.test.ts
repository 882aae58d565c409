import { describe, expect, test } from 'vitest'
import { STEEL_STRING } from '../../../generators/demoModels.ts'
import { withField } from '../../../generators/plans.ts'
import { withFields } from '../../everyForm.ts'
import { expectWithin } from '../../within.ts'
import { beyond, brace, codesOf, computed, here } from './braceSamples.ts'

const plan = withFields(STEEL_STRING.plan, { 'bracing.stripWidthMm': 16, 'bracing.stripThicknessMm': 2.4 })
const { sideThicknessMm } = plan.rim
const tailMm = sideThicknessMm + plan.blocks.tail.thicknessMm
const neckMm = 496 - sideThicknessMm - plan.blocks.neck.thicknessMm

describe('the strip over the back’s joint', () => {
  const back = { plate: 'back' } as const

  test('runs from block to block between braces: square ones take their width', () => {
    const { jointStrip, patches } = computed(plan, {
      a: brace(beyond(120, -50), beyond(120, 50), { ...back, widthMm: 18 }),
      b: brace(beyond(300, -50), beyond(300, 50), { ...back, widthMm: 8 }),
      top: brace(beyond(200, -50), beyond(200, 50), { widthMm: 30 }),
    }).numbers
    const shouldBe = [
      [tailMm, 111],
      [129, 296],
      [304, neckMm],
    ]
    expect(jointStrip).toHaveLength(3)
    jointStrip.forEach((row, i) => {
      expectWithin(row.fromMm, shouldBe[i]![0]!, 1e-9)
      expectWithin(row.toMm, shouldBe[i]![1]!, 1e-9)
      expectWithin(row.lengthMm, shouldBe[i]![1]! - shouldBe[i]![0]!, 1e-9)
    })
    expectWithin(patches.strip.lengthMm, neckMm - tailMm - 26, 1e-9)
    expect(patches.strip).toMatchObject({ widthMm: 16, thicknessMm: 2.4 })
  })

  test('one aslant takes w / sin a + ws / tan a', () => {
    const angle = Math.atan2(120, 50)
    const { jointStrip } = computed(plan, {
      a: brace(beyond(200, -60), beyond(250, 60), { ...back, widthMm: 12 }),
    }).numbers
    expectWithin(jointStrip[1]!.fromMm - jointStrip[0]!.toMm, 12 / Math.sin(angle) + 16 / Math.tan(angle), 1e-9)
  })

  test('braces beside it, over each other or under a block leave it whole pieces only', () => {
    const { jointStrip } = computed(plan, {
      beside: brace(here(200, 30), here(260, 80), back),
      one: brace(beyond(300, -50), beyond(300, 50), { ...back, widthMm: 20 }),
      two: brace(beyond(305, -50), beyond(305, 50), { ...back, widthMm: 20 }),
      block: brace(beyond(20, -50), beyond(20, 50), { ...back, widthMm: 20 }),
    }).numbers
    expect(jointStrip).toHaveLength(2)
    const stops = [30, 290, 315, neckMm]
    jointStrip.flatMap(({ fromMm, toMm }) => [fromMm, toMm]).forEach((mm, i) => expectWithin(mm, stops[i]!, 1e-9))
  })

  test('none where it has no width', () => {
    const { jointStrip, patches } = computed(withField(plan, 'bracing.stripWidthMm', 0), {}).numbers
    expect(jointStrip).toEqual([])
    expect(patches.strip).toEqual({ widthMm: 'none', thicknessMm: 'none', lengthMm: 'none' })
  })
})

test('the ring round the hole begins behind its edge', () => {
  const ringed = withFields(plan, { 'bracing.holeRingMm': 18, 'bracing.holeRingSetBackMm': 3 })
  expect(computed(ringed, {}).numbers.patches.holeRing).toMatchObject({ innerRadiusMm: 53, outerRadiusMm: 71 })
  const none = computed(withField(plan, 'bracing.holeRingMm', 0), {}).numbers.patches.holeRing
  expect(none).toEqual({ innerRadiusMm: 'none', outerRadiusMm: 'none', thicknessMm: 'none' })
})

describe('the plate under the bridge', () => {
  const plated = withFields(plan, {
    'bridge.plateFromMm': 160,
    'bridge.plateToMm': 220,
    'bridge.plateTailWidthMm': 180,
    'bridge.plateNeckWidthMm': 120,
  })

  test('its width runs straight from edge to edge', () => {
    const { bridgePlate, bridge, pins } = computed(plated, {}).numbers
    const halfAt = (x: number) => 90 - (x - 160) / 2
    const middle = (bridge.frontEdgeAtMm + bridge.backEdgeAtMm) / 2
    expect(bridgePlate).toMatchObject({ lengthMm: 60, tailWidthMm: 180, neckWidthMm: 120, toBraceMm: 'none' })
    expectWithin(bridgePlate.wingsBeyondMm, bridge.lengthMm / 2 - halfAt(middle), 1e-9)
    expectWithin(bridgePlate.besidePinsMm, Math.min(...pins.map((p) => halfAt(p.atMm) - Math.abs(p.acrossMm))), 1e-9)
  })

  test('too narrow under the pins is told, by how much', () => {
    const beside = (mm: number) =>
      computed(withFields(plated, { 'bridge.plateTailWidthMm': mm, 'bridge.plateNeckWidthMm': mm }), {}).findings.find(
        ({ code }) => code === 'plateMissesFeet',
      )
    // Pins spread over 55: 27.5 to the outer ones, and 8 more are wanted.
    expect(beside(72)).toBeUndefined()
    expectWithin(beside(66)?.values['byMm'], 5.5, 1e-9)
    expect(beside(66)?.weight).toBe('care')
    expect(beside(50)?.weight).toBe('cannot')
  })

  test('clear of a brace, or over it', () => {
    const bar = (x: number) => ({ a: brace(here(x, -30), here(x, 30), { widthMm: 8 }) })
    expectWithin(computed(plated, bar(235)).numbers.bridgePlate.toBraceMm, 11, 1e-9)
    expect(codesOf(plated, bar(235))).toEqual([])
    expectWithin(computed(plated, bar(221)).numbers.bridgePlate.toBraceMm, -3, 1e-9)
    expect(codesOf(plated, bar(221))).toEqual(['plateOverBrace'])
    expect(codesOf(plated, { a: { ...bar(221).a, kind: 'fan' } })).toEqual([])
    expect(codesOf(withField(plated, 'bridge.plateMm', 0), bar(221))).toEqual([])
  })
})
