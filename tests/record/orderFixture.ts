import { beginCommission } from '../../src/record/changes/begin.ts'
import type { CommissionDoc } from '../../src/record/commission.ts'
import type { Bundle } from '../../src/record/document.ts'
import { inOrder } from '../../src/record/order.ts'
import { type StageKey, startingStages } from '../../src/record/patterns/stages.ts'
import { type StageInHand, stagesInHand } from '../../src/record/stageInHand.ts'
import { metaWith, STEEL_BEGINNING, valueIn } from './fixture.ts'

/** An instrument with these stages, as the house has them. */
export const whole = (newId: () => string, stages = startingStages('steelString')): Bundle =>
  valueIn(beginCommission({ ...STEEL_BEGINNING, stages }, metaWith(newId)))

export const idOf = ({ row }: Bundle, key: StageKey): string =>
  inOrder(row.doc.stages).find(([, stage]) => stage.key === key)?.[0] ?? ''
export const inHand = (bundle: Bundle, key: StageKey): StageInHand =>
  stagesInHand(bundle.row.doc).find((stage) => stage.key === key)!
export const keysIn = ({ stages }: CommissionDoc, ids: readonly string[]): readonly StageKey[] =>
  ids.map((id) => stages[id]!.key)
