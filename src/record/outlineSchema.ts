import * as z from 'zod/mini'
import { CUTAWAY_FORMS, OUTLINE_KINDS, type OutlinePlan } from '../core/plan.ts'
import { MOST_END_READINGS, MOST_PIECES, MOST_READINGS, MOST_STROKES, PIECE_RANGES, READING_RANGES } from './fields.ts'
import { at, finite, number, openAt, radiusAt } from './rangeSchema.ts'

export const outlinePiece = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('arc'),
    bend: z.enum(['convex', 'concave']),
    radiusMm: z.nullable(number(PIECE_RANGES.radiusMm)),
    sweepDeg: z.nullable(number(PIECE_RANGES.sweepDeg)),
  }),
  z.strictObject({ kind: z.literal('straight'), lengthMm: z.nullable(number(PIECE_RANGES.lengthMm)) }),
])

const readings = (most: number) =>
  z.array(z.tuple([number(READING_RANGES.fromTailMm), number(READING_RANGES.halfWidthMm)])).check(z.maxLength(most))

/** Far beyond any body, so that no sum over a drawn path can overflow. */
const coordinate = finite(-5000, 5000)
const point = z.strictObject({ x: coordinate, y: coordinate })
const stroke = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('line'), to: point }),
  z.strictObject({ kind: z.literal('arc'), to: point, bulge: finite(-100, 100) }),
  z.strictObject({ kind: z.literal('cubic'), control1: point, control2: point, to: point }),
])
const path = z.strictObject({ start: point, strokes: z.array(stroke).check(z.minLength(1), z.maxLength(MOST_STROKES)) })

const drawnPath = z.nullable(
  z.strictObject({
    bass: path,
    treble: z.nullable(path),
    readToMm: finite(0.01, 3),
    fileName: z.string().check(z.maxLength(200)),
  }),
)

/** An outline by itself: of an instrument, or of a mould it may lie in. */
export const outlineSchema = z.strictObject({
  lengthMm: openAt('outline.lengthMm'),
  kind: z.enum(OUTLINE_KINDS),
  pieces: z.array(outlinePiece).check(z.minLength(1), z.maxLength(MOST_PIECES)),
  keyWidths: z.strictObject({
    lowerBoutMm: at('outline.keyWidths.lowerBoutMm'),
    lowerBoutAtMm: at('outline.keyWidths.lowerBoutAtMm'),
    waistMm: at('outline.keyWidths.waistMm'),
    waistAtMm: at('outline.keyWidths.waistAtMm'),
    upperBoutMm: at('outline.keyWidths.upperBoutMm'),
    upperBoutAtMm: at('outline.keyWidths.upperBoutAtMm'),
    tailRadiusMm: radiusAt('outline.keyWidths.tailRadiusMm'),
    neckFlatMm: at('outline.keyWidths.neckFlatMm'),
    neckRadiusMm: radiusAt('outline.keyWidths.neckRadiusMm'),
  }),
  halfWidths: z.strictObject({
    rows: readings(MOST_READINGS),
    tailRows: readings(MOST_END_READINGS),
    neckRows: readings(MOST_END_READINGS),
    readToMm: at('outline.halfWidths.readToMm'),
    tailRadiusMm: radiusAt('outline.halfWidths.tailRadiusMm'),
    neckFlatMm: at('outline.halfWidths.neckFlatMm'),
    neckRadiusMm: radiusAt('outline.halfWidths.neckRadiusMm'),
  }),
  drawnPath,
  cutaway: z.strictObject({
    form: z.enum(CUTAWAY_FORMS),
    leavesAtMm: at('outline.cutaway.leavesAtMm'),
    hornRadiusMm: at('outline.cutaway.hornRadiusMm'),
    hollowRadiusMm: at('outline.cutaway.hollowRadiusMm'),
    meetsNeckAtMm: at('outline.cutaway.meetsNeckAtMm'),
  }),
}) satisfies z.ZodMiniType<OutlinePlan>
