import { type NumberKey, type Numbers, readNumbers } from '../core/numbers.ts'
import type { BuiltTo } from '../record/facts.ts'
import { figuresOfStage } from '../record/patterns/figuresOfStage.ts'
import type { StageFigures } from '../record/patterns/stages/stagePattern.ts'
import type { StageKey } from '../record/patterns/stages.ts'

/** The numbers a stage is built to in this building order, with those its maker has chosen, as they stand now: what its sign-off keeps. Rows are counted from 0: 'rim[3].depthMm'. */
export function numbersBuiltTo(
  stage: StageKey,
  present: readonly StageKey[],
  numbers: Numbers,
  own?: Partial<StageFigures>,
): BuiltTo {
  const kept: BuiltTo = {}
  for (const key of figuresOfStage(stage, present, own).numbers)
    for (const [row, value] of readNumbers(numbers, key).entries()) kept[rowKey(key, row)] = value
  return kept
}

export const rowKey = (key: NumberKey, row: number): string => key.replace('[]', `[${row}]`)
