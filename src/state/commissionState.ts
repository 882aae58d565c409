import type { AsBuilt } from '../core/asBuilt.ts'
import type { Change, CommissionDoc, CommissionRecord, Fact } from '../record/commission.ts'
import type { DoorProblem } from '../record/problem.ts'
import type { Result } from '../record/result.ts'
import type { GestureLabel } from '../record/undo.ts'
import type { ReadProblem } from '../storage/documents.ts'
import type { WriteProblem } from '../storage/writeDurably.ts'
import type { SaveStatus } from './keeper.ts'

/** What follows from a plan and from what was measured since. */
export interface Built<Computed> extends AsBuilt {
  readonly computed: Computed
}

/** One commission on the bench. `Computed` is what the numbers are computed into. */
export interface CommissionState<Computed> {
  readonly status: 'closed' | 'opening' | 'open' | 'refused'
  readonly id: string | null
  /** Why it could not be opened; what is stored stays as it is. */
  readonly problem: ReadProblem | null
  readonly record: CommissionRecord | null
  readonly changes: readonly Change[]
  readonly facts: readonly Fact[]
  /** What follows from the plan that stands in `record`, with what was measured in the place of what was planned; always of the same moment. */
  readonly computed: Computed | null
  /** The document with its plan as built, from which `computed` follows; the one in `record` itself where nothing was measured. */
  readonly builtDoc: CommissionDoc | null
  /** The fields that hold what was measured, and the readings that no field can hold. */
  readonly taken: AsBuilt['taken']
  readonly outside: AsBuilt['outside']
  /** Why nothing can be changed from here, if so; the record stays live. */
  readonly readOnly: 'openInAnotherTab' | null
  readonly save: SaveStatus
  readonly saveProblem: WriteProblem | null
  readonly undo: GestureLabel | null
  readonly redo: GestureLabel | null
}

export type EditRefused = DoorProblem | { readonly code: 'readOnly' } | { readonly code: 'notOpen' }
export type EditAnswer = Result<null, EditRefused>

/** Nothing is on the bench. */
export const CLOSED = {
  status: 'closed',
  id: null,
  problem: null,
  record: null,
  changes: [],
  facts: [],
  computed: null,
  builtDoc: null,
  taken: [],
  outside: [],
  readOnly: null,
  save: 'saved',
  saveProblem: null,
  undo: null,
  redo: null,
} as const
