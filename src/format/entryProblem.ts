/**
 * Why a typed entry was not taken, as a code with its data; the sentences are in words/.
 *   empty         nothing but blanks
 *   tooLong       more than `limit` characters
 *   unreadable    `at` is the first piece that makes no sense where it stands
 *   unfinished    the entry stops where a number or a bracket must follow
 *   ambiguous     the entry can mean two things; each reading is the whole entry written so that the doubt is gone
 *   divideByZero  something is divided by nothing
 *   wrongKind     the sum comes out as a square or a bare ratio: 3" * 2", 6" / 2"
 *   tooLarge      further from zero than `limit`, in mm, degrees, pieces or the field's own unit
 *   notWhole      a count with a part left over
 */
export type EntryProblem =
  | { readonly code: 'empty' }
  | { readonly code: 'tooLong'; readonly limit: number }
  | { readonly code: 'unreadable'; readonly at: string }
  | { readonly code: 'unfinished' }
  | { readonly code: 'ambiguous'; readonly readings: readonly [string, string] }
  | { readonly code: 'divideByZero' }
  | { readonly code: 'wrongKind' }
  | { readonly code: 'tooLarge'; readonly limit: number }

export type LengthProblem = EntryProblem
export type AngleProblem = EntryProblem
export type DecimalProblem = EntryProblem
export type CountProblem = EntryProblem | { readonly code: 'notWhole' }
