import type { NumberKey } from '../../core/numbers.ts'

/** What is said about one number. `how` is null where it is computed only and no one measures it. */
export interface NumberWords {
  /** Short enough for the head of a column. */
  readonly name: string
  readonly what: string
  readonly how: string | null
}

/** The keys of one part: all that begin with its name. */
export type KeysUnder<Part extends string> = Extract<NumberKey, `${Part}.${string}` | `${Part}[].${string}`>
