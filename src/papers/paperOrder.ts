import type { Computed } from '../core/compute.ts'
import type { Plan } from '../core/plan.ts'
import type { Drawing } from '../drawing/drawing.ts'
import type { CommissionDoc, ShopDoc } from '../record/commission.ts'
import type { StageDrawing } from '../record/patterns/stages.ts'
import type { BuyingListWords } from '../words/buyingList.ts'
import type { DrawingSetWords } from '../words/drawingSet.ts'
import type { FullSizeWords } from '../words/fullSize.ts'
import type { LabelWords } from '../words/label.ts'
import type { SpecificationWords } from '../words/specification.ts'
import type { SheetWords, StageSheetOrder } from './stageSheetOrder.ts'

/** What the papers about a whole instrument are made from: specification, shop drawings, buying list, label. */
export interface PaperOrder extends Pick<StageSheetOrder, 'paperSize' | 'revisionCode' | 'dateIso'> {
  readonly doc: Pick<CommissionDoc, 'number' | 'title' | 'family' | 'brief' | 'tolerances' | 'stages'> & {
    readonly plan: Plan
  }
  readonly computed: Computed
  readonly shop: Pick<ShopDoc, 'name' | 'units' | 'tolerances'>
  readonly drawingOf: (drawing: StageDrawing) => Drawing
  readonly words: SheetWords & WholePaperWords
}

/** The words of those papers, and of the templates that are made from the same order. */
export interface WholePaperWords {
  readonly specification: SpecificationWords
  readonly drawingSet: DrawingSetWords
  readonly buyingList: BuyingListWords
  readonly label: LabelWords
  readonly fullSize: FullSizeWords
}
