import type { NumberKey } from '../core/numbers.ts'
import { AIR_NAMES } from './names/air.ts'
import { BLOCK_NAMES } from './names/blocks.ts'
import { BODY_NAMES } from './names/body.ts'
import { BRACING_NAMES } from './names/bracing.ts'
import { BRIDGE_NAMES } from './names/bridge.ts'
import { CUTAWAY_NAMES } from './names/cutaway.ts'
import { DOME_NAMES } from './names/domes.ts'
import { EDGE_NAMES } from './names/edges.ts'
import { FRETBOARD_NAMES } from './names/fretboard.ts'
import { INSIDE_NAMES } from './names/inside.ts'
import { NECK_BLANK_NAMES } from './names/neckBlank.ts'
import { NECK_SET_NAMES } from './names/neckSet.ts'
import { RIM_NAMES } from './names/rim.ts'
import { ROSETTE_NAMES } from './names/rosette.ts'
import { SIDE_NAMES } from './names/sides.ts'
import { STRING_NAMES } from './names/strings.ts'

/** What every number is called, short enough for the head of a column; all that a table needs. What more is said of it is in numbers.ts. */
export const NUMBER_NAMES: Record<NumberKey, string> = {
  ...BODY_NAMES,
  ...CUTAWAY_NAMES,
  ...SIDE_NAMES,
  ...RIM_NAMES,
  ...INSIDE_NAMES,
  ...DOME_NAMES,
  ...BLOCK_NAMES,
  ...ROSETTE_NAMES,
  ...FRETBOARD_NAMES,
  ...STRING_NAMES,
  ...NECK_SET_NAMES,
  ...BRIDGE_NAMES,
  ...NECK_BLANK_NAMES,
  ...BRACING_NAMES,
  ...EDGE_NAMES,
  ...AIR_NAMES,
}
