import { type ReadingPlace, samePlace } from '../../core/asBuilt/reading.ts'
import type { Figure } from '../../core/figure.ts'
import type { Quantity } from '../../core/quantity.ts'
import type { Measured } from './measured.ts'

/** What stands as read at a place: the last reading of it; null where it was not read. `all` in the order of the log. */
export const readAt = (all: readonly Measured[], place: ReadingPlace): Measured | null =>
  all.findLast((one) => one.isLatest && samePlace(one, place)) ?? null

/** Beyond this a finger has slipped: lengths on an instrument and thicknesses, mm; angles, rad. Common practice of the trade's sizes. */
const MOST_MM = 1500
const MOST_THICKNESS_MM = 100
const MOST_DOME_MM = 100_000
const MOST_RAD = Math.PI / 2
/** So small that what was planned to stand proud may as well lie low, mm. */
const NEAR_NOTHING_MM = 1

/** What may be read of a number, in its unit: lengths from nothing up; angles, and what is planned near nothing or below it, both ways. */
export function readableRange(quantity: Quantity, asked: Figure): { readonly min: number; readonly max: number } {
  if (quantity === 'angle') return { min: -MOST_RAD, max: MOST_RAD }
  const max = quantity === 'thickness' ? MOST_THICKNESS_MM : quantity === 'domeRadius' ? MOST_DOME_MM : MOST_MM
  const isSigned = quantity !== 'across' && typeof asked === 'number' && asked < NEAR_NOTHING_MM
  return { min: isSigned ? -max : 0, max }
}
