import { describe, expect, test } from 'vitest'
import { aboutNumber, NUMBER_KEYS, type NumberKey } from '../../src/core/catalogue.ts'
import { compute } from '../../src/core/compute.ts'
import type { Figure } from '../../src/core/figure.ts'
import { readNumbers } from '../../src/core/numbers.ts'
import { type Plan } from '../../src/core/plan.ts'
import { PLAN_FIELDS, type PlanField } from '../../src/core/planFields.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { withField } from '../generators/plans.ts'

import {
  ASKS,
  BY_ARCS,
  BY_CUTAWAY,
  BY_KEY_WIDTHS,
  BY_NECKS,
  BY_READINGS,
  DRAWN,
  isOfNeck,
  OF_BODY,
  PLANED,
  withFields,
} from './everyForm.ts'
import { otherValues } from './otherValues.ts'

const moved = new Map<NumberKey, Set<PlanField>>(NUMBER_KEYS.map((key) => [key, new Set()]))
function moveFields(base: Plan, fields: readonly PlanField[], valuesOf: (field: PlanField) => readonly unknown[]) {
  const before = compute(base).numbers
  const stood = new Map(NUMBER_KEYS.map((key) => [key, readNumbers(before, key)]))
  for (const field of fields) {
    for (const value of valuesOf(field)) {
      const after = compute(withField(base, field, value)).numbers
      for (const key of NUMBER_KEYS)
        if (!moved.get(key)!.has(field) && differ(stood.get(key)!, readNumbers(after, key))) moved.get(key)!.add(field)
    }
  }
}
for (const base of BY_NECKS)
  moveFields(
    base,
    [...PLAN_FIELDS.filter(isOfNeck), ...OF_BODY.filter((field) => /^(?:rim|plates|blocks|top)\./.test(field))],
    (field) => otherValues(field, base),
  )
for (const base of BY_ARCS) moveFields(base, OF_BODY, (field) => otherValues(field, base))
const WIDTH_FIELDS = PLAN_FIELDS.filter(
  (field) => field.startsWith('outline.keyWidths.') || field === 'outline.lengthMm',
)
for (const base of BY_KEY_WIDTHS) moveFields(base, WIDTH_FIELDS, (field) => otherValues(field, base).slice(0, 3))

for (const base of BY_CUTAWAY) moveFields(base, OF_BODY, (field) => otherValues(field, base).slice(0, 4))
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

const isOfNeckPart = (key: NumberKey): boolean =>
  /^(?:scale|board|frets|markers|strings|stringSet|setup|neckSet|bridge|pins|neck|head|tuners)[.[]/.test(key) &&
  !/^bridge\.(?:hollow|underside)/.test(key)
const wayOf = (field: PlanField, key: NumberKey): string =>
  ASKS.has(field) && !isOfNeckPart(key)
    ? 'how the flat falls'
    : field.startsWith('outline.cutaway.')
      ? 'cutaway'
      : field.startsWith('outline.')
        ? 'outline'
        : field

describe('a number moves with the fields it is said to hang on, and with no other', () => {
  test.each(NUMBER_KEYS.map((key) => [key]))('%s', (key) => {
    const said = new Set(aboutNumber(key).hangsOn)
    const seen = moved.get(key)!
    expect([...seen].filter((field) => !said.has(field))).toEqual([])
    // Of the outline's fields, and of the cutaway's, one at least has to move the number; of everything else, every one.
    const ways = new Set([...seen].map((field) => wayOf(field, key)))
    expect([...said].filter((field) => !ways.has(wayOf(field, key)))).toEqual([])
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
