import type { KeysUnder } from '../numbers/numberWords.ts'

export const BODY_NAMES: Record<KeysUnder<'body' | 'pieces' | 'readings' | 'fit'>, string> = {
  'body.lengthMm': 'Body length',
  'body.halfLengthMm': 'Half way round',
  'body.areaMm2': 'Area of the outline',
  'body.lowerBoutMm': 'Lower bout',
  'body.lowerBoutAtMm': 'Lower bout stands at',
  'body.waistMm': 'Waist',
  'body.waistAtMm': 'Waist stands at',
  'body.upperBoutMm': 'Upper bout',
  'body.upperBoutAtMm': 'Upper bout stands at',
  'body.tightestRadiusMm': 'Tightest bend',
  'body.tightestAtMm': 'Tightest bend lies at',
  'pieces[].radiusMm': 'Radius of the piece',
  'pieces[].sweepRad': 'Sweep of the piece',
  'pieces[].lengthMm': 'Length of the piece',
  'readings[].fromTailMm': 'Reading, from the tail',
  'readings[].halfWidthMm': 'Reading, half-width',
  'readings[].departureMm': 'Reading, off the curve',
  'fit.largestDepartureMm': 'Largest departure',
  'fit.inflections': 'Inflections',
}
