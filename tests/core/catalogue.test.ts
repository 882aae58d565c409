import { describe, expect, test } from 'vitest'
import { aboutNumber, NUMBER_KEYS, type NumberKey } from '../../src/core/catalogue.ts'
import type { Figure } from '../../src/core/figure.ts'
import { type Plan } from '../../src/core/plan.ts'
import { BOX_FIELDS, PLAN_FIELDS, type PlanField } from '../../src/core/planFields.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { withField } from '../generators/plans.ts'

import {
  ASKS,
  BY_ARCS,
  BY_CUTAWAY,
  BY_EDGES,
  BY_KEY_WIDTHS,
  BY_NECKS,
  BY_READINGS,
  DRAWN,
  FORM_COUNT,
  isOfNeck,
  OF_BODY,
  PLANED,
  withFields,
} from './everyForm.ts'
import { BRACED, BY_BRACES } from './bracedPlans.ts'
import { buildCore } from './builtCore.ts'
import { otherValues } from './otherValues.ts'

const { compute } = await buildCore()
const moved = new Map<NumberKey, Set<PlanField>>(NUMBER_KEYS.map((key) => [key, new Set()]))
/** A place in the numbers, its path put together once. */
class Place {
  readonly path: string
  readonly inner = new Map<string, Place>()
  constructor(path: string) {
    this.path = path
  }
  at(name: string): Place {
    let place = this.inner.get(name)
    if (place === undefined) {
      const isFirst = this.path === '' || name === '[]'
      place = new Place(isFirst ? this.path + name : `${this.path}.${name}`)
      this.inner.set(name, place)
    }
    return place
  }
}
const ROOT = new Place('')
/** Every value under its key, in one walk through the numbers. */
function spread(value: unknown, place: Place, into: Map<string, Figure[]>): Map<string, Figure[]> {
  if (Array.isArray(value)) for (const row of value) spread(row, place.at('[]'), into)
  else if (typeof value === 'object' && value !== null)
    for (const [name, inner] of Object.entries(value)) spread(inner, place.at(name), into)
  else {
    const list = into.get(place.path)
    if (list === undefined) into.set(place.path, [value as Figure])
    else list.push(value as Figure)
  }
  return into
}
const valuesOf = (plan: Plan) => spread(compute(plan).numbers, ROOT, new Map())

function moveFields(base: Plan, fields: readonly PlanField[], othersOf: (field: PlanField) => readonly unknown[]) {
  const stood = valuesOf(base)
  for (const field of fields) {
    const still = NUMBER_KEYS.filter((key) => !moved.get(key)!.has(field))
    for (const value of othersOf(field)) {
      const after = valuesOf(withField(base, field, value))
      for (const key of still) if (differ(stood.get(key) ?? [], after.get(key) ?? [])) moved.get(key)!.add(field)
    }
  }
}
for (const base of BY_NECKS)
  moveFields(
    base,
    [...PLAN_FIELDS.filter(isOfNeck), ...OF_BODY.filter((field) => /^(?:rim|plates|blocks|top)\./.test(field))],
    (field) => otherValues(field, base),
  )
// What hangs on braces, air and edges alone is moved on the plans that have them in every form.
const IN_BOX: ReadonlySet<PlanField> = new Set(BOX_FIELDS)
const OF_RIM = OF_BODY.filter((field) => !IN_BOX.has(field))
// Without taper the same forms need only a few values of each field to show what only they have.
BY_ARCS.forEach((base, i) => {
  const isEven = i >= FORM_COUNT && i < 2 * FORM_COUNT
  moveFields(base, OF_RIM, (field) => otherValues(field, base).slice(0, isEven ? 4 : undefined))
})
for (const base of BY_EDGES) moveFields(base, BOX_FIELDS, (field) => otherValues(field, base))
for (const base of BY_BRACES) moveFields(base, OF_BODY, (field) => otherValues(field, base))
moveFields(BRACED, PLAN_FIELDS.filter(isOfNeck), (field) => otherValues(field, BRACED))
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
    ...PLAN_FIELDS.filter((field) => field.startsWith('cutting.')),
  ]
  expect(PLAN_FIELDS.filter((field) => !moving.has(field))).toEqual(told)
})
