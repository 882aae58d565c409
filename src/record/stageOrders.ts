import { orderStrings } from './order.ts'
import type { StageKey } from './patterns/stages.ts'
import type { OwnStage, StageEntry } from './stageSchema.ts'

type Stages = Readonly<Record<string, StageEntry>>

/** A building order of these stages, as the house has them. */
export function orderOfKeys(keys: readonly StageKey[], newId: () => string): Record<string, StageEntry> {
  const orders = orderStrings(keys.length)
  return Object.fromEntries(keys.map((key, i) => [newId(), { order: orders[i] ?? 'i', key }]))
}

/** A building order under new ids, with what its stages say of each other. */
export function copiedStages(stages: Stages, newId: () => string): Record<string, StageEntry> {
  const ids = new Map(Object.keys(stages).map((id) => [id, newId()]))
  return Object.fromEntries(
    Object.entries(stages).map(([id, stage]) => [ids.get(id) ?? id, renamed(stage, (other) => ids.get(other))]),
  )
}

/** A stage that names others by their new ids; one that has none is named no more. */
export function renamed(stage: StageEntry, idOf: (id: string) => string | undefined): StageEntry {
  const { own, ...rest } = stage
  if (own === undefined) return rest
  const named: OwnStage = { ...own }
  if (own.after !== undefined) named.after = own.after.flatMap((id) => idOf(id) ?? [])
  if (own.fixtures !== undefined)
    named.fixtures = own.fixtures.map((use) => ({
      ...use,
      until: use.until === null ? null : (idOf(use.until) ?? null),
    }))
  return { ...rest, own: named }
}
