import type { StageKey } from '../record/patterns/stages.ts'
import { BACK_LINES } from './stages/back.ts'
import { BOARD_LINES } from './stages/board.ts'
import { BOX_LINES } from './stages/box.ts'
import { FINISH_LINES } from './stages/finish.ts'
import { NECK_LINES } from './stages/neck.ts'
import { RIM_LINES } from './stages/rim.ts'
import { SET_UP_LINES } from './stages/setUp.ts'
import { TOP_LINES } from './stages/top.ts'
import { WOOD_LINES } from './stages/wood.ts'
import type { StageLines, StageWords } from './stages/stageWords.ts'
import { STAGE_TITLES } from './stageTitles.ts'

/** A stage without lines does not compile. */
const STAGE_LINES: Readonly<Record<StageKey, StageLines>> = {
  ...WOOD_LINES,
  ...RIM_LINES,
  ...TOP_LINES,
  ...BACK_LINES,
  ...BOX_LINES,
  ...NECK_LINES,
  ...BOARD_LINES,
  ...FINISH_LINES,
  ...SET_UP_LINES,
}

/** Title and instructions of every stage, for papers; a list of stages does with the titles. */
export const STAGE_WORDS = Object.fromEntries(
  (Object.keys(STAGE_LINES) as StageKey[]).map((key): [StageKey, StageWords] => [
    key,
    { title: STAGE_TITLES[key], ...STAGE_LINES[key] },
  ]),
) as unknown as Readonly<Record<StageKey, StageWords>>
