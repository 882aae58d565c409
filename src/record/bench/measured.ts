import { latestReadings, type Reading } from '../../core/asBuilt/reading.ts'
import type { Figure } from '../../core/figure.ts'
import type { CommissionRecord, Fact } from '../commission.ts'
import type { EditMeta } from '../edit.ts'
import { headOfFact, standingFacts } from '../facts.ts'

export type ReadingFact = Extract<Fact, { kind: 'reading' }>

/** What a maker read at the bench, before it is a fact. */
export interface NewReading extends Omit<Reading, 'id'> {
  readonly stageId: string | null
  readonly typed: string
  readonly gauge: string
  readonly planned: Figure
  readonly replaces: string | null
}

/** A reading as a fact, with the time and the device. */
export const recordReading = (row: CommissionRecord, reading: NewReading, meta: EditMeta): ReadingFact => ({
  kind: 'reading',
  ...headOfFact(row, meta),
  ...reading,
})

/** Says whether a reading takes the planned value's place. */
export const switchReading = (row: CommissionRecord, of: string, used: boolean, meta: EditMeta): Fact => ({
  kind: 'readingUse',
  ...headOfFact(row, meta),
  of,
  used,
})

/** A reading that stands, with what became of it. */
export interface Measured extends ReadingFact {
  /** Not turned off by the maker. */
  readonly isUsed: boolean
  /** The last one of its place: earlier ones are kept, and rule nothing. */
  readonly isLatest: boolean
}

/** All readings that stand, in the order of the log. */
export function measured(facts: readonly Fact[]): readonly Measured[] {
  const standing = standingFacts(facts)
  const readings = standing.filter((one): one is ReadingFact => one.kind === 'reading')
  const off = new Map<string, boolean>()
  for (const one of standing) if (one.kind === 'readingUse') off.set(one.of, !one.used)
  const corrected = new Set(readings.flatMap(({ replaces }) => replaces ?? []))
  const latest = new Set(latestReadings(readings))
  return readings.map((one) => ({
    ...one,
    isUsed: off.get(one.id) !== true,
    isLatest: latest.has(one) && !corrected.has(one.id),
  }))
}

/** Readings that take the planned value's place, in the order they were taken. */
export const readingsInUse = (facts: readonly Fact[]): readonly ReadingFact[] =>
  measured(facts).filter(({ isUsed, isLatest }) => isUsed && isLatest)
