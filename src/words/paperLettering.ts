import type { WholePaperWords } from '../papers/paperOrder.ts'
import type { SheetWords } from '../papers/stageSheetOrder.ts'
import { BUYING_LIST_WORDS } from './buyingList.ts'
import { CAUTION_WORDS } from './cautions.ts'
import { DRAWING_SET_WORDS } from './drawingSet.ts'
import { enlargedWords, SEEN_FROM_WORDS, SHAPE_WORDS } from './drawing.ts'
import { FULL_SIZE_WORDS } from './fullSize.ts'
import { LABEL_WORDS } from './label.ts'
import { NUMBER_WORDS } from './numbers.ts'
import { PAPER_WORDS } from './paper.ts'
import { SPECIFICATION_WORDS } from './specification.ts'
import { STAGE_WORDS } from './stages.ts'

/** Every word that papers are lettered with. */
export const PAPER_LETTERING: SheetWords & WholePaperWords = {
  stages: STAGE_WORDS,
  cautions: CAUTION_WORDS,
  numbers: NUMBER_WORDS,
  paper: PAPER_WORDS,
  drawing: { seenFrom: SEEN_FROM_WORDS, shapes: SHAPE_WORDS, enlarged: enlargedWords },
  fullSize: FULL_SIZE_WORDS,
  specification: SPECIFICATION_WORDS,
  drawingSet: DRAWING_SET_WORDS,
  buyingList: BUYING_LIST_WORDS,
  label: LABEL_WORDS,
}
