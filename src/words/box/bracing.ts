import type {
  BRACE_KINDS,
  BRACE_SIDES,
  BRACE_STOPS,
  BRACE_TAPERS,
  BRACE_UNDERSIDES,
  PlateSide,
} from '../../core/boxPlan.ts'

export const PLATE_WORDS: Record<PlateSide, string> = { top: 'Top', back: 'Back' }

/** What shops call their braces. */
export const BRACE_KIND_WORDS: Record<(typeof BRACE_KINDS)[number], string> = {
  cross: 'X brace',
  transverse: 'Cross brace',
  tone: 'Tone bar',
  fan: 'Fan brace',
  ladder: 'Ladder brace',
  finger: 'Finger brace',
  patch: 'Patch',
  other: 'Brace',
}

export const BRACE_STOPS_WORDS: Record<(typeof BRACE_STOPS)[number], string> = {
  rimAt: 'at the rim, so far from the tail',
  rimBeyond: 'at the rim, beyond a point',
  brace: 'at another brace',
  here: 'at a point',
}
export const BRACE_SIDE_WORDS: Record<(typeof BRACE_SIDES)[number], string> = { bass: 'Bass', treble: 'Treble' }
export const BRACE_TAPER_WORDS: Record<(typeof BRACE_TAPERS)[number], string> = {
  none: 'Full height',
  straight: 'Straight',
  scoop: 'Scoop',
}
export const BRACE_UNDERSIDE_WORDS: Record<(typeof BRACE_UNDERSIDES)[number], string> = {
  dome: 'The dome’s',
  own: 'Its own arch',
  flat: 'Flat',
}

const PLATE_NAMES: Record<PlateSide, string> = { top: 'top', back: 'back' }

export const BRACING_WORDS = {
  plate: 'Plate',
  brace: (number: number, kind: string) => `${number} ${kind}`,
  twins: (number: number, other: number, kind: string) => `${number} and ${other} ${kind}`,
  /** Of twins, the side that is entered. */
  asEntered: {
    bass: 'As entered: the bass one. The other is its mirror image.',
    treble: 'As entered: the treble one. The other is its mirror image.',
  },
  half: { single: '', bass: ', bass', treble: ', treble' },
  noBraces: 'No braces yet. Lay them out from a pattern, or add one.',
  chooseOne: 'Tap a brace to see its numbers.',
  list: 'Braces',
  add: 'Add a brace',
  copy: 'Copy',
  remove: 'Remove',
  earlier: 'Earlier',
  later: 'Later',
  full: 'No more braces fit into one record.',
  twin: 'The same on the other side',
  lapped: 'Lapped where it crosses another lapped one',
  from: 'First end',
  to: 'Second end',
  handle: (end: string, brace: string) => `${end} of ${brace}. Drag it, or use the arrow keys.`,
  patterns: 'Lay out anew',
  patternsHint: (count: number, plate: PlateSide) =>
    count === 0
      ? `The ${PLATE_NAMES[plate]} is bare: nothing is replaced.`
      : `Takes the place of ${count === 1 ? 'the one brace' : `all ${count} braces`} of the ${PLATE_NAMES[plate]}. One undo brings ${count === 1 ? 'it' : 'them'} back.`,
  /** After a brace was taken away. `loose`: ends by name that stopped at it. */
  removed: (name: string, loose: readonly string[]) =>
    `${name} is removed.${
      loose.length === 0
        ? ''
        : ` ${loose.join(', ')} ended at it, and ${loose.length === 1 ? 'now stands' : 'now stand'} free in the same place.`
    } Braces are numbered by their order: those after it have moved up.`,
  looseEnd: (end: string, brace: string) => `${end} of ${brace}`,
  lengths: 'Braces of this plate',
  arch: (brace: string) => `Arch of ${brace}`,
  archNote: 'From its first end. The rise is over a straightedge laid from end to end of the gluing face.',
  station: 'Eighth',
  crossings: 'Crossings',
  crossing: (a: number, b: number) => `${a} × ${b}`,
  strip: 'Strip on the back’s joint',
  piece: 'Piece',
  ends: (brace: string) => `Ends of ${brace}`,
  more: (brace: string) => `${brace}, all of it`,
  acrossNote: 'Across: toward the treble side; the bass side is negative.',
  end: 'End',
  endColumns: ['From the tail', 'Across', 'Round the outside from the tail', 'Let in', 'Height there', 'Taper'],
  ring: 'Ring round the hole',
  blanks: 'Blanks',
  patches: 'Patches',
  plateUnderBridge: 'Bridge plate',
  noneChosen: 'None',
  profile: 'From the side',
  caution: 'Let-in ends and scoops are chisel work: pare away from the hand that holds the plate.',
} as const

/** A brace by its number among all, its kind, and which of two it is. */
export const braceName = (
  number: number,
  kind: keyof typeof BRACE_KIND_WORDS,
  half: keyof typeof BRACING_WORDS.half,
): string => `${BRACING_WORDS.brace(number, BRACE_KIND_WORDS[kind])}${BRACING_WORDS.half[half]}`

/** Twins by both their numbers. */
export const twinsName = (number: number, other: number, kind: keyof typeof BRACE_KIND_WORDS): string =>
  BRACING_WORDS.twins(number, other, BRACE_KIND_WORDS[kind])

/** Patterns to start from. */
export const BRACING_PATTERN_WORDS: Record<string, string> = {
  x: 'X bracing',
  fan: 'Fan bracing',
  ladder: 'Ladder bracing',
  none: 'No braces',
}
