import type { StringSetKey } from '../../record/patterns/stringSets.ts'
import type { TuningKey } from '../../record/patterns/tunings.ts'

export const STRING_SET_WORDS: Record<StringSetKey, string> = {
  steelLight: 'Steel, light (12 to 53)',
  steelMedium: 'Steel, medium (13 to 56)',
  twelveString: 'Steel, twelve strings, light',
  baritone: 'Steel, baritone from B',
  steelSeven: 'Steel, seven strings, low B',
  nylon: 'Nylon, normal tension',
  nylonSeven: 'Nylon, seven strings, low B',
  nylonEight: 'Nylon, eight strings, low B and F#',
  ukuleleTenor: 'Tenor ukulele, nylon, high G',
  ukuleleLowG: 'Tenor ukulele, nylon, low G',
}

/** Said wherever a set is offered. */
export const STRING_SET_CAUTION =
  'Masses and cores of wound strings are examples. Put in what the maker of your strings states.'

export const TUNING_WORDS: Record<TuningKey, string> = {
  halfStepDown: 'Half a step down',
  wholeStepDown: 'One step down',
  halfStepUp: 'Half a step up',
  fourthDown: 'A fourth down',
  dropD: 'Drop D: D A D G B E',
  openG: 'Open G: D G D G B D',
  openD: 'Open D: D A D F# A D',
  dadgad: 'D A D G A D',
}
