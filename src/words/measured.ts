import type { InverseName } from '../core/asBuilt/inverses.ts'
import type { EntryProblem } from '../format/entryProblem.ts'

/** How far a reading is off what was asked. */
export const VERDICT_WORDS = {
  even: 'as asked',
  over: (by: string): string => `${by} over`,
  short: (by: string): string => `${by} short`,
  withinBy: (by: string): string => `within, ${by}`,
} as const

/** Why a text read at the bench was not taken, in one sentence; `example` is one that would be. */
export function readProblem(called: string, problem: EntryProblem, example: string): string {
  switch (problem.code) {
    case 'empty':
      return `${called} is empty. Write it like ${example}.`
    case 'unreadable':
      return `${called}: “${problem.at.length > 24 ? `${problem.at.slice(0, 24)}…` : problem.at}” makes no sense here. Write it like ${example}.`
    case 'unfinished':
      return `${called} stops half way: a number is missing at the end. Write it like ${example}.`
    case 'ambiguous':
      return `${called} can mean two things. Which is it?`
    case 'divideByZero':
      return `${called} divides by nothing. Write it like ${example}.`
    case 'wrongKind':
      return `${called} does not come out as a single measure. Write it like ${example}.`
    case 'tooLong':
      return `${called} is longer than ${problem.limit} characters. Write it like ${example}.`
    case 'tooLarge':
      return `${called} is far too large. Look at the point and the unit.`
  }
}

/** A reading no gauge of the bench shows. */
export const outOfReach = (called: string, understood: string): string =>
  `${called} cannot be ${understood}. Look at the point, the sign and the unit.`

/** The page of everything that was measured. */
export const READINGS_PAGE_WORDS = {
  title: 'What was measured?',
  lead: 'What was read stands in the place of what was planned, and every number after it follows. The plan keeps what it says.',
  empty: 'Nothing has been measured yet.',
  emptyHow:
    'Read a depth, and the linings, braces and neck are worked out anew from the box as it came out. Readings are stored at the bench, or typed in from a sheet.',
  toTypeIn: 'Type a sheet in',
  emptyPicture: 'A rim with its planned depth, a deeper one as read, and the sheets after it marked.',
  planned: 'planned',
  read: 'read',
  count: (count: number): string => `${count} ${count === 1 ? 'reading' : 'readings'}`,
  taking: (count: number): string =>
    count === 0
      ? 'no field of the plan gave way'
      : `${count} ${count === 1 ? 'field of the plan gave way' : 'fields of the plan gave way'}`,
  readAs: 'Read',
  asked: 'Asked when read',
  off: 'Off by',
  counts: 'Counts',
  countsNamed: (called: string): string => `${called}: counts`,
  correct: 'Correct',
  correctNamed: (called: string): string => `Correct ${called}`,
  withdraw: 'Withdraw',
  withdrawNamed: (called: string): string => `Withdraw ${called}`,
  corrected: 'Corrected to',
  field: (called: string): string => `${called}, read anew`,
  store: 'Store',
  cancel: 'Leave it',
  noStage: 'no stage',
  withGauge: (gauge: string): string => `with ${gauge}`,
  sides: { bass: 'bass side', treble: 'treble side', whole: '' },
  alongRim: (figure: string): string => `${figure} from the tail, round the outside`,
  ring: (place: number): string => `ring ${place}`,
  goneRing: 'a ring that is gone',
} as const

/** What a reading is turned into; `fields` by name. */
export const INVERSE_WORDS: Readonly<Record<InverseName, (fields: string) => string>> = {
  itself: (fields) => `Takes the place of the plan’s ${fields}.`,
  degrees: (fields) => `Takes the place of the plan’s ${fields}.`,
  flatSlope: (fields) => `The flat falls as it was read: ${fields}, now entered.`,
  closedBox: (fields) => `The depth of the rim, read from the closed box less its plates: ${fields}.`,
  endDepths: (fields) => `The depth of the rim at its end: ${fields}.`,
  rimDepths: (fields) => `Depths of tail and neck that come nearest to all that was read round the rim: ${fields}.`,
  topGaps: (fields) => `The dome that leaves such gaps under a straightedge: ${fields}.`,
  backGaps: (fields) => `The dish that leaves such gaps under a straightedge: ${fields}.`,
  neckStands: (fields) => `The neck stands as it was read, and the saddle takes up the rest: ${fields}.`,
  boardWidth: (fields) => `The board as wide as that, along its own taper: ${fields}.`,
  fretPlaces: (fields) => `The scale whose frets come nearest to these places: ${fields}.`,
  channel: (fields) => `The rings stand proud by what the channel is short of the inlay: ${fields}.`,
  rings: () => 'The ring as it was read.',
}

/** Why a reading does not stand in the place of anything planned. */
export const NOT_RULING_WORDS = {
  asPlanned: (fields: string): string => `As planned: ${fields} stays as it is.`,
  overruled: (fields: string): string => `A later reading speaks of the same: ${fields}.`,
  outside: (fields: string, range: string): string =>
    `Not used: ${fields} cannot come out like that${range === '' ? '' : `. It may be ${range}`}. Look whether it was read or typed wrong.`,
  off: (fields: string): string => `Turned off: ${fields} stays as planned.`,
  again: 'Read again since.',
  record: 'For the record: no field of the plan follows from it.',
} as const

/** Typing in what is pencilled on a printed sheet. */
export const TYPE_IN_WORDS = {
  title: 'What is pencilled on the sheet?',
  lead: 'The boxes of one stage in the order of its printed sheet. Enter goes on to the next. What is typed is kept until it is stored.',
  stage: 'Stage',
  stageChoice: (place: number, title: string, isDone: boolean): string =>
    `${place}  ${title}${isDone ? ' (signed off)' : ''}`,
  gauge: 'Read with (may stay empty)',
  target: 'Target',
  within: (by: string): string => `± ${by}`,
  bass: 'Bass',
  treble: 'Treble',
  whole: 'Measured',
  noBoxes: 'Nothing is measured at this stage. Choose another.',
  noStages: 'This instrument has no stages. Bring some into its building order first.',
  store: (count: number): string =>
    count === 0 ? 'Store readings' : count === 1 ? 'Store 1 reading' : `Store ${count} readings`,
  stored: (count: number): string => `${count} ${count === 1 ? 'reading is' : 'readings are'} stored.`,
  left: (count: number): string =>
    `${count} ${count === 1 ? 'box cannot be read: its reason stands beside it' : 'boxes cannot be read: their reasons stand beside them'}.`,
  nothing: 'No box has a reading yet.',
  readBefore: (figure: string): string => `read ${figure}`,
  refused: 'Nothing was stored: this instrument is being written in another tab.',
  box: (name: string, row: string, side: string): string => [name, row, side].filter((part) => part !== '').join(', '),
} as const
