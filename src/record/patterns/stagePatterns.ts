import { FIGURES } from './figuresOfStage.ts'
import { DRAWINGS_BESIDE, STAGE_CAUTIONS } from './stages/besides.ts'
import { BOX_WORK } from './stages/boxWork.ts'
import { FAMILY_WORK } from './stages/familyWork.ts'
import { NECK_WORK } from './stages/neckWork.ts'
import { RIM_WORK } from './stages/rimWork.ts'
import type { StagePattern, StageWork } from './stages/stagePattern.ts'
import { WITHIN } from './stages/within.ts'
import { type Family, STAGE_KEYS, type StageKey } from './stages.ts'

const WORK: Readonly<Record<StageKey, StageWork>> = { ...RIM_WORK, ...BOX_WORK, ...NECK_WORK }

/** What every stage is built to, and what it takes, on a steel-string. */
export const STAGES = Object.fromEntries(
  STAGE_KEYS.map((key): [StageKey, StagePattern] => [
    key,
    {
      ...FIGURES[key],
      ...WORK[key],
      cautions: STAGE_CAUTIONS[key] ?? [],
      drawings: DRAWINGS_BESIDE[key] ?? [],
      within: WITHIN[key] ?? null,
    },
  ]),
) as unknown as Readonly<Record<StageKey, StagePattern>>

/** The same for an instrument of this family. */
export const patternOf = (key: StageKey, family: Family): StagePattern => ({
  ...STAGES[key],
  ...FAMILY_WORK[family][key],
})
