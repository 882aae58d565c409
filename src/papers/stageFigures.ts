import { inOrder } from '../record/order.ts'
import type { StageFigures } from '../record/patterns/stages/stagePattern.ts'
import { figuresOfStage } from '../record/patterns/figuresOfStage.ts'
import type { StageKey } from '../record/patterns/stages.ts'
import { type StageInHand, stagesInHand } from '../record/stageInHand.ts'
import type { OwnStage } from '../record/stageSchema.ts'
import type { StageOnSheet, StageSheetOrder } from './stageSheetOrder.ts'

/** All stages of the instrument in building order, printed or not. */
export const buildingOrder = ({ doc }: Pick<StageSheetOrder, 'doc'>): readonly StageKey[] =>
  inOrder(doc.stages).map(([, { key }]) => key)

/** What its maker has said of a stage otherwise than the pattern; none where it is as the house has it. */
export const ownOf = ({ doc }: Pick<StageSheetOrder, 'doc'>, { id }: Pick<StageOnSheet, 'id'>): OwnStage =>
  doc.stages[id]?.own ?? {}

/** What a stage of this instrument prints: what its maker has chosen; else finer stages that are not in its building order print with it. */
export const stageFigures = (order: Pick<StageSheetOrder, 'doc'>, stage: StageOnSheet): StageFigures =>
  figuresOfStage(stage.key, buildingOrder(order), ownOf(order, stage))

/** Worked out once for each state of an instrument: every stage on its sheet asks. */
const inHand = new WeakMap<object, readonly StageInHand[]>()

/** All stages of the instrument as its maker has them, printed or not. */
export function stagesOf({ doc }: Pick<StageSheetOrder, 'doc'>): readonly StageInHand[] {
  const known = inHand.get(doc) ?? stagesInHand(doc)
  inHand.set(doc, known)
  return known
}

/** What a stage is called: by its maker, or by the house. */
export const stageTitle = (order: Pick<StageSheetOrder, 'doc' | 'words'>, stage: StageOnSheet): string =>
  ownOf(order, stage).title ?? order.words.stages[stage.key].title
