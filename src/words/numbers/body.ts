import type { KeysUnder, NumberWords } from './numberWords.ts'

export const BODY_WORDS: Record<KeysUnder<'body' | 'pieces'>, NumberWords> = {
  'body.lengthMm': {
    name: 'Body length',
    what: 'From the tail to the neck joint along the centreline, outside of the sides to outside of the sides.',
    how: 'Rule along the centreline, tail to neck joint.',
  },
  'body.halfLengthMm': {
    name: 'Half way round',
    what: 'Length of one half of the outline on the outer face of the side, tail centre to neck centre.',
    how: 'Tape round the outside of one side, centre mark to centre mark.',
  },
  'body.areaMm2': {
    name: 'Area of the outline',
    what: 'Area inside the outer face of the sides, both halves.',
    how: null,
  },
  'body.lowerBoutMm': {
    name: 'Lower bout',
    what: 'Greatest whole width on the tail side of the waist, as found on the curve.',
    how: 'Rule square across the widest place near the tail.',
  },
  'body.lowerBoutAtMm': {
    name: 'Lower bout stands at',
    what: 'Place of the lower bout along the centreline, from the tail.',
    how: 'Rule along the centreline from the tail.',
  },
  'body.waistMm': {
    name: 'Waist',
    what: 'Least whole width between the two bouts, as found on the curve.',
    how: 'Rule square across the narrowest place.',
  },
  'body.waistAtMm': {
    name: 'Waist stands at',
    what: 'Place of the waist along the centreline, from the tail.',
    how: 'Rule along the centreline from the tail.',
  },
  'body.upperBoutMm': {
    name: 'Upper bout',
    what: 'Greatest whole width on the neck side of the waist, as found on the curve.',
    how: 'Rule square across the widest place near the neck.',
  },
  'body.upperBoutAtMm': {
    name: 'Upper bout stands at',
    what: 'Place of the upper bout along the centreline, from the tail.',
    how: 'Rule along the centreline from the tail.',
  },
  'body.tightestRadiusMm': {
    name: 'Tightest bend',
    what: 'Smallest radius anywhere on the outer face: the place where a side is most likely to crack.',
    how: null,
  },
  'body.tightestAtMm': {
    name: 'Tightest bend lies at',
    what: 'How far round the outer face from the tail the tightest bend lies.',
    how: null,
  },
  'pieces[].radiusMm': {
    name: 'Radius of the piece',
    what: 'Radius of one compass arc on the outer face; minus where the arc is hollow. A straight piece is flat.',
    how: null,
  },
  'pieces[].sweepRad': {
    name: 'Sweep of the piece',
    what: 'How far one compass arc turns, from where it starts to where it ends.',
    how: null,
  },
  'pieces[].lengthMm': {
    name: 'Length of the piece',
    what: 'Length of one piece of the outline, measured along it.',
    how: null,
  },
}
