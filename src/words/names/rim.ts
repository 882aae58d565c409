import type { KeysUnder } from '../numbers/numberWords.ts'
import { under } from './under.ts'

type RowName = KeysUnder<'rim'> extends `rim[].${infer Name}` ? Name : never

/** The same columns stand for every station round the rim and for the named places, on either side. */
const ROWS: Record<RowName, string> = {
  alongOuterMm: 'Round the outside',
  alongBlankMm: 'Along the flat blank',
  xMm: 'Along the centreline',
  yMm: 'Half-width',
  topEdgeMm: 'Top edge',
  backEdgeMm: 'Back edge',
  depthMm: 'Rim depth, without plates',
  topBevelRad: 'Bevel of the top edge',
  backBevelRad: 'Bevel of the back edge',
  cutWidthMm: 'Cut width',
  firstDepthMm: 'First rim depth, without plates',
  topProudOuterMm: 'Top lining over the outer corner',
  topProudInnerMm: 'Top lining over the inner corner',
  backProudOuterMm: 'Back lining over the outer corner',
  backProudInnerMm: 'Back lining over the inner corner',
}

export const RIM_NAMES: Record<KeysUnder<'rim' | 'trebleRim' | 'places' | 'treblePlaces'>, string> = {
  ...under('rim[].', ROWS),
  ...under('trebleRim[].', ROWS),
  'trebleRim[].blank': 'Blank of the treble side',
  ...under('places[].', ROWS),
  ...under('treblePlaces[].', ROWS),
}
