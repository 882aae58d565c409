/** The sheets of an instrument that answer a question of the bench, in the order a body is thought out. */
export const SHEETS = [
  'outline',
  'sides',
  'domes',
  'blocks',
  'linings',
  'rosette',
  'bracing',
  'edges',
  'air',
  'cutting',
  'frets',
  'strings',
  'neckSet',
  'bridge',
  'neck',
  'numbers',
] as const
export type Sheet = (typeof SHEETS)[number]

interface SheetWords {
  /** As a tab is called. */
  readonly name: string
  readonly title: string
  readonly lead: string
}

export const SHEET_WORDS: Record<Sheet, SheetWords> = {
  outline: {
    name: 'Outline',
    title: 'What shape is the body?',
    lead: 'The outline is the outer face of the sides. Bouts and waist are found on the curve.',
  },
  sides: {
    name: 'Sides',
    title: 'How deep is the side here?',
    lead: 'Tap a place in the drawing or the table, or type how far away it is.',
  },
  domes: {
    name: 'Domes',
    title: 'How much dish do back and top have?',
    lead: 'Gaps are what shows under a straightedge laid from rim to rim on the dished plate.',
  },
  blocks: {
    name: 'Blocks',
    title: 'What curve goes on the blocks?',
    lead: 'The glue faces follow the inner face of the sides.',
  },
  linings: {
    name: 'Linings',
    title: 'What goes inside the rim?',
    lead: 'A lining follows the dome, so its inner corner stands prouder than the side. What stands proud is dished off.',
  },
  rosette: {
    name: 'Rosette',
    title: 'Where do I cut for the rosette?',
    lead: 'The middle of the cutter runs on the cutter circles.',
  },
  bracing: {
    name: 'Bracing',
    title: 'Where do the braces go?',
    lead: 'Seen from inside, so bass and treble change sides. Drag an end, or type where it goes.',
  },
  edges: {
    name: 'Edges',
    title: 'How are the edges cut?',
    lead: 'The cutter’s guide stays square to the side. A guide that rides on the dome is off by what the table says.',
  },
  air: {
    name: 'Air',
    title: 'Where will the air sound?',
    lead: 'A band, not a note: no wall is rigid, and every body gives way in its own measure.',
  },
  cutting: {
    name: 'Cutting',
    title: 'What do I cut and buy?',
    lead: 'Every piece of wood, finished and as it is sawn out, by the wood it comes from.',
  },
  frets: {
    name: 'Frets',
    title: 'Where do the frets go?',
    lead: 'Saw every slot from the nut, never from the slot before: small errors would add up.',
  },
  strings: {
    name: 'Strings',
    title: 'How hard do the strings pull?',
    lead: 'Gaps between strings are equal, not their middles. Masses of wound strings are their maker’s to state.',
  },
  neckSet: {
    name: 'Neck set',
    title: 'How is the neck set?',
    lead: 'Lay a straightedge on the frets and measure at the saddle line, before the bridge is glued.',
  },
  bridge: {
    name: 'Bridge',
    title: 'Where does the saddle go?',
    lead: 'Measured from the real fret 12. Prove the compensation there once it is strung.',
  },
  neck: {
    name: 'Neck cut',
    title: 'How is the neck cut?',
    lead: 'Thicknesses at fret 1 and 10 count the board. What collides, or grows thin, is said below.',
  },
  numbers: {
    name: 'Numbers',
    title: 'What are all the numbers?',
    lead: 'Tap a name to see what it is and how it is measured.',
  },
}

/** Where a maker measures from. */
export const ORIGIN_WORDS = {
  tail: { name: 'Tail', from: 'from the tail' },
  neckEdge: { name: 'Neck edge', from: 'from the neck edge' },
  saddleLine: { name: 'Saddle line', from: 'from the saddle line, plus toward the neck' },
} as const

export const ALONG_WORDS = { centreline: 'Along the centreline', outerFace: 'Round the outside' } as const

export const PLACE_WORDS = {
  tail: 'Tail',
  lowerBout: 'Lower bout',
  waist: 'Waist',
  upperBout: 'Upper bout',
  horn: 'Horn',
  neck: 'Neck',
} as const

/** What stands in place of a number. */
export const FIGURE_WORDS = { flat: 'flat', none: 'none' } as const

export const STANDING_WORDS = {
  exact: 'Exact: as entered, or from a closed form.',
  numeric: 'Found by steps, to far less than a hair.',
  estimate: 'An estimate. Check it on the wood.',
} as const
export const ESTIMATE_MARK = 'estimate'

export const FINDINGS_WORDS = { goTo: 'Go to', heading: 'What does not fit' } as const
