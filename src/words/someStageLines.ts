import type { StageKey } from '../record/patterns/stages.ts'
import type { StageLines } from './stages/stageWords.ts'
import {
  RIM_TITLES,
  TOP_TITLES,
  BACK_TITLES,
  BOX_TITLES,
  NECK_TITLES,
  BOARD_TITLES,
  FINISH_TITLES,
  SET_UP_TITLES,
} from './stageTitles.ts'

type SomeLines = Readonly<Partial<Record<StageKey, StageLines>>>

const PARTS: readonly { readonly of: object; readonly fetch: () => Promise<SomeLines> }[] = [
  { of: RIM_TITLES, fetch: async () => (await import('./stages/rim.ts')).RIM_LINES },
  { of: TOP_TITLES, fetch: async () => (await import('./stages/top.ts')).TOP_LINES },
  { of: BACK_TITLES, fetch: async () => (await import('./stages/back.ts')).BACK_LINES },
  { of: BOX_TITLES, fetch: async () => (await import('./stages/box.ts')).BOX_LINES },
  { of: NECK_TITLES, fetch: async () => (await import('./stages/neck.ts')).NECK_LINES },
  { of: BOARD_TITLES, fetch: async () => (await import('./stages/board.ts')).BOARD_LINES },
  { of: FINISH_TITLES, fetch: async () => (await import('./stages/finish.ts')).FINISH_LINES },
  { of: SET_UP_TITLES, fetch: async () => (await import('./stages/setUp.ts')).SET_UP_LINES },
]
const fetchRest = async (): Promise<SomeLines> => (await import('./stages/wood.ts')).WOOD_LINES

/** What there is to do at a stage, without fetching the lines of other parts of the work. */
export async function fetchStageLines(key: StageKey): Promise<StageLines> {
  const part = PARTS.find(({ of }) => key in of)
  const lines = await (part?.fetch ?? fetchRest)()
  return lines[key] ?? { lines: [] }
}
