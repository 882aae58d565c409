import { BLOCK_NAMES } from './blocks.ts'
import { BODY_NAMES } from './body.ts'
import { CUTAWAY_NAMES } from './cutaway.ts'
import { DOME_NAMES } from './domes.ts'
import { INSIDE_NAMES } from './inside.ts'
import { RIM_NAMES } from './rim.ts'
import { ROSETTE_NAMES } from './rosette.ts'
import { SIDE_NAMES } from './sides.ts'

/** What the numbers of the body are called. */
export const NAMES_OF_BODY = {
  ...BODY_NAMES,
  ...CUTAWAY_NAMES,
  ...SIDE_NAMES,
  ...RIM_NAMES,
  ...INSIDE_NAMES,
  ...DOME_NAMES,
  ...BLOCK_NAMES,
  ...ROSETTE_NAMES,
}
