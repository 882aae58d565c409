import type { StageKey } from '../record/patterns/stages.ts'
import { BODY_STAGE_WORDS, type BodyStage } from './stages/body.ts'
import { NECK_STAGE_WORDS, type NeckStage } from './stages/neck.ts'
import type { StageWords } from './stages/stageWords.ts'

/** Title and instructions of every stage; a stage that has none does not compile. */
export const STAGE_WORDS: Readonly<Record<StageKey, StageWords>> = {
  ...BODY_STAGE_WORDS,
  ...NECK_STAGE_WORDS,
} satisfies Record<BodyStage | NeckStage, StageWords>
