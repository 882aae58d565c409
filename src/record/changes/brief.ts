import type { CommissionDoc, CommissionRecord } from '../commission.ts'
import type { Recipe } from '../edit.ts'

type Brief = CommissionDoc['brief']

/** Sets one field of the brief; days are ISO dates or null. */
export function setBriefField<Field extends keyof Brief>(field: Field, value: Brief[Field]): Recipe<CommissionRecord> {
  return ({ doc }) => {
    doc.brief[field] = value
  }
}
