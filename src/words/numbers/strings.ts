import { ENTERED, type KeysUnder, type NumberTexts } from './numberWords.ts'

const GAPS = 'Equal gaps between strings, not equal middles; derived.'
const PULL =
  'Law of the ideal string (Fletcher & Rossing 1998); published. Stiffness, some parts in a thousand, is left out.'
const MASS = 'T = μ × (2 × S × f)²: μ mass per length, S scale, f frequency, in kilograms, metres and hertz.'
const HEIGHT = 'Straight string over the board’s surface; derived.'
const PRESSED =
  'The length at which the string pressed to fret 12, stretched by it and stiff, sounds an octave over the open one; found by steps.'
const ESTIMATED = 'Hooke’s law and a stiff string clamped at both ends (Morse 1948, from memory); an estimate.'

export const STRING_NUMBER_WORDS: Record<KeysUnder<'strings' | 'stringSet' | 'setup'>, NumberTexts> = {
  'strings[].nutAcrossMm': {
    what: 'Middle of the slot from the centreline; bass side negative.',
    how: 'Rule along the nut.',
    formula: 'From the outer strings inward with one gap everywhere between edges.',
    from: GAPS,
  },
  'strings[].nutFromBassEdgeMm': {
    what: 'Middle of the slot from the board’s bass edge.',
    how: 'Rule from the bass edge of the nut.',
    formula: 'Half the nut’s width + across.',
    from: GAPS,
  },
  'strings[].saddleAcrossMm': {
    what: 'Where the string crosses the saddle, from the centreline; bass side negative.',
    how: 'Rule along the saddle.',
    formula: 'From the outer strings inward with one gap everywhere between edges.',
    from: GAPS,
  },
  'strings[].scaleMm': {
    what: 'Nut to saddle line along the body, uncompensated, for this string.',
    how: null,
    formula: 'Where its nut and saddle lines cross it; the scale itself where frets are square.',
    from: 'Equal temperament (ISO 16) on straight fanned lines; derived.',
  },
  'strings[].diameterMm': { what: 'Outside.', how: null, ...ENTERED },
  'strings[].massGPerM': {
    what: 'Per length.',
    how: null,
    formula: 'As its maker states; plain: ρ × π × d²/4, ρ density, d diameter.',
    from: 'Entered, or steel 7850 kg/m³ (ASTM A228, from memory), nylon 1060, fluorocarbon 1780 (from memory).',
  },
  'strings[].frequencyHz': {
    what: 'Of the open string.',
    how: null,
    formula: 'p × 2^(n/12): p pitch of the A, n semitones from it.',
    from: 'Equal temperament, pitch by ISO 16; published.',
  },
  'strings[].tensionN': { what: 'Of the open string at pitch.', how: null, formula: MASS, from: PULL },
  'strings[].stressMPa': {
    what: 'In the plain string, or in the core.',
    how: null,
    formula: '4 × T ÷ (π × d²): T pull, d diameter of string or core.',
    from: 'Pull over section; derived.',
  },
  'strings[].otherFrequencyHz': {
    what: 'In the other tuning.',
    how: null,
    formula: 'p × 2^(n/12): p pitch of the A, n semitones from it.',
    from: 'Equal temperament, pitch by ISO 16; published.',
  },
  'strings[].otherTensionN': {
    what: 'With the other tuning and scale.',
    how: null,
    formula: MASS,
    from: PULL,
  },
  'strings[].slotOverBoardMm': {
    what: 'Bottom of the nut slot over the board’s surface under it.',
    how: 'Feeler gauges stacked on the board beside the nut.',
    formula: 'Crown of the frets + nut slot over their plane.',
    from: 'Plain sum; derived.',
  },
  'strings[].overFirstMm': {
    what: 'String over the crown of fret 1.',
    how: 'Feeler gauge under the string.',
    formula: 'n + (a − n) × (1 − 2^(−1/12)): n at the nut, a at the saddle, over the crowns; corrected for the radius.',
    from: HEIGHT,
  },
  'strings[].overTwelfthMm': {
    what: 'String over the crown of fret 12: the action.',
    how: 'Feeler gauge or scale under the string, strings at pitch.',
    formula: 'Evenly from the bass string’s to the treble string’s.',
    from: 'Entered for the outer strings; evenly between, common practice.',
  },
  'strings[].saddleShowingMm': {
    what: 'Crown of the saddle over the bridge under this string.',
    how: 'Caliper’s depth rod on the bridge.',
    formula:
      's + a − a₀: s showing in the middle, a and a₀ this string’s height and the middle’s over the frets’ plane.',
    from: HEIGHT,
  },
  'strings[].breakRad': {
    what: 'Angle by which the string bends down over the saddle’s crown.',
    how: null,
    formula: 'Rise of the string in front + fall behind: atan(fall ÷ distance to pin or hole), strings at pitch.',
    from: 'Three points in a plane; derived.',
  },
  'strings[].compensationMm': {
    what: 'How far behind its line the saddle should stand for this string. Set it from the real fret 12.',
    how: null,
    formula: PRESSED,
    from: ESTIMATED,
  },
  'strings[].crownBehindLineMm': {
    what: 'Where on the saddle to file the crown for this string: behind the straight line of the saddle, or before it.',
    how: null,
    formula: 'Estimated compensation − that of the straight saddle there.',
    from: ESTIMATED,
  },
  'stringSet.count': { what: 'How many.', how: null, ...ENTERED },
  'stringSet.tensionN': {
    what: 'Together, at pitch.',
    how: null,
    formula: 'Sum of the pulls; a string whose mass is not known is left out.',
    from: PULL,
  },
  'stringSet.torqueNm': {
    what: 'Torque with which the strings turn the bridge forward.',
    how: null,
    formula: 'T × h: T pull of all, h strings over the top.',
    from: 'Force times arm; derived.',
  },
  'stringSet.otherTensionN': {
    what: 'With the other tuning and scale.',
    how: null,
    formula: 'Sum of the pulls.',
    from: PULL,
  },
  'stringSet.otherTorqueNm': {
    what: 'With the other tuning and scale.',
    how: null,
    formula: 'T × h: T pull of all, h strings over the top.',
    from: 'Force times arm; derived.',
  },
  'stringSet.gapAtNutMm': {
    what: 'Edge to edge between neighbouring courses.',
    how: 'Caliper’s inside jaws between two strings.',
    formula: '(w − Σd) ÷ gaps: w middle to middle of the outer strings, Σd the string between.',
    from: GAPS,
  },
  'stringSet.gapAtSaddleMm': {
    what: 'Edge to edge between neighbouring courses.',
    how: null,
    formula: '(w − Σd) ÷ gaps: w middle to middle of the outer strings, Σd the string between.',
    from: GAPS,
  },
  'stringSet.bassEdgeAtNutMm': {
    what: 'From the board’s bass edge to the string’s near edge, at the nut.',
    how: 'Caliper’s depth rod along the nut.',
    formula: '(n − w − d) ÷ 2: n width at the nut, w spread, d diameter.',
    from: 'Plain difference; derived.',
  },
  'stringSet.trebleEdgeAtNutMm': {
    what: 'From the board’s treble edge to the string’s near edge, at the nut.',
    how: 'Caliper’s depth rod along the nut.',
    formula: '(n − w − d) ÷ 2: n width at the nut, w spread, d diameter.',
    from: 'Plain difference; derived.',
  },
  'stringSet.leastEdgeMm': {
    what: 'The least board beside an outer string, from nut to end.',
    how: null,
    formula: 'Board and strings run straight: the lesser of nut and end, either side.',
    from: 'Straight lines; derived.',
  },
  'setup.actionBassMm': {
    what: 'Under the bass string at fret 12.',
    how: 'Feeler gauge or scale, strings at pitch, relief set.',
    ...ENTERED,
  },
  'setup.actionTrebleMm': {
    what: 'Under the treble string at fret 12.',
    how: 'Feeler gauge or scale, strings at pitch, relief set.',
    ...ENTERED,
  },
  'setup.nutBassMm': {
    what: 'Bottom of the slot over the plane of the frets.',
    how: null,
    ...ENTERED,
  },
  'setup.nutTrebleMm': {
    what: 'Bottom of the slot over the plane of the frets.',
    how: null,
    ...ENTERED,
  },
  'setup.reliefMm': {
    what: 'Hollow of the frets under strings, about fret 7.',
    how: 'String held at fret 1 and at the joint, feeler gauge over fret 7.',
    ...ENTERED,
  },
}
