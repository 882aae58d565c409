import * as z from 'zod/mini'
import {
  BACK_FORMS,
  FLAT_SLOPES,
  HANDS,
  LINING_KINDS,
  type Plan,
  RIM_METHODS,
  SIDE_BRACE_ENDS,
  SIDE_BRACE_FORMS,
  TOP_FORMS,
} from '../core/plan.ts'
import { boxSchemas } from './boxSchema.ts'
import { MOST_RINGS, MOST_SIDE_BRACES, RING_RANGES, SIDE_BRACE_RANGE } from './fields.ts'
import { neckSchemas } from './neckSchema.ts'
import { outlineSchema } from './outlineSchema.ts'
import { at, number, openAt, orderKey } from './rangeSchema.ts'

export const ring = z.strictObject({
  order: orderKey,
  innerRadiusMm: number(RING_RANGES.innerRadiusMm),
  outerRadiusMm: number(RING_RANGES.outerRadiusMm),
  join: z.enum(['closed', 'openUnderBoard']),
  gapMm: z.nullable(number(RING_RANGES.gapMm)),
  tileCount: z.nullable(number(RING_RANGES.tileCount)),
})

const lining = (plate: 'top' | 'back') =>
  z.strictObject({
    kind: z.enum(LINING_KINDS),
    widthMm: at(`linings.${plate}.widthMm`),
    heightMm: at(`linings.${plate}.heightMm`),
  })

const block = (end: 'tail' | 'neck') =>
  z.strictObject({ widthMm: at(`blocks.${end}.widthMm`), thicknessMm: at(`blocks.${end}.thicknessMm`) })

export const planSchema = z.strictObject({
  handed: z.enum(HANDS),
  outline: outlineSchema,
  rim: z.strictObject({
    depthAtTailMm: at('rim.depthAtTailMm'),
    depthAtNeckMm: at('rim.depthAtNeckMm'),
    sideThicknessMm: at('rim.sideThicknessMm'),
    topAllowanceMm: at('rim.topAllowanceMm'),
    backAllowanceMm: at('rim.backAllowanceMm'),
    trimEachEndMm: at('rim.trimEachEndMm'),
    stationStepMm: openAt('rim.stationStepMm'),
    method: z.enum(RIM_METHODS),
    firstLeavesTopMm: at('rim.firstLeavesTopMm'),
    firstLeavesBackMm: at('rim.firstLeavesBackMm'),
  }),
  back: z.strictObject({ form: z.enum(BACK_FORMS), radiusMm: at('back.radiusMm') }),
  top: z.strictObject({
    form: z.enum(TOP_FORMS),
    radiusMm: at('top.radiusMm'),
    flatFromMm: at('top.flatFromMm'),
    flatSlope: z.enum(FLAT_SLOPES),
    flatSlopeDeg: at('top.flatSlopeDeg'),
    riseAtSaddleMm: at('top.riseAtSaddleMm'),
  }),
  plates: z.strictObject({ topMm: at('plates.topMm'), backMm: at('plates.backMm') }),
  blocks: z.strictObject({ tail: block('tail'), neck: block('neck') }),
  linings: z.strictObject({ top: lining('top'), back: lining('back'), wastePercent: at('linings.wastePercent') }),
  binding: z.strictObject({
    heightMm: at('binding.heightMm'),
    thicknessMm: at('binding.thicknessMm'),
    topPurflingMm: at('binding.topPurflingMm'),
    backPurflingMm: at('binding.backPurflingMm'),
  }),
  sideBraces: z.strictObject({
    form: z.enum(SIDE_BRACE_FORMS),
    atMm: z.nullable(z.array(number(SIDE_BRACE_RANGE)).check(z.maxLength(MOST_SIDE_BRACES))),
    spacingMm: at('sideBraces.spacingMm'),
    widthMm: at('sideBraces.widthMm'),
    thicknessMm: at('sideBraces.thicknessMm'),
    ends: z.enum(SIDE_BRACE_ENDS),
  }),
  caul: z.strictObject({
    spanMm: at('caul.spanMm'),
    widthMm: at('caul.widthMm'),
    heightMm: at('caul.heightMm'),
    modulusGPa: at('caul.modulusGPa'),
    forceN: at('caul.forceN'),
  }),
  ...boxSchemas,
  ...neckSchemas,
  soundhole: z.strictObject({
    centreMm: at('soundhole.centreMm'),
    radiusMm: at('soundhole.radiusMm'),
    cutterMm: at('soundhole.cutterMm'),
  }),
  rosette: z.strictObject({
    rings: z.record(z.uuid(), ring).check(z.refine((rings) => Object.keys(rings).length <= MOST_RINGS)),
    inlayMm: at('rosette.inlayMm'),
    standsProudMm: at('rosette.standsProudMm'),
    cutterMm: at('rosette.cutterMm'),
    passOverlapMm: at('rosette.passOverlapMm'),
    gapMarginMm: at('rosette.gapMarginMm'),
  }),
}) satisfies z.ZodMiniType<Plan>
