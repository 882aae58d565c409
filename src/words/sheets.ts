/** The sheets of an instrument that answer a question of the bench, in the order a body is thought out. */
export const SHEETS = [
  'outline',
  'sides',
  'domes',
  'blocks',
  'linings',
  'rosette',
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

export const BLANK_WORDS = {
  title: 'Where do I saw the blank?',
  lead: 'One side laid flat, its straight edge up. Two mirrored blanks are needed: mark the show faces before sawing.',
  leadDiffering: 'The two sides differ: each has blanks of its own. Mark the show faces before sawing.',
  side: 'Blank for',
  sides: { treble: 'Treble side', bass: 'Bass side' },
} as const

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

export const TOOL_WORDS = {
  rule: 'rule',
  tape: 'tape',
  caliper: 'caliper',
  thicknessCaliper: 'thickness caliper',
  depthGauge: 'depth gauge',
  straightedge: 'straightedge',
  bevelGauge: 'bevel gauge',
  contourBoard: 'contour board',
  dividers: 'dividers',
  feelerGauge: 'feeler gauge',
  radiusGauge: 'radius gauge',
  protractor: 'protractor',
} as const

export const HELP_WORDS = {
  hangsOn: 'It hangs on',
  howMeasured: 'How it is measured',
  notMeasured: 'It is computed only; no one measures it.',
  workedOut: 'How it is worked out',
  standing: 'How sure it is',
  tolerance: 'Tolerance',
  toleranceOwn: 'This instrument’s own tolerance.',
  toleranceShop: 'The shop’s tolerance.',
  toleranceStarting: 'A starting tolerance, common practice.',
  toleranceNone: 'No tolerance is printed.',
  toleranceField: 'Plus or minus',
  printNone: 'Print none',
  setOne: 'Set one',
  asShop: 'Back to the shop’s',
  close: 'Close',
} as const

export const TABLE_WORDS = {
  copy: 'Copy table',
  copied: 'Copied',
  copyFailed: 'Copying was refused; save the table as CSV instead',
  save: 'Save as CSV',
  measureFrom: 'Measure from',
  measureAlong: 'Measure',
  place: 'Place',
  search: 'Find a number',
  nothingFound: 'No number by that name.',
  value: 'Value',
  name: 'Number',
  tolerance: 'Tolerance',
  rings: 'Rings of the rosette',
  standing: 'Standing',
  wholeWidth: 'Whole width',
  standsAt: 'Stands at',
  foundCaption: 'Bouts and waist as found',
} as const

export const SIDES_WORDS = {
  depthHere: 'Rim depth here, without plates',
  topBevelHere: 'Bevel here, top edge',
  backBevelHere: 'Bevel here, back edge',
  cutHere: 'Cut width here',
  side: 'Side',
  depths: 'Depths',
  edges: 'Shaping the edges',
  blank: 'Blank and stations',
  withPlates: 'With both plates on',
  places: 'Named places',
  stations: 'Stations round the rim',
  station: (row: number) => `Station ${row}`,
  between: 'Between stations',
  picker: 'Place in hand',
  bevelNote: 'Plus: the inner corner stands prouder. Minus: the outer corner does.',
  previous: 'Toward the tail',
  next: 'Toward the neck',
} as const

export const OUTLINE_WORDS = {
  addBefore: 'Add a piece before',
  addAfter: 'Add a piece after',
  addFirst: 'Add the first piece',
  remove: 'Remove',
  earlier: 'Move toward the tail',
  later: 'Move toward the neck',
  piece: 'Piece',
  change: 'Change or move it',
  solved: 'solved',
  none: 'There are no pieces. Add the first one: it starts at the tail, square to the centreline.',
  full: 'No more pieces fit in.',
  keyWidths: 'Key widths',
  found: 'Found on the curve',
  cutaway: 'The cutaway as drawn',
} as const

export const ROSETTE_WORDS = {
  ring: 'Ring',
  add: 'Add a ring',
  plainStrip: 'plain strip',
  remove: 'Remove',
  earlier: 'Up',
  later: 'Down',
  none: 'There is no ring. Add one, or leave the hole plain.',
  full: 'No more rings fit in.',
  hole: 'Hole',
  channels: 'Channels',
  board: 'Board and scale',
} as const

export const DOMES_WORDS = {
  section: 'How deep is it along the middle?',
  bevels: 'How much bevel goes on the rim?',
  back: 'Back',
  top: 'Top',
  gaps: 'Gaps under a straightedge',
  backGap: 'Back, gap',
  topGap: 'Top, gap',
  places: {
    AcrossLowerBout: 'Across the lower bout',
    AcrossWaist: 'Across the waist',
    AcrossUpperBout: 'Across the upper bout',
    Along: 'Along the centreline',
  },
} as const

export const BLOCKS_WORDS = {
  tail: 'Tail block',
  neck: 'Neck block',
  radius: 'Contour radius',
  rise: 'Rise at the middle',
  gap: 'Gap the arc leaves',
  heightAtFace: 'Height at the glue face',
  heightInside: 'Height inside',
  topSlope: 'Slope of the top end',
  backSlope: 'Slope of the back end',
  contour: 'The true face, point by point',
  point: 'Point',
  across: 'Out from the middle',
  fallsBack: 'Falls back',
} as const

export const LININGS_WORDS = {
  topHere: 'Top lining here, over the outer corner',
  backHere: 'Back lining here, over the outer corner',
  proudNote: 'Plus: the lining’s inner corner stands prouder than the side. Minus: it lies lower.',
  top: 'Top lining',
  back: 'Back lining',
  binding: 'Binding and purfling',
  braces: 'Side braces',
  bracesOfBass: 'Side braces, bass side',
  bracesOfTreble: 'Side braces, treble side',
  brace: 'Brace',
  noBraces: 'No side brace finds room between the blocks.',
  place: 'Place',
  enterPlaces: 'Enter the places',
  spaceEvenly: 'Space them evenly',
  evenly: 'Spaced evenly between the blocks.',
  add: 'Add a place',
  remove: 'Remove',
  noPlaces: 'No place is entered: there are no side braces.',
  full: 'No more places fit in.',
  caul: 'A springy caul',
  caulLead:
    'Clamped at both ends until it lies straight, it presses the middle of a joint. An estimate: try it dry first.',
} as const

export const FINDINGS_WORDS = { goTo: 'Go to', heading: 'What does not fit' } as const
