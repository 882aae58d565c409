import { createContext, useContext } from 'react'
import type { NumberKey } from '../../core/catalogue.ts'
import type { Taken } from '../../core/asBuilt.ts'
import type { Computed } from '../../core/compute.ts'
import type { Fixtures } from '../../core/fixture.ts'
import type { Origin } from '../../core/instrument/placeByX.ts'
import type { Plan } from '../../core/plan.ts'
import type { PlanField } from '../../core/planFields.ts'
import type { ShopUnits } from '../../core/quantity.ts'
import type { CommissionRecord, ShopDoc, ShopRecord } from '../../record/commission.ts'
import type { Recipe } from '../../record/edit.ts'
import type { Family } from '../../record/family.ts'

export type Tolerances = Readonly<Partial<Record<NumberKey, number | null | undefined>>>

/** Everything a question sheet knows of the instrument on it, and the few things it may ask for. */
export interface SheetBench {
  readonly id: string
  /** Begins the name of files saved from the sheet. */
  readonly number: string
  readonly title: string
  readonly family: Family
  /** What is planned: what fields show and change. */
  readonly plan: Plan
  /** The plan as built, from which the numbers follow: what is drawn. The planned one where nothing was measured. */
  readonly builtPlan: Plan
  readonly computed: Computed
  /** What the plan gives as it was drawn, and what was measured since; null: nothing was that any number follows. */
  readonly planned: PlannedBench | null
  readonly units: ShopUnits
  readonly origin: Origin
  readonly tolerances: { readonly own: Tolerances; readonly shop: Tolerances }
  /** Of the shop: what this instrument is held against. */
  readonly fixtures: Fixtures
  /** Finished boxes of the shop as they were heard, by instrument. */
  readonly taps: ShopDoc['taps']
  /** Of every instrument of the shop, by instrument. */
  readonly families: Readonly<Record<string, Family>>
  readonly readOnly: boolean
  readonly newId: () => string
  /** Runs a named change; all that carry one gesture are undone together. */
  readonly edit: (recipe: Recipe<CommissionRecord>, gesture: string) => void
  /** The same for the shop; null where it could not be read. */
  readonly editShop: ((recipe: Recipe<ShopRecord>, gesture: string) => void) | null
  readonly chooseOrigin: (origin: Origin) => void
  readonly draftOf: (name: string) => string | null
  readonly keepDraft: (name: string, text: string) => void
  readonly dropDraft: (name: string) => void
  /** Takes the maker to a field, on this sheet or another; `inside` names one value of a field that is replaced whole. */
  readonly goToField: (field: PlanField, inside?: string | null) => void
}

/** The numbers as planned, beside those as built. */
export interface PlannedBench extends Pick<Computed, 'numbers' | 'geometry'> {
  /** The fields whose planned value gave way to what was measured. */
  readonly taken: readonly Taken[]
  /** The day a reading was taken, ISO; null where there is none of that id. */
  readonly dayOf: (readingId: string) => string | null
  readonly goToReadings: () => void
}

export const SheetBenchContext = createContext<SheetBench | null>(null)

export function useSheetBench(): SheetBench {
  const bench = useContext(SheetBenchContext)
  if (bench === null) throw new Error('A part of a question sheet stands outside of one.')
  return bench
}
