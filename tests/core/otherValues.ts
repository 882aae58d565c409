import {
  BACK_FORMS,
  CUTAWAY_FORMS,
  FLAT_SLOPES,
  type HalfWidthReading,
  HANDS,
  LINING_KINDS,
  OUTLINE_KINDS,
  type Plan,
  RIM_METHODS,
  SIDE_BRACE_ENDS,
  SIDE_BRACE_FORMS,
  TOP_FORMS,
} from '../../src/core/plan.ts'
import {
  BOARD_SURFACES,
  COMPENSATIONS,
  FRET_FANS,
  NECK_JOINTS,
  PIN_RUNS,
  RODS,
  STRING_HOLDS,
  TUNER_SIDES,
} from '../../src/core/neckPlan.ts'
import { type PlanField } from '../../src/core/planFields.ts'
import { FIELDS } from '../../src/record/fields.ts'
import type { FieldRange } from '../../src/record/fieldRange.ts'
import { SMALL } from '../generators/demoModels.ts'

import { braceChanges } from './bracedPlans.ts'
import { DRAWN, shrunk } from './everyForm.ts'

/** A few other values that may stand in a field: near ones, so that the plan stays a body. */
export function otherValues(field: PlanField, plan: Plan): unknown[] {
  if (field === 'outline.kind') return [...OUTLINE_KINDS]
  if (field === 'back.form') return [...BACK_FORMS]
  if (field === 'top.form') return [...TOP_FORMS]
  if (field === 'outline.pieces')
    return [plan.outline.pieces.slice(0, -1), SMALL.plan.outline.pieces, shrunk(SMALL.plan, 0.7)]
  if (field === 'rosette.rings') return [...ringChanges(plan)]
  if (field === 'bracing.braces') return braceChanges(plan)
  if (field === 'outline.drawnPath') return [DRAWN, null]
  if (field === 'board.markersAt') return [[2, 24], []]
  if (field === 'neck.boltsAtMm') return [[20], [25, 65, 80], []]
  if (field === 'strings.otherNotes') return [null, [36, 43, 48, 53, 57, 60]]
  if (field === 'strings.set') return [...stringChanges(plan)]
  if (field === 'sideBraces.atMm') return [null, [120, 300, 500]]
  const chosen = CHOICES[field]
  if (chosen !== undefined) return [...chosen]
  if (field.startsWith('outline.halfWidths.') && FIELDS[field].type === 'whole')
    return [readingsOf(plan, field).map(([x, y]) => [x, y + 1]), readingsOf(plan, field).slice(1)]
  const range: FieldRange = FIELDS[field]
  const now = field.split('.').reduce<unknown>((at, step) => (at as Record<string, unknown>)[step], plan)
  if (range.type === 'count') return [Number(now) + 1, Number(now) - 1]
  const [min, max] =
    range.type === 'angle'
      ? [range.minDeg, range.maxDeg]
      : range.type === 'length'
        ? [range.minMm, range.maxMm]
        : range.type === 'plain'
          ? [range.min, range.max]
          : [0, 0]
  const start = typeof now === 'number' ? now : (min + max) / 2
  const near = [0.9, 0.97, 1.02, 1.04, 1.3].map((part) => start * part + (start === 0 ? part : 0))
  const open = range.type === 'length' && range.open ? [null] : []
  return [...near.filter((value) => value > min && value < max), min, max, ...open]
}

const CHOICES: Readonly<Partial<Record<PlanField, readonly string[]>>> = {
  handed: HANDS,
  'outline.cutaway.form': CUTAWAY_FORMS,
  'rim.method': RIM_METHODS,
  'linings.top.kind': LINING_KINDS,
  'linings.back.kind': LINING_KINDS,
  'sideBraces.form': SIDE_BRACE_FORMS,
  'sideBraces.ends': SIDE_BRACE_ENDS,
  'top.flatSlope': FLAT_SLOPES,
  'scale.fan': FRET_FANS,
  'board.surface': BOARD_SURFACES,
  'bridge.holds': STRING_HOLDS,
  'bridge.pinRun': PIN_RUNS,
  'bridge.compensation': COMPENSATIONS,
  'neck.joint': NECK_JOINTS,
  'neck.rod': RODS,
  'head.tuners': TUNER_SIDES,
}

function readingsOf(plan: Plan, field: PlanField): readonly HalfWidthReading[] {
  const { rows, tailRows, neckRows } = plan.outline.halfWidths
  return field.endsWith('.rows') ? rows : field.endsWith('.tailRows') ? tailRows : neckRows
}

function stringChanges(plan: Plan): unknown[] {
  const { set } = plan.strings
  return [
    set.map((string, i) => ({ ...string, diameterMm: string.diameterMm * (i === 0 ? 1.1 : 1) })),
    set.map((string) => ({ ...string, note: string.note - 2 })),
    set.map((string) => ({ ...string, massGPerM: 3, coreMm: 0.4 })),
    set.slice(0, -1),
  ]
}

function ringChanges(plan: Plan): unknown[] {
  const entries = Object.entries(plan.rosette.rings)
  const each = (change: object) => Object.fromEntries(entries.map(([id, ring]) => [id, { ...ring, ...change }]))
  return [
    each({ tileCount: 31 }),
    each({ gapMm: 11 }),
    each({ join: 'closed' }),
    Object.fromEntries(entries.map(([id, ring]) => [id, { ...ring, innerRadiusMm: ring.innerRadiusMm + 0.4 }])),
    Object.fromEntries(entries.map(([id, ring]) => [id, { ...ring, outerRadiusMm: ring.outerRadiusMm + 6 }])),
  ]
}
