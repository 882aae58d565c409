import { aboutNumber, type NumberKey } from '../../core/catalogue.ts'
import { BOX_STAGES } from './stages/box.ts'
import { BOX_WORK } from './stages/boxWork.ts'
import { FAMILY_WORK } from './stages/familyWork.ts'
import { NECK_STAGES } from './stages/neck.ts'
import { NECK_WORK } from './stages/neckWork.ts'
import { RIM_STAGES } from './stages/rim.ts'
import { RIM_WORK } from './stages/rimWork.ts'
import type { StageFigures, StagePattern, StageWork } from './stages/stagePattern.ts'
import { type Family, STAGE_KEYS, type StageKey } from './stages.ts'

const FIGURES: Readonly<Record<StageKey, StageFigures>> = { ...RIM_STAGES, ...BOX_STAGES, ...NECK_STAGES }
const WORK: Readonly<Record<StageKey, StageWork>> = { ...RIM_WORK, ...BOX_WORK, ...NECK_WORK }

/** What every stage is built to, and what it takes, on a steel-string. Only what shows or prints stages needs it: the bench list does without. */
export const STAGES = Object.fromEntries(
  STAGE_KEYS.map((key) => [key, { ...FIGURES[key], ...WORK[key] }]),
) as unknown as Readonly<Record<StageKey, StagePattern>>

/** The same for an instrument of this family. */
export const patternOf = (key: StageKey, family: Family): StagePattern => ({
  ...STAGES[key],
  ...FAMILY_WORK[family][key],
})

/** A number of a stage gets a box for its reading where the catalogue knows how it is measured and the stage does not only look it up. */
export function getsBox(pattern: Pick<StagePattern, 'lookUp'>, key: NumberKey): boolean {
  return aboutNumber(key).measured !== null && !pattern.lookUp.includes(key)
}
