import type { Duration } from '../format/formatHours.ts'
import type { StageKey } from '../record/patterns/stages.ts'
import {
  BACK_TITLES,
  BOARD_TITLES,
  BOX_TITLES,
  FINISH_TITLES,
  NECK_TITLES,
  RIM_TITLES,
  SET_UP_TITLES,
  TOP_TITLES,
  WOOD_TITLES,
} from './stageTitles.ts'

/** Parts of the work, as hours are told by them; work of the maker's own is the last. */
export const WORK_PARTS = ['wood', 'rim', 'top', 'back', 'box', 'neck', 'board', 'finish', 'setUp', 'own'] as const
export type WorkPart = (typeof WORK_PARTS)[number]

const TITLES: Readonly<Record<Exclude<WorkPart, 'own'>, object>> = {
  wood: WOOD_TITLES,
  rim: RIM_TITLES,
  top: TOP_TITLES,
  back: BACK_TITLES,
  box: BOX_TITLES,
  neck: NECK_TITLES,
  board: BOARD_TITLES,
  finish: FINISH_TITLES,
  setUp: SET_UP_TITLES,
}

/** The part of the work a stage of the house belongs to. */
export const partOfStage = (key: StageKey): WorkPart =>
  key === 'ownWork' ? 'own' : (WORK_PARTS.find((part) => part !== 'own' && key in TITLES[part]) ?? 'own')

const duration = ({ amount, unit }: Duration): string =>
  unit === 'day' ? `${amount} ${amount === '1' ? 'day' : 'days'}` : `${amount}\u00a0${unit}`

export interface DurationSpan {
  readonly low: Duration
  readonly likely: Duration
  readonly high: Duration
}
const spanned = ({ low, likely, high }: DurationSpan): string =>
  `${duration(likely)} (${low.unit === high.unit || low.amount === '0' ? low.amount : duration(low)} to ${duration(high)})`
const repeated = (of: DurationSpan, times: number): string => (times === 1 ? '' : `${times}\u00a0× `) + spanned(of)
const stages = (count: number): string => (count === 1 ? 'one stage' : `${count} stages`)

/** The place where the stages of an instrument are ordered, timed and signed off. */
export const STAGES_PLACE_WORDS = {
  title: 'What has been done?',
  lead: 'Signing a stage off keeps the numbers it was built to, as evidence. Taking it back erases nothing.',
  parts: {
    wood: 'Wood, sides',
    rim: 'Rim',
    top: 'Top',
    back: 'Back',
    box: 'Box',
    neck: 'Neck',
    board: 'Board, bridge',
    finish: 'Finish',
    setUp: 'Setting up',
    own: 'Your own',
  },
  hoursHead: 'Hours',
  spent: 'done',
  left: 'likely left',
  allParts: 'All',
  hours: (of: Duration): string => duration(of),
  hands: repeated,
  noHands: 'not said',
  spentOn: (of: Duration): string => `${duration(of)} done`,
  wait: (of: DurationSpan, times: number, advice: string): string => `${repeated(of, times)}, ${advice}`,
  columns: { stage: 'Stage', hands: 'Hands on', wait: 'Wait', stands: 'Stands' },

  toDo: 'to do',
  next: 'next',
  runningSince: (moment: string): string => `clock runs since ${moment}`,
  sharedBy: (count: number): string => (count === 1 ? '' : `, shared by ${count}`),
  doneOn: (day: string): string => `done ${day}`,
  again: 'to be done again',

  standsBefore: (titles: readonly string[]): string =>
    `Comes before ${titles.map((title) => `“${title}”`).join(' and ')}, which it needs.`,
  heldUntil: (fixture: string, title: string, place: number): string => `${fixture} until ${place} ${title}`,
  heldSetting: (fixture: string): string => `${fixture} while it sets`,
  circular: (titles: readonly string[]): string =>
    `That would make these wait for each other: ${titles.map((title) => `“${title}”`).join(', ')}. Take one of them out of what comes before; nothing was changed.`,
  tooMany: (most: number): string => `An instrument takes ${most} stages at the most: leave one out first.`,

  open: (place: number, title: string): string => `${place} ${title}: show what belongs to it`,
  acts: 'Work on it',
  atTheBench: 'At the bench',
  atTheBenchNamed: (title: string): string => `“${title}” at the bench`,
  startClock: 'Start the clock',
  pauseClock: 'Pause the clock',
  sayHours: 'Say hours',
  signOff: 'Done',
  takeBack: 'Take back',
  redo: 'Do it again',
  startTimer: 'Start a timer',
  several: 'Do this for several',
  place: 'Where it stands',
  earlier: 'Earlier',
  later: 'Later',
  moveBefore: 'Move before',
  moveNowhere: 'where it is',
  atEnd: 'the end of the order',
  insertBefore: 'Insert before',
  insertAfter: 'Insert after',
  onceMore: 'Once more',
  onceMoreTitle: (title: string): string => `${title}, again`,
  leaveOut: 'Leave out',
  asPattern: 'As the pattern',
  isOwn: 'Some of it is your own.',

  what: 'What it is',
  stageTitle: 'Called',
  titleMissing:
    'Called is empty: what stood before still counts. It may be up to 120 characters, such as “Inlay the head”.',
  note: 'What there is to do, a line each',
  noteMissing: 'There is no line: what stood before still counts. Write one, or take it as the pattern has it.',
  handsH: 'Hands on',
  waitH: 'Wait after it',
  spans: { low: 'at best', likely: 'as a rule', high: 'at worst' },
  upward: 'At best is no more than as a rule, and at worst no less: change one of them.',
  times: 'How often (coats)',
  inHumidity: 'Only at building humidity',
  oneSitting: 'In one sitting: not to be broken off',
  needs: 'What it needs',
  after: 'Must come after',
  noEarlier: 'It is the first: there is nothing to come after.',
  laterNeeds: 'later in the order',
  fixtures: 'Fixtures it takes up',
  fixture: 'Fixture',
  held: 'Held',
  holds: { working: 'while hands are on it', setting: 'while it sets too', until: 'until a later stage is done' },
  untilStage: 'Until',
  untilSet: 'it has set',
  addFixture: 'Add a fixture',
  removeFixture: (fixture: string): string => `Take out ${fixture}`,
  removeShort: 'Take out',
  partsHere: 'Must be here before it',
  otherPart: 'Something else',
  addPart: 'Add',
  numbers: 'Numbers that belong to it',
  noNumbers: 'It has no numbers.',
  getsBox: 'with a box to measure',
  lookedUp: 'looked up only',
  findNumber: 'Find a number by name',
  addNumber: (name: string): string => `Add ${name}`,
  removeNumber: (name: string): string => `Take out ${name}`,
  noSuchNumber: 'No number is called that.',
  cautions: 'Cautions',

  history: 'What happened',
  nothingYet: 'Nothing has been done on it yet.',
  signed: (moment: string): string => `signed off on ${moment}`,
  redone: (moment: string, reason: string): string =>
    `to be done again since ${moment}${reason === '' ? '' : `: ${reason}`}`,
  worked: (day: string, of: Duration, isClock: boolean, count: number): string =>
    `${day}: ${duration(of)} ${isClock ? 'by the clock' : 'as said'}${count === 1 ? '' : `, its share of ${count}`}`,

  hoursTitle: 'How long did it take?',
  hoursSaid: 'Hours',
  hoursRange: 'more than nothing, up to 1000 h',
  hoursWrong: 'Hours may be from 1 min to 1000 h, such as 2.5 or 1 h 30 min.',
  onDay: 'On',
  dayWrong: 'Say on which day, such as 2027-03-12.',
  shared: 'Shared by how many instruments',
  sharedHint: 'All of the hours are typed; each instrument takes its share.',
  sharedWrong: 'It may be shared by 1 to 40 instruments.',
  write: 'Write it down',

  redoTitle: 'Why is it done again?',
  reason: 'Reason',
  redoLead: 'What was signed off stays on record.',
  redoGo: 'Do it again',

  insertTitle: 'What comes in?',
  insertBeforeLead: (title: string): string => `Before “${title}”.`,
  insertAfterLead: (title: string): string => `After “${title}”.`,
  ofHouse: 'A stage of the house',
  ownStage: 'Work of your own',
  ownTitle: 'What it is called',
  ownTitleMissing: 'Give it a name: two words are enough, such as “inlay head”.',
  insert: 'Insert',

  severalTitle: 'For which instruments?',
  severalLead: (title: string): string =>
    `“${title}” is still to be done on these. Each gets its share; each is signed off with its own numbers.`,
  severalNone: (title: string): string => `No other instrument on the bench has “${title}” still to be done.`,
  looking: 'Looking through the bench.',
  severalActs: {
    start: 'Start the clock',
    stop: 'Pause the clock',
    hours: 'Say hours',
    done: 'Sign it off',
  },
  whatToDo: 'What is done for all of them',
  clockRuns: 'its clock runs',
  clockStands: 'its clock does not run',
  severalGo: (count: number): string => `Do it for ${count}`,
  severalUndo: 'Undo takes it back on one instrument at a time.',
  refused: (number: string, why: string): string =>
    `${number}: ${why} Nothing was written to any of them: untick it, or close it there.`,

  keepTitle: 'What is this order called?',
  keepOrder: 'Keep this order',
  keepName: 'Name',
  keepNameMissing: 'Give it a name, such as “Steel, bolt-on neck”.',
  keep: 'Keep it',
  kept: (name: string): string => `“${name}” is kept: new instruments can begin with it.`,

  otherTitle: 'Which order?',
  otherOrder: 'Use another order',
  houseOrder: (family: string): string => `The house’s, ${family.toLowerCase()}`,
  comeIn: (count: number): string =>
    count === 0 ? 'Nothing comes in.' : `${stages(count)} come${count === 1 ? 's' : ''} in.`,
  goOut: (titles: readonly string[]): string =>
    titles.length === 0
      ? 'Nothing goes out.'
      : `${stages(titles.length)} go${titles.length === 1 ? 'es' : ''} out: ${titles.join(', ')}.`,
  stay: (titles: readonly string[]): string =>
    titles.length === 0
      ? 'Everything signed off or begun is in it.'
      : `Signed off or begun, so ${titles.length === 1 ? 'it stays' : 'they stay'}: ${titles.join(', ')}.`,
  takeOrder: 'Take this order',

  skipped: 'Left out of this instrument',
  bringIn: 'Bring in',
  bringInOf: (title: string): string => `Bring “${title}” back in`,
} as const

/** The building orders of the shop's own, on the sheet of the shop and where an instrument is begun. */
export const ORDERS_WORDS = {
  title: 'In which order is work done here?',
  lead: 'Orders kept from instruments. A new instrument begins with the house’s, or with one of these.',
  none: 'None is kept yet: on an instrument’s sheet Stages, choose “Keep this order”.',
  name: 'Name',
  missing: 'Name is empty: what stood before still counts. It may be up to 120 characters.',
  count: stages,
  remove: 'Remove',
  removeOf: (name: string): string => `Remove the order “${name}”`,
  removed: (name: string): string => `The order “${name}” is removed.`,
  undo: 'Undo',
} as const
