import { aboutNumber, type NumberKey } from '../../core/catalogue.ts'
import { BOX_STAGES } from './stages/box.ts'
import { NECK_STAGES } from './stages/neck.ts'
import { RIM_STAGES } from './stages/rim.ts'
import type { StageFigures } from './stages/stagePattern.ts'
import { WHOLE_NUMBERS } from './stages/wholeNumbers.ts'
import { WITHIN } from './stages/within.ts'
import { STAGE_KEYS, type StageKey } from './stages.ts'

/** What every stage is built to. Only what shows or prints stages needs it: the bench list does without. */
export const FIGURES: Readonly<Record<StageKey, StageFigures>> = { ...RIM_STAGES, ...BOX_STAGES, ...NECK_STAGES }

/**
 * The stage of an instrument whose work includes this one: itself where it is present; null where none does. `present` are the stages of the
 * instrument, in any order.
 */
export function hostOf(key: StageKey, present: readonly StageKey[]): StageKey | null {
  // Each step leads to a coarser stage, and there are no more steps than stages.
  let at: StageKey | undefined = key
  for (let step = 0; at !== undefined && step < STAGE_KEYS.length; step++) {
    if (present.includes(at)) return at
    at = WITHIN[at]
  }
  return null
}

/** A stage that is present, and the absent ones within it, in the order of a steel-string. */
export const partsOf = (key: StageKey, present: readonly StageKey[]): readonly StageKey[] =>
  STAGE_KEYS.filter((part) => hostOf(part, present) === key)

/**
 * What a stage prints: its numbers with those of absent stages within it, each once, and which of them are only looked up (none that one of
 * these stages measures). Cautions and drawings are each stage's own: a coarse one's serve the finer ones too. `said` is what the maker has
 * otherwise than the pattern.
 */
export function figuresOfStage(
  key: StageKey,
  present: readonly StageKey[],
  said: Partial<StageFigures> = {},
): StageFigures {
  const { numbers, lookUp } = usualFigures(key, present)
  return { numbers: said.numbers ?? numbers, lookUp: said.lookUp ?? lookUp }
}

function usualFigures(key: StageKey, present: readonly StageKey[]): StageFigures {
  const own = FIGURES[key]
  const parts = partsOf(key, present).map((part) => FIGURES[part])
  if (parts.length <= 1) return own
  const all = new Set(parts.flatMap((part) => part.numbers))
  const whole: readonly NumberKey[] = WHOLE_NUMBERS[key] ?? [...all]
  const numbers = [...whole.filter((number) => all.has(number)), ...own.numbers.filter((one) => !whole.includes(one))]
  const isLookedUp = (number: NumberKey) =>
    parts.every((part) => !part.numbers.includes(number) || part.lookUp.includes(number))
  return { numbers, lookUp: numbers.filter(isLookedUp) }
}

/** A number of a stage gets a box for its reading where the catalogue knows how it is measured and the stage does not only look it up. */
export function getsBox(pattern: Pick<StageFigures, 'lookUp'>, key: NumberKey): boolean {
  return aboutNumber(key).measured !== null && !pattern.lookUp.includes(key)
}
