import { aboutNumber, type NumberKey } from '../../core/catalogue.ts'
import { BOX_STAGES } from './stages/box.ts'
import { NECK_STAGES } from './stages/neck.ts'
import { RIM_STAGES } from './stages/rim.ts'
import type { StagePattern } from './stages/stagePattern.ts'
import type { StageKey } from './stages.ts'

/** What every stage is built to. Only what shows or prints stages needs it: the bench list does without. */
export const STAGES: Readonly<Record<StageKey, StagePattern>> = { ...RIM_STAGES, ...BOX_STAGES, ...NECK_STAGES }

/** A number of a stage gets a box for its reading where the catalogue knows how it is measured and the stage does not only look it up. */
export function getsBox(pattern: StagePattern, key: NumberKey): boolean {
  return aboutNumber(key).measured !== null && !pattern.lookUp.includes(key)
}
