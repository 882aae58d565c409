import type { KeysUnder } from '../numbers/numberWords.ts'

export const DOME_NAMES: Record<KeysUnder<'plates' | 'top' | 'back'>, string> = {
  'plates.topMm': 'Top, thickness',
  'plates.backMm': 'Back, thickness',
  'top.radiusMm': 'Dome of the top',
  'top.flatFromMm': 'Flat begins at',
  'top.flatSlopeRad': 'Fall of the flat',
  'top.neckEdgeMm': 'Top edge at the neck',
  'top.riseAtSaddleMm': 'Rise at the saddle',
  'top.heightAtSaddleMm': 'Top over the rim plane at the saddle',
  'top.gapAcrossLowerBoutMm': 'Top, gap across the lower bout',
  'top.gapAcrossWaistMm': 'Top, gap across the waist',
  'top.gapAcrossUpperBoutMm': 'Top, gap across the upper bout',
  'top.gapAlongMm': 'Top, gap along the body',
  'back.radiusMm': 'Dome of the back',
  'back.axisAtMm': 'Axis of the back stands at',
  'back.lowestAtMm': 'Lowest place of the back',
  'back.lowestUnderRimPlaneMm': 'Back under the rim plane',
  'back.gapAcrossLowerBoutMm': 'Back, gap across the lower bout',
  'back.gapAcrossWaistMm': 'Back, gap across the waist',
  'back.gapAcrossUpperBoutMm': 'Back, gap across the upper bout',
  'back.gapAlongMm': 'Back, gap along the body',
}
