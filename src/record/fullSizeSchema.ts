import * as z from 'zod/mini'
import type { Jigs } from '../core/jigs.ts'
import { FULL_SIZE_SHEETS } from './fullSizeSheets.ts'
import { JIG_RANGES, PRINTING_RANGES } from './fullSizeFields.ts'
import { number } from './rangeSchema.ts'

/** What the shop's own gear adds round an outline. */
export const jigs = z.strictObject({
  mouldClearanceMm: number(JIG_RANGES.mouldClearanceMm),
  slatMm: number(JIG_RANGES.slatMm),
  blanketMm: number(JIG_RANGES.blanketMm),
  caulClearanceMm: number(JIG_RANGES.caulClearanceMm),
}) satisfies z.ZodMiniType<Jigs>

/** How the shop prints at full size: on what, and what a box of 100 mm measures when its printer has printed it. */
export const printing = z.strictObject({
  sheet: z.enum(FULL_SIZE_SHEETS),
  rollWidthMm: number(PRINTING_RANGES.rollWidthMm),
  overlapMm: number(PRINTING_RANGES.overlapMm),
  boxAcrossMm: number(PRINTING_RANGES.boxAcrossMm),
  boxAlongMm: number(PRINTING_RANGES.boxAlongMm),
})
