import { CATALOGUE, type NumberKey } from '../../core/catalogue.ts'
import type { Figure } from '../../core/figure.ts'
import { readNumbers } from '../../core/numbers.ts'
import type { Quantity, ShopUnits } from '../../core/quantity.ts'
import { figureText } from '../../format/figure.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import { followsReading, plannedInPlaceOf } from '../../record/bench/follows.ts'
import { type SheetBench, useSheetBench } from './sheetBench.ts'
import type { FigureColumn } from './tableText.ts'

type Bench = Pick<SheetBench, 'computed' | 'planned' | 'units'>

/** What was planned, where a number that came out otherwise can be seen to have: one that reads the same in the shop's unit carries no mark. */
export function plannedBeside({ computed, planned, units }: Bench, key: NumberKey, row = 0): Figure | null {
  const before = plannedInPlaceOf(key, row, computed.numbers, planned)
  if (before === null) return null
  return readsAlike(before, readNumbers(computed.numbers, key)[row] ?? 'none', CATALOGUE[key].quantity, units)
    ? null
    : before
}

/** The same for the value of a place that has no row: `before` is what the plan has there. */
export function plannedAtPlace(
  { planned, units }: Pick<Bench, 'planned' | 'units'>,
  key: NumberKey,
  now: Figure,
  before: Figure,
): Figure | null {
  const isMoved = planned !== null && followsReading(key, planned.taken)
  return isMoved && !readsAlike(before, now, CATALOGUE[key].quantity, units) ? before : null
}

/** True where a shop reads two figures as one. */
export function readsAlike(a: Figure, b: Figure, quantity: Quantity, units: ShopUnits): boolean {
  return a === b || figureText(formatQuantity(a, quantity, units)) === figureText(formatQuantity(b, quantity, units))
}

/** A figure as it stands in a sentence. */
export const plannedText = (value: Figure, key: NumberKey, units: ShopUnits): string =>
  figureText(formatQuantity(value, CATALOGUE[key].quantity, units))

type PlannedColumn = Pick<FigureColumn, 'planned'> | Record<string, never>

/**
 * Gives what was planned in a column of a table, cell by cell; nothing where the number follows no reading. `at`: which row of the list each
 * row of the table is, where they are not the same.
 */
export function usePlannedColumn(): (key: NumberKey, at?: readonly number[]) => PlannedColumn {
  const { planned } = useSheetBench()
  return (key, at) => {
    if (planned === null || !followsReading(key, planned.taken)) return {}
    const values = readNumbers(planned.numbers, key)
    return { planned: at === undefined ? values : at.map((row) => values[row] ?? 'none') }
  }
}
