import { BRIDGE_NAMES } from './bridge.ts'
import { FRETBOARD_NAMES } from './fretboard.ts'
import { NECK_BLANK_NAMES } from './neckBlank.ts'
import { NECK_SET_NAMES } from './neckSet.ts'
import { STRING_NAMES } from './strings.ts'

/** What the numbers of neck, strings and bridge are called. */
export const NAMES_OF_NECK = {
  ...FRETBOARD_NAMES,
  ...STRING_NAMES,
  ...NECK_SET_NAMES,
  ...BRIDGE_NAMES,
  ...NECK_BLANK_NAMES,
}
