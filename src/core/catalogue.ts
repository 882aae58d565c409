import type { About } from './catalogue/about.ts'
import { AIR_ABOUT } from './catalogue/air.ts'
import { BLOCK_ABOUT } from './catalogue/blocks.ts'
import { BODY_ABOUT } from './catalogue/body.ts'
import { BRACING_ABOUT } from './catalogue/bracing.ts'
import { BRIDGE_ABOUT } from './catalogue/bridge.ts'
import { DOME_ABOUT } from './catalogue/domes.ts'
import { EDGE_ABOUT } from './catalogue/edges.ts'
import { FRETBOARD_ABOUT } from './catalogue/fretboard.ts'
import { INSIDE_ABOUT } from './catalogue/inside.ts'
import { NECK_ABOUT } from './catalogue/neck.ts'
import { NECK_SET_ABOUT } from './catalogue/neckSet.ts'
import { RIM_ABOUT } from './catalogue/rim.ts'
import { ROSETTE_ABOUT } from './catalogue/rosette.ts'
import { SIDE_ABOUT } from './catalogue/sides.ts'
import { STRING_ABOUT } from './catalogue/strings.ts'
import type { NumberKey } from './numbers.ts'

/** What is known about every number besides its value; one without a row does not compile. */
export const CATALOGUE = {
  ...BODY_ABOUT,
  ...SIDE_ABOUT,
  ...RIM_ABOUT,
  ...INSIDE_ABOUT,
  ...DOME_ABOUT,
  ...BLOCK_ABOUT,
  ...ROSETTE_ABOUT,
  ...FRETBOARD_ABOUT,
  ...STRING_ABOUT,
  ...NECK_SET_ABOUT,
  ...BRIDGE_ABOUT,
  ...NECK_ABOUT,
  ...BRACING_ABOUT,
  ...EDGE_ABOUT,
  ...AIR_ABOUT,
} satisfies Record<NumberKey, About>

export type { NumberKey } from './numbers.ts'
export const NUMBER_KEYS = Object.keys(CATALOGUE) as NumberKey[]
export const aboutNumber = (key: NumberKey): About => CATALOGUE[key]
