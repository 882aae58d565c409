import type { AsBuilt } from '../core/asBuilt.ts'
import type { Reading } from '../core/asBuilt/reading.ts'
import { withKept } from '../core/keptNumbers.ts'
import type { Numbers } from '../core/numbers.ts'
import type { Plan } from '../core/plan.ts'
import { docsAt, readingsAt } from '../record/asItStood.ts'
import type { Change, CommissionDoc, CommissionRecord, Fact } from '../record/commission.ts'
import { type BuiltTo, type StageDone, standingFacts } from '../record/facts.ts'
import { sameJson } from '../record/path.ts'
import { readingsInUse } from '../record/bench/measured.ts'

/** A stage as it was signed off: plain data, to be worked out where it is needed. */
export interface SignedOff {
  readonly stageId: string
  /** The sign-off it comes from, and its day, ISO. */
  readonly factId: string
  readonly on: string
  /** As they stood then; today's where the log does not tell. */
  readonly plan: CommissionDoc['plan']
  readonly tolerances: CommissionDoc['tolerances']
  readonly readings: readonly Reading[]
  readonly kept: BuiltTo
  /** Whether the log tells what stood then. */
  readonly isTold: boolean
}

/** What a stage was built to: the plan as built then, and the numbers that were kept. */
export interface BuiltThen<Computed> {
  readonly signed: SignedOff
  readonly plan: Plan
  readonly computed: Computed
}

interface Held {
  readonly record: CommissionRecord | null
  readonly changes: readonly Change[]
  readonly facts: readonly Fact[]
}

type Build<Computed> = (plan: Plan, readings: readonly Reading[]) => AsBuilt & { readonly computed: Computed }

export interface SignedOffs<Computed> {
  /** A sign-off that stands, by its fact; null where there is none. */
  readonly signedOff: (factId: string) => SignedOff | null
  readonly builtAt: (factId: string) => BuiltThen<Computed> | null
}

/**
 * What signed stages were built to. Each sign-off is looked up in the log once, all that stand together; what does not change any more is
 * worked out once, and what was kept stands in the place of what is worked out. `held` gives the instrument as it stands.
 */
export function createSignedOffs<Computed extends { readonly numbers: Numbers }>(
  build: Build<Computed>,
  held: () => Held,
): SignedOffs<Computed> {
  let known = new Map<string, SignedOff>()
  let built = new WeakMap<SignedOff, BuiltThen<Computed>>()
  let docId: string | null = null

  function lookUp({ record, changes, facts }: Held): void {
    if (record === null) return
    if (record.id !== docId) {
      known = new Map()
      built = new WeakMap()
      docId = record.id
    }
    const asked = standingFacts(facts).filter((fact): fact is StageDone => fact.kind === 'stageDone')
    const fresh = asked.filter((fact) => !known.has(nameOf(fact)))
    if (fresh.length === 0) return
    const docs = docsAt(changes, fresh)
    // A plan that stands again is the same object again: nothing of it is worked out twice.
    const plans = [record.doc.plan, ...[...known.values()].map(({ plan }) => plan)]
    for (const fact of fresh) {
      const doc = docs.get(fact.id) ?? null
      const { plan, tolerances } = doc ?? record.doc
      const same = plans.find((one) => one === plan || sameJson(one, plan))
      if (same === undefined) plans.push(plan)
      known.set(nameOf(fact), {
        stageId: fact.stageId,
        factId: fact.id,
        on: fact.at.slice(0, 10),
        plan: same ?? plan,
        tolerances,
        readings: doc === null ? readingsInUse(facts) : readingsAt(facts, fact),
        kept: fact.builtTo,
        isTold: doc !== null,
      })
    }
  }

  function signedOff(factId: string): SignedOff | null {
    const now = held()
    const fact = now.facts.find((one): one is StageDone => one.id === factId && one.kind === 'stageDone')
    if (fact === undefined) return null
    lookUp(now)
    return known.get(nameOf(fact)) ?? null
  }

  return {
    signedOff,
    builtAt(factId) {
      const signed = signedOff(factId)
      if (signed === null) return null
      const before = built.get(signed)
      if (before !== undefined) return before
      const { plan, computed } = build(signed.plan, signed.readings)
      const numbers = withKept(computed.numbers, signed.kept)
      const then = { signed, plan, computed: { ...computed, numbers } }
      built.set(signed, then)
      return then
    },
  }
}

/** A fact that waits may be entered again behind what another tab wrote: then it stands elsewhere in the log. */
const nameOf = ({ id, seq }: StageDone): string => `${id} ${seq}`
