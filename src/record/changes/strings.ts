import type { StringPlan } from '../../core/neckPlan.ts'
import type { CommissionRecord } from '../commission.ts'
import type { Recipe } from '../edit.ts'

/** Puts another set of strings on, bass to treble; notes to compare with that are not one for each string are dropped. */
export function setStrings(set: readonly StringPlan[]): Recipe<CommissionRecord> {
  return ({ doc }) => {
    const { strings } = doc.plan
    strings.set = set.map((string) => ({ ...string }))
    if (strings.otherNotes !== null && strings.otherNotes.length !== set.length) strings.otherNotes = null
  }
}

/** Another tuning to compare with, a note for each string; null: none. */
export function setOtherNotes(notes: readonly number[] | null): Recipe<CommissionRecord> {
  return ({ doc }) => {
    doc.plan.strings.otherNotes = notes === null ? null : [...notes]
  }
}
