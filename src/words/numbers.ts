import type { NumberKey } from '../core/numbers.ts'
import { NUMBER_NAMES } from './numberNames.ts'
import { AIR_WORDS } from './numbers/air.ts'
import { BLOCK_WORDS } from './numbers/blocks.ts'
import { BODY_WORDS } from './numbers/body.ts'
import { BRACE_NUMBER_WORDS } from './numbers/braces.ts'
import { BRACING_NUMBER_WORDS } from './numbers/bracing.ts'
import { BRIDGE_NUMBER_WORDS } from './numbers/bridge.ts'
import { CUTAWAY_WORDS } from './numbers/cutaway.ts'
import { DOME_WORDS } from './numbers/domes.ts'
import { EDGE_CUT_WORDS } from './numbers/edgeCuts.ts'
import { EDGE_WORDS } from './numbers/edges.ts'
import { END_WEDGE_WORDS } from './numbers/endWedge.ts'
import { FRETBOARD_WORDS } from './numbers/fretboard.ts'
import { INSIDE_WORDS } from './numbers/inside.ts'
import { NECK_BLANK_WORDS } from './numbers/neckBlank.ts'
import { NECK_SET_NUMBER_WORDS } from './numbers/neckSet.ts'
import type { NumberTexts, NumberWords } from './numbers/numberWords.ts'
import { RIM_WORDS } from './numbers/rim.ts'
import { ROSETTE_WORDS } from './numbers/rosette.ts'
import { SIDE_WORDS } from './numbers/sides.ts'
import { STRING_NUMBER_WORDS } from './numbers/strings.ts'

/** Meaning and way of measuring of every number; one that has none does not compile. */
const TEXTS: Record<NumberKey, NumberTexts> = {
  ...BODY_WORDS,
  ...CUTAWAY_WORDS,
  ...SIDE_WORDS,
  ...RIM_WORDS,
  ...INSIDE_WORDS,
  ...DOME_WORDS,
  ...BLOCK_WORDS,
  ...ROSETTE_WORDS,
  ...FRETBOARD_WORDS,
  ...STRING_NUMBER_WORDS,
  ...NECK_SET_NUMBER_WORDS,
  ...BRIDGE_NUMBER_WORDS,
  ...NECK_BLANK_WORDS,
  ...BRACE_NUMBER_WORDS,
  ...BRACING_NUMBER_WORDS,
  ...EDGE_WORDS,
  ...EDGE_CUT_WORDS,
  ...END_WEDGE_WORDS,
  ...AIR_WORDS,
}

/** The same with its name. */
export const NUMBER_WORDS = Object.fromEntries(
  Object.entries(TEXTS).map(([key, texts]) => [key, { name: NUMBER_NAMES[key as NumberKey], ...texts }]),
) as Record<NumberKey, NumberWords>
