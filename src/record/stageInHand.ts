import type { NumberKey } from '../core/catalogue.ts'
import type { CommissionDoc } from './commission.ts'
import { inOrder } from './order.ts'
import type { CautionKey } from './patterns/cautions.ts'
import { figuresOfStage } from './patterns/figuresOfStage.ts'
import { patternOf } from './patterns/stagePatterns.ts'
import { type FixtureUse, NO_TIME, type Span, type StagePattern } from './patterns/stages/stagePattern.ts'
import type { Family, StageKey } from './patterns/stages.ts'
import { heldUntil } from './patterns/stagesWithin.ts'
import { workWithin } from './patterns/workWithin.ts'
import { afterOf, keysOf, type Stages, usualAfter } from './stageLinks.ts'
import type { OwnStage, StageEntry } from './stageSchema.ts'

export interface FixtureInHand {
  /** A fixture of the house's list, or one in the maker's own words. */
  readonly fixture: string
  readonly held: FixtureUse['held']
  /** Until which stage of this order it is held, by id; null: until its own has set. */
  readonly until: string | null
}

/** What a stage takes and is built to: all that a maker may say otherwise than the house, besides what it is called and what is done. */
export interface StageTerms {
  /** Hands on it, hours, each time. */
  readonly handsH: Span
  /** Left alone after that, hours, each time. */
  readonly waitH: Span
  readonly times: number
  /** Ids of stages of this order that have to be done before. */
  readonly after: readonly string[]
  readonly fixtures: readonly FixtureInHand[]
  readonly parts: readonly string[]
  readonly numbers: readonly NumberKey[]
  readonly lookUp: readonly NumberKey[]
  readonly cautions: readonly CautionKey[]
  readonly inHumidity: boolean
  readonly oneSitting: boolean
}

/** A stage of one instrument as its maker has it in hand: the pattern, what its family does otherwise, and what is the maker's own. */
export interface StageInHand extends StageTerms {
  readonly id: string
  /** Counted from 1 in the building order. */
  readonly place: number
  readonly key: StageKey
  /** What the maker calls it; null: as the house does. */
  readonly title: string | null
  /** What there is to do in the maker's words, line by line; null: as the house says. */
  readonly note: readonly string[] | null
  /** What the maker has said otherwise than the pattern. */
  readonly own: OwnStage
  /** Stages it needs that stand later in the order, by id. */
  readonly standsBefore: readonly string[]
}

const NOTHING_OWN: OwnStage = {}

/** All stages of an instrument in building order. Never fails: what a stage names that is not there is left out. */
export function stagesInHand(doc: Pick<CommissionDoc, 'stages' | 'family'>): readonly StageInHand[] {
  const { stages, family } = doc
  const after = afterOf(stages, family)
  const ordered = inOrder(stages)
  const places = new Map(ordered.map(([id], at) => [id, at + 1]))
  const keys = keysOf(stages)
  return ordered.map(([id, entry], at) => {
    const before = after.get(id) ?? []
    return {
      ...termsOf(stages, keys, family, entry),
      ...ownTerms(entry, stages),
      after: before,
      id,
      place: at + 1,
      key: entry.key,
      title: entry.own?.title ?? null,
      note: entry.own?.note === undefined ? null : noteLines(entry.own.note),
      own: entry.own ?? NOTHING_OWN,
      standsBefore: before.filter((other) => (places.get(other) ?? 0) > at + 1),
    }
  })
}

/** What a stage would take and be built to if its maker had said nothing; null where it is not in the order. */
export function usualTerms(
  { stages, family }: Pick<CommissionDoc, 'stages' | 'family'>,
  id: string,
): StageTerms | null {
  const entry = stages[id]
  if (entry === undefined) return null
  return { ...termsOf(stages, keysOf(stages), family, entry), after: usualAfter(stages, family, id) }
}

/** The lines of a note, blank ones left out. */
export const noteLines = (note: string): readonly string[] =>
  note
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')

function termsOf(
  stages: Stages,
  keys: readonly StageKey[],
  family: Family,
  { key }: StageEntry,
): Omit<StageTerms, 'after'> {
  const parts = workWithin(key, keys, family).map((part) => patternOf(part, family))
  const own = patternOf(key, family)
  const isWhole = parts.length > 1
  return {
    ...figuresOfStage(key, keys),
    handsH: isWhole ? total(parts, 'handsH') : own.handsH,
    waitH: isWhole ? total(parts, 'waitH') : own.waitH,
    times: isWhole ? 1 : own.times,
    fixtures: parts.flatMap(({ fixtures }) =>
      fixtures.map((use) => ({ fixture: use.fixture, held: use.held, until: untilId(use, stages, keys) })),
    ),
    parts: [...new Set(parts.flatMap((part) => part.parts))],
    cautions: own.cautions,
    inHumidity: parts.some((part) => part.inHumidity),
    oneSitting: parts.some((part) => part.oneSitting),
  }
}

function ownTerms({ own }: StageEntry, stages: Stages): Partial<StageTerms> {
  if (own === undefined) return NOTHING_OWN
  const { title: _title, note: _note, after: _after, fixtures, ...rest } = own
  if (fixtures === undefined) return rest
  return {
    ...rest,
    fixtures: fixtures.map((use) => ({
      ...use,
      until: use.until !== null && stages[use.until] !== undefined ? use.until : null,
    })),
  }
}

function untilId(use: FixtureUse, stages: Stages, keys: readonly StageKey[]): string | null {
  const last = heldUntil(use, keys)
  return last === null ? null : (inOrder(stages).findLast(([, { key }]) => key === last)?.[0] ?? null)
}

/** Hands or waits of finer stages, one after the other, each as often as it is repeated. */
function total(parts: readonly StagePattern[], of: 'handsH' | 'waitH'): Span {
  const add = (sum: Span, { times, [of]: span }: StagePattern): Span => ({
    low: sum.low + span.low * times,
    likely: sum.likely + span.likely * times,
    high: sum.high + span.high * times,
  })
  return parts.reduce(add, NO_TIME)
}
