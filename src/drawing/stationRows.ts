import type { Numbers } from '../core/numbers.ts'
import type { RimRow } from '../core/instrument/rim.ts'

const MOST_STATIONS = 64

/** The stations a drawing shows, with their place in the table: all of them, or where they stand too close every second, fifth, tenth; both ends always. */
export function stationRows({ rim }: Numbers): { readonly row: number; readonly at: RimRow }[] {
  const step = STEPS.find((every) => rim.length / every <= MOST_STATIONS) ?? Math.ceil(rim.length / MOST_STATIONS)
  return rim.flatMap((at, row) => (row % step === 0 || row === rim.length - 1 ? [{ row, at }] : []))
}
const STEPS = [1, 2, 5, 10, 20, 50]
