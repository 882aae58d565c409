import { type ReadingPlace, samePlace } from '../../core/asBuilt/reading.ts'
import type { Figure } from '../../core/figure.ts'
import type { Quantity } from '../../core/quantity.ts'
import type { Measured } from './measured.ts'

/** What stands as read at a place: the last reading of it; null where it was not read. `all` in the order of the log. */
export const readAt = (all: readonly Measured[], place: ReadingPlace): Measured | null =>
  all.findLast((one) => one.isLatest && samePlace(one, place)) ?? null

/** The longest length that is read at a bench, mm, and the widest angle, rad: beyond it a finger has slipped. */
const MOST_MM = 3000
const MOST_RAD = Math.PI / 2
const SIGNED: ReadonlySet<Quantity> = new Set(['thickness', 'angle'])

/** What may be read of a number, in its unit: lengths from nothing up, gaps and angles and what is planned below nothing both ways. */
export function readableRange(quantity: Quantity, asked: Figure): { readonly min: number; readonly max: number } {
  const max = quantity === 'angle' ? MOST_RAD : MOST_MM
  const isSigned = SIGNED.has(quantity) || (typeof asked === 'number' && asked < 0 && quantity !== 'across')
  return { min: isSigned ? -max : 0, max }
}
