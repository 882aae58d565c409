import type { ShopDoc } from '../../record/commission.ts'
import type { SheetChoice } from './fullSizeOrder.ts'

/** The sheets of a shop that prints so. */
export const sheetChoice = ({
  sheet,
  rollWidthMm,
  overlapMm,
  boxAcrossMm,
  boxAlongMm,
}: ShopDoc['printing']): SheetChoice => ({
  size: sheet,
  rollWidthMm,
  overlapMm,
  boxMeasuredMm: { across: boxAcrossMm, along: boxAlongMm },
})
