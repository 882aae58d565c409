import { ENTERED, type KeysUnder, type NumberTexts } from './numberWords.ts'

export const BODY_WORDS: Record<KeysUnder<'body' | 'pieces' | 'readings' | 'fit'>, NumberTexts> = {
  'body.lengthMm': {
    what: 'From the tail to the neck joint along the centreline, outside of the sides to outside of the sides.',
    how: 'Rule along the centreline, tail to neck joint.',
    formula: 'As entered. Left open: where the last compass piece ends, or a usual one. A drawn path brings its own.',
    from: 'Entered, or derived from the pieces or the path. The usual one (upper bout at 0.8 of it; 3% past the last reading) is common practice.',
  },
  'body.halfLengthMm': {
    what: 'Length of one half of the outline on the outer face of the side, tail centre to neck centre.',
    how: 'Tape round the outside of one side, centre mark to centre mark.',
    formula: 'Sum of the lengths of all pieces of the half outline; an arc counts R × sweep in radians, R its radius.',
    from: 'Arc length; derived. A fair outline is the one whose bend changes least (Moreton & Sequin 1992).',
  },
  'body.areaMm2': {
    what: 'Area inside the outer face of the sides, both halves.',
    how: null,
    formula: 'A = sum of y × dx from tail to neck, both halves: y half-width, dx a short step along the centreline.',
    from: 'Gauss’s ten-point rule (Abramowitz & Stegun, table 25.4, from memory); derived.',
  },
  'body.lowerBoutMm': {
    what: 'Greatest whole width on the tail side of the waist, as found on the curve.',
    how: 'Rule square across the widest place near the tail.',
    formula:
      'w = y + v: y the greatest half-width of the bass side before the waist, or anywhere without a waist; v of the treble side there, as much unless it differs.',
    from: 'The outline’s own direction, solved in closed form; derived.',
  },
  'body.lowerBoutAtMm': {
    what: 'Place of the lower bout along the centreline, from the tail.',
    how: 'Rule along the centreline from the tail.',
    formula: 'x where the outline runs along the centreline at its widest on the tail side of the waist.',
    from: 'The outline’s own direction, solved in closed form; derived.',
  },
  'body.waistMm': {
    what: 'Least whole width between the two bouts, as found on the curve.',
    how: 'Rule square across the narrowest place.',
    formula:
      'w = y + v: y the least half-width of the bass side between two bouts, v of the treble side there, as much unless it differs.',
    from: 'The outline’s own direction, solved in closed form; derived.',
  },
  'body.waistAtMm': {
    what: 'Place of the waist along the centreline, from the tail.',
    how: 'Rule along the centreline from the tail.',
    formula: 'x where the outline runs along the centreline at its narrowest between two bouts.',
    from: 'The outline’s own direction, solved in closed form; derived.',
  },
  'body.upperBoutMm': {
    what: 'Greatest whole width on the neck side of the waist, as found on the curve.',
    how: 'Rule square across the widest place near the neck.',
    formula:
      'w = y + v: y the greatest half-width of the bass side past the waist, v of the treble side there, as much unless it differs.',
    from: 'The outline’s own direction, solved in closed form; derived.',
  },
  'body.upperBoutAtMm': {
    what: 'Place of the upper bout along the centreline, from the tail.',
    how: 'Rule along the centreline from the tail.',
    formula: 'x where the outline runs along the centreline at its widest on the neck side of the waist.',
    from: 'The outline’s own direction, solved in closed form; derived.',
  },
  'body.tightestRadiusMm': {
    what: 'Smallest radius anywhere on the outer face: the place where a side is most likely to crack.',
    how: null,
    formula: 'R = 1 ÷ k: k the sharpest bend, convex or hollow, looked for at both ends of every piece.',
    from: 'Between its ends a piece never bends sharper than at one of them; derived.',
  },
  'body.tightestAtMm': {
    what: 'How far round the outer face from the tail the tightest bend lies.',
    how: null,
    formula:
      'Lengths of the pieces before it, added up, and on to the middle of an arc or the sharper end of a fair piece.',
    from: 'Arc length; derived.',
  },
  'pieces[].radiusMm': {
    what: 'Radius of one compass arc on the outer face; minus where the arc is hollow. A straight piece is flat.',
    how: null,
    formula:
      'As entered. Left open: solved so that the half outline ends on the centreline, square to it, at the body length.',
    from: 'Closing of the chain, derived; solved by damped least squares (Levenberg 1944, Marquardt 1963).',
  },
  'pieces[].sweepRad': {
    what: 'How far one compass arc turns, from where it starts to where it ends.',
    how: null,
    formula: 'As entered. Left open: solved for the same closing, where convex sweeps less hollow ones make 180°.',
    from: 'Closing of the chain, derived; solved by damped least squares (Levenberg 1944, Marquardt 1963).',
  },
  'pieces[].lengthMm': {
    what: 'Length of one piece of the outline, measured along it.',
    how: null,
    formula:
      'R × sweep in radians for an arc, R its radius; a straight as entered, or solved so that the outline closes.',
    from: 'Closing of the chain, derived; solved by damped least squares (Levenberg 1944, Marquardt 1963).',
  },
  'readings[].fromTailMm': {
    what: 'Where a half-width was read: along the centreline from the tail, in the order of the outline.',
    how: null,
    ...ENTERED,
  },
  'readings[].halfWidthMm': {
    what: 'Half-width as it was read there, from the centreline to the outer face.',
    how: null,
    ...ENTERED,
  },
  'readings[].departureMm': {
    what: 'How far the reading lies outside the curve; minus where it lies inside. It stays within what the table was read to.',
    how: null,
    formula: 'Distance from the reading to the nearest place of the curve, square to it.',
    from: 'Derived. Of all curves that near to every reading it is the one whose bend changes least (Moreton & Sequin 1992).',
  },
  'fit.largestDepartureMm': {
    what: 'Greatest distance of a reading, or of a drawn path, from the outline; none where nothing was read or traced.',
    how: null,
    formula: 'The greatest distance from anything read or traced to the nearest place of the curve, either side.',
    from: 'Nearest places found by steps; derived.',
  },
  'fit.inflections': {
    what: 'How often half the outline turns from round to hollow or back. A body with one waist has two.',
    how: null,
    formula: 'Times the bend 1 ÷ R changes its sign from tail to neck: R radius, taken as straight above fifty metres.',
    from: 'Along a piece the bend changes evenly, so that none is missed; derived.',
  },
}
