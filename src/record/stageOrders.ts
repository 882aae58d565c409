import { inOrder, orderStrings } from './order.ts'
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

/** What becomes of an instrument's stages when it takes another order. */
export interface OrderTaken {
  readonly stages: Record<string, StageEntry>
  /** Not in the other order, and in it all the same: signed off, or begun. By id. */
  readonly stay: readonly string[]
  readonly comeIn: readonly string[]
  readonly goOut: readonly string[]
}

/**
 * The stages of an instrument that takes another order, whose ids are free. A stage that both have keeps its id, so that its readings and hours
 * stay with it; `kept` ones (signed off, or begun) stay as they are wherever they are not in the other order too, behind the one they followed.
 */
export function orderTaken(now: Stages, wanted: Stages, kept: ReadonlySet<string>): OrderTaken {
  const here = inOrder(now)
  const free = here.map(([id, stage]) => ({ id, sort: sortOf(stage) }))
  /** Ids of the other order, by the ids these stages have here. */
  const ids = new Map<string, string>()
  for (const [id, stage] of inOrder(wanted)) {
    const at = free.findIndex(({ sort }) => sort === sortOf(stage))
    ids.set(id, at < 0 ? id : (free.splice(at, 1)[0]?.id ?? id))
  }
  const sequence = inOrder(wanted).map(([id]) => ids.get(id) ?? id)
  const stay = free.map(({ id }) => id).filter((id) => kept.has(id))
  for (const id of stay) {
    const before = here
      .slice(
        0,
        here.findIndex(([one]) => one === id),
      )
      .map(([one]) => one)
    const follows = before.findLast((one) => sequence.includes(one))
    sequence.splice(follows === undefined ? 0 : sequence.indexOf(follows) + 1, 0, id)
  }
  const isThere = new Set(sequence)
  const named = new Map(
    Object.entries(wanted).map(([id, stage]) => [ids.get(id) ?? id, renamed(stage, (other) => ids.get(other))]),
  )
  const orders = orderStrings(sequence.length)
  const stages: Record<string, StageEntry> = {}
  for (const [i, id] of sequence.entries()) {
    const was = now[id]
    const stage =
      was !== undefined && kept.has(id)
        ? renamed(was, (other) => (isThere.has(other) ? other : undefined))
        : named.get(id)
    if (stage !== undefined) stages[id] = { ...stage, order: orders[i] ?? 'i' }
  }
  return {
    stages,
    stay,
    comeIn: sequence.filter((id) => now[id] === undefined),
    goOut: here.map(([id]) => id).filter((id) => !isThere.has(id)),
  }
}

/** Work of the maker's own is told apart by what it is called. */
const sortOf = ({ key, own }: StageEntry): string => (key === 'ownWork' ? `${key} ${own?.title ?? ''}` : key)
