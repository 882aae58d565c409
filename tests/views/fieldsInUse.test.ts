import { describe, expect, it } from 'vitest'
import type { Plan } from '../../src/core/plan.ts'
import {
  CUTAWAY_FIELDS,
  HALF_WIDTH_FIELDS,
  KEY_WIDTH_FIELDS,
  PLAN_FIELDS,
  type PlanField,
} from '../../src/core/planFields.ts'
import { isInUse } from '../../src/views/sheets/fieldsInUse.ts'
import { sheetOfField } from '../../src/views/sheets/sheetOfField.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'

const { plan } = STEEL_STRING
const inUse = (changed: Plan, fields: readonly PlanField[]) => fields.filter((field) => isInUse(changed, field))
const drawnBy = (kind: Plan['outline']['kind']): Plan => ({ ...plan, outline: { ...plan.outline, kind } })
const cutBy = (form: Plan['outline']['cutaway']['form']): Plan => ({
  ...plan,
  outline: { ...plan.outline, cutaway: { ...plan.outline.cutaway, form } },
})
const bracedBy = (more: Partial<Plan['sideBraces']>): Plan => ({ ...plan, sideBraces: { ...plan.sideBraces, ...more } })
const BRACES = PLAN_FIELDS.filter((field) => field.startsWith('sideBraces.'))

describe('fields that count', () => {
  it.each([
    ['compassArcs', ['outline.pieces']],
    ['keyWidths', KEY_WIDTH_FIELDS],
    ['halfWidths', HALF_WIDTH_FIELDS],
    ['drawnPath', ['outline.drawnPath']],
  ] as const)('of an outline by %s are its own alone', (kind, own) => {
    const all: readonly PlanField[] = ['outline.pieces', ...KEY_WIDTH_FIELDS, ...HALF_WIDTH_FIELDS, 'outline.drawnPath']
    expect(inUse(drawnBy(kind), all)).toEqual(own)
  })

  it('of a cutaway are those of its form', () => {
    expect(inUse(cutBy('none'), CUTAWAY_FIELDS)).toEqual(['outline.cutaway.form'])
    expect(inUse(cutBy('rounded'), CUTAWAY_FIELDS)).toEqual(CUTAWAY_FIELDS)
    expect(inUse(cutBy('pointed'), CUTAWAY_FIELDS)).toEqual(
      CUTAWAY_FIELDS.filter((field) => field !== 'outline.cutaway.hornRadiusMm'),
    )
  })

  it('of side braces are none without braces, and no spacing where the places are entered', () => {
    expect(inUse(bracedBy({ form: 'none' }), BRACES)).toEqual(['sideBraces.form'])
    expect(inUse(bracedBy({ form: 'wood', atMm: null }), BRACES)).toEqual(BRACES)
    expect(inUse(bracedBy({ form: 'cloth', atMm: [100] }), BRACES)).toEqual(
      BRACES.filter((field) => field !== 'sideBraces.spacingMm'),
    )
  })
})

it('everything inside the rim is changed on one sheet, its edges on another, the hand where the outline is', () => {
  const parts = ['linings', 'sideBraces', 'caul']
  const inside = PLAN_FIELDS.filter((field) => parts.includes(field.split('.')[0] ?? ''))
  expect(inside.length).toBeGreaterThan(15)
  expect(new Set(inside.map(sheetOfField))).toEqual(new Set(['linings']))
  expect(sheetOfField('binding.heightMm')).toBe('edges')
  expect(sheetOfField('handed')).toBe('outline')
})

describe('fields of neck and bridge that count', () => {
  const NECK = PLAN_FIELDS.filter((field) => /^(top|scale|board|frets|strings|setup|bridge|neck|head)\./.test(field))
  const missing = (changed: Plan) => NECK.filter((field) => !isInUse(changed, field))

  it.each<[string, Plan, readonly PlanField[]]>([
    ['a fan', { ...plan, scale: { ...plan.scale, fan: 'square' } }, ['scale.trebleLengthMm', 'scale.squareFret']],
    ['a curve', { ...plan, board: { ...plan.board, surface: 'flat' } }, ['board.radiusMm', 'board.endRadiusMm']],
    ['a second radius', { ...plan, board: { ...plan.board, surface: 'single' } }, ['board.endRadiusMm']],
    ['pairs', plan, ['strings.pairGapMm']],
    ['pins', { ...plan, bridge: { ...plan.bridge, holds: 'tie' } }, ['bridge.pinSpreadMm']],
    ['a block to tie to', { ...plan, bridge: { ...plan.bridge, holds: 'pins' } }, ['bridge.tieHoleOverTopMm']],
    ['a plate', { ...plan, bridge: { ...plan.bridge, plateMm: 0 } }, ['bridge.plateFromMm', 'bridge.plateToMm']],
    [
      'a compensation of one’s own',
      { ...plan, bridge: { ...plan.bridge, compensation: 'estimated' } },
      ['bridge.compensationBassMm', 'bridge.compensationTrebleMm'],
    ],
    [
      'a joint in the block',
      { ...plan, neck: { ...plan.neck, joint: 'sidesInHeel' } },
      ['neck.tenonWidthMm', 'neck.tenonDepthMm', 'neck.boltsAtMm', 'neck.boltMm'],
    ],
    ['bolts', { ...plan, neck: { ...plan.neck, joint: 'dovetail' } }, ['neck.boltsAtMm', 'neck.boltMm']],
    [
      'a rod',
      { ...plan, neck: { ...plan.neck, rod: 'none' } },
      ['neck.rodLengthMm', 'neck.rodWidthMm', 'neck.rodDepthMm', 'neck.rodFromNutMm'],
    ],
    ['a fall of one’s own', { ...plan, top: { ...plan.top, flatSlope: 'neckSet' } }, ['top.flatSlopeDeg']],
  ])('leave out what belongs to %s where there is none', (_, changed, fields) => {
    expect(missing(changed)).toEqual(expect.arrayContaining([...fields]))
  })

  it('are all of them where every form asks for its own', () => {
    const full: Plan = {
      ...plan,
      top: { ...plan.top, flatSlope: 'entered' },
      scale: { ...plan.scale, fan: 'fanned' },
      board: { ...plan.board, surface: 'compound' },
      strings: { ...plan.strings, set: plan.strings.set.map((string) => ({ ...string, pairedWithNext: true })) },
    }
    expect(missing(full)).toEqual(['top.riseAtSaddleMm', 'bridge.tieHoleOverTopMm'])
  })
})
