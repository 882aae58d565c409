import { BODY_NAMES } from './body.ts'
import { CUTAWAY_NAMES } from './cutaway.ts'
import { DOME_NAMES } from './domes.ts'
import { ROSETTE_NAMES } from './rosette.ts'

/** What the numbers of outline, plates and rosette are called. */
export const NAMES_OF_BODY = {
  ...BODY_NAMES,
  ...CUTAWAY_NAMES,
  ...DOME_NAMES,
  ...ROSETTE_NAMES,
}
