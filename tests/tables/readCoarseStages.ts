import { readFileSync } from 'node:fs'
import type { StagePattern } from '../../src/record/patterns/stages/stagePattern.ts'
import type { Family, StageKey } from '../../src/record/patterns/stages.ts'

/** See `about` in the file. */
export interface CoarseStages {
  readonly orders: Readonly<Record<Family, readonly StageKey[]>>
  readonly stages: Readonly<
    Partial<Record<StageKey, Pick<StagePattern, 'numbers' | 'lookUp' | 'cautions' | 'drawings'>>>
  >
}

export const readCoarseStages = (): CoarseStages =>
  JSON.parse(readFileSync(new URL('coarseStages.json', import.meta.url), 'utf8')) as CoarseStages
