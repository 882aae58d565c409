import type { DECIMAL_DIALECTS } from './dialect.ts'
import { type Figure, plainFigure, wordFigure } from './figure.ts'
import { canBeShown, decimalText, trimZeros } from './rounding.ts'

/** Units of fields that no shop chooses. */
export type DecimalUnit = keyof typeof DECIMAL_DIALECTS

const MARKS: Readonly<Record<DecimalUnit, string>> = {
  percent: '%',
  celsius: '°C',
  newton: 'N',
  gigapascal: 'GPa',
  hertz: 'Hz',
  gramsPerMetre: 'g/m',
}

/** Linear masses of thin strings need more digits than the rest. */
const placesOf = (unit: DecimalUnit): number => (unit === 'gramsPerMetre' ? 4 : 2)

/** A decimal number with its unit as a figure, to 0.01 (linear masses to 0.0001), with no more decimals than it has: 15%, 12.5 GPa, 400 N. */
export function formatDecimal(amount: number, unit: DecimalUnit): Figure {
  if (!canBeShown(amount)) return wordFigure('none')
  return plainFigure(amount, trimZeros(trimZeros(decimalText(Math.abs(amount), placesOf(unit)), 1), 0), MARKS[unit])
}
