import { inOrder, orderStrings } from './order.ts'
import type { Stages } from './stageLinks.ts'
import { renamed } from './stageOrders.ts'
import type { StageEntry } from './stageSchema.ts'

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
