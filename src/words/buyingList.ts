import { CUTTING_WORDS, groupHeading, groupName } from './box/cutting.ts'
import { GRAIN_NAMES, partName, quartersText, WOOD_WORDS } from './wood.ts'

/** What to buy and what to saw from it, with boxes to tick. */
export const BUYING_LIST_WORDS = {
  sheet: 'Buying list',
  buying: CUTTING_WORDS.buying,
  cutList: CUTTING_WORDS.cutList,
  caution: CUTTING_WORDS.caution,
  boughtNote: WOOD_WORDS.boughtNote,
  noParts: CUTTING_WORDS.noParts,
  noWood: CUTTING_WORDS.noWood,
  columns: {
    done: 'Done',
    buyFor: CUTTING_WORDS.buyFor,
    wood: CUTTING_WORDS.wood,
    board: CUTTING_WORDS.board,
    volume: CUTTING_WORDS.volume,
    boardFeet: CUTTING_WORDS.boardFeet,
    part: WOOD_WORDS.columns.part,
    quantity: WOOD_WORDS.columns.quantity,
    finished: WOOD_WORDS.columns.finished,
    rough: WOOD_WORDS.columns.rough,
    grain: WOOD_WORDS.columns.grain,
  },
  /** Over the three sizes of a part. */
  sizes: 'length × width × thickness',
  size: CUTTING_WORDS.planks.size,
  grains: GRAIN_NAMES,
  groupName,
  groupHeading,
  partName,
  quarters: quartersText,
  bookmatched: WOOD_WORDS.bookmatched,
  of: (group: string, continued: string) => `${group}, ${continued}`,
} as const
export type BuyingListWords = typeof BUYING_LIST_WORDS
