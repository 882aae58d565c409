import type { NumberKey } from '../core/numbers.ts'
import { BLOCK_WORDS } from './numbers/blocks.ts'
import { BODY_WORDS } from './numbers/body.ts'
import { CUTAWAY_WORDS } from './numbers/cutaway.ts'
import { DOME_WORDS } from './numbers/domes.ts'
import { INSIDE_WORDS } from './numbers/inside.ts'
import type { NumberWords } from './numbers/numberWords.ts'
import { RIM_WORDS } from './numbers/rim.ts'
import { ROSETTE_WORDS } from './numbers/rosette.ts'
import { SIDE_WORDS } from './numbers/sides.ts'

/** Name, meaning and way of measuring of every number; one that has none does not compile. */
export const NUMBER_WORDS: Record<NumberKey, NumberWords> = {
  ...BODY_WORDS,
  ...CUTAWAY_WORDS,
  ...SIDE_WORDS,
  ...RIM_WORDS,
  ...INSIDE_WORDS,
  ...DOME_WORDS,
  ...BLOCK_WORDS,
  ...ROSETTE_WORDS,
}
