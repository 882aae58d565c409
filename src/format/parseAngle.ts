import { ANGLE_DIALECT } from './dialect.ts'
import type { AngleProblem } from './entryProblem.ts'
import { parseEntry } from './parseEntry.ts'

export type ParsedAngle =
  | { readonly ok: true; readonly deg: number }
  | { readonly ok: false; readonly problem: AngleProblem }

/** The angle a maker typed, in degrees: 1.312, 1,312, 1.5°, 1.5 deg, 1°30', 1 1/2, and small sums of these. */
export function parseAngle(text: string): ParsedAngle {
  const entry = parseEntry(text, ANGLE_DIALECT)
  return entry.ok ? { ok: true, deg: entry.amount } : entry
}
