import type { CommissionRecord } from '../commission.ts'
import type { Recipe } from '../edit.ts'

/** Gives a commission another number and title. */
export function rename(number: string, title: string): Recipe<CommissionRecord> {
  return ({ doc }) => {
    doc.number = number
    doc.title = title
  }
}

/** Puts a commission away on a day (ISO date), or takes it out again (null). */
export function archive(onDay: string | null): Recipe<CommissionRecord> {
  return ({ doc }) => {
    doc.archivedOn = onDay
  }
}

/** Marks a commission as deleted at a moment (ISO). Nothing is erased. */
export function markDeleted(at: string): Recipe<CommissionRecord> {
  return (draft) => {
    draft.deletedAt = at
  }
}

/** Takes the mark of deletion away. */
export function restore(): Recipe<CommissionRecord> {
  return (draft) => {
    draft.deletedAt = null
  }
}
