import { ENTERED, type KeysUnder, type NumberTexts } from './numberWords.ts'

export const SIDE_WORDS: Record<KeysUnder<'sides' | 'blanks'>, NumberTexts> = {
  'sides.thicknessMm': {
    what: 'Thickness of the side before bending.',
    how: 'Thickness caliper along both edges of the blank.',
    ...ENTERED,
  },
  'sides.depthAtTailMm': {
    what: 'Depth of the bare side at the tail, without plates, top edge as dished.',
    how: 'Rule on the outer face at the tail centre.',
    ...ENTERED,
  },
  'sides.depthAtNeckMm': {
    what: 'Depth of the bare side at the neck, without plates, before the upper bout is planed flat.',
    how: 'Rule on the outer face at the neck centre, before planing.',
    ...ENTERED,
  },
  'sides.depthAtNeckPlanedMm': {
    what: 'Depth of the bare side at the neck, without plates, once the upper bout is planed. Same as dished where nothing is planed.',
    how: 'Rule on the outer face at the neck centre, after planing.',
    formula:
      'N + z: N the rim depth at the neck as dished, z the top edge at the neck over the rim plane (minus where planed).',
    from: 'Plain sum; derived.',
  },
  'sides.bodyDepthAtTailMm': {
    what: 'Rim depth at the tail with top and back glued on: the depth a client speaks of.',
    how: 'Caliper over both plates at the tail centre.',
    formula: 'T + t + b: T the rim depth at the tail, t and b the thicknesses of top and back.',
    from: 'Plain sum; derived.',
  },
  'sides.bodyDepthAtNeckMm': {
    what: 'Planed rim depth at the neck with top and back glued on.',
    how: 'Caliper over both plates at the neck centre.',
    formula: 'N + t + b: N the planed rim depth at the neck, t and b the thicknesses of top and back.',
    from: 'Plain sum; derived.',
  },
  'sides.deepestSideMm': {
    what: 'Greatest rim depth among the stations.',
    how: null,
    formula: 'The greatest top edge − back edge, looked for at every station.',
    from: 'Greatest of the stations; derived.',
  },
  'sides.deepestSideAtMm': {
    what: 'How far round the outer face from the tail the deepest station stands.',
    how: null,
    formula: 'Way round the outside to the station whose top edge − back edge is greatest.',
    from: 'Greatest of the stations; derived.',
  },
  'sides.deepestInsideMm': {
    what: 'Greatest height between the two domes on the centreline, inside of top to inside of back.',
    how: null,
    formula: 'The greatest z − b along the centreline: z the top plate, b the back, both over the rim plane.',
    from: 'Looked for at 120 places, then narrowed by golden section; derived.',
  },
  'sides.deepestInsideAtMm': {
    what: 'Where along the centreline, from the tail, the domes stand furthest apart.',
    how: null,
    formula: 'x where z − b is greatest: z the top plate, b the back, both over the rim plane.',
    from: 'Looked for at 120 places, then narrowed by golden section; derived.',
  },
  'sides.flatLengthMm': {
    what: 'Length of one side laid flat, tail centre to neck centre, at mid-thickness and without trim.',
    how: null,
    formula:
      's − t/2 × turn: s half way round the outside, t side thickness, turn of the half outline in radians, π for a plain one.',
    from: 'Length of a parallel curve; derived. That wood keeps its length at mid-thickness is common practice.',
  },
  'sides.blankLengthMm': {
    what: 'Side laid flat with trim at both ends: the least length to buy or saw.',
    how: 'Rule along the straight edge of the blank.',
    formula: 'f + 2 × e: f the side laid flat, e the trim at each end.',
    from: 'Plain sum; derived.',
  },
  'sides.blankWidthMm': {
    what: 'Widest cut width among the stations, allowances in it: the least width to buy or saw.',
    how: 'Rule square across the blank.',
    formula: 'The greatest cut width, looked for at every station from tail to neck.',
    from: 'Greatest of the stations; derived.',
  },
  'sides.referenceMm': {
    what: 'How high the straight edge of the blank stands over the rim plane: the highest top edge and the top allowance.',
    how: null,
    formula: 'z + a: z the highest top edge among the stations, a the top allowance.',
    from: 'Plain sum; derived.',
  },
  'sides.waistMarkOnBlankMm': {
    what: 'Where the waist falls on the flat blank, from its tail line, trim left out.',
    how: 'Rule along the straight edge from the tail line.',
    formula: 's − t/2 × turn: s round the outside to the waist, t side thickness, turn from tail to waist in radians.',
    from: 'Length of a parallel curve; derived. That wood keeps its length at mid-thickness is common practice.',
  },
  'sides.waistMarkOnRimMm': {
    what: 'Where the waist falls on the bent side, along its outer face from the tail.',
    how: 'Tape round the outside from the tail centre.',
    formula: 'Length of the outer face from the tail to the place where the waist was found.',
    from: 'Arc length; derived.',
  },
  'sides.stationStepMm': {
    what: 'Distance from station to station along the outer face; the last step may be shorter.',
    how: null,
    formula:
      'As entered. Left open, or where that makes under 40 stations or over 400: the widest round step that makes at least 40.',
    from: 'Entered; the list of round steps is common practice.',
  },
  'blanks[].outerLengthMm': {
    what: 'What one blank covers on the bent rim, along its outer face. The bass side comes first, then the treble side, in two pieces with a pointed horn.',
    how: 'Tape round the outside, one end of the piece to the other.',
    formula: 'Length of the outer face, from where this piece of side begins to where it ends.',
    from: 'Arc length; derived.',
  },
  'blanks[].flatLengthMm': {
    what: 'Length of this piece of side laid flat, at mid-thickness and without trim; beside a cutaway with what the bass side runs on.',
    how: null,
    formula:
      's − t/2 × turn + r: s round the outside of the piece, t side thickness, turn of the piece in radians, r what the bass side runs on.',
    from: 'Length of a parallel curve; derived. That wood keeps its length at mid-thickness is common practice.',
  },
  'blanks[].blankLengthMm': {
    what: 'This piece of side laid flat with trim at both ends: the least length to buy or saw.',
    how: 'Rule along the straight edge of the blank.',
    formula: 'f + 2 × e: f the piece laid flat, e the trim at each end.',
    from: 'Plain sum; derived.',
  },
  'blanks[].blankWidthMm': {
    what: 'Widest cut width among the stations of this piece, allowances in it: the least width to buy or saw.',
    how: 'Rule square across the blank.',
    formula: 'The greatest cut width, looked for at every station of the piece.',
    from: 'Greatest of the stations; derived.',
  },
}
