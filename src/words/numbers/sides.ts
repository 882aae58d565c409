import type { KeysUnder, NumberWords } from './numberWords.ts'

type RowKey<Key> = Key extends `rim[].${infer Name}` ? Name : never

/** The same columns stand for every station round the rim and for the named places. */
const ROW_WORDS: Record<RowKey<KeysUnder<'rim'>>, NumberWords> = {
  alongOuterMm: {
    name: 'Round the outside',
    what: 'Where the station stands on the bent side: along its outer face, from the tail.',
    how: null,
  },
  alongBlankMm: {
    name: 'Along the flat blank',
    what: 'Where the same station stands on the flat blank: from its tail end, trim left out, at mid-thickness.',
    how: null,
  },
  xMm: {
    name: 'Along the centreline',
    what: 'Where the station stands along the body, from the tail.',
    how: null,
  },
  yMm: {
    name: 'Half-width',
    what: 'From the centreline to the outer face of the side.',
    how: null,
  },
  topEdgeMm: {
    name: 'Top edge',
    what: 'Height of the side’s top edge over the rim plane.',
    how: null,
  },
  backEdgeMm: {
    name: 'Back edge',
    what: 'Height of the side’s back edge over the rim plane: minus, since the back lies below.',
    how: null,
  },
  depthMm: {
    name: 'Rim depth, without plates',
    what: 'Depth of the bare side, top edge to back edge, square to the rim plane.',
    how: 'Rule on the outer face, square to the rim plane.',
  },
  topBevelRad: {
    name: 'Bevel of the top edge',
    what: 'Slope across the top edge; plus where the inner corner stands prouder than the outer.',
    how: 'Bevel gauge, stock on the outer face, blade across the edge.',
  },
  backBevelRad: {
    name: 'Bevel of the back edge',
    what: 'Slope across the back edge; plus where the inner corner stands prouder than the outer.',
    how: 'Bevel gauge, stock on the outer face, blade across the edge.',
  },
  cutWidthMm: {
    name: 'Cut width',
    what: 'From the straight edge of the blank to the line to saw, with the back allowance in it.',
    how: 'Rule square from the straight edge of the blank.',
  },
}

type Under<Rows extends 'rim' | 'places'> = { [Name in RowKey<KeysUnder<'rim'>> as `${Rows}[].${Name}`]: NumberWords }
const under = <Rows extends 'rim' | 'places'>(rows: Rows): Under<Rows> =>
  Object.fromEntries(Object.entries(ROW_WORDS).map(([name, words]) => [`${rows}[].${name}`, words])) as Under<Rows>

export const SIDE_WORDS: Record<KeysUnder<'sides' | 'rim' | 'places'>, NumberWords> = {
  'sides.thicknessMm': {
    name: 'Side thickness',
    what: 'Thickness of the side before bending.',
    how: 'Thickness caliper along both edges of the blank.',
  },
  'sides.depthAtTailMm': {
    name: 'Rim depth at the tail',
    what: 'Depth of the bare side at the tail, without plates, top edge as dished.',
    how: 'Rule on the outer face at the tail centre.',
  },
  'sides.depthAtNeckMm': {
    name: 'Rim depth at the neck, as dished',
    what: 'Depth of the bare side at the neck, without plates, before the upper bout is planed flat.',
    how: 'Rule on the outer face at the neck centre, before planing.',
  },
  'sides.depthAtNeckPlanedMm': {
    name: 'Rim depth at the neck, planed',
    what: 'Depth of the bare side at the neck, without plates, once the upper bout is planed. Same as dished where nothing is planed.',
    how: 'Rule on the outer face at the neck centre, after planing.',
  },
  'sides.bodyDepthAtTailMm': {
    name: 'Body depth at the tail, with plates',
    what: 'Rim depth at the tail with top and back glued on: the depth a client speaks of.',
    how: 'Caliper over both plates at the tail centre.',
  },
  'sides.bodyDepthAtNeckMm': {
    name: 'Body depth at the neck, with plates',
    what: 'Planed rim depth at the neck with top and back glued on.',
    how: 'Caliper over both plates at the neck centre.',
  },
  'sides.deepestSideMm': {
    name: 'Deepest side, without plates',
    what: 'Greatest rim depth among the stations.',
    how: null,
  },
  'sides.deepestSideAtMm': {
    name: 'Deepest side lies at',
    what: 'How far round the outer face from the tail the deepest station stands.',
    how: null,
  },
  'sides.deepestInsideMm': {
    name: 'Deepest inside, without plates',
    what: 'Greatest height between the two domes on the centreline, inside of top to inside of back.',
    how: null,
  },
  'sides.deepestInsideAtMm': {
    name: 'Deepest inside lies at',
    what: 'Where along the centreline, from the tail, the domes stand furthest apart.',
    how: null,
  },
  'sides.flatLengthMm': {
    name: 'Side laid flat',
    what: 'Length of one side laid flat, tail centre to neck centre, at mid-thickness and without trim.',
    how: null,
  },
  'sides.blankLengthMm': {
    name: 'Blank length',
    what: 'Side laid flat with trim at both ends: the least length to buy or saw.',
    how: 'Rule along the straight edge of the blank.',
  },
  'sides.blankWidthMm': {
    name: 'Blank width',
    what: 'Widest cut width among the stations, allowances in it: the least width to buy or saw.',
    how: 'Rule square across the blank.',
  },
  'sides.referenceMm': {
    name: 'Straight edge over the rim plane',
    what: 'How high the straight edge of the blank stands over the rim plane: the highest top edge and the top allowance.',
    how: null,
  },
  'sides.waistMarkOnBlankMm': {
    name: 'Waist mark on the blank',
    what: 'Where the waist falls on the flat blank, from its tail end, trim left out.',
    how: 'Rule along the straight edge from the tail line.',
  },
  'sides.waistMarkOnRimMm': {
    name: 'Waist mark on the rim',
    what: 'Where the waist falls on the bent side, along its outer face from the tail.',
    how: 'Tape round the outside from the tail centre.',
  },
  'sides.stationStepMm': {
    name: 'Step between stations',
    what: 'Distance from station to station along the outer face; the last step may be shorter.',
    how: null,
  },
  ...under('rim'),
  ...under('places'),
}
