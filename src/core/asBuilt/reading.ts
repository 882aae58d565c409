import type { NumberKey } from '../numbers.ts'

/** What was measured of one number, in the unit the number has: mm, rad. */
export interface Reading {
  readonly id: string
  readonly number: NumberKey
  /** Which row of its list, from 0; 0 where it stands once. */
  readonly row: number
  /** Where it was read; 'whole' where the two halves are one. */
  readonly side: (typeof READING_SIDES)[number]
  readonly value: number
  /** For a place round the rim: along the outer face from the tail, so that it stays there when the stations move. */
  readonly alongMm: number | null
  /** The entry of a collection it belongs to (a ring): so that it stays there when others come and go. */
  readonly entry: string | null
}

export const READING_SIDES = ['whole', 'bass', 'treble'] as const

/** Where a number is read, or was. */
export type ReadingPlace = Omit<Reading, 'id' | 'value'>

/** True where two readings are of the same place of the same number: then the later one counts. A reading of the whole is one of either half. */
export const samePlace = (a: ReadingPlace, b: ReadingPlace): boolean =>
  a.number === b.number &&
  (a.side === b.side || a.side === 'whole' || b.side === 'whole') &&
  (a.entry !== null || b.entry !== null
    ? a.entry === b.entry
    : a.alongMm !== null && b.alongMm !== null
      ? Math.abs(a.alongMm - b.alongMm) < SAME_PLACE_MM
      : a.row === b.row)

/** Round the rim a rule is not laid twice at the very same place. */
const SAME_PLACE_MM = 0.5

/** The readings that count, in the order they were taken: the last one of every place. */
export function latestReadings<R extends Reading>(readings: readonly R[]): readonly R[] {
  return readings.filter((one, i) => !readings.slice(i + 1).some((later) => samePlace(one, later)))
}

/** The middle of what both halves show. */
export function meanValue(readings: readonly Reading[]): number {
  return readings.reduce((sum, { value }) => sum + value, 0) / readings.length
}
