import type { NumberKey } from '../../../core/catalogue.ts'
import type { CautionKey } from '../cautions.ts'

/** Which drawing stands beside a stage, by the name it has in drawing/. */
export const STAGE_DRAWINGS = [
  'plan',
  'side',
  'section',
  'domes',
  'blankTreble',
  'bevels',
  'blockTail',
  'blockNeck',
  'rosette',
  'bracingTop',
  'bracingBack',
  'edgeSection',
  'fretboard',
  'strings',
  'neckSet',
  'bridge',
  'bridgeSection',
  'neckSide',
  'head',
] as const
export type StageDrawing = (typeof STAGE_DRAWINGS)[number]

export interface StagePattern {
  /** What the stage is built to, in the order the hand reaches it. */
  readonly numbers: readonly NumberKey[]
  /** Those of them to look up only: no box waits for a reading. */
  readonly lookUp: readonly NumberKey[]
  readonly cautions: readonly CautionKey[]
  readonly drawings: readonly StageDrawing[]
}

/** A pattern; what a stage has none of is left out. */
export const stage = (pattern: Partial<StagePattern>): StagePattern => ({
  numbers: [],
  lookUp: [],
  cautions: [],
  drawings: [],
  ...pattern,
})
