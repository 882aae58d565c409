/** What stands on the sheets of the body, and on tables and help of every sheet. */

export const BLANK_WORDS = {
  title: 'Where do I saw the blank?',
  lead: 'One side laid flat, its straight edge up. Two mirrored blanks are needed: mark the show faces before sawing.',
  leadDiffering: 'The two sides differ: each has blanks of its own. Mark the show faces before sawing.',
  side: 'Blank for',
  sides: { treble: 'Treble side', bass: 'Bass side' },
} as const

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
  planned: 'Planned',
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
