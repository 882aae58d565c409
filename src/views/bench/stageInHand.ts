import type { CautionKey } from '../../record/patterns/cautions.ts'
import type { NumberKey, Numbers } from '../../core/numbers.ts'
import type { RimPlan } from '../../core/plan.ts'
import { getsBox, STAGES } from '../../record/patterns/stagePatterns.ts'
import type { StageDrawing, StageKey } from '../../record/patterns/stages.ts'
import type { StageEntry } from '../../record/stageSchema.ts'
import { stageNumbers } from '../../papers/stageNumbers.ts'
import { STAGE_WORDS } from '../../words/stages.ts'

/** One stage as its maker works on it: the pattern's, where the maker has nothing of his own. */
export interface StageInHand {
  readonly id: string
  readonly key: StageKey
  readonly title: string
  readonly lines: readonly string[]
  readonly cautions: readonly CautionKey[]
  readonly numbers: readonly NumberKey[]
  readonly drawings: readonly StageDrawing[]
  /** Whether the stage waits for a reading of a number. */
  readonly isRead: (key: NumberKey) => boolean
}

export function stageInHand(
  id: string,
  { key, own }: StageEntry,
  method: RimPlan['method'],
  numbers: Numbers,
): StageInHand {
  const pattern = STAGES[key]
  const words = STAGE_WORDS[key]
  const note = own?.note?.split('\n').filter((line) => line.trim() !== '')
  const lookUp = own?.lookUp ?? pattern.lookUp
  return {
    id,
    key,
    title: own?.title ?? words.title,
    lines: note ?? words.lines,
    cautions: own?.cautions ?? pattern.cautions,
    numbers: own?.numbers ?? stageNumbers(key, method, numbers),
    drawings: pattern.drawings,
    isRead: (number) => getsBox({ ...pattern, lookUp }, number),
  }
}
