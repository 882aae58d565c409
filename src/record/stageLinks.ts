import type { Family, StageKey } from './patterns/stages.ts'
import { predecessors } from './patterns/stagesWithin.ts'
import { inOrder } from './order.ts'
import type { StageEntry } from './stageSchema.ts'

/** The stages of one building order, by id. */
export type Stages = Readonly<Record<string, StageEntry>>

export const keysOf = (stages: Stages): readonly StageKey[] => inOrder(stages).map(([, { key }]) => key)

/** What the house wants done before a stage: stages of this order by id; a stage that is there twice is waited for twice. */
export function usualAfter(stages: Stages, family: Family, id: string): readonly string[] {
  const stage = stages[id]
  if (stage === undefined) return []
  const before = new Set(predecessors(keysOf(stages), stage.key, family))
  return inOrder(stages).flatMap(([other, { key }]) => (other !== id && before.has(key) ? [other] : []))
}

/** What has to be done before each stage, by id: as its maker says, else as the house does. A stage that is no longer there is not waited for. */
export function afterOf(stages: Stages, family: Family): ReadonlyMap<string, readonly string[]> {
  const ordered = inOrder(stages)
  const keys = ordered.map(([, { key }]) => key)
  return new Map(
    ordered.map(([id, { key, own }]) => {
      if (own?.after !== undefined)
        return [id, own.after.filter((other) => other !== id && stages[other] !== undefined)] as const
      const before = new Set(predecessors(keys, key, family))
      return [id, ordered.flatMap(([other, one]) => (other !== id && before.has(one.key) ? [other] : []))] as const
    }),
  )
}

/** Stages that wait for each other in a ring, each for the next and the last for the first; null where none do. */
export function circleOf(after: ReadonlyMap<string, readonly string[]>): readonly string[] | null {
  const settled = new Set<string>()
  for (const start of after.keys()) {
    // The way from the start to where we are, and how many of each one's predecessors have been looked at.
    const way: { readonly id: string; looked: number }[] = [{ id: start, looked: 0 }]
    for (let here = way.at(-1); here !== undefined; here = way.at(-1)) {
      const next = settled.has(here.id) ? undefined : after.get(here.id)?.[here.looked]
      if (next === undefined) {
        settled.add(here.id)
        way.pop()
        continue
      }
      here.looked += 1
      const at = way.findIndex(({ id }) => id === next)
      if (at >= 0) return way.slice(at).map(({ id }) => id)
      if (!settled.has(next)) way.push({ id: next, looked: 0 })
    }
  }
  return null
}
