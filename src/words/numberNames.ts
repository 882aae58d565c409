import type { NumberKey } from '../core/numbers.ts'
import { NAMES_OF_BODY } from './names/ofBody.ts'
import { NAMES_OF_BOX } from './names/ofBox.ts'
import { NAMES_OF_NECK } from './names/ofNeck.ts'
import { NAMES_OF_SIDES } from './names/ofSides.ts'

/** What every number is called, short enough for the head of a column; all that a table needs. What more is said of it is in numbers.ts. */
export const NUMBER_NAMES: Record<NumberKey, string> = {
  ...NAMES_OF_BODY,
  ...NAMES_OF_SIDES,
  ...NAMES_OF_NECK,
  ...NAMES_OF_BOX,
}
