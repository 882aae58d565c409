import Fraction from 'fraction.js'
import type { Dialect, Unit } from './dialect.ts'
import type { EntryProblem } from './entryProblem.ts'
import { parseEntry } from './parseEntry.ts'

const second: Unit = { mark: ' s', size: new Fraction(1), family: 'time', below: null }
const minute: Unit = { mark: ' min', size: new Fraction(60), family: 'time', below: second }
const hour: Unit = { mark: ' h', size: new Fraction(3600), family: 'time', below: minute }
const day: Unit = { mark: ' d', size: new Fraction(86_400), family: 'time', below: hour }

const UNITS: Dialect['units'] = new Map(
  (
    [
      [day, 'd day days'],
      [hour, 'h hr hrs hour hours'],
      [minute, 'm min mins minute minutes'],
      [second, 's sec secs second seconds'],
    ] as const
  ).flatMap(([unit, names]) => names.split(' ').map((name) => [name, unit] as const)),
)

const BARE = { hours: () => hour, minutes: () => minute } as const

/** What a number without a unit counts. */
export type DurationUnit = keyof typeof BARE

export type ParsedDuration =
  | { readonly ok: true; readonly seconds: number }
  | { readonly ok: false; readonly problem: EntryProblem }

/** The length of time a maker typed: 12, 1.5, 1 h 30 min, 90 min, 2 d. An empty entry is refused as empty; a comma is the decimal sign. */
export function parseDuration(text: string, bare: DurationUnit): ParsedDuration {
  const read = parseEntry(text, {
    units: UNITS,
    bareUnit: BARE[bare],
    fractionUnit: null,
    asksMixed: false,
    comma: 'decimal',
    allowsRadiusMark: false,
  })
  return read.ok ? { ok: true, seconds: read.amount } : read
}
