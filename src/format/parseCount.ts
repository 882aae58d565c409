import { COUNT_DIALECT } from './dialect.ts'
import type { CountProblem } from './entryProblem.ts'
import { parseEntry } from './parseEntry.ts'

export type ParsedCount =
  | { readonly ok: true; readonly count: number }
  | { readonly ok: false; readonly problem: CountProblem }

/** The whole number a maker typed, or summed up (12 + 3); anything with a part left over is refused as not whole. */
export function parseCount(text: string): ParsedCount {
  const entry = parseEntry(text, COUNT_DIALECT)
  if (!entry.ok) return entry
  return Number.isInteger(entry.amount)
    ? { ok: true, count: entry.amount }
    : { ok: false, problem: { code: 'notWhole' } }
}
