import type { NumberKey } from '../../core/catalogue.ts'
import { WHOLE_NUMBERS } from './stages/wholeNumbers.ts'
import type { StageFigures, StagePattern } from './stages/stagePattern.ts'
import { patternOf, STAGES } from './stagePatterns.ts'
import { type Family, STAGE_KEYS, type StageKey, startingStages } from './stages.ts'

/**
 * A coarse building order holds the work of finer stages within its own: these functions tell what a stage then prints and takes.
 * `present` are the stages of the instrument, in any order.
 */

/** The stage of this instrument whose work includes this one: itself where it is present; null where none does. */
export function hostOf(key: StageKey, present: readonly StageKey[]): StageKey | null {
  // Each step leads to a coarser stage, and there are no more steps than stages.
  let at: StageKey | null = key
  for (let step = 0; at !== null && step < STAGE_KEYS.length; step++) {
    if (present.includes(at)) return at
    at = STAGES[at].within
  }
  return null
}

/** A stage that is present, and the absent ones within it, in the order of a steel-string. */
const partsOf = (key: StageKey, present: readonly StageKey[]): readonly StageKey[] =>
  STAGE_KEYS.filter((part) => hostOf(part, present) === key)

/**
 * What a stage prints: its numbers with those of absent stages within it, each once, and which of them are only looked up (none that one of
 * these stages measures). Its cautions and drawings are its own: a coarse stage's serve the finer ones too.
 */
export function figuresOfStage(key: StageKey, present: readonly StageKey[]): StageFigures {
  const own = STAGES[key]
  const parts = partsOf(key, present).map((part) => STAGES[part])
  if (parts.length <= 1) return own
  const all = new Set(parts.flatMap((part) => part.numbers))
  const whole: readonly NumberKey[] = WHOLE_NUMBERS[key] ?? [...all]
  const numbers = [...whole.filter((number) => all.has(number)), ...own.numbers.filter((one) => !whole.includes(one))]
  const isLookedUp = (number: NumberKey) =>
    parts.every((part) => !part.numbers.includes(number) || part.lookUp.includes(number))
  return { ...own, numbers, lookUp: numbers.filter(isLookedUp) }
}

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
export function heldUntil(use: StagePattern['fixtures'][number], present: readonly StageKey[]): StageKey | null {
  return use.held === 'until' && use.until !== null ? hostOf(use.until, present) : null
}
