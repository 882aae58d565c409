import type { Figure } from './figure.ts'
import type { Quantity } from './quantity.ts'

/** How a reading stands to what was asked. */
export interface Verdict {
  /** How far off, mm or rad, never negative. */
  readonly off: number
  readonly way: 'over' | 'short' | 'even'
  /** Inside the tolerance; null: the number carries none. */
  readonly isWithin: boolean | null
}

/** A reading that lies on the edge of its tolerance is within it: a double's last digits decide nothing. In mm and rad. */
const SLACK = 1e-9

/**
 * A reading held against what was asked, both in the number's unit (mm, rad). A place across the instrument is held by how far out it lies, on
 * either side. null where what was asked is no number: nothing can be said.
 */
export function verdictOf(read: number, asked: Figure, tolerance: number | null, quantity: Quantity): Verdict | null {
  if (typeof asked !== 'number' || !Number.isFinite(read) || !Number.isFinite(asked)) return null
  const difference = quantity === 'across' ? Math.abs(read) - Math.abs(asked) : read - asked
  const off = Math.abs(difference)
  return {
    off,
    way: off < SLACK ? 'even' : difference > 0 ? 'over' : 'short',
    isWithin: tolerance === null ? null : off <= tolerance + SLACK,
  }
}

/** A place across is read from the centreline out, on the side it lies on: it takes the sign of what was asked. Everything else is as read. */
export const onAskedSide = (read: number, asked: Figure, quantity: Quantity): number =>
  quantity === 'across' && typeof asked === 'number' && asked < 0 ? -Math.abs(read) : read
