import type { Taken } from '../../core/asBuilt.ts'
import { aboutNumber, type NumberKey } from '../../core/catalogue.ts'
import type { Figure } from '../../core/figure.ts'
import { type Numbers, readNumbers } from '../../core/numbers.ts'

/** Whether a number follows what was measured: some field it hangs on holds a reading. It may still come out as planned. */
export function followsReading(key: NumberKey, taken: readonly Pick<Taken, 'field'>[]): boolean {
  if (taken.length === 0) return false
  const { hangsOn } = aboutNumber(key)
  return taken.some(({ field }) => hangsOn.includes(field))
}

/** The numbers of the plan as it was drawn, and the fields that hold something else by now. */
export interface PlannedNumbers {
  readonly numbers: Numbers
  readonly taken: readonly Pick<Taken, 'field'>[]
}

/** Far below what any shop reads, in mm or rad for each unit of size: two ways to one number differ by rounding. */
const SAME = 1e-9

/** True where two figures are one and the same number. */
export const sameFigure = (a: Figure, b: Figure): boolean =>
  typeof a === 'number' && typeof b === 'number' ? Math.abs(a - b) <= SAME * Math.max(1, Math.abs(a)) : a === b

/**
 * What was planned in the place of a number that came out otherwise because something was measured, in the number's own unit; null where it
 * follows no reading, or is as planned all the same. A row the plan has not gives 'none'.
 */
export function plannedInPlaceOf(
  key: NumberKey,
  row: number,
  now: Numbers,
  before: PlannedNumbers | null,
): Figure | null {
  if (before === null || !followsReading(key, before.taken)) return null
  const planned = readNumbers(before.numbers, key)[row] ?? 'none'
  return sameFigure(planned, readNumbers(now, key)[row] ?? 'none') ? null : planned
}
