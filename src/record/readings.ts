import type { HalfWidthReading, HalfWidthsPlan } from '../core/plan.ts'
import type { ShopUnits } from '../core/quantity.ts'
import { MM_PER_INCH } from '../core/units/length.ts'
import { MOST_END_READINGS, MOST_READINGS } from './fields.ts'

/** The lists a body is read into: along the centreline, and across it near either end. */
export type ReadingList = Extract<keyof HalfWidthsPlan, 'rows' | 'tailRows' | 'neckRows'>

export const MOST_IN_LIST: Readonly<Record<ReadingList, number>> = {
  rows: MOST_READINGS,
  tailRows: MOST_END_READINGS,
  neckRows: MOST_END_READINGS,
}

/** Order of two readings outward from the line of their end; at one distance the one further in comes first. */
export const compareOutward = (list: ReadingList, [a, halfA]: HalfWidthReading, [b, halfB]: HalfWidthReading): number =>
  (list === 'neckRows' ? b - a : a - b) || halfA - halfB

/** Readings by rising distance from the tail; of those at one distance the narrower comes first. */
export const sortReadings = (readings: readonly HalfWidthReading[]): HalfWidthReading[] =>
  readings.toSorted((a, b) => compareOutward('rows', a, b))

/** The reading a maker took at a distance from the line of its own end, mm: the neck joint for the neck end, else the tail. */
export const readingFrom = (
  list: ReadingList,
  distanceMm: number,
  halfWidthMm: number,
  lengthMm: number,
): HalfWidthReading => [list === 'neckRows' ? lengthMm - distanceMm : distanceMm, halfWidthMm]

/** How far a reading lies from the line of its own end, mm. */
export const distanceFromEndMm = (list: ReadingList, [fromTailMm]: HalfWidthReading, lengthMm: number): number =>
  list === 'neckRows' ? lengthMm - fromTailMm : fromTailMm

/** Below what is shown of a departure, mm. */
const UNSEEN_MM = 0.005

/** Whether a reading lies further off the curve than it was read to, by as much as can be shown. */
export const isOver = (departureMm: number, readToMm: number): boolean => Math.abs(departureMm) > readToMm + UNSEEN_MM

/** Where the next reading is likely taken, mm: one more step like the last one; 20 mm, or an inch, where there is none to go by. */
export function nextStepMm(givenMm: readonly number[], bodyLength: ShopUnits['bodyLength']): number {
  const [last, before] = givenMm.toReversed()
  const stepMm = last !== undefined && before !== undefined ? last - before : 0
  return (last ?? 0) + (stepMm > 0 ? stepMm : bodyLength === 'mm' ? 20 : MM_PER_INCH)
}
