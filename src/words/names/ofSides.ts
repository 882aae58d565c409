import { BLOCK_NAMES } from './blocks.ts'
import { INSIDE_NAMES } from './inside.ts'
import { RIM_NAMES } from './rim.ts'
import { SIDE_NAMES } from './sides.ts'

/** What the numbers of sides, rim and what is glued to them are called. */
export const NAMES_OF_SIDES = {
  ...SIDE_NAMES,
  ...RIM_NAMES,
  ...INSIDE_NAMES,
  ...BLOCK_NAMES,
}
