import { z } from 'zod'
import { BACK_FORMS, OUTLINE_KINDS, type Plan, type PlanField, TOP_FORMS } from '../core/plan.ts'
import { FIELDS, type FieldRange, MOST_PIECES, MOST_RINGS, PIECE_RANGES, RING_RANGES } from './fields.ts'

z.config({ jitless: true })

/** Entries of a collection come and go one by one, so each has a uuid and an order string. */
export const orderKey = z
  .string()
  .min(1)
  .max(40)
  .regex(/^[0-9a-z]+$/)

const finite = (min: number, max: number) => z.number().min(min).max(max)
function number(range: FieldRange) {
  if (range.type === 'length') return finite(range.minMm, range.maxMm)
  if (range.type === 'angle') return finite(range.minDeg, range.maxDeg)
  if (range.type === 'count') return z.int().min(range.min).max(range.max)
  throw new Error('not a number field')
}
const at = (field: PlanField) => number(FIELDS[field])
const openAt = (field: PlanField) => at(field).nullable()
const radiusAt = (field: PlanField) => z.union([at(field), z.literal('flat')]).nullable()

export const outlinePiece = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('arc'),
    bend: z.enum(['convex', 'concave']),
    radiusMm: number(PIECE_RANGES.radiusMm).nullable(),
    sweepDeg: number(PIECE_RANGES.sweepDeg).nullable(),
  }),
  z.strictObject({ kind: z.literal('straight'), lengthMm: number(PIECE_RANGES.lengthMm).nullable() }),
])

export const ring = z.strictObject({
  order: orderKey,
  innerRadiusMm: number(RING_RANGES.innerRadiusMm),
  outerRadiusMm: number(RING_RANGES.outerRadiusMm),
  join: z.enum(['closed', 'openUnderBoard']),
  gapMm: number(RING_RANGES.gapMm).nullable(),
  tileCount: number(RING_RANGES.tileCount).nullable(),
})

const block = (end: 'tail' | 'neck') =>
  z.strictObject({ widthMm: at(`blocks.${end}.widthMm`), thicknessMm: at(`blocks.${end}.thicknessMm`) })

export const planSchema = z.strictObject({
  outline: z.strictObject({
    lengthMm: openAt('outline.lengthMm'),
    kind: z.enum(OUTLINE_KINDS),
    pieces: z.array(outlinePiece).min(1).max(MOST_PIECES),
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
    treble: z.literal('mirror'),
  }),
  rim: z.strictObject({
    depthAtTailMm: at('rim.depthAtTailMm'),
    depthAtNeckMm: at('rim.depthAtNeckMm'),
    sideThicknessMm: at('rim.sideThicknessMm'),
    topAllowanceMm: at('rim.topAllowanceMm'),
    backAllowanceMm: at('rim.backAllowanceMm'),
    trimEachEndMm: at('rim.trimEachEndMm'),
    stationStepMm: openAt('rim.stationStepMm'),
  }),
  back: z.strictObject({ form: z.enum(BACK_FORMS), radiusMm: at('back.radiusMm') }),
  top: z.strictObject({
    form: z.enum(TOP_FORMS),
    radiusMm: at('top.radiusMm'),
    flatFromMm: at('top.flatFromMm'),
    flatSlopeDeg: at('top.flatSlopeDeg'),
    riseAtSaddleMm: at('top.riseAtSaddleMm'),
  }),
  plates: z.strictObject({ topMm: at('plates.topMm'), backMm: at('plates.backMm') }),
  blocks: z.strictObject({ tail: block('tail'), neck: block('neck') }),
  scale: z.strictObject({ lengthMm: at('scale.lengthMm'), jointFret: at('scale.jointFret') }),
  board: z.strictObject({
    overBodyMm: at('board.overBodyMm'),
    widthAtJointMm: at('board.widthAtJointMm'),
    widthAtEndMm: at('board.widthAtEndMm'),
  }),
  soundhole: z.strictObject({
    centreMm: at('soundhole.centreMm'),
    radiusMm: at('soundhole.radiusMm'),
    cutterMm: at('soundhole.cutterMm'),
  }),
  rosette: z.strictObject({
    rings: z.record(z.uuid(), ring).refine((rings) => Object.keys(rings).length <= MOST_RINGS),
    inlayMm: at('rosette.inlayMm'),
    standsProudMm: at('rosette.standsProudMm'),
    cutterMm: at('rosette.cutterMm'),
    passOverlapMm: at('rosette.passOverlapMm'),
    gapMarginMm: at('rosette.gapMarginMm'),
  }),
}) satisfies z.ZodType<Plan>
