import type { FixtureKind } from '../core/fixture.ts'
import type { BoardFit, DishFit, Wanted } from '../core/fixtureFits.ts'

/** One kind of fixture: as a heading, as one of them, and what stands under the heading. */
interface KindWords {
  readonly many: string
  readonly one: string
  readonly lead: string
  /** Said where the shop has none. */
  readonly noneYet: string
}

export const FIXTURE_KIND_WORDS: Record<FixtureKind, KindWords> = {
  contourBoard: {
    many: 'Contour boards',
    one: 'Contour board',
    lead: 'Boards that the glue faces of blocks are sanded or checked on. Flat is a board too.',
    noneYet: 'No contour board yet.',
  },
  dish: {
    many: 'Dishes',
    one: 'Dish',
    lead: 'Hollow dishes that rims are radiused in and plates are braced in.',
    noneYet: 'No dish yet.',
  },
  mould: {
    many: 'Moulds',
    one: 'Mould',
    lead: 'Each holds the outline it was made to. Keep one on the outline sheet of an instrument.',
    noneYet: 'No mould yet.',
  },
  bendingForm: {
    many: 'Bending forms',
    one: 'Bending form',
    lead: 'Each holds the outline it was made to. Keep one on the outline sheet of an instrument.',
    noneYet: 'No bending form yet.',
  },
}

export const FIXTURE_WORDS = {
  title: 'What shapes the work in this shop?',
  lead: 'Each instrument is held against these: which one serves, and how much it leaves open.',
  name: 'Name',
  radius: 'Radius',
  diameter: 'Across',
  inset: 'Surface inside the outline',
  add: { contourBoard: 'Add a contour board', dish: 'Add a dish' },
  earlier: 'Up',
  later: 'Down',
  remove: 'Remove',
  undo: 'Undo',
  redo: 'Redo',
  undoLabel: 'Undo the last change of the fixtures',
  redoLabel: 'Redo the last change of the fixtures',
  full: 'No more fixtures fit in.',
} as const

/** What a fixture is called: its name, or its kind where it has none. */
export const fixtureName = (name: string, kind: FixtureKind): string =>
  name.trim() === '' ? FIXTURE_KIND_WORDS[kind].one : name

export const KIND_WANTED: Record<Wanted, FixtureKind> = {
  tailBlock: 'contourBoard',
  neckBlock: 'contourBoard',
  backDish: 'dish',
  topDish: 'dish',
  mould: 'mould',
  bendingForm: 'bendingForm',
}

type Opens = BoardFit['opens'] | DishFit['opens']

const OPENS_AT: Record<Opens, string> = {
  middle: 'open in the middle',
  ends: 'open at the ends',
  between: 'open between the middle and the ends',
  rim: 'open at the rim',
  nowhere: 'closed all along',
}

export const FIT_WORDS = {
  heading: {
    tailBlock: 'Which board for the tail block?',
    neckBlock: 'Which board for the neck block?',
    backDish: 'Which dish for the back?',
    topDish: 'Which dish for the top?',
    mould: 'Which mould?',
    bendingForm: 'Which bending form?',
  } satisfies Record<Wanted, string>,
  none: {
    contourBoard: 'The shop has no contour board.',
    dish: 'The shop has no dish.',
    mould: 'The shop has no mould.',
    bendingForm: 'The shop has no bending form.',
  } satisfies Record<FixtureKind, string>,
  toShop: 'Go to the shop’s fixtures',
  largestGap: 'Largest gap',
  radius: 'radius',
  next: 'Next best:',
  opens: {
    middle: 'It opens in the middle.',
    ends: 'It opens at the ends.',
    between: 'It opens between the middle and the ends.',
    rim: 'It opens at the rim.',
    nowhere: 'It closes all along.',
  } satisfies Record<Opens, string>,
  gapThere: (gap: string, opens: Opens): string => `${gap}, ${OPENS_AT[opens]}.`,
  tooNarrow: (across: string, needed: string) => `Too narrow: ${across} across, and the body needs ${needed}.`,
} as const

/** How an outline lies in a mould, or over a form. */
export const MOULD_WORDS = {
  heading: 'Do the moulds and forms still fit?',
  verdict: { holds: 'Fits', not: 'Does not fit' },
  outside: { mould: 'Too tight by', bendingForm: 'The form is too small by' },
  inside: { mould: 'Leaves a gap of', bendingForm: 'The form is too large by' },
  at: (place: string) => `at ${place} from the tail`,
  half: { bass: 'on the bass side', treble: 'on the treble side', both: '' },
  slid: {
    neck: (by: string) => `Slid ${by} toward the neck end.`,
    tail: (by: string) => `Slid ${by} toward the tail end.`,
    none: () => 'Not slid.',
  },
  unslid: (gap: string) => `Tail on tail it is off by up to ${gap}.`,
  keepHeading: 'Keep this outline for the shop',
  keepLead: 'The fixture keeps the outline as it is now, whatever becomes of the instrument.',
  keepMould: 'Keep this outline as a mould of the shop',
  keepForm: 'Keep this outline as a bending form',
  name: 'Name of the mould or form',
  inset: 'Form stands inside the outline by',
  kept: (name: string) => `${name} is kept among the shop’s fixtures.`,
} as const
