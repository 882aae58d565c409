import type { PlanField } from '../../core/planFields.ts'

/** What a field is called and what is said under it. The allowed range is written beside it elsewhere. */
export interface FieldWords {
  readonly name: string
  readonly hint: string
}

/** The fields under one part of the plan. */
export type FieldsUnder<Part extends string> = Extract<PlanField, `${Part}.${string}`>
