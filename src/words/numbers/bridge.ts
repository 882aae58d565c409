import { ENTERED, type KeysUnder, type NumberTexts } from './numberWords.ts'

const LINE =
  'Fret law (ISO 16) and a straight saddle; derived. Compensation is an estimate: prove it at the real fret 12.'
const STRAIGHT = 'Straight lines in plan; derived. Compensation is an estimate.'
const SAGITTA = 'Height of an arc over its chord; derived.'

export const BRIDGE_NUMBER_WORDS: Record<KeysUnder<'bridge' | 'pins'>, NumberTexts> = {
  'bridge.saddleBassAtMm': {
    what: 'Crown of the saddle under the bass string, from the tail.',
    how: 'Rule along the centreline, squared across.',
    formula: 'Saddle line − compensation, at the bass string.',
    from: LINE,
  },
  'bridge.saddleTrebleAtMm': {
    what: 'Crown of the saddle under the treble string, from the tail.',
    how: 'Rule along the centreline, squared across.',
    formula: 'Saddle line − compensation, at the treble string.',
    from: LINE,
  },
  'bridge.saddleMiddleAtMm': {
    what: 'Crown of the saddle on the centreline, from the tail.',
    how: null,
    formula: 'Midway between bass and treble.',
    from: LINE,
  },
  'bridge.jointToSaddleMm': {
    what: 'From the joint to the saddle’s crown on the centreline, compensation and all.',
    how: 'Rule along the centreline from the joint.',
    formula: 'S × 2^(−J/12) + c: S scale, J the fret at the joint, c mean compensation.',
    from: LINE,
  },
  'bridge.twelfthToBassMm': {
    what: 'From the real fret 12 to the saddle’s crown, along the body, at the bass string.',
    how: 'Rule from the crown of fret 12.',
    formula: 'S ÷ 2 + c: S scale, c compensation of the bass string.',
    from: LINE,
  },
  'bridge.twelfthToTrebleMm': {
    what: 'From the real fret 12 to the saddle’s crown, along the body, at the treble string.',
    how: 'Rule from the crown of fret 12.',
    formula: 'S ÷ 2 + c: S scale, c compensation of the treble string.',
    from: LINE,
  },
  'bridge.compensationBassMm': {
    what: 'As the saddle is built: behind its line at the bass string.',
    how: null,
    formula: 'As entered, or the string’s own estimate.',
    from: 'Entered, or estimated by Hooke’s law and a stiff string (Morse 1948, from memory).',
  },
  'bridge.compensationTrebleMm': {
    what: 'As the saddle is built: behind its line at the treble string.',
    how: null,
    formula: 'As entered, or the string’s own estimate.',
    from: 'Entered, or estimated by Hooke’s law and a stiff string (Morse 1948, from memory).',
  },
  'bridge.slantRad': {
    what: 'Against square across; positive: its bass end lies nearer the tail.',
    how: 'Protractor on the bridge.',
    formula: 'atan(d ÷ w): d by which the bass end of the crown lies nearer the tail, w between the outer strings.',
    from: STRAIGHT,
  },
  'bridge.slotEndsDifferMm': {
    what: 'How much nearer the tail the slot’s bass end lies than its treble end.',
    how: 'Rule from the bridge’s front edge to both ends.',
    formula: 'l × sin of the slant: l saddle length.',
    from: STRAIGHT,
  },
  'bridge.slotFromCrownMm': {
    what: 'How far before its crown a leaning saddle enters the bridge.',
    how: null,
    formula: 's × tan t: s saddle showing, t its lean.',
    from: STRAIGHT,
  },
  'bridge.crownMovesMm': {
    what: 'Toward the tail for each mm the saddle is raised.',
    how: null,
    formula: 'tan t: t the saddle’s lean.',
    from: STRAIGHT,
  },
  'bridge.slotFrontAtBassMm': {
    what: 'From the bridge’s front edge to the front wall of the saddle slot, at the slot’s bass end.',
    how: 'Caliper from the front edge to the slot.',
    formula:
      'f − s × tan t − b/2 + d/2: f front edge to saddle, s showing, t lean, b slot width, d by which its ends differ.',
    from: 'Straight lines in plan; derived. Compensation is an estimate.',
  },
  'bridge.slotFrontAtTrebleMm': {
    what: 'From the bridge’s front edge to the front wall of the saddle slot, at the slot’s treble end.',
    how: 'Caliper from the front edge to the slot.',
    formula:
      'f − s × tan t − b/2 − d/2: f front edge to saddle, s showing, t lean, b slot width, d by which its ends differ.',
    from: 'Straight lines in plan; derived. Compensation is an estimate.',
  },
  'bridge.saddleHeightMm': {
    what: 'From the bottom of its slot to the crown, in the middle.',
    how: 'Caliper across the saddle.',
    formula: 'Slot depth + saddle showing.',
    from: 'Plain sum; derived.',
  },
  'bridge.woodUnderSlotMm': {
    what: 'Bridge left under the saddle slot.',
    how: 'Depth gauge in the slot, off the thickness.',
    formula: 'Bridge thickness − slot depth.',
    from: 'Plain difference; derived.',
  },
  'bridge.frontEdgeAtMm': {
    what: 'Of the bridge on the centreline, from the tail.',
    how: 'Rule along the centreline from the tail.',
    formula: 'Saddle + front edge to saddle.',
    from: LINE,
  },
  'bridge.backEdgeAtMm': {
    what: 'Of the bridge on the centreline, from the tail.',
    how: null,
    formula: 'Front edge − bridge width.',
    from: LINE,
  },
  'bridge.jointToFrontMm': {
    what: 'From the joint to the bridge’s front edge on the centreline.',
    how: 'Rule along the centreline from the joint.',
    formula: 'Joint to saddle − front edge to saddle.',
    from: LINE,
  },
  'bridge.undersideRadiusMm': {
    what: 'Of the top across the bridge’s length: what its underside is hollowed to.',
    how: null,
    formula: 'c² ÷ (8 × h) + h ÷ 2: c bridge length, h hollow.',
    from: SAGITTA,
  },
  'bridge.hollowAcrossMm': {
    what: 'How far the underside is hollowed in the middle, over the bridge’s length.',
    how: 'Straightedge on the underside, feeler gauge in the middle.',
    formula: 'Top in the middle − mean of the top at both ends of the bridge.',
    from: SAGITTA,
  },
  'bridge.hollowAlongMm': {
    what: 'The same between front and back edge.',
    how: 'Straightedge across the underside.',
    formula: 'Top in the middle − mean of the top at front and back edge.',
    from: SAGITTA,
  },
  'bridge.thicknessMm': {
    what: 'In the middle.',
    how: 'Caliper in the middle.',
    ...ENTERED,
  },
  'bridge.lengthMm': { what: 'Across the body.', how: 'Caliper across the body.', ...ENTERED },
  'bridge.widthMm': { what: 'Along the centreline.', how: 'Caliper along the centreline.', ...ENTERED },
  'bridge.slotWidthMm': { what: 'And so of the saddle.', how: 'Caliper in the slot.', ...ENTERED },
  'bridge.slotLengthMm': { what: 'End to end.', how: 'Caliper along the slot.', ...ENTERED },
  'bridge.slotDepthMm': { what: 'From the bridge’s top.', how: 'Depth gauge in the slot.', ...ENTERED },
  'bridge.holdsAtMm': {
    what: 'Their line on the centreline, from the tail.',
    how: 'Rule along the centreline from the tail.',
    formula: 'Saddle − saddle to pins or holes.',
    from: LINE,
  },
  'bridge.holdsSlantRad': {
    what: 'Against square across.',
    how: null,
    formula: 'The saddle’s own, or none.',
    from: STRAIGHT,
  },
  'bridge.plateBehindHoldsMm': {
    what: 'How far the bridge plate reaches past the rearmost pin or hole toward the tail.',
    how: null,
    formula: 'Rearmost pin or hole − where the plate begins.',
    from: 'Plain difference; derived. Compensation is an estimate.',
  },
  'bridge.plateBeforeSaddleMm': {
    what: 'How far the bridge plate reaches past the saddle toward the neck.',
    how: null,
    formula: 'Where the plate ends − foremost place of the crown.',
    from: 'Plain difference; derived. Compensation is an estimate.',
  },
  'pins[].atMm': {
    what: 'Middle of the pin’s hole, or where the tie hole comes out behind the saddle, from the tail.',
    how: 'Rule along the centreline, squared across.',
    formula: 'Where the line of the holes crosses its place across.',
    from: LINE,
  },
  'pins[].acrossMm': {
    what: 'From the centreline; bass side negative.',
    how: 'Rule across the bridge.',
    formula: 'Pins: evenly over their spread. Tied: straight behind the string.',
    from: 'Even spacing, common practice.',
  },
  'pins[].behindSaddleMm': {
    what: 'From the string’s crown back to its hole, along the body.',
    how: null,
    formula: 'Crown at the string − hole.',
    from: 'Plain difference; derived. Compensation is an estimate.',
  },
}
