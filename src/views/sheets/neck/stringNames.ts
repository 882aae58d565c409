import type { StringPlan } from '../../../core/neckPlan.ts'
import { formatNote } from '../../../format/formatNote.ts'

/** What strings are called in tables: their place from the bass and the note they are tuned to. */
export const stringNames = (set: readonly StringPlan[]): string[] =>
  set.map(({ note }, i) => `${i + 1} ${formatNote(note)}`)
