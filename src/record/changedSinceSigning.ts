import type { Change, Fact } from './commission.ts'
import { byPlace } from './document.ts'
import { standingFacts } from './facts.ts'

/** Whether the plan was touched after a sign-off that stands and kept any number: only then can finished work no longer fit. */
export function isChangedSinceSigning(changes: readonly Change[], facts: readonly Fact[]): boolean {
  const first = standingFacts(facts).find((fact) => fact.kind === 'stageDone' && Object.keys(fact.builtTo).length > 0)
  if (first === undefined) return false
  return changes.some((change) => (change.path[1] ?? 'plan') === 'plan' && byPlace(change, first) > 0)
}
