import { AIR_NAMES } from './air.ts'
import { BRACING_NAMES } from './bracing.ts'
import { EDGE_NAMES } from './edges.ts'

/** What the numbers of braces, edges and air are called. */
export const NAMES_OF_BOX = { ...BRACING_NAMES, ...EDGE_NAMES, ...AIR_NAMES }
