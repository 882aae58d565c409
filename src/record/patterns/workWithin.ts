import { partsOf } from './figuresOfStage.ts'
import { type Family, type StageKey, startingStages } from './stages.ts'

/**
 * The stages whose hands, waits, fixtures and parts a stage of this instrument takes, one after the other: itself, and absent ones within it
 * that instruments of its family have. One that the family goes without takes nothing.
 */
export function workWithin(key: StageKey, present: readonly StageKey[], family: Family): readonly StageKey[] {
  const usual = startingStages(family)
  const parts = partsOf(key, present).filter((part) => part === key || usual.includes(part))
  return parts.toSorted((a, b) => usual.indexOf(a) - usual.indexOf(b))
}

/** Whether the work of finer stages is done with this one: then more is said of it in fewer words. */
export const isCoarse = (key: StageKey, present: readonly StageKey[], family: Family): boolean =>
  workWithin(key, present, family).length > 1
