import type { KeysUnder, NumberTexts } from './numberWords.ts'

const RIGID =
  'The neck turned about the joint until the strings stand as asked; derived. The sum beside it is near enough at usual angles.'
const SUM = 'Plain sum; derived.'
const ANGLE =
  'atan((z + H − e − b) ÷ D): z top at the saddle, H frets’ plane over it, e rim edge at the neck or where a flat begins, b board and crown, D from there to the saddle.'

export const NECK_SET_NUMBER_WORDS: Record<KeysUnder<'neckSet'>, NumberTexts> = {
  'neckSet.angleRad': {
    what: 'Against the rim plane, before stringing. Positive: the frets’ plane rises toward the saddle.',
    how: 'Bevel gauge between the neck’s face and the neck block’s face; proved by the straightedge at the saddle.',
    formula: ANGLE,
    from: RIGID,
  },
  'neckSet.angleStrungRad': {
    what: 'What the same heights would ask if nothing gave under the strings.',
    how: null,
    formula: 'As the angle to build to, without the rise.',
    from: RIGID,
  },
  'neckSet.angleToTopRad': {
    what: 'Against the top where it meets the neck: nothing where the board lies on it.',
    how: 'Bevel gauge between top and board.',
    formula: 'Neck angle − the angle by which the top falls toward the neck there.',
    from: SUM,
  },
  'neckSet.fretPlaneOverTopMm': {
    what: 'A straightedge on the frets, over the top at the saddle line, before stringing and before the bridge is glued.',
    how: 'Straightedge on the frets, rule or wedge at the saddle line.',
    formula: 'B + s − a + u, a = 2 × A − n: B bridge, s saddle showing, A action and n nut slot (means), u rise.',
    from: 'Heights at the saddle; derived.',
  },
  'neckSet.fretPlaneOverTopStrungMm': {
    what: 'The same with strings at pitch.',
    how: 'Straightedge between the strings, at the saddle line.',
    formula: 'B + s − a, a = 2 × A − n: B bridge, s saddle showing, A action and n nut slot (means).',
    from: 'Heights at the saddle; derived.',
  },
  'neckSet.fretPlaneOverBridgeMm': {
    what: 'The straightedge over the bridge’s top before stringing; negative: it would meet the bridge below its top.',
    how: 'Straightedge on the frets, feeler gauge on the bridge.',
    formula: 's − a + u, a = 2 × A − n: s saddle showing, A action and n nut slot (means), u rise.',
    from: 'Heights at the saddle; derived.',
  },
  'neckSet.fretPlaneOverBridgeStrungMm': {
    what: 'The same with strings at pitch.',
    how: 'Straightedge between the strings, on the bridge.',
    formula: 's − a, a = 2 × A − n: s saddle showing, A action and n nut slot (means).',
    from: 'Heights at the saddle; derived.',
  },
  'neckSet.faceAtNutMm': {
    what: 'Underside of the board at the nut over the rim plane; negative: under it. Heel first: the tilt of the workboard.',
    how: 'Long straightedge on the rim at tail and neck, rule at the nut.',
    formula: 'e − l × tan w: e rim edge at the neck, l nut to joint, w neck angle.',
    from: 'A straight line; derived.',
  },
  'neckSet.stringsOverTopMm': {
    what: 'At the saddle, in the middle: the arm with which they turn the bridge.',
    how: 'Caliper’s depth rod from the string to the top.',
    formula: 'Bridge thickness + saddle showing.',
    from: SUM,
  },
  'neckSet.wedgePerMm': {
    what: 'Wood to take off the heel’s lower end, running out to nothing at the top, for each mm the frets’ plane is to rise at the saddle. At the bench, nothing else touched: the neck turns about the joint.',
    how: null,
    formula: 'h ÷ D: h heel depth, D joint to saddle.',
    from: 'Similar triangles; derived.',
  },
  'neckSet.gapAtEndMm': {
    what: 'Between board and top at the board’s end, or at the soundhole’s edge where it reaches over it; negative: the top is in the way. Under 0.1 mm a scraper sees to it.',
    how: 'Feeler gauge under the board.',
    formula: 'e + d × tan w − z: e rim edge at the neck, d from the joint, w neck angle, z the top there.',
    from: 'A straight line over the dome; derived.',
  },
  'neckSet.widestGapMm': {
    what: 'The widest place between board and top.',
    how: null,
    formula: 'Greatest of the gaps listed.',
    from: 'A straight line over the dome; derived.',
  },
  'neckSet.gaps[].fromJointMm': {
    what: 'At each fret over the body, and at the board’s end.',
    how: null,
    formula: 'Joint − place.',
    from: 'Plain difference; derived.',
  },
  'neckSet.gaps[].gapMm': {
    what: 'Between board and top on the centreline; negative: the top is in the way. Under 0.1 mm a scraper sees to it.',
    how: 'Feeler gauge under the board.',
    formula: 'e + d × tan w − z: e rim edge at the neck, d from the joint, w neck angle, z the top there.',
    from: 'A straight line over the dome; derived.',
  },
  'neckSet.changes[].actionMm': {
    what: 'What 0.5 mm more of it does to the action at fret 12 while the neck stays.',
    how: null,
    formula: 'Half of the change at the saddle; a thicker board lifts the frets instead.',
    from: 'Fret 12 is midway; derived.',
  },
  'neckSet.changes[].angleRad': {
    what: 'How the neck angle to build to changes with 0.5 mm more of it, the action staying.',
    how: null,
    formula: 'Neck angle with it − neck angle.',
    from: RIGID,
  },
  'neckSet.changes[].wedgeMm': {
    what: 'The same as wood off the heel’s lower end; negative: off its upper end. A flat that falls as the neck asks is planed anew with it and turns about where it begins: that takes more than on a box that stays as it is.',
    how: null,
    formula: 'h × tan of that change: h heel depth.',
    from: 'Similar triangles; derived.',
  },
}
