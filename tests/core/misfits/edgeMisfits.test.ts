import { describe, expect, test } from 'vitest'
import { compute } from '../../../src/core/compute.ts'
import type { Finding, FindingCode } from '../../../src/core/findings.ts'
import type { Plan } from '../../../src/core/plan.ts'
import type { PlanField } from '../../../src/core/planFields.ts'
import { DEMO_MODELS, STEEL_STRING } from '../../generators/demoModels.ts'
import { withFields } from '../everyForm.ts'
import { expectWithin } from '../within.ts'

const EDGE_CODES: readonly FindingCode[] = [
  'bindingsMeet',
  'bindingTooLow',
  'bindingThroughSide',
  'bindingTight',
  'purflingTooDeep',
  'wedgeThroughSide',
  'wedgeWiderThanBlock',
  'wedgeAllPurfling',
  'backStripTooDeep',
]
const edgeFindings = (plan: Plan): Finding[] => compute(plan).findings.filter(({ code }) => EDGE_CODES.includes(code))
const base: Partial<Record<PlanField, unknown>> = {
  'binding.heightMm': 6,
  'binding.thicknessMm': 1.5,
  'binding.topPurflingMm': 1.5,
  'binding.backPurflingMm': 1,
  'plates.topMm': 2.8,
  'plates.backMm': 2.5,
  'rim.sideThicknessMm': 2.2,
  'linings.top.heightMm': 15,
  'linings.back.heightMm': 15,
  'blocks.tail.thicknessMm': 22,
  'blocks.tail.widthMm': 76,
  'edges.purflingDepthMm': 1.8,
  'edges.wedgeTopMm': 18,
  'edges.wedgeBackMm': 12,
  'edges.wedgeDepthMm': 2.2,
  'edges.wedgePurflingMm': 0.6,
  'edges.backStripMm': 6,
  'edges.backStripDepthMm': 1.2,
  'bracing.stripWidthMm': 18,
}
const found = (fields: Partial<Record<PlanField, unknown>>) =>
  edgeFindings(withFields(STEEL_STRING.plan, { ...base, ...fields }))

test('nothing is said of edges that fit', () => {
  expect(found({})).toEqual([])
  for (const { plan } of DEMO_MODELS)
    for (const { code, weight } of edgeFindings(plan)) expect([code, weight]).toEqual([code, 'care'])
})

test.each<[FindingCode, Finding['weight'], Partial<Record<PlanField, unknown>>, Record<string, number>]>([
  // The rim is 90 deep at most at the neck; its shallowest station is under 106 and over 85.
  ['bindingTooLow', 'care', { 'binding.heightMm': 2.4 }, { heightMm: 2.4, plateMm: 2.8 }],
  ['bindingThroughSide', 'care', { 'binding.thicknessMm': 2.5 }, { throughMm: 0.3 }],
  ['bindingThroughSide', 'care', { 'binding.thicknessMm': 2.2 }, { throughMm: 0 }],
  // 6 less a plate of 2.8 and a lining of 2, or a back of 2.5 and a lining of 15.
  [
    'bindingThroughSide',
    'cannot',
    { 'binding.thicknessMm': 2.5, 'linings.top.heightMm': 2 },
    { throughMm: 0.3, belowMm: 1.2 },
  ],
  ['purflingTooDeep', 'care', { 'edges.purflingDepthMm': 2.4, 'plates.backMm': 4 }, { plate: 0, leftMm: 0.4 }],
  ['purflingTooDeep', 'care', { 'edges.purflingDepthMm': 2.2 }, { plate: 1, leftMm: 0.3 }],
  ['purflingTooDeep', 'cannot', { 'edges.purflingDepthMm': 3, 'plates.topMm': 5 }, { plate: 1, leftMm: -0.5 }],
  ['wedgeThroughSide', 'care', { 'edges.wedgeDepthMm': 14.2 }, { leftMm: 10, intoMm: 12 }],
  [
    'wedgeThroughSide',
    'cannot',
    { 'edges.wedgeDepthMm': 14.2, 'blocks.tail.thicknessMm': 10 },
    { leftMm: -2, intoMm: 12 },
  ],
  ['wedgeWiderThanBlock', 'care', { 'edges.wedgeBackMm': 79 }, { byMm: 3 }],
  [
    'wedgeAllPurfling',
    'cannot',
    { 'edges.wedgeTopMm': 4, 'edges.wedgeBackMm': 3, 'edges.wedgePurflingMm': 2 },
    { purflingMm: 2 },
  ],
  ['backStripTooDeep', 'care', { 'edges.backStripDepthMm': 1.7 }, { leftMm: 0.8, isHeld: 1 }],
  ['backStripTooDeep', 'care', { 'edges.backStripDepthMm': 2.5 }, { leftMm: 0, isHeld: 1 }],
  [
    'backStripTooDeep',
    'cannot',
    { 'edges.backStripDepthMm': 3, 'bracing.stripWidthMm': 5 },
    { leftMm: -0.5, isHeld: 0 },
  ],
])('%s, %s: alone, with its values', (code, weight, fields, values) => {
  const findings = found(fields)
  expect(findings.map((finding) => [finding.code, finding.weight])).toEqual([[code, weight]])
  expect(Object.keys(findings[0]!.values).sort()).toEqual(Object.keys(values).sort())
  for (const [name, value] of Object.entries(values)) expectWithin(findings[0]!.values[name], value, 1e-9, name)
})

test('just inside every limit nothing is said', () => {
  expect(
    found({
      'binding.heightMm': 2.8,
      'binding.thicknessMm': 2.19,
      'edges.purflingDepthMm': 2,
      'edges.wedgeDepthMm': 13.2,
      'edges.wedgeTopMm': 76,
      'edges.backStripDepthMm': 1.5,
    }).filter(({ code }) => code !== 'bindingTight'),
  ).toEqual([])
})

test('bindings that meet: where the side is shallowest', () => {
  const plan = {
    'rim.depthAtTailMm': 22,
    'rim.depthAtNeckMm': 20,
    'binding.heightMm': 15,
    'top.form': 'flat',
    'back.form': 'flat',
  }
  const finding = found(plan).find(({ code }) => code === 'bindingsMeet')!
  expect(finding.weight).toBe('cannot')
  // 20 + 2.8 + 2.5 - 30
  expectWithin(finding.values['byMm'], 4.7, 1e-6)
  expect(found({ ...plan, 'binding.heightMm': 12.6 }).some(({ code }) => code === 'bindingsMeet')).toBe(false)
})

describe('a horn round which the binding goes', () => {
  const horn = (hornRadiusMm: number, thicknessMm: number) =>
    found({
      'outline.cutaway.form': 'rounded',
      'outline.cutaway.hornRadiusMm': hornRadiusMm,
      'binding.thicknessMm': thicknessMm,
    }).find(({ code }) => code === 'bindingTight')

  test('25 times its thickness is easy, under 15 hard, on the inner face', () => {
    expect(horn(36, 1.38)).toBe(undefined)
    const tight = horn(36, 1.45)!
    expect([tight.weight, tight.values['isHard']]).toEqual(['care', 0])
    expectWithin(tight.values['radiusMm'], 36 - 1.45, 1e-9)
    expectWithin(tight.values['times'], (36 - 1.45) / 1.45, 1e-9)
    expect(horn(20, 1.26)!.values['isHard']).toBe(1)
    expect(horn(20, 1.24)!.values['isHard']).toBe(0)
  })
})

test('without binding, purfling, wedge and strip there is nothing to say', () => {
  expect(
    found({
      'binding.thicknessMm': 0,
      'binding.heightMm': 0,
      'binding.topPurflingMm': 0,
      'binding.backPurflingMm': 0,
      'edges.purflingDepthMm': 6,
      'edges.wedgeTopMm': 0,
      'edges.wedgeBackMm': 0,
      'edges.wedgeDepthMm': 20,
      'edges.backStripMm': 0,
      'edges.backStripDepthMm': 6,
    }),
  ).toEqual([])
})
