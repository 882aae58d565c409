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

/** Takes a commission that came with the demo over as the maker's own. */
export function keepAsOwn(): Recipe<CommissionRecord> {
  return ({ doc }) => {
    doc.demo = false
  }
}

/** A change that any document bears. */
type LifeRecipe = (draft: { deletedAt: string | null }) => void

/** Marks a document as deleted at a moment (ISO). Nothing is erased. */
export function markDeleted(at: string): LifeRecipe {
  return (draft) => {
    draft.deletedAt = at
  }
}

/** Takes the mark of deletion away. */
export function restore(): LifeRecipe {
  return (draft) => {
    draft.deletedAt = null
  }
}
