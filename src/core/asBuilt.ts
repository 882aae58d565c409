import { type InverseName, inverseOf, solveRound } from './asBuilt/inverses.ts'
import { latestReadings, type Reading } from './asBuilt/reading.ts'
import { type FieldValues, fieldValue, withFields } from './asBuilt/withFields.ts'
import type { NumberKey } from './numbers.ts'
import type { Plan } from './plan.ts'
import type { PlanField } from './planFields.ts'

/** A field whose planned value gave way to what was measured. */
export interface Taken {
  readonly field: PlanField
  /** What the plan has, and what stands now. */
  readonly planned: unknown
  readonly built: unknown
  readonly inverse: InverseName
  /** The readings it comes from, by id. */
  readonly readings: readonly string[]
}

/** An instrument as it came out: its plan with what was measured in the place of what was planned. */
export interface AsBuilt {
  readonly plan: Plan
  readonly taken: readonly Taken[]
  /** Readings that would give a field a value it cannot have, by id: they are kept, and change nothing. */
  readonly outside: readonly string[]
}

/** Readings with one inverse, solved together. */
interface Round {
  readonly name: InverseName
  readonly fields: readonly PlanField[]
  readonly readings: Reading[]
}

/** Rounds hang on each other a little (a back's gap on the depths): so often everything is gone over. */
const PASSES = 6

/** What others are worked out from comes first. */
const RANK: Readonly<Record<InverseName, number>> = {
  itself: 0,
  degrees: 0,
  flatSlope: 0,
  channel: 0,
  rings: 0,
  fretPlaces: 0,
  boardWidth: 1,
  topGaps: 2,
  backGaps: 2,
  rimDepths: 3,
  endDepths: 3,
  closedBox: 3,
  neckStands: 4,
}

/**
 * The plan of the instrument as built: readings that define a field take the planned value's place, before any number is worked out; no part
 * knows that readings exist. What was read last rules where two speak of one field; of a place read twice the later reading counts, and where
 * both halves were read their middle. `readings` in the order they were taken; `allows` says whether a field can hold a value.
 *
 * The numbers of the plan as built equal those of a plan that had the values from the start: there is no other way to them.
 * Without readings, or with such as define nothing, the plan itself is given back.
 */
export function asBuilt(
  plan: Plan,
  readings: readonly Reading[],
  allows: (field: PlanField, value: unknown) => boolean,
): AsBuilt {
  const outside = new Set<string>()
  const rounds = roundsOf(plan, latestReadings(readings))
  let built = plan
  let taken = new Map<PlanField, Taken>()
  for (let pass = 0; pass < (rounds.length > 1 ? PASSES : 1); pass++) {
    let next = plan
    taken = new Map()
    outside.clear()
    for (const { name, fields, readings: round } of rounds) {
      const values = solveRound(name, fields, { plan: built, start: next, readings: round })
      if (values === null) continue
      if (!Object.entries(values).every(([field, value]) => isSound(value) && allows(field as PlanField, value))) {
        for (const { id } of round) outside.add(id)
        continue
      }
      next = withFields(next, values)
      built = withFields(built, values)
      noteTaken(taken, plan, values, name, round)
    }
    built = next
  }
  return { plan: built, taken: [...taken.values()], outside: [...outside] }
}

function noteTaken(
  taken: Map<PlanField, Taken>,
  plan: Plan,
  values: FieldValues,
  inverse: InverseName,
  round: readonly Reading[],
): void {
  for (const [name, built] of Object.entries(values)) {
    const field = name as PlanField
    const planned = fieldValue(plan, field)
    if (Object.is(planned, built) && !taken.has(field)) continue
    taken.set(field, { field, planned, built, inverse, readings: round.map(({ id }) => id) })
  }
}

/**
 * Which readings are turned into fields together with those of this number: all with the same answer are one round. A number that is itself a
 * field is a round of its own. null: a reading of it defines nothing on this plan and is kept for the record only.
 */
export function roundOf(number: NumberKey, plan: Plan): string | null {
  const inverse = inverseOf(number, plan)
  if (inverse === null) return null
  const isAlone = inverse.name === 'itself' || inverse.name === 'degrees'
  return isAlone ? `${inverse.name} ${number}` : inverse.name
}

/** Readings gathered by what is found together. In the order they rule. */
function roundsOf(plan: Plan, readings: readonly Reading[]): readonly Round[] {
  const rounds = new Map<string, Round>()
  for (const reading of readings) {
    const inverse = inverseOf(reading.number, plan)
    if (inverse === null) continue
    const key = roundOf(reading.number, plan) ?? inverse.name
    const known = rounds.get(key)
    rounds.delete(key)
    rounds.set(key, {
      name: inverse.name,
      fields: [...new Set([...(known?.fields ?? []), ...inverse.fields])],
      readings: [...(known?.readings ?? []), reading],
    })
  }
  const inTime = [...rounds.values()]
  const isOverruled = ({ fields, name }: Round, at: number): boolean =>
    inTime
      .slice(at + 1)
      .some((later) => RANK[later.name] !== RANK[name] && fields.every((one) => later.fields.includes(one)))
  return inTime.filter((round, at) => !isOverruled(round, at)).toSorted((a, b) => RANK[a.name] - RANK[b.name])
}

/** Total: whatever was typed, no field of the plan is ever filled with what is no number. */
const isSound = (value: unknown): boolean => typeof value !== 'number' || Number.isFinite(value)
