import { hostOf } from './figuresOfStage.ts'
import type { FixtureUse } from './stages/stagePattern.ts'
import { patternOf } from './stagePatterns.ts'
import type { Family, StageKey } from './stages.ts'

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
