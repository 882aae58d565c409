import type { AsBuilt } from '../../core/asBuilt.ts'
import { type InverseName, inverseOf } from '../../core/asBuilt/inverses.ts'
import type { Plan } from '../../core/plan.ts'
import type { PlanField } from '../../core/planFields.ts'
import type { Measured } from './measured.ts'

/** What became of a reading: whether it stands in the place of something planned, and if not, why not. */
export type ReadingStanding =
  /** It takes the planned value's place. */
  | { readonly kind: 'rules'; readonly inverse: InverseName; readonly fields: readonly PlanField[] }
  /** It is as planned: no number moves. */
  | { readonly kind: 'asPlanned'; readonly inverse: InverseName; readonly fields: readonly PlanField[] }
  /** What was read later speaks of the same field. */
  | { readonly kind: 'overruled'; readonly fields: readonly PlanField[] }
  /** No field can hold it. */
  | { readonly kind: 'outside'; readonly fields: readonly PlanField[] }
  /** It was turned off. */
  | { readonly kind: 'off'; readonly fields: readonly PlanField[] }
  /** The same place was read again. */
  | { readonly kind: 'again' }
  /** No field of this plan follows from it. */
  | { readonly kind: 'record' }

/** What stands of a reading on the instrument as built. `plan` is the planned one. */
export function readingStanding(
  reading: Measured,
  { plan, taken, outside }: { readonly plan: Plan } & Pick<AsBuilt, 'taken' | 'outside'>,
): ReadingStanding {
  if (!reading.isLatest) return { kind: 'again' }
  const inverse = inverseOf(reading.number, plan)
  if (inverse === null) return { kind: 'record' }
  const { name, fields } = inverse
  if (!reading.isUsed) return { kind: 'off', fields }
  if (outside.includes(reading.id)) return { kind: 'outside', fields }
  if (taken.some(({ readings }) => readings.includes(reading.id))) return { kind: 'rules', inverse: name, fields }
  if (taken.some(({ field }) => fields.includes(field))) return { kind: 'overruled', fields }
  return { kind: 'asPlanned', inverse: name, fields }
}

/** A reading with those it was corrected by, in the order they were taken. */
export interface ReadingChain {
  readonly first: Measured
  readonly corrections: readonly Measured[]
  /** The last of them. */
  readonly last: Measured
}

/** Readings with their corrections, the newest first: by when they were taken or last corrected. */
export function chainsOf(all: readonly Measured[]): readonly ReadingChain[] {
  const ids = new Set(all.map(({ id }) => id))
  const chains = new Map<string, Measured[]>()
  const headOf = new Map<string, string>()
  for (const one of all) {
    // A correction whose first reading was withdrawn stands for itself.
    const head = one.replaces !== null && ids.has(one.replaces) ? (headOf.get(one.replaces) ?? one.id) : one.id
    headOf.set(one.id, head)
    chains.set(head, [...(chains.get(head) ?? []), one])
  }
  return [...chains.values()]
    .flatMap((chain) => {
      const [first, ...corrections] = chain
      const last = chain.at(-1)
      return first === undefined || last === undefined ? [] : [{ first, corrections, last }]
    })
    .toSorted((a, b) => (a.last.at < b.last.at ? 1 : a.last.at > b.last.at ? -1 : 0))
}
