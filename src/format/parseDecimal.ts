import { DECIMAL_DIALECTS } from './dialect.ts'
import type { DecimalProblem } from './entryProblem.ts'
import type { DecimalUnit } from './formatDecimal.ts'
import { parseEntry } from './parseEntry.ts'

export type ParsedDecimal =
  | { readonly ok: true; readonly amount: number }
  | { readonly ok: false; readonly problem: DecimalProblem }

/**
 * The decimal number a maker typed, in percent, degrees Celsius, newtons, gigapascals, hertz or grams a metre: 12.5, 12,5, 15 %, 20 °C, 400 N, 0.4 kN, 12 GPa,
 * 12000 MPa, 440 Hz, 6.28 g/m, and small sums of these. Whether it suits the field is for the record to say.
 */
export function parseDecimal(text: string, unit: DecimalUnit): ParsedDecimal {
  // The stroke of g/m belongs to the unit, not to a sum.
  return parseEntry(unit === 'gramsPerMetre' ? text.replace(/g\s*\/\s*m\b/giu, 'g') : text, DECIMAL_DIALECTS[unit])
}
