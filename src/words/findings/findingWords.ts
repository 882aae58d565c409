import type { FindingCode } from '../../core/findings.ts'
import type { PlanField } from '../../core/planFields.ts'
import type { Quantity } from '../../core/quantity.ts'

/** A value in the shop's unit, as text. */
export type Say = (value: number, quantity: Quantity) => string

/** What a maker reads of one finding: what does not fit, by how much, and what to do about it. */
export interface FindingText {
  readonly title: string
  readonly sentence: string
  readonly mend: string
}

/** Reads the finding's values; one that is missing or not a number gives null, so that nothing senseless is ever shown. */
export interface Values {
  /** In the shop's unit, signed. */
  readonly value: (name: string, quantity: Quantity) => string | null
  /** The same without its sign. */
  readonly size: (name: string, quantity: Quantity) => string | null
  readonly number: (name: string) => number | null
  /** Whether this field is among those to mend it in. */
  readonly leadsTo: (field: PlanField) => boolean
}

export type FindingWriter = (values: Values) => FindingText

export type WritersFor<Code extends FindingCode> = Record<Code, FindingWriter>
