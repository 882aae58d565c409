import { inverseOf } from '../core/asBuilt/inverses.ts'
import type { Reading } from '../core/asBuilt/reading.ts'
import type { Figure } from '../core/figure.ts'
import { readKeptName } from '../core/keptNumbers.ts'
import { figureAt, placeOf, rowAt } from '../core/numberPlace.ts'
import { type UnfitNumber, unfitWork } from '../core/signedWork.ts'
import { keepWork } from '../record/bench/kept.ts'
import { measured, type NewReading, recordReading, switchReading } from '../record/bench/measured.ts'
import type { Fact } from '../record/commission.ts'
import { redoStage } from '../record/facts.ts'
import type { BuiltFit, BuiltFits, StageFit } from './builtFit.ts'
import type { MakeFacts } from './commissionStore.ts'

/**
 * The facts by which a stage's work stays as it was built: what defines something on this plan is read as it was built, and for all of it is
 * noted what is asked once that is so. `newId` gives ids that were never used.
 */
export function keepAsBuilt(fits: BuiltFits, fit: BuiltFit, stage: StageFit, newId: () => string): MakeFacts {
  const { plan } = fit.planned
  const { stageId } = stage
  const readings = stage.numbers.flatMap((one) =>
    inverseOf(one.place.key, plan) === null ? [] : [builtReading(fit, stageId, one)],
  )
  // What is asked of all the rest when these have taken the planned values' place.
  const added = readings.map((one): Reading => ({ ...one, id: newId() }))
  const now = fits.work(plan, [...fit.readings, ...added])
  const works = fit.works
    .filter((one) => one.stageId === stageId)
    .map((one) => ({ ...one, askedThen: fits.work(one.planThen, [...fit.readings, ...added]) }))
  const left = unfitWork(now, works, { ...fit.terms, readings: [...fit.terms.readings, ...added] })
  const names = [stage, ...left].flatMap(({ numbers, gone }) => [...numbers, ...gone].map(({ name }) => name))
  const asked: Record<string, Figure> = {}
  for (const name of names) {
    const found = readKeptName(name)
    if (found !== null) asked[name] = figureAt(now, placeOf(stage.builtThen, found.key, found.row)) ?? 'none'
  }
  return (row, meta) => [
    ...readings.map((one) => recordReading(row, one, meta)),
    keepWork(row, { stageId, asked }, meta),
  ]
}

/** The built value read at its place, against what the bare plan asks today: so that it counts. */
function builtReading({ planned }: BuiltFit, stageId: string, { place, wood }: UnfitNumber): NewReading {
  return {
    stageId,
    number: place.key,
    row: rowAt(planned, place),
    side: 'whole',
    value: wood,
    alongMm: place.alongMm,
    entry: place.entry,
    typed: '',
    gauge: '',
    planned: figureAt(planned, place) ?? 'none',
    replaces: null,
  }
}

/** A stage is to be done again, to the plan: what was read at its work before says nothing of the new, and is turned off. */
export const redoToPlan =
  (stageId: string, reason: string, facts: readonly Fact[]): MakeFacts =>
  (row, meta) => [
    redoStage(row, stageId, reason, meta),
    ...measured(facts)
      .filter((one) => one.stageId === stageId && one.isUsed)
      .map(({ id }) => switchReading(row, id, false, meta)),
  ]
