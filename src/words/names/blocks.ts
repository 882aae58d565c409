import type { KeysUnder } from '../numbers/numberWords.ts'
import { under } from './under.ts'

const namesOf = (block: string) => ({
  widthMm: `${block}, width`,
  thicknessMm: `${block}, thickness`,
  contourRadiusMm: `${block}, contour radius`,
  contourRiseMm: `${block}, rise at the middle`,
  contourGapMm: `${block}, gap left by the arc`,
  'contour[].acrossMm': `${block}, out from the middle`,
  'contour[].fallsBackMm': `${block}, falls back`,
  trebleReachMm: `${block}, reach on the treble side`,
  'flank[].fromFaceMm': `${block}, flank from the glue face`,
  'flank[].acrossMm': `${block}, flank from the middle`,
  heightAtFaceMm: `${block}, height at the glue face`,
  heightInsideMm: `${block}, height inside`,
  topSlopeRad: `${block}, slope of the top end`,
  backSlopeRad: `${block}, slope of the back end`,
})

export const BLOCK_NAMES: Record<KeysUnder<'blocks'>, string> = {
  ...under('blocks.tail.', namesOf('Tail block')),
  ...under('blocks.neck.', namesOf('Neck block')),
}
