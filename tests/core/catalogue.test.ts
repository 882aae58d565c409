import { describe, expect, test } from 'vitest'
import { aboutNumber, NUMBER_KEYS, type NumberKey } from '../../src/core/catalogue.ts'
import { type Computed, compute } from '../../src/core/compute.ts'
import type { Figure } from '../../src/core/figure.ts'
import { readNumbers } from '../../src/core/numbers.ts'
import {
  BACK_FORMS,
  CUTAWAY_FORMS,
  type DrawnPathPlan,
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
import { PLAN_FIELDS, type PlanField } from '../../src/core/planFields.ts'
import { FIELDS, type FieldRange } from '../../src/record/fields.ts'
import { SMALL, STEEL_STRING } from '../generators/demoModels.ts'
import { BY_KEY_WIDTHS as KEYED, NYLON_STRING } from '../generators/demoNylon.ts'
import { withField } from '../generators/plans.ts'

/** Plans that between them use every form and every field. Those drawn by key widths come second: only their outline is moved, since it takes its time. */
const FORMS = TOP_FORMS.flatMap((top) => BACK_FORMS.map((back) => ({ 'top.form': top, 'back.form': back })))
const NO_TAPER = { 'rim.depthAtTailMm': 96, 'rim.depthAtNeckMm': 96 }
/** Deeper at the neck, so that the deepest places lie under the flat of the upper bout. */
const DEEP_NECK = { 'rim.depthAtTailMm': 80, 'rim.depthAtNeckMm': 125, 'top.flatSlopeDeg': 0.2 }
const PLANED = { 'top.form': 'flatUpperBout', 'top.flatFromMm': 380, 'top.flatSlopeDeg': 1 }
/** A flat that begins inside a block: its two faces then stand under different surfaces. */
const FLAT_OVER_TAIL = { ...PLANED, 'top.flatFromMm': 60, 'blocks.tail.thicknessMm': 80 }
const FLAT_OVER_NECK = { ...PLANED, 'top.flatFromMm': 465, 'blocks.neck.thicknessMm': 60 }
/** Blocks wider than the ends of the body: their contours end where the body does. */
const WIDE_BLOCKS = { 'blocks.tail.widthMm': 200, 'blocks.neck.widthMm': 200 }
/** Blocks whose thickness, not their width, ends what they cover of the side; braces stand evenly between them. */
const THIN_BLOCKS = {
  ...WIDE_BLOCKS,
  'blocks.tail.thicknessMm': 5,
  'blocks.neck.thicknessMm': 12,
  'sideBraces.atMm': null,
}

const BY_ARCS: readonly Plan[] = [
  ...FORMS.map((forms) => withFields(STEEL_STRING.plan, forms)),
  ...FORMS.map((forms) => withFields(STEEL_STRING.plan, { ...forms, ...NO_TAPER })),
  ...[DEEP_NECK, FLAT_OVER_TAIL, FLAT_OVER_NECK].map((fields) => withFields(STEEL_STRING.plan, fields)),
  withFields(SMALL.plan, { ...WIDE_BLOCKS, 'outline.lengthMm': null }),
  withFields(SMALL.plan, { ...WIDE_BLOCKS, 'outline.lengthMm': 181.2, 'outline.pieces': shrunk(SMALL.plan, 0.6) }),
  withFields(KEYED, { 'outline.kind': 'compassArcs', 'outline.lengthMm': 496 }),
  // A chain with open values, which the body length then decides; and one that gives the body length.
  withField(STEEL_STRING.plan, 'outline.pieces', withOpen(STEEL_STRING.plan, ['sweepDeg'])),
  withField(STEEL_STRING.plan, 'outline.pieces', withOpen(STEEL_STRING.plan, ['radiusMm', 'sweepDeg'])),
  withField(STEEL_STRING.plan, 'outline.lengthMm', null),
  withFields(STEEL_STRING.plan, THIN_BLOCKS),
  withFields(STEEL_STRING.plan, { 'outline.lengthMm': null, 'top.flatFromMm': 600 }),
]
const TINY_WIDTHS = {
  'outline.lengthMm': 200,
  'outline.keyWidths.lowerBoutMm': 150,
  'outline.keyWidths.lowerBoutAtMm': 44,
  'outline.keyWidths.waistMm': 97,
  'outline.keyWidths.waistAtMm': 117,
  'outline.keyWidths.upperBoutMm': 114,
  'outline.keyWidths.upperBoutAtMm': 165,
}
const ROUND_NECK = { 'outline.keyWidths.neckFlatMm': 0, 'outline.keyWidths.neckRadiusMm': 300 }
const BY_KEY_WIDTHS: readonly Plan[] = [
  KEYED,
  withFields(KEYED, PLANED),
  withFields(KEYED, { ...PLANED, ...NO_TAPER, ...ROUND_NECK }),
  withFields(KEYED, { ...PLANED, ...DEEP_NECK, ...ROUND_NECK }),
  withFields(KEYED, { ...FLAT_OVER_TAIL, ...ROUND_NECK }),
  withFields(KEYED, { ...FLAT_OVER_NECK, ...ROUND_NECK }),
  withFields(KEYED, { 'top.form': 'sphere', 'back.form': 'across', ...NO_TAPER, ...ROUND_NECK }),
  withFields(KEYED, { ...TINY_WIDTHS, ...WIDE_BLOCKS, ...ROUND_NECK }),
  // Where the round step of the stations changes, and where the deepest place jumps from the dome to the flat: from either side.
  ...onBothSides(
    withFields(KEYED, ROUND_NECK),
    'outline.lengthMm',
    [470, 540],
    ({ numbers }) => numbers.body.halfLengthMm < 760,
  ),
  ...onBothSides(
    withFields(KEYED, { ...PLANED, ...DEEP_NECK, ...ROUND_NECK }),
    'rim.depthAtNeckMm',
    [85, 125],
    ({ numbers }) => numbers.sides.deepestInsideAtMm < PLANED['top.flatFromMm'],
  ),
]

/** Cutaways of both forms on it, with a flat of the upper bout, an arched back and no taper among them. */
const CUT = { 'outline.cutaway.form': 'rounded' }
const POINTED = { 'outline.cutaway.form': 'pointed' }
const BY_CUTAWAY: readonly Plan[] = [
  withFields(STEEL_STRING.plan, { ...CUT, 'back.form': 'flat' }),
  ...[PLANED, NO_TAPER, DEEP_NECK].map((fields) => withFields(STEEL_STRING.plan, { ...fields, ...POINTED })),
  withFields(STEEL_STRING.plan, { ...POINTED, 'top.form': 'flatRim', 'sideBraces.atMm': null }),
  withFields(STEEL_STRING.plan, { ...POINTED, 'top.form': 'sphere', 'back.form': 'across' }),
  withFields(STEEL_STRING.plan, { ...CUT, 'sideBraces.atMm': null, 'blocks.neck.widthMm': 40 }),
  withFields(SMALL.plan, { ...CUT, 'sideBraces.form': 'wood', 'outline.cutaway.hornRadiusMm': 8 }),
  withFields(SMALL.plan, { ...POINTED, 'sideBraces.form': 'cloth' }),
  ...[CUT, POINTED].map((form) => withFields(STEEL_STRING.plan, { ...form, ...THIN_BLOCKS })),
  withFields(STEEL_STRING.plan, { ...POINTED, ...FLAT_OVER_TAIL, 'blocks.neck.thicknessMm': 120 }),
  withFields(STEEL_STRING.plan, { ...POINTED, ...PLANED, 'top.flatFromMm': 280 }),
  withFields(KEYED, { ...CUT, ...THIN_BLOCKS }),
]
const BY_READINGS: readonly Plan[] = [
  NYLON_STRING.plan,
  withFields(NYLON_STRING.plan, { ...PLANED, ...POINTED }),
  withFields(NYLON_STRING.plan, { 'outline.halfWidths.neckFlatMm': 0, 'outline.halfWidths.neckRadiusMm': 200 }),
]
const DRAWN: DrawnPathPlan = {
  bass: { start: { x: 0, y: 0 }, strokes: [{ kind: 'arc', to: { x: 400, y: 0 }, bulge: -1 }] },
  treble: null,
  readToMm: 0.2,
  fileName: 'round.svg',
}

function withFields(plan: Plan, fields: Partial<Record<PlanField, unknown>>): Plan {
  return Object.entries(fields).reduce((done, [field, value]) => withField(done, field as PlanField, value), plan)
}

/** Three values of the chain left open: of one arc the radius, where that is asked, and sweeps. */
function withOpen(plan: Plan, what: readonly ('radiusMm' | 'sweepDeg')[]) {
  const [radius, ...sweeps] = what.includes('radiusMm') ? [4, 2, 7] : [-1, 2, 4, 7]
  return plan.outline.pieces.map((piece, i) => {
    if (piece.kind === 'straight') return piece
    if (i === radius) return { ...piece, radiusMm: null }
    return sweeps.includes(i) ? { ...piece, sweepDeg: null } : piece
  })
}

/** Two plans that differ by next to nothing in one field, with something else than that between them. */
function onBothSides(
  plan: Plan,
  field: PlanField,
  [from, to]: [number, number],
  isBefore: (computed: Computed) => boolean,
): Plan[] {
  let [low, high] = [from, to]
  for (let i = 0; i < 24; i++) {
    const middle = (low + high) / 2
    if (isBefore(compute(withField(plan, field, middle)))) low = middle
    else high = middle
  }
  return [withField(plan, field, low), withField(plan, field, high)]
}

function shrunk(plan: Plan, factor: number) {
  return plan.outline.pieces.map((piece) =>
    piece.kind === 'straight'
      ? { ...piece, lengthMm: piece.lengthMm! * factor }
      : { ...piece, radiusMm: piece.radiusMm! * factor },
  )
}

/** A few other values that may stand in a field: near ones, so that the plan stays a body. */
function otherValues(field: PlanField, plan: Plan): unknown[] {
  if (field === 'outline.kind') return [...OUTLINE_KINDS]
  if (field === 'back.form') return [...BACK_FORMS]
  if (field === 'top.form') return [...TOP_FORMS]
  if (field === 'outline.pieces')
    return [plan.outline.pieces.slice(0, -1), SMALL.plan.outline.pieces, shrunk(SMALL.plan, 0.7)]
  if (field === 'rosette.rings') return [...ringChanges(plan)]
  if (field === 'outline.drawnPath') return [DRAWN, null]
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
}

function readingsOf(plan: Plan, field: PlanField): readonly HalfWidthReading[] {
  const { rows, tailRows, neckRows } = plan.outline.halfWidths
  return field.endsWith('.rows') ? rows : field.endsWith('.tailRows') ? tailRows : neckRows
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

const moved = new Map<NumberKey, Set<PlanField>>(NUMBER_KEYS.map((key) => [key, new Set()]))
function moveFields(base: Plan, fields: readonly PlanField[], valuesOf: (field: PlanField) => readonly unknown[]) {
  const before = compute(base).numbers
  for (const field of fields) {
    for (const value of valuesOf(field)) {
      const after = compute(withField(base, field, value)).numbers
      for (const key of NUMBER_KEYS)
        if (!moved.get(key)!.has(field) && differ(readNumbers(before, key), readNumbers(after, key)))
          moved.get(key)!.add(field)
    }
  }
}
for (const base of BY_ARCS) moveFields(base, PLAN_FIELDS, (field) => otherValues(field, base))
const WIDTH_FIELDS = PLAN_FIELDS.filter(
  (field) => field.startsWith('outline.keyWidths.') || field === 'outline.lengthMm',
)
for (const base of BY_KEY_WIDTHS) moveFields(base, WIDTH_FIELDS, (field) => otherValues(field, base).slice(0, 3))

for (const base of BY_CUTAWAY) moveFields(base, PLAN_FIELDS, (field) => otherValues(field, base).slice(0, 4))
// A path that stands in the plan, and other values of each of its fields.
const drawn = withFields(STEEL_STRING.plan, { 'outline.kind': 'drawnPath', 'outline.drawnPath': DRAWN })
const cutDrawn = withField(drawn, 'outline.cutaway.form', 'pointed')
for (const base of [drawn, cutDrawn, withFields(cutDrawn, PLANED)])
  moveFields(base, ['outline.drawnPath'], () => [
    null,
    { ...DRAWN, bass: { ...DRAWN.bass, strokes: [{ kind: 'arc', to: { x: 420, y: 0 }, bulge: -1.04 }] } },
  ])
const READ_FIELDS = PLAN_FIELDS.filter(
  (field) => field.startsWith('outline.halfWidths.') || field === 'outline.lengthMm',
)
for (const base of BY_READINGS) moveFields(base, READ_FIELDS, (field) => otherValues(field, base).slice(0, 3))

function differ(a: readonly Figure[], b: readonly Figure[]): boolean {
  if (a.length !== b.length) return true
  return a.some((one, i) => {
    const other = b[i]
    if (typeof one !== 'number' || typeof other !== 'number') return one !== other
    return Math.abs(one - other) > 1e-7 * Math.max(1, Math.abs(one))
  })
}

const wayOf = (field: PlanField): string =>
  field.startsWith('outline.cutaway.') ? 'cutaway' : field.startsWith('outline.') ? 'outline' : field

describe('a number moves with the fields it is said to hang on, and with no other', () => {
  test.each(NUMBER_KEYS.map((key) => [key]))('%s', (key) => {
    const said = new Set(aboutNumber(key).hangsOn)
    const seen = moved.get(key)!
    expect([...seen].filter((field) => !said.has(field))).toEqual([])
    // Of the outline's fields, and of the cutaway's, one at least has to move the number; of everything else, every one.
    const ways = new Set([...seen].map(wayOf))
    expect([...said].filter((field) => !ways.has(wayOf(field)))).toEqual([])
  })
})

test('every field moves some number', () => {
  const moving = new Set([...moved.values()].flatMap((fields) => [...fields]))
  // These are shown and printed, or choose what is; no sum takes them.
  const told: readonly PlanField[] = [
    'handed',
    'rim.method',
    'linings.top.kind',
    'linings.back.kind',
    'binding.heightMm',
    'sideBraces.thicknessMm',
  ]
  expect(PLAN_FIELDS.filter((field) => !moving.has(field))).toEqual(told)
})
