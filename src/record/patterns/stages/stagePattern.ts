import type { NumberKey } from '../../../core/catalogue.ts'
import type { CautionKey } from '../cautions.ts'
import type { FixtureKey } from '../fixtureKeys.ts'
import type { PartKey } from '../partKeys.ts'
import type { StageKey } from '../stages.ts'

/** Which drawing stands beside a stage, by the name it has in drawing/. */
export const STAGE_DRAWINGS = [
  'plan',
  'side',
  'section',
  'domes',
  'blankTreble',
  'bevels',
  'blockTail',
  'blockNeck',
  'rosette',
  'bracingTop',
  'bracingBack',
  'edgeSection',
  'fretboard',
  'strings',
  'neckSet',
  'bridge',
  'bridgeSection',
  'neckSide',
  'head',
] as const
export type StageDrawing = (typeof STAGE_DRAWINGS)[number]

/** What a stage is built to. */
export interface StageFigures {
  /** What the stage is built to, in the order the hand reaches it. */
  readonly numbers: readonly NumberKey[]
  /** Those of them to look up only: no box waits for a reading. */
  readonly lookUp: readonly NumberKey[]
}

/** How long something takes, in hours: at best, as a rule, at worst. */
export interface Span {
  readonly low: number
  readonly likely: number
  readonly high: number
}

export interface FixtureUse {
  readonly fixture: FixtureKey
  /** working: only while hands are on it; setting: while it sets or dries too; until: from this stage on until the named one is done. */
  readonly held: 'working' | 'setting' | 'until'
  readonly until: StageKey | null
}

/**
 * What a stage takes. Hours, waits and what is held are common practice from memory, without a source: a shop's own times go before them,
 * and the label of what sets or dries before any wait.
 */
export interface StageWork {
  /** Hands on it, each time. */
  readonly handsH: Span
  /** After that, left alone, each time; zeros: it goes on at once. */
  readonly waitH: Span
  /** How often hands and wait are repeated: coats. */
  readonly times: number
  /** What has to be done before. */
  readonly after: readonly StageKey[]
  readonly fixtures: readonly FixtureUse[]
  /** What has to have arrived. */
  readonly parts: readonly PartKey[]
  /** Only while the shop is at its building humidity. */
  readonly inHumidity: boolean
  /** Not to be broken off once begun. */
  readonly oneSitting: boolean
}

export interface StagePattern extends StageFigures, StageWork {
  readonly cautions: readonly CautionKey[]
  readonly drawings: readonly StageDrawing[]
  /** The stage whose work includes this one where it is not in the instrument's order: its numbers are then printed there. null: it stands alone. */
  readonly within: StageKey | null
}

/** What a stage is built to; what it has none of is left out. */
export const figures = (pattern: Partial<StageFigures>): StageFigures => ({
  numbers: [],
  lookUp: [],
  ...pattern,
})

export const span = (low: number, likely: number, high: number): Span => ({ low, likely, high })
export const NO_TIME: Span = span(0, 0, 0)

/** What a stage takes; what it has none of is left out. */
export const work = (
  handsH: Span,
  after: readonly StageKey[],
  rest: Partial<Omit<StageWork, 'handsH' | 'after'>> = {},
): StageWork => ({
  handsH,
  waitH: NO_TIME,
  times: 1,
  after,
  fixtures: [],
  parts: [],
  inHumidity: false,
  oneSitting: false,
  ...rest,
})

/** Fixtures that are free again as soon as hands leave the work. */
export const working = (...fixtures: readonly FixtureKey[]): FixtureUse[] =>
  fixtures.map((fixture) => ({ fixture, held: 'working', until: null }))
/** Fixtures that stay on the work while it sets or dries. */
export const setting = (...fixtures: readonly FixtureKey[]): FixtureUse[] =>
  fixtures.map((fixture) => ({ fixture, held: 'setting', until: null }))
/** A fixture that stays with the instrument through all stages until this one is done. */
export const held = (fixture: FixtureKey, until: StageKey): FixtureUse => ({ fixture, held: 'until', until })
