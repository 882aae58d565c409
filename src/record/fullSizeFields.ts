import type { Jigs } from '../core/jigs.ts'
import { body, type FieldRange, thin } from './fieldRange.ts'

/** What may stand in the fields of the shop's own gear. */
export const JIG_RANGES = {
  mouldClearanceMm: thin(0, 20),
  slatMm: thin(0, 5),
  blanketMm: thin(0, 20),
  caulClearanceMm: thin(0, 20),
} as const satisfies Record<keyof Jigs, FieldRange>

/** What may stand in the fields of full-size printing. A printer further off than this is set wrong, and no factor mends it. */
export const PRINTING_RANGES = {
  rollWidthMm: body(200, 1600),
  overlapMm: body(3, 60),
  boxAcrossMm: body(90, 110),
  boxAlongMm: body(90, 110),
} as const satisfies Record<string, FieldRange>

/** The shop's choices for full-size printing before its maker has said anything. */
export const USUAL_PRINTING = {
  sheet: 'A4',
  rollWidthMm: 914,
  overlapMm: 10,
  boxAcrossMm: 100,
  boxAlongMm: 100,
} as const
