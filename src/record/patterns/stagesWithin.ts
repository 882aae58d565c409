import { hostOf, partsOf } from './figuresOfStage.ts'
import type { FixtureUse } from './stages/stagePattern.ts'
import { patternOf } from './stagePatterns.ts'
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

/** What has to be done before a stage: the nearest stages of this instrument; through one it skips to what that one waits for. */
export function predecessors(present: readonly StageKey[], key: StageKey, family: Family): readonly StageKey[] {
  const found = new Set<StageKey>()
  const seen = new Set<StageKey>([key])
  const look = (of: StageKey): void => {
    for (const before of patternOf(of, family).after) {
      if (seen.has(before)) continue
      seen.add(before)
      if (present.includes(before)) found.add(before)
      else look(before)
    }
  }
  look(key)
  return [...found]
}

/** The last stage a fixture that is held on stays for; null where it is free when its own stage has set. */
export function heldUntil(use: FixtureUse, present: readonly StageKey[]): StageKey | null {
  return use.held === 'until' && use.until !== null ? hostOf(use.until, present) : null
}
