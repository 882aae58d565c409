import { CATALOGUE } from '../core/catalogue.ts'
import type { Figure } from '../core/figure.ts'
import { type NumberKey, type Numbers, readNumbers } from '../core/numbers.ts'
import type { Figured } from './drawing.ts'

/** A number as a dimension shows it; without a row for keys that stand once. 'none' where the instrument has no such row. */
export const figured = (numbers: Numbers, key: NumberKey, row: number | null = null): Figured => ({
  key,
  row,
  value: readNumbers(numbers, key)[row ?? 0] ?? 'none',
  quantity: CATALOGUE[key].quantity,
})

/** The same for a value already at hand: rows of stations are many. */
export const figuredRow = (key: NumberKey, row: number, value: Figure): Figured => ({
  key,
  row,
  value,
  quantity: CATALOGUE[key].quantity,
})

/** A distance from the centreline on the side where it is drawn. */
export const figuredAcross = (key: NumberKey, row: number, value: Figure): Figured => ({
  ...figuredRow(key, row, value),
  isUnsigned: true,
})
