import type { KeysUnder } from '../numbers/numberWords.ts'

export const CUTAWAY_NAMES: Record<KeysUnder<'cutaway'>, string> = {
  'cutaway.trebleLengthMm': 'Treble side, round the outside',
  'cutaway.hornAtMm': 'Horn stands at',
  'cutaway.hornHalfWidthMm': 'Horn, out from the centreline',
  'cutaway.hornOnRimMm': 'Horn, round the outside',
  'cutaway.hornAngleRad': 'Angle of a pointed horn',
  'cutaway.angleAtNeckRad': 'Angle of the hollow at the neck',
  'cutaway.runsOnMm': 'Bass side runs on',
}
