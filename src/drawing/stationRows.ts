import type { RimRow, TrebleRow } from '../core/instrument/rim.ts'
import type { Numbers } from '../core/numbers.ts'
import type { StationList } from './drawing.ts'

/** Stations of the rim. */
type RimList = Exclude<StationList, 'frets' | 'braces' | 'pieces'>

const MOST_STATIONS = 64

/** A station with its place in the table it comes from. */
export interface StationRow {
  readonly list: RimList
  readonly row: number
  readonly at: RimRow
  /** First or last of its piece of wood. */
  readonly isEnd: boolean
}

/** The stations a drawing shows of the bass side: all of them, or where they stand too close every second, fifth, tenth; both ends always. */
export const stationRows = ({ rim }: Numbers): StationRow[] =>
  thinned('rim', rim, (row) => row === 0 || row === rim.length - 1)

/** The same of the treble side: those of the bass side where it is its mirror; else its own, both ends of each piece among them. */
export function trebleStationRows(numbers: Numbers): StationRow[] {
  const { trebleRim } = numbers
  if (trebleRim.length === 0) return stationRows(numbers)
  const blankOf = (row: number) => trebleRim[row]?.blank
  return thinned(
    'trebleRim',
    trebleRim,
    (row) => blankOf(row - 1) !== blankOf(row) || blankOf(row + 1) !== blankOf(row),
  )
}

/** Stations of one blank of a treble side of its own, counted from 1 as in the table. */
export const onBlank = (rows: readonly StationRow[], blank: number): StationRow[] =>
  rows.filter(({ at }) => (at as TrebleRow).blank === blank)

function thinned(list: RimList, rows: readonly RimRow[], isEnd: (row: number) => boolean): StationRow[] {
  const step = STEPS.find((every) => rows.length / every <= MOST_STATIONS) ?? Math.ceil(rows.length / MOST_STATIONS)
  return rows.flatMap((at, row) => (row % step === 0 || isEnd(row) ? [{ list, row, at, isEnd: isEnd(row) }] : []))
}
const STEPS = [1, 2, 5, 10, 20, 50]
