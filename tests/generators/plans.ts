import fc from 'fast-check'
import {
  BACK_FORMS,
  OUTLINE_KINDS,
  type OutlinePiece,
  PLAN_FIELDS,
  type Plan,
  type PlanField,
  TOP_FORMS,
} from '../../src/core/plan.ts'
import { FIELDS, type FieldRange, MOST_PIECES, MOST_RINGS, PIECE_RANGES, RING_RANGES } from '../../src/record/fields.ts'
import { DEMO_MODELS } from './demoModels.ts'
import { real } from './real.ts'

/** A copy of the plan with another value in one field. */
export function withField(plan: Plan, field: PlanField, value: unknown): Plan {
  const set = (level: unknown, steps: readonly string[]): unknown => {
    const [step, ...rest] = steps
    if (step === undefined) return value
    const object = level as Record<string, unknown>
    return { ...object, [step]: set(object[step], rest) }
  }
  return set(plan, field.split('.')) as Plan
}

/** Anything a field may hold by its range, its ends included, and open or flat where it can be. */
function within(range: FieldRange): fc.Arbitrary<number | 'flat' | null> {
  if (range.type === 'angle') return real(range.minDeg, range.maxDeg)
  if (range.type === 'count') {
    const count = fc.integer({ min: range.min, max: range.max })
    return range.open ? fc.option(count, { nil: null, freq: 6 }) : count
  }
  if (range.type !== 'length') throw new Error('a choice has no range')
  const length = fc.oneof(
    { weight: 8, arbitrary: real(range.minMm, range.maxMm) },
    { weight: 1, arbitrary: fc.constantFrom(range.minMm, range.maxMm) },
  )
  const maybeFlat: fc.Arbitrary<number | 'flat'> = range.flat
    ? fc.oneof({ weight: 6, arbitrary: length }, { weight: 1, arbitrary: fc.constant('flat' as const) })
    : length
  return range.open ? fc.option(maybeFlat, { nil: null, freq: 6 }) : maybeFlat
}

const outlinePiece: fc.Arbitrary<OutlinePiece> = fc.oneof(
  fc.record({
    kind: fc.constant('arc' as const),
    bend: fc.constantFrom('convex' as const, 'concave' as const),
    radiusMm: within(PIECE_RANGES.radiusMm) as fc.Arbitrary<number | null>,
    sweepDeg: fc.option(real(PIECE_RANGES.sweepDeg.minDeg, PIECE_RANGES.sweepDeg.maxDeg), { nil: null, freq: 8 }),
  }),
  fc.record({
    kind: fc.constant('straight' as const),
    lengthMm: within(PIECE_RANGES.lengthMm) as fc.Arbitrary<number | null>,
  }),
)

const ring = fc.record({
  order: fc.constantFrom('g', 'm', 't'),
  innerRadiusMm: within(RING_RANGES.innerRadiusMm),
  outerRadiusMm: within(RING_RANGES.outerRadiusMm),
  join: fc.constantFrom('closed', 'openUnderBoard'),
  gapMm: within(RING_RANGES.gapMm),
  tileCount: within(RING_RANGES.tileCount),
})

function anyValue(field: PlanField): fc.Arbitrary<unknown> {
  if (field === 'outline.kind') return fc.constantFrom(...OUTLINE_KINDS)
  if (field === 'back.form') return fc.constantFrom(...BACK_FORMS)
  if (field === 'top.form') return fc.constantFrom(...TOP_FORMS)
  if (field === 'outline.pieces') return fc.array(outlinePiece, { minLength: 1, maxLength: MOST_PIECES })
  if (field === 'rosette.rings') return fc.dictionary(fc.uuid(), ring, { maxKeys: MOST_RINGS })
  return within(FIELDS[field])
}

/** Any plan the record would take, however little of a guitar it is. */
export const anyPlan: fc.Arbitrary<Plan> = fc
  .tuple(...PLAN_FIELDS.map((field) => anyValue(field)))
  .map((list) => PLAN_FIELDS.reduce((plan, field, i) => withField(plan, field, list[i]), DEMO_MODELS[0]!.plan))

/** A model with a few of its fields set to anything they may hold: nearer to what hands type. */
export const nearModel: fc.Arbitrary<Plan> = fc
  .tuple(
    fc.constantFrom(...DEMO_MODELS.map(({ plan }) => plan)),
    fc.array(
      fc.constantFrom(...PLAN_FIELDS).chain((field) => anyValue(field).map((value) => ({ field, value }))),
      { minLength: 1, maxLength: 4 },
    ),
  )
  .map(([model, changes]) => changes.reduce((plan, { field, value }) => withField(plan, field, value), model))
