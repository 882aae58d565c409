import { inOrder } from '../record/order.ts'
import type { StageFigures } from '../record/patterns/stages/stagePattern.ts'
import { figuresOfStage } from '../record/patterns/figuresOfStage.ts'
import type { StageKey } from '../record/patterns/stages.ts'
import type { StageSheetOrder } from './stageSheetOrder.ts'

/** All stages of the instrument in building order, printed or not. */
export const buildingOrder = ({ doc }: Pick<StageSheetOrder, 'doc'>): readonly StageKey[] =>
  inOrder(doc.stages).map(([, { key }]) => key)

/** What a stage of this instrument prints: finer stages that are not in its building order print with it. */
export const stageFigures = (order: Pick<StageSheetOrder, 'doc'>, stage: StageKey): StageFigures =>
  figuresOfStage(stage, buildingOrder(order))
