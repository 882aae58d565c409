import type { Reading } from '../core/asBuilt/reading.ts'
import type { NumberKey, Numbers } from '../core/numbers.ts'
import type { Worked } from '../core/numberPlace.ts'
import type { Plan } from '../core/plan.ts'
import { type SignedWork, stillSpecified, type UnfitStage, unfitWork, withStationsOf } from '../core/signedWork.ts'
import { docsAt } from '../record/asItStood.ts'
import { keptSince } from '../record/bench/kept.ts'
import { measured, type ReadingFact, readingsInUse } from '../record/bench/measured.ts'
import type { Change, CommissionDoc, CommissionRecord, Fact } from '../record/commission.ts'
import { stagesDone } from '../record/facts.ts'
import { inOrder } from '../record/order.ts'
import { sameJson } from '../record/path.ts'
import { figuresOfStage, getsBox } from '../record/patterns/figuresOfStage.ts'
import type { StageKey } from '../record/patterns/stages.ts'
import type { StageEntry } from '../record/stageSchema.ts'
import type { SignedOff, SignedOffs } from './signedOff.ts'

/** Work of one stage that no longer fits. */
export interface StageFit extends UnfitStage {
  readonly stage: StageEntry
  readonly signed: SignedOff
  /** The instrument the stage was built to: what its rows were called. */
  readonly builtThen: Worked
}

/** What is already built and no longer fits, in building order. */
export interface BuiltFit {
  readonly stages: readonly StageFit[]
  /** How many things that are: the rows of one number count once. */
  readonly count: number
  /** What is asked now, and what the bare plan asks. */
  readonly now: Worked
  readonly planned: Worked
  /** The readings that still hold: of what the specification has left as it was. */
  readonly readings: readonly ReadingFact[]
  readonly terms: Parameters<typeof unfitWork>[2]
  readonly works: readonly JudgedWork[]
}

/** A signed stage with the bare plan of then at today's stations. */
export interface JudgedWork extends SignedWork {
  readonly planThen: Plan
}

/** What it follows from: one state of the commission's store. */
export interface FitState {
  readonly record: CommissionRecord | null
  readonly changes: readonly Change[]
  readonly facts: readonly Fact[]
}

export interface FitNeeds<Computed extends { readonly numbers: Numbers }> {
  readonly build: (plan: Plan, readings: readonly Reading[]) => { readonly plan: Plan; readonly computed: Computed }
  readonly signedOffs: SignedOffs<Computed>
}

export interface BuiltFits {
  /** null: nothing is signed off, or no plan has changed since: then there is nothing to work out. `toleranceOf` counts as the same while it is the same function. */
  readonly fitOf: (state: FitState, toleranceOf: (key: NumberKey) => number | null) => BuiltFit | null
  /** The numbers of any plan with readings. */
  readonly work: (plan: Plan, readings: readonly Reading[]) => Worked
}

interface Known {
  readonly doc: CommissionDoc
  readonly facts: readonly Fact[]
  readonly toleranceOf: unknown
  readonly fit: BuiltFit | null
}

/** Compares finished work with what is asked now. Plans of then are looked up in the log once, and worked out once. */
export function createBuiltFits<Computed extends { readonly numbers: Numbers }>({
  build,
  signedOffs,
}: FitNeeds<Computed>): BuiltFits {
  let known: Known | null = null
  /** The plan under which each reading was taken, by its id and place in the log; null where the log does not tell. */
  const plansOfReadings = new Map<string, Plan | null>()

  const work = (plan: Plan, readings: readonly Reading[]): Worked => {
    const built = build(plan, readings)
    return { plan: built.plan, numbers: built.computed.numbers }
  }

  function notePlans(readings: readonly ReadingFact[], changes: readonly Change[], likely: readonly Plan[]): void {
    const fresh = readings.filter((one) => !plansOfReadings.has(nameOf(one)))
    if (fresh.length === 0) return
    const docs = docsAt(changes, fresh)
    const plans = [...likely, ...[...plansOfReadings.values()].filter((plan) => plan !== null)]
    for (const one of fresh) {
      const plan = docs.get(one.id)?.plan ?? null
      const same = plans.find((each) => each === plan || sameJson(each, plan))
      if (plan !== null && same === undefined) plans.push(plan)
      plansOfReadings.set(nameOf(one), same ?? plan)
    }
  }

  function workOut({ record, changes, facts }: FitState, toleranceOf: Known['toleranceOf']): BuiltFit | null {
    if (record === null) return null
    const { doc } = record
    const done = stagesDone(facts)
    const signed = inOrder(doc.stages).flatMap(([id, stage]) => {
      const fact = done.get(id)
      const one = fact === undefined ? null : signedOffs.signedOff(fact.id)
      const isTouched = fact !== undefined && one?.isTold === true && !sameJson(one.plan, doc.plan)
      return isTouched ? [{ stage, fact, signed: one }] : []
    })
    if (signed.length === 0) return null

    const inUse = readingsInUse(facts)
    const plans = [doc.plan, ...signed.map((one) => one.signed.plan)]
    notePlans(inUse, changes, plans)
    const planned = work(doc.plan, [])
    const readings = inUse.filter((one) => {
      const then = plansOfReadings.get(nameOf(one)) ?? null
      if (then === null || sameJson(then, doc.plan)) return true
      return stillSpecified(one, work(withStationsOf(then, doc.plan), []), planned)
    })
    const works = signed.flatMap(({ stage, fact, signed: one }) => {
      const built = signedOffs.builtAt(fact.id)
      if (built === null) return []
      const builtThen = { plan: built.plan, numbers: built.computed.numbers }
      const planThen = withStationsOf(one.plan, doc.plan)
      const askedThen = work(planThen, readings)
      const excused = keptSince(facts, fact)
      return [
        { stageId: fact.stageId, kept: fact.builtTo, builtThen, planThen, askedThen, excused, stage, signed: one },
      ]
    })
    const now = work(doc.plan, readings)
    const building = inOrder(doc.stages).map(([, { key }]) => key)
    const terms = {
      readings: measured(facts).filter(({ isLatest }) => isLatest),
      isRead: (stageId: string, key: NumberKey) => isReadAt(doc.stages[stageId], building, key),
      toleranceOf: toleranceOf as (key: NumberKey) => number | null,
    }
    const stages = unfitWork(now, works, terms).flatMap((unfit): StageFit[] => {
      const of = works.find(({ stageId }) => stageId === unfit.stageId)
      return of === undefined ? [] : [{ ...unfit, stage: of.stage, signed: of.signed, builtThen: of.builtThen }]
    })
    return { stages, count: countThings(stages), now, planned, readings, terms, works }
  }

  return {
    fitOf(state, toleranceOf) {
      const doc = state.record?.doc
      if (doc === undefined) return null
      if (known?.doc !== doc || known.facts !== state.facts || known.toleranceOf !== toleranceOf)
        known = { doc, facts: state.facts, toleranceOf, fit: workOut(state, toleranceOf) }
      return known.fit
    },
    work,
  }
}

const nameOf = ({ id, seq }: ReadingFact): string => `${id} ${seq}`

const countThings = (stages: readonly UnfitStage[]): number =>
  stages.reduce((sum, { numbers, gone }) => sum + new Set(numbers.map(({ place }) => place.key)).size + gone.length, 0)

/** Whether a number is read at the work of a stage: what is only looked up there is nowhere in the wood. */
function isReadAt(stage: StageEntry | undefined, building: readonly StageKey[], key: NumberKey): boolean {
  if (stage === undefined) return false
  const lookUp = stage.own?.lookUp ?? figuresOfStage(stage.key, building).lookUp
  return getsBox({ lookUp }, key)
}
