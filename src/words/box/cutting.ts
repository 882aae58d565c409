import type { PartKey, WoodRole } from '../../core/wood/part.ts'
import { PART_NAMES, WOOD_ROLE_NAMES } from '../wood.ts'

/** The sheet that says what to cut and buy. */
export const CUTTING_WORDS = {
  buying: 'To buy',
  cutList: 'Cut list',
  buyFor: 'For',
  wood: 'Wood',
  board: 'Board',
  boardThickness: 'Thickness',
  boardFeet: 'Board feet',
  byWood: 'To buy, by wood',
  /** In place of board feet, of what no board is bought for. */
  offcut: 'off-cut',
  volume: 'Volume',
  sums: (inInstrument: string, rough: string, kerf: string, spare: string) =>
    `In the instrument ${inInstrument}. Rough pieces ${rough}, sawdust ${kerf}, left over the slices ${spare}.`,
  buy: (volume: string, boardFeet: string) => `To buy at the least: ${volume}, or ${boardFeet} board feet.`,
  noWood: '\u2013',
  noParts: 'Nothing is sawn: no part has a size.',
  print: 'Print the cut list',
  /** On paper, beside the instrument. */
  printed: (date: string) => `Cut list, printed ${date}`,
  dash: (name: string, title: string) => [name, title].filter((part) => part !== '').join(' \u00b7 '),
  allowances: 'Left on, and lost',
  chooseWoods: 'Empty: not chosen.',
  bookmatched: (part: string, how: string) => `${part}: ${how}.`,
  caution:
    'Guards on, push sticks for short and thin pieces, dust extracted at the saw. The saw’s own instructions and your local codes come first.',
  planks: {
    none: 'No planks yet. Add the ones in your rack, then lay the parts out on them.',
    add: 'Add a plank',
    remove: 'Remove',
    full: 'No more planks fit into one record.',
    plank: (place: number) => `Plank ${place}`,
    size: (lengthMm: string, widthMm: string, thicknessMm: string) => `${lengthMm} × ${widthMm} × ${thicknessMm}`,
  },
  layout: {
    heading: 'On the planks in hand',
    how: 'Add a plank under “Planks in hand”, say which wood it is, and lay that wood’s parts out on it.',
    without: (woods: string) => `No plank for: ${woods}. Add one under “Planks in hand” to lay these parts out.`,
    noParts: 'No part is cut from this wood.',
    fittings: 'Small parts are of several materials. Leave on the plank only what is of its wood.',
    layOut: 'Lay it out',
    again: 'Lay it out again',
    changed: 'Sizes or planks have changed since. Lay it out again.',
    notLaid: 'Not laid out yet.',
    note: 'Worked out by a rule of thumb: good, not proved the best. Mark knots and checks on the plank first.',
    empty: 'Nothing lies on it.',
    piece: 'No.',
    slices: 'Slices',
    along: 'Along the plank',
    across: 'Across it',
    thickness: 'Thickness',
    lies: 'Lies',
    turned: 'turned across',
    straight: 'along',
    cuts: (plank: string) => `${plank}: cuts in order`,
    pieces: (plank: string) => `${plank}: pieces`,
    cut: 'Cut',
    way: 'How',
    at: 'At',
    from: 'From',
    to: 'To',
    cutsNote:
      'Measured from the upper left corner of the untrimmed plank: a crosscut along it, a rip across it. The kerf lies past the figure. Trim the edges first; slices are resawn last.',
    unplaced: 'On no plank',
    reason: 'Why',
    volumes: (pieces: string, offcuts: string, lost: string) =>
      `In pieces ${pieces}, in offcuts ${offcuts}, lost to kerf and trim ${lost}.`,
  },
} as const

/** What a board is bought for. Small parts are each of a material of their own. */
export const groupName = ({
  role,
  material,
}: {
  readonly role: WoodRole
  readonly material: PartKey | 'any'
}): string => (material === 'any' ? WOOD_ROLE_NAMES[role] : PART_NAMES[material])

/** The same with the wood the maker chose, and its nominal thickness, in quarters of an inch and as the shop reads it. */
export const groupHeading = (name: string, wood: string, quarters: string, thickness: string): string =>
  `${wood === '' ? name : `${name}: ${wood}`}, ${quarters} (${thickness})`
