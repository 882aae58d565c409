import * as z from 'zod/mini'
import { BRACE_KINDS, BRACE_SIDES, BRACE_STOPS, BRACE_TAPERS, BRACE_UNDERSIDES, PLATES } from '../core/boxPlan.ts'
import { WOOD_ROLES } from '../core/wood/part.ts'
import { BRACE_END_RANGES, BRACE_RANGES, LONGEST_WOOD, MOST_BRACES, MOST_PLANKS, PLANK_RANGES } from './boxFields.ts'
import { at, number, openAt, orderKey } from './rangeSchema.ts'

const braceEnd = z.strictObject({
  stops: z.enum(BRACE_STOPS),
  side: z.enum(BRACE_SIDES),
  xMm: number(BRACE_END_RANGES.xMm),
  yMm: number(BRACE_END_RANGES.yMm),
  braceId: z.nullable(z.uuid()),
  letInMm: number(BRACE_END_RANGES.letInMm),
  taper: z.enum(BRACE_TAPERS),
  taperMm: number(BRACE_END_RANGES.taperMm),
  endHeightMm: number(BRACE_END_RANGES.endHeightMm),
})

export const brace = z.strictObject({
  order: orderKey,
  plate: z.enum(PLATES),
  kind: z.enum(BRACE_KINDS),
  twin: z.boolean(),
  from: braceEnd,
  to: braceEnd,
  widthMm: number(BRACE_RANGES.widthMm),
  heightMm: number(BRACE_RANGES.heightMm),
  underside: z.enum(BRACE_UNDERSIDES),
  archRadiusMm: number(BRACE_RANGES.archRadiusMm),
  lapped: z.boolean(),
})

export const plank = z.strictObject({
  order: orderKey,
  role: z.enum(WOOD_ROLES),
  lengthMm: number(PLANK_RANGES.lengthMm),
  widthMm: number(PLANK_RANGES.widthMm),
  thicknessMm: number(PLANK_RANGES.thicknessMm),
})

/** Braces, air, edges and cutting: parts of the plan. */
export const boxSchemas = {
  bracing: z.strictObject({
    braces: z.record(z.uuid(), brace).check(z.refine((braces) => Object.keys(braces).length <= MOST_BRACES)),
    blankEndMm: at('bracing.blankEndMm'),
    blankHeightMm: at('bracing.blankHeightMm'),
    blankWidthMm: at('bracing.blankWidthMm'),
    crossPatchMm: at('bracing.crossPatchMm'),
    crossPatchThicknessMm: at('bracing.crossPatchThicknessMm'),
    holeRingMm: at('bracing.holeRingMm'),
    holeRingSetBackMm: at('bracing.holeRingSetBackMm'),
    holeRingThicknessMm: at('bracing.holeRingThicknessMm'),
    stripWidthMm: at('bracing.stripWidthMm'),
    stripThicknessMm: at('bracing.stripThicknessMm'),
  }),
  air: z.strictObject({
    temperatureC: at('air.temperatureC'),
    holeChangeMm: at('air.holeChangeMm'),
    depthChangeMm: at('air.depthChangeMm'),
    heardHz: openAt('air.heardHz'),
  }),
  edges: z.strictObject({
    purflingDepthMm: at('edges.purflingDepthMm'),
    trimMm: at('edges.trimMm'),
    wedgeTopMm: at('edges.wedgeTopMm'),
    wedgeBackMm: at('edges.wedgeBackMm'),
    wedgeDepthMm: at('edges.wedgeDepthMm'),
    wedgePurflingMm: at('edges.wedgePurflingMm'),
    backStripMm: at('edges.backStripMm'),
    backStripDepthMm: at('edges.backStripDepthMm'),
  }),
  cutting: z.strictObject({
    plateMarginMm: at('cutting.plateMarginMm'),
    lengthMm: at('cutting.lengthMm'),
    widthMm: at('cutting.widthMm'),
    thicknessMm: at('cutting.thicknessMm'),
    kerfMm: at('cutting.kerfMm'),
    trimMm: at('cutting.trimMm'),
    woods: z.record(z.enum(WOOD_ROLES), z.string().check(z.maxLength(LONGEST_WOOD))),
    planks: z.record(z.uuid(), plank).check(z.refine((planks) => Object.keys(planks).length <= MOST_PLANKS)),
  }),
}
