import fc from 'fast-check'
import {
  BRACE_KINDS,
  BRACE_SIDES,
  BRACE_STOPS,
  BRACE_TAPERS,
  BRACE_UNDERSIDES,
  PLATES,
} from '../../src/core/boxPlan.ts'
import {
  BOARD_SURFACES,
  COMPENSATIONS,
  FRET_FANS,
  NECK_JOINTS,
  PIN_RUNS,
  RODS,
  STRING_HOLDS,
  STRING_MATERIALS,
  TUNER_SIDES,
} from '../../src/core/neckPlan.ts'
import {
  BACK_FORMS,
  CUTAWAY_FORMS,
  FLAT_SLOPES,
  HANDS,
  LINING_KINDS,
  OUTLINE_KINDS,
  type OutlinePiece,
  type Plan,
  RIM_METHODS,
  SIDE_BRACE_ENDS,
  SIDE_BRACE_FORMS,
  TOP_FORMS,
} from '../../src/core/plan.ts'
import { PLAN_FIELDS, type PlanField } from '../../src/core/planFields.ts'
import { WOOD_ROLES } from '../../src/core/wood/part.ts'
import { BRACE_END_RANGES, BRACE_RANGES, MOST_BRACES, PLANK_RANGES } from '../../src/record/boxFields.ts'
import {
  FIELDS,
  MOST_END_READINGS,
  MOST_PIECES,
  MOST_RINGS,
  MOST_SIDE_BRACES,
  PIECE_RANGES,
  READING_RANGES,
  RING_RANGES,
  SIDE_BRACE_RANGE,
} from '../../src/record/fields.ts'
import type { FieldRange } from '../../src/record/fieldRange.ts'
import {
  BOLT_RANGE,
  MARKER_RANGE,
  MOST_BOLTS,
  MOST_MARKERS,
  MOST_STRINGS,
  STRING_RANGES,
} from '../../src/record/neckFields.ts'
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
  if (range.type === 'plain') {
    const amount = real(range.min, range.max)
    return range.open ? fc.option(amount, { nil: null, freq: 6 }) : amount
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

const reading = fc.tuple(
  within(READING_RANGES.fromTailMm) as fc.Arbitrary<number>,
  within(READING_RANGES.halfWidthMm) as fc.Arbitrary<number>,
)
const readings = (maxLength: number) => fc.array(reading, { maxLength })

const point = fc.record({ x: real(-900, 900), y: real(-900, 900) })
const stroke = fc.oneof(
  fc.record({ kind: fc.constant('line' as const), to: point }),
  fc.record({ kind: fc.constant('arc' as const), to: point, bulge: real(-3, 3) }),
  fc.record({ kind: fc.constant('cubic' as const), control1: point, control2: point, to: point }),
)
const path = fc.record({
  start: fc.constantFrom({ x: 0, y: 0 }, { x: 3, y: -2 }),
  strokes: fc.array(stroke, { minLength: 1, maxLength: 14 }),
})
const drawnPath = fc.option(
  fc.record({ bass: path, treble: fc.option(path), readToMm: real(0.01, 3), fileName: fc.constant('drawn.svg') }),
  { nil: null },
)

const note = within(STRING_RANGES.note) as fc.Arbitrary<number>
const string = fc.record({
  material: fc.constantFrom(...STRING_MATERIALS),
  diameterMm: within(STRING_RANGES.diameterMm),
  coreMm: within(STRING_RANGES.coreMm),
  massGPerM: within(STRING_RANGES.massGPerM),
  note,
  pairedWithNext: fc.boolean(),
})
const numbersIn = (range: FieldRange, maxLength: number) =>
  fc.array(within(range) as fc.Arbitrary<number>, { maxLength })

/** Ids that ends may name, so that braces stop at each other now and then. */
const BRACE_IDS = Array.from({ length: 8 }, (_, i) => `b4ace000-0000-4000-8000-00000000000${i}`)
const braceEnd = fc.record({
  stops: fc.constantFrom(...BRACE_STOPS),
  side: fc.constantFrom(...BRACE_SIDES),
  xMm: within(BRACE_END_RANGES.xMm),
  yMm: within(BRACE_END_RANGES.yMm),
  braceId: fc.option(fc.constantFrom(...BRACE_IDS), { nil: null }),
  letInMm: within(BRACE_END_RANGES.letInMm),
  taper: fc.constantFrom(...BRACE_TAPERS),
  taperMm: within(BRACE_END_RANGES.taperMm),
  endHeightMm: within(BRACE_END_RANGES.endHeightMm),
})
const brace = fc.record({
  order: fc.constantFrom('g', 'm', 't'),
  plate: fc.constantFrom(...PLATES),
  kind: fc.constantFrom(...BRACE_KINDS),
  twin: fc.boolean(),
  from: braceEnd,
  to: braceEnd,
  widthMm: within(BRACE_RANGES.widthMm),
  heightMm: within(BRACE_RANGES.heightMm),
  underside: fc.constantFrom(...BRACE_UNDERSIDES),
  archRadiusMm: within(BRACE_RANGES.archRadiusMm),
  lapped: fc.boolean(),
})

/** Fields replaced whole, and those that choose. */
const VALUES: Readonly<Partial<Record<PlanField, fc.Arbitrary<unknown>>>> = {
  handed: fc.constantFrom(...HANDS),
  'outline.kind': fc.constantFrom(...OUTLINE_KINDS),
  'outline.pieces': fc.array(outlinePiece, { minLength: 1, maxLength: MOST_PIECES }),
  'outline.halfWidths.rows': readings(40),
  'outline.halfWidths.tailRows': readings(MOST_END_READINGS),
  'outline.halfWidths.neckRows': readings(MOST_END_READINGS),
  'outline.drawnPath': drawnPath,
  'outline.cutaway.form': fc.constantFrom(...CUTAWAY_FORMS),
  'rim.method': fc.constantFrom(...RIM_METHODS),
  'back.form': fc.constantFrom(...BACK_FORMS),
  'top.form': fc.constantFrom(...TOP_FORMS),
  'top.flatSlope': fc.constantFrom(...FLAT_SLOPES),
  'linings.top.kind': fc.constantFrom(...LINING_KINDS),
  'linings.back.kind': fc.constantFrom(...LINING_KINDS),
  'sideBraces.form': fc.constantFrom(...SIDE_BRACE_FORMS),
  'sideBraces.ends': fc.constantFrom(...SIDE_BRACE_ENDS),
  'sideBraces.atMm': fc.option(
    fc.array(within(SIDE_BRACE_RANGE) as fc.Arbitrary<number>, { maxLength: MOST_SIDE_BRACES }),
    { nil: null },
  ),
  'bracing.braces': fc.oneof(
    { weight: 6, arbitrary: fc.dictionary(fc.constantFrom(...BRACE_IDS), brace, { maxKeys: 8 }) },
    { weight: 1, arbitrary: fc.dictionary(fc.uuid(), brace, { maxKeys: MOST_BRACES }) },
  ),
  'cutting.woods': fc.constantFrom(...DEMO_MODELS.map(({ plan }) => plan.cutting.woods)),
  'cutting.planks': fc.dictionary(
    fc.uuid(),
    fc.record({
      order: fc.constantFrom('g', 'm', 't'),
      role: fc.constantFrom(...WOOD_ROLES),
      lengthMm: within(PLANK_RANGES.lengthMm),
      widthMm: within(PLANK_RANGES.widthMm),
      thicknessMm: within(PLANK_RANGES.thicknessMm),
    }),
    { maxKeys: 4 },
  ),
  'scale.fan': fc.constantFrom(...FRET_FANS),
  'board.surface': fc.constantFrom(...BOARD_SURFACES),
  'board.markersAt': numbersIn(MARKER_RANGE, MOST_MARKERS),
  'strings.set': fc.array(string, { minLength: 1, maxLength: MOST_STRINGS }),
  'strings.otherNotes': fc.option(numbersIn(STRING_RANGES.note, MOST_STRINGS), { nil: null }),
  'bridge.holds': fc.constantFrom(...STRING_HOLDS),
  'bridge.pinRun': fc.constantFrom(...PIN_RUNS),
  'bridge.compensation': fc.constantFrom(...COMPENSATIONS),
  'neck.joint': fc.constantFrom(...NECK_JOINTS),
  'neck.boltsAtMm': numbersIn(BOLT_RANGE, MOST_BOLTS),
  'neck.rod': fc.constantFrom(...RODS),
  'head.tuners': fc.constantFrom(...TUNER_SIDES),
  'rosette.rings': fc.dictionary(fc.uuid(), ring, { maxKeys: MOST_RINGS }),
}

const anyValue = (field: PlanField): fc.Arbitrary<unknown> => VALUES[field] ?? within(FIELDS[field])

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
