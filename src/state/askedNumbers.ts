import type { StoreApi } from 'zustand/vanilla'
import type { Reading } from '../core/asBuilt/reading.ts'
import type { NumberKey } from '../core/numbers.ts'
import type { Plan } from '../core/plan.ts'
import { readingsInUse } from '../record/bench/measured.ts'
import type { Fact } from '../record/commission.ts'
import type { CommissionNeeds } from './commissionStore.ts'
import type { Built, CommissionState } from './commissionState.ts'

/** What one number is to be, with the plan and the numbers it stands among. */
export interface Asked<Computed> {
  readonly plan: Plan
  readonly computed: Computed
  /** A reading of it takes a planned value's place; false: it is kept for the record only. */
  readonly defines: boolean
}

export type RoundOf = (number: NumberKey, plan: Plan) => string | null

interface AskedNeeds<Computed> {
  readonly store: StoreApi<CommissionState<Computed>>
  readonly build: CommissionNeeds<Computed>['build']
  readonly roundOf: RoundOf
  readonly computedOf: (plan: Plan) => Computed
}

/**
 * What a number of the open instrument is asked to be: worked out from everything that was read but the readings that are solved together with it,
 * so that no reading is held against itself. Worked out once for each round of readings that is left out; null while nothing is open.
 */
export function createAsked<Computed>(needs: AskedNeeds<Computed>): (number: NumberKey) => Asked<Computed> | null {
  const { store, build, roundOf, computedOf } = needs
  let readFrom: readonly Fact[] | null = null
  let readings: readonly Reading[] = []
  let plan: Plan | null = null
  const known = new Map<string, Built<Computed>>()

  return (number) => {
    const { record, facts, computed, builtDoc } = store.getState()
    if (record === null || computed === null || builtDoc === null) return null
    if (facts !== readFrom) {
      readFrom = facts
      readings = readingsInUse(facts)
    }
    const planned: Plan = record.doc.plan
    if (planned !== plan) known.clear()
    plan = planned
    const round = roundOf(number, planned)
    const beside = round === null ? readings : readings.filter((one) => roundOf(one.number, planned) !== round)
    const defines = round !== null
    if (beside.length === readings.length) return { plan: builtDoc.plan, computed, defines }
    if (beside.length === 0) return { plan: planned, computed: computedOf(planned), defines }
    const name = beside.map(({ id }) => id).join(' ')
    const built = known.get(name) ?? build(planned, beside)
    if (known.size > MOST_KNOWN) known.clear()
    known.set(name, built)
    return { plan: built.plan, computed: built.computed, defines }
  }
}

/** As many as one stage has rounds; each holds all numbers of an instrument. */
const MOST_KNOWN = 16
