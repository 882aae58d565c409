import type { StageKey } from '../record/patterns/stages.ts'
import { BOX_STAGE_WORDS } from './stages/box.ts'
import { FINISH_STAGE_WORDS } from './stages/finish.ts'
import { NECK_STAGE_WORDS } from './stages/neck.ts'
import { PLATE_STAGE_WORDS } from './stages/plates.ts'
import { RIM_STAGE_WORDS } from './stages/rim.ts'
import type { StageWords } from './stages/stageWords.ts'

/** Title and instructions of every stage; a stage that has none does not compile. */
export const STAGE_WORDS: Readonly<Record<StageKey, StageWords>> = {
  ...RIM_STAGE_WORDS,
  ...PLATE_STAGE_WORDS,
  ...BOX_STAGE_WORDS,
  ...NECK_STAGE_WORDS,
  ...FINISH_STAGE_WORDS,
}
