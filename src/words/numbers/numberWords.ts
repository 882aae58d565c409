import type { NumberKey } from '../../core/numbers.ts'

/** What is said about one number besides its name. `how` is null where it is computed only and no one measures it. */
export interface NumberTexts {
  readonly what: string
  readonly how: string | null
  /** How it comes about: a sum to redo at the bench, its letters told in the same string; one sentence where there is no closed form. */
  readonly formula: string
  /** Where that comes from: a published source by name, or derived, common practice, from memory, entered. */
  readonly from: string
}

export interface NumberWords extends NumberTexts {
  readonly name: string
}

/** Of a value that is handed on just as it was typed. */
export const ENTERED = { formula: 'As entered.', from: 'Entered, not computed.' } as const

/** The keys of one part: all that begin with its name. */
export type KeysUnder<Part extends string> = Extract<NumberKey, `${Part}.${string}` | `${Part}[].${string}`>
