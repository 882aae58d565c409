import { ENTERED, type KeysUnder, type NumberTexts } from './numberWords.ts'

const LAW = 'Equal temperament (ISO 16), each fret a twelfth root of two; published.'
const STRAIGHT = 'Straight edges; derived.'
const CIRCLE = 'Pythagoras on the board’s radius; derived.'
const FANNED = 'The outer strings’ own scales by the fret law, joined by a straight fret; derived.'

export const FRETBOARD_WORDS: Record<KeysUnder<'scale' | 'board' | 'frets' | 'markers'>, NumberTexts> = {
  'scale.lengthMm': {
    what: 'Nut to the uncompensated saddle line, along the centreline.',
    how: 'Rule from the nut’s front edge to fret 12, doubled.',
    formula: 'As entered; fanned: half of bass scale + treble scale.',
    from: 'Entered, or derived.',
  },
  'scale.bassMm': { what: 'Scale of the bass string.', how: null, ...ENTERED },
  'scale.trebleMm': { what: 'Scale of the treble string.', how: null, ...ENTERED },
  'scale.jointToSaddleMm': {
    what: 'From the fret at the neck joint to the saddle line, compensation left out.',
    how: 'Rule along the centreline from the neck joint.',
    formula: 'S × 2^(−J/12): S scale length, J the fret at the joint.',
    from: LAW,
  },
  'scale.saddleLineMm': {
    what: 'Place of the uncompensated saddle line, from the tail.',
    how: null,
    formula: 'L − S × 2^(−J/12): L body length, S scale length, J the fret at the joint.',
    from: LAW,
  },
  'scale.boardEndMm': {
    what: 'Place of the fingerboard’s square end over the body, from the tail.',
    how: 'Rule along the centreline from the tail.',
    formula: 'L − o: L body length, o how far the board reaches over the body.',
    from: 'Plain difference; derived.',
  },
  'board.nutWidthMm': {
    what: 'Of the board, at the nut’s front edge.',
    how: 'Caliper across the board.',
    ...ENTERED,
  },
  'board.widthAtTwelfthMm': {
    what: 'Of the board.',
    how: 'Caliper across the board.',
    ...ENTERED,
  },
  'board.widthAtJointMm': {
    what: 'Of the board over the edge of the body.',
    how: 'Caliper across the board.',
    formula: 'n + 2 × (t − n) × (1 − 2^(−J/12)): n width at the nut, t at fret 12, J the fret at the joint.',
    from: STRAIGHT,
  },
  'board.widthAtEndMm': {
    what: 'Of the board’s square end.',
    how: 'Caliper across the board.',
    formula: 'n + (t − n) × l ÷ (S/2): n width at the nut, t at fret 12, l nut to end in the middle, S scale.',
    from: STRAIGHT,
  },
  'board.lengthMm': {
    what: 'From the nut’s front edge to its square end; where the nut slants, from its end nearer the head.',
    how: 'Rule along the board.',
    formula:
      'S × (1 − 2^(−n/12)) + e + k: S scale, n the last fret, e what stands beyond it, k the nut’s end that stands further ahead.',
    from: LAW,
  },
  'board.nutBassAheadMm': {
    what: 'How much nearer the head the nut’s front edge stands at the board’s bass edge than in the middle; negative: further from it.',
    how: 'Square across at the nut’s middle, rule along the bass edge.',
    formula: 'Where the nut’s line crosses the bass edge − where it crosses the centreline.',
    from: FANNED,
  },
  'board.nutTrebleAheadMm': {
    what: 'How much nearer the head the nut’s front edge stands at the board’s treble edge than in the middle; negative: further from it.',
    how: 'Square across at the nut’s middle, rule along the treble edge.',
    formula: 'Where the nut’s line crosses the treble edge − where it crosses the centreline.',
    from: FANNED,
  },
  'board.nutToJointMm': {
    what: 'From the nut’s front edge to the fret over the edge of the body.',
    how: 'Rule along the centreline.',
    formula: 'S × (1 − 2^(−J/12)): S scale, J the fret at the joint.',
    from: LAW,
  },
  'board.overBodyMm': {
    what: 'From the joint to the board’s square end.',
    how: 'Rule along the centreline.',
    formula: 'Nut to the end in the middle − nut to joint.',
    from: 'Plain difference; derived.',
  },
  'board.thicknessMm': {
    what: 'Of the board, in the middle.',
    how: 'Thickness caliper on the centreline.',
    ...ENTERED,
  },
  'board.edgeAtNutMm': {
    what: 'Thickness of the board’s edge at the nut.',
    how: 'Caliper at the edge.',
    formula: 'c − (R − √(R² − w²/4)): c thickness at the crest, R radius, w width there; c on a flat board.',
    from: CIRCLE,
  },
  'board.edgeAtJointMm': {
    what: 'Thickness of the board’s edge over the joint.',
    how: 'Caliper at the edge.',
    formula: 'c − (R − √(R² − w²/4)): c thickness at the crest, R radius, w width there; c on a flat board.',
    from: CIRCLE,
  },
  'board.edgeAtEndMm': {
    what: 'Thickness of the board’s edge at its square end.',
    how: 'Caliper at the edge.',
    formula: 'c − (R − √(R² − w²/4)): c thickness at the crest, R radius, w width there; c on a flat board.',
    from: CIRCLE,
  },
  'board.slotDepthMm': {
    what: 'At the crest.',
    how: 'Depth gauge in the slot, in the middle.',
    ...ENTERED,
  },
  'board.slotWidthMm': {
    what: 'What the saw leaves.',
    how: 'Feeler gauge in the slot.',
    ...ENTERED,
  },
  'board.slotAtEdgeMm': {
    what: 'Depth of the shallowest slot at the board’s edge: the saw goes straight, the board falls away.',
    how: null,
    formula: 'd − drop at the edge, least of all frets: d slot depth; never under 0.',
    from: CIRCLE,
  },
  'board.underTangMm': {
    what: 'Between tang and bottom of the shallowest slot; negative: the fret does not seat.',
    how: null,
    formula: 'Shallowest slot − tang.',
    from: 'Plain difference; derived.',
  },
  'board.leftUnderSlotMm': {
    what: 'Board left under the bottom of the slots.',
    how: null,
    formula: 'Thickness at the crest − slot depth.',
    from: 'Plain difference; derived.',
  },
  'board.fallOffMm': {
    what: 'How far the frets at the board’s end lie under the plane of the others.',
    how: 'Straightedge on frets 1 to the joint, feeler gauge at the end.',
    ...ENTERED,
  },
  'frets[].number': { what: 'Counted from the nut.', how: null, ...ENTERED },
  'frets[].fromNutMm': {
    what: 'Middle of the slot, along the centreline.',
    how: 'Rule from the nut’s front edge: never slot to slot, errors would add up.',
    formula: 'S × (1 − 2^(−n/12)): S scale length, n the fret.',
    from: LAW,
  },
  'frets[].fromLastMm': {
    what: 'From the slot before, or from the nut.',
    how: null,
    formula: 'This place − the one before.',
    from: LAW,
  },
  'frets[].toSaddleMm': {
    what: 'What is left to the uncompensated saddle line.',
    how: null,
    formula: 'S × 2^(−n/12): S scale length, n the fret.',
    from: LAW,
  },
  'frets[].bassEdgeMm': {
    what: 'Where the fret meets the board’s bass edge, from where the nut meets that edge, parallel to the centreline.',
    how: 'Rule parallel to the centreline, from the nut’s bass corner: never slot to slot.',
    formula: 'As from the nut where frets are square; fanned: where the fret’s line meets the edge.',
    from: FANNED,
  },
  'frets[].trebleEdgeMm': {
    what: 'Where the fret meets the board’s treble edge, from where the nut meets that edge, parallel to the centreline.',
    how: 'Rule parallel to the centreline, from the nut’s treble corner: never slot to slot.',
    formula: 'As from the nut where frets are square; fanned: where the fret’s line meets the edge.',
    from: FANNED,
  },
  'frets[].slantRad': {
    what: 'Against square across; positive where the treble end lies nearer the nut.',
    how: null,
    formula:
      'atan((T − B) × (2^(−n/12) − 2^(−P/12)) ÷ w): B, T scales of the outer strings, n the fret, P the square one, w their spread there.',
    from: FANNED,
  },
  'frets[].widthMm': {
    what: 'Square across at the fret.',
    how: null,
    formula: 'n + 2 × (t − n) × (1 − 2^(−f/12)): n width at the nut, t at fret 12, f the fret.',
    from: STRAIGHT,
  },
  'frets[].slotMm': {
    what: 'Along the slot, between the bindings where there are any.',
    how: null,
    formula: 'Length of the fret between the edges − 2 × binding.',
    from: STRAIGHT,
  },
  'frets[].wireMm': {
    what: 'Length of the wire with its overhang at both ends.',
    how: null,
    formula: 'Length of the fret between the edges + 2 × overhang.',
    from: STRAIGHT,
  },
  'frets[].radiusMm': {
    what: 'Of the board’s surface at the fret.',
    how: 'Radius gauge across the board.',
    formula: 'As entered; compound: evenly from the nut’s to the end’s.',
    from: 'Entered, or a cone by two radii; derived.',
  },
  'frets[].edgeDropMm': {
    what: 'How far the board’s edge lies under its crest.',
    how: null,
    formula: 'R − √(R² − w²/4): R radius there, w width of the board; 0 on a flat board.',
    from: CIRCLE,
  },
  'frets[].fallOffMm': {
    what: 'How far the fret lies under the plane of those before the joint.',
    how: null,
    formula: 'f × d ÷ o: f fall-off at the end, d from joint to fret, o board over the body; 0 up to the joint.',
    from: 'A straight fall; derived. That it helps is common practice.',
  },
  'frets[].bassOverMm': {
    what: 'Over the crown, strings at pitch and the neck straight.',
    how: null,
    formula: 'Straight line from nut slot to saddle − the crown under it, with radius and fall-off.',
    from: 'Straight string over the board’s surface; derived.',
  },
  'frets[].trebleOverMm': {
    what: 'Over the crown, strings at pitch and the neck straight.',
    how: null,
    formula: 'Straight line from nut slot to saddle − the crown under it, with radius and fall-off.',
    from: 'Straight string over the board’s surface; derived.',
  },
  'markers[].fret': { what: 'The fret that is marked.', how: null, ...ENTERED },
  'markers[].fromNutMm': {
    what: 'Midway between the marked fret and the one before, on the centreline.',
    how: 'Rule from the nut’s front edge.',
    formula: 'Half of both frets’ places.',
    from: LAW,
  },
  'markers[].acrossMm': {
    what: 'How far each of a pair stands from the centreline; pairs mark the octaves.',
    how: null,
    formula: 'A quarter of the board’s width there.',
    from: 'Common practice.',
  },
}
