import type { DECIMAL_DIALECTS } from './dialect.ts'
import { type Figure, plainFigure, wordFigure } from './figure.ts'
import { canBeShown, decimalText, trimZeros } from './rounding.ts'

/** Units of fields that no shop chooses. */
export type DecimalUnit = keyof typeof DECIMAL_DIALECTS

const MARKS: Readonly<Record<DecimalUnit, string>> = { percent: '%', newton: 'N', gigapascal: 'GPa' }

/** A decimal number with its unit as a figure, to 0.01, with no more decimals than it has: 15%, 12.5 GPa, 400 N. */
export function formatDecimal(amount: number, unit: DecimalUnit): Figure {
  if (!canBeShown(amount)) return wordFigure('none')
  return plainFigure(amount, trimZeros(trimZeros(decimalText(Math.abs(amount), 2), 1), 0), MARKS[unit])
}
