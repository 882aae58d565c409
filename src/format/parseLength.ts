import type { LengthQuantity, ShopUnits } from '../core/quantity.ts'
import { lengthDialect } from './dialect.ts'
import type { LengthProblem } from './entryProblem.ts'
import { parseEntry } from './parseEntry.ts'

export type ParsedLength =
  | { readonly ok: true; readonly mm: number }
  | { readonly ok: false; readonly problem: LengthProblem }

/**
 * The length a maker typed, in mm: with or without a unit, feet and inches, fractions of an inch, decimals with a point or a comma,
 * and small sums. Without a unit it is in the shop's unit for this kind of length. At most 1e9 mm either way; whether it suits the
 * field is for the record to say. The inch is 25.4 mm exactly (NIST SP 811).
 */
export function parseLength(text: string, quantity: LengthQuantity, units: ShopUnits): ParsedLength {
  const entry = parseEntry(text, lengthDialect(quantity, units))
  return entry.ok ? { ok: true, mm: entry.amount } : entry
}
