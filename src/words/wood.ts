import type { UNPLACED_REASONS } from '../core/wood/boardLayout.ts'
import type { CutPart, Grain, PartKey, WoodRole } from '../core/wood/part.ts'
import type { SawCut } from '../core/wood/sawing.ts'

/** What every piece is called at the bench: one of them. */
export const PART_NAMES: Record<PartKey, string> = {
  topHalf: 'Half of the top',
  holeRing: 'Ring round the hole, inside',
  backHalf: 'Half of the back',
  side: 'Side',
  neckShaft: 'Neck, shaft and head',
  heelLayer: 'Layer of the heel',
  fingerboard: 'Fingerboard',
  boardBinding: 'Binding of the fingerboard',
  bridge: 'Bridge',
  topBrace: 'Brace of the top',
  backBrace: 'Brace of the back',
  crossPatch: 'Patch over a crossing',
  innerBackStrip: 'Strip over the back’s joint, inside',
  sideBrace: 'Side brace',
  topLining: 'Lining of the top edge',
  backLining: 'Lining of the back edge',
  tailBlock: 'Tail block',
  neckBlock: 'Neck block',
  topBinding: 'Binding of the top edge',
  backBinding: 'Binding of the back edge',
  topPurfling: 'Purfling of the top',
  backPurfling: 'Purfling of the back',
  outerBackStrip: 'Strip in the back’s joint, outside',
  endWedge: 'End wedge',
  wedgePurfling: 'Purfling of the end wedge',
  bridgePlate: 'Bridge plate',
  headFace: 'Veneer on the head’s face',
  headBack: 'Veneer on the head’s back',
  nut: 'Nut',
  saddle: 'Saddle',
  rosetteStrip: 'Rosette strip',
  rosetteTile: 'Rosette tile',
}

export const WOOD_ROLE_NAMES: Record<WoodRole, string> = {
  top: 'Top',
  back: 'Back',
  sides: 'Sides',
  neck: 'Neck and heel',
  board: 'Fingerboard',
  bridge: 'Bridge',
  braces: 'Braces and patches',
  linings: 'Linings',
  blocks: 'Blocks',
  edges: 'Edges',
  fittings: 'Small parts',
}

export const GRAIN_NAMES: Record<Grain, string> = {
  alongLength: 'along the length',
  acrossLength: 'across the length',
  any: 'as it comes',
}

export const SAW_CUT_NAMES: Record<SawCut['way'], string> = { rip: 'Rip', crosscut: 'Crosscut' }

/** Why a piece is on none of the boards, and what would take it. */
export const UNPLACED_WORDS: Record<(typeof UNPLACED_REASONS)[number], string> = {
  tooThick: 'Too thick: no board here gives a slice of it. It takes a thicker board.',
  tooLong: 'Too long: no board thick enough has that length along the grain. It takes a longer board.',
  tooWide: 'Too wide: no board that is thick and long enough has that width. It takes a wider board.',
  noRoom: 'No room left: it fits a board, but other pieces lie there. It takes one more board.',
  tooMany: 'Too many pieces for one layout. Lay out some of the parts by themselves.',
  noSize: 'It has no size. Every measure has to be more than 0.',
}

/** What stands between the parts of a wood list. */
export const WOOD_WORDS = {
  columns: {
    part: 'Part',
    quantity: 'How many',
    finished: 'Finished',
    rough: 'Rough',
    length: 'Length',
    width: 'Width',
    thickness: 'Thickness',
    grain: 'Grain',
  },
  bookmatched: 'opened like a book, from neighbouring slices',
  half: { either: '', bass: 'bass side', treble: 'treble side' } satisfies Record<CutPart['half'], string>,
  sums: {
    finished: 'In the instrument',
    rough: 'Rough pieces',
    kerf: 'To sawdust',
    spare: 'Left over the slices',
    bought: 'To buy at the least',
  },
  boughtNote: 'Counted without knots, checked ends and waste: buy more.',
  offcut: 'Offcut',
  lost: 'Lost to kerf and trim',
} as const

/** A row of the cut list by name: which of several it is, and of which half. */
export function partName({ key, row, half }: Pick<CutPart, 'key' | 'row' | 'half'>): string {
  const numbered = row === 'none' ? PART_NAMES[key] : `${PART_NAMES[key]} ${row}`
  return half === 'either' ? numbered : `${numbered}, ${WOOD_WORDS.half[half]}`
}

/** Nominal thickness of a rough-sawn board: 8/4. */
export const quartersText = (quarters: number): string => `${quarters}/4`
