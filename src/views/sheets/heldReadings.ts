import type { HalfWidthReading } from '../../core/plan.ts'
import { compareOutward, distanceFromEndMm, type ReadingList, readingFrom } from '../../record/readings.ts'

/** A reading as it stands on the sheet: under one id while it moves, at the distance that was typed. */
export interface HeldReading {
  readonly id: number
  readonly distanceMm: number
  readonly reading: HalfWidthReading
}

/** A list of readings on the sheet. The row being written stays where it is, wherever the record sorts it meanwhile. */
export interface HeldList {
  readonly list: ReadingList
  /** What the record held when the rows were last laid out from it. */
  readonly stored: readonly HalfWidthReading[]
  readonly lengthMm: number
  readonly rows: readonly HeldReading[]
  readonly nextId: number
}

export const readingsOf = (rows: readonly HeldReading[]): HalfWidthReading[] => rows.map(({ reading }) => reading)

/** Rows outward from the line of their end; at one distance the one further in comes first. */
export const sortHeld = (list: ReadingList, rows: readonly HeldReading[]): HeldReading[] =>
  rows.toSorted((a, b) => compareOutward(list, a.reading, b.reading))

export const isSorted = ({ list, rows }: HeldList): boolean => sortHeld(list, rows).every((row, i) => row === rows[i])

/** The row with one of its lengths replaced. */
export function changeHeld(
  { list, lengthMm }: HeldList,
  row: HeldReading,
  distanceMm: number,
  halfWidthMm: number,
): HeldReading {
  return { id: row.id, distanceMm, reading: readingFrom(list, distanceMm, halfWidthMm, lengthMm) }
}

export const holdReadings = (list: ReadingList, stored: readonly HalfWidthReading[], lengthMm: number): HeldList =>
  holdAgain({ list, stored, lengthMm, rows: [], nextId: 0 }, stored, lengthMm)

/**
 * The rows after the record or the body length has moved: as they stand if the record only says the same, else laid out anew, a row
 * that says the same under its old id and the rest under those that are left, in order.
 */
export function holdAgain(before: HeldList, stored: readonly HalfWidthReading[], lengthMm: number): HeldList {
  const { list } = before
  if (lengthMm === before.lengthMm && isSame(readingsOf(before.rows), stored)) return { ...before, stored }
  const left = [...before.rows]
  const takeLeft = (at: number): HeldReading | undefined => (at < 0 ? undefined : left.splice(at, 1)[0])
  const kept = stored.map((reading) => takeLeft(left.findIndex((row) => isSameReading(row.reading, reading))))
  let { nextId } = before
  const rows = stored.map((reading, i): HeldReading => {
    const same = kept[i]
    if (same !== undefined && lengthMm === before.lengthMm) return same
    const id = same?.id ?? takeLeft(left.length > 0 ? 0 : -1)?.id ?? nextId++
    return { id, distanceMm: distanceFromEndMm(list, reading, lengthMm), reading }
  })
  return { list, stored, lengthMm, rows: sortHeld(list, rows), nextId }
}

const isSameReading = (a: HalfWidthReading, b: HalfWidthReading | undefined): boolean =>
  a[0] === b?.[0] && a[1] === b[1]

function isSame(a: readonly HalfWidthReading[], b: readonly HalfWidthReading[]): boolean {
  if (a.length !== b.length) return false
  const left = [...b]
  return a.every((reading) => {
    const at = left.findIndex((other) => isSameReading(reading, other))
    if (at >= 0) left.splice(at, 1)
    return at >= 0
  })
}
