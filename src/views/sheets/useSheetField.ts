import { useRef } from 'react'
import { setField } from '../../record/changes/setField.ts'
import type { CommissionRecord } from '../../record/commission.ts'
import type { Recipe } from '../../record/edit.ts'
import type { FieldBinding } from '../../ui/fieldBinding.ts'
import { useSheetBench } from './sheetBench.ts'

/** Binds a field of a sheet to the record: one gesture for each visit, drafts kept under the field's name. */
export function useSheetField<Value>(
  name: string,
  value: Value,
  change: (value: Value) => Recipe<CommissionRecord>,
): FieldBinding<Value> {
  const bench = useSheetBench()
  const gesture = useRef<string | null>(null)
  return {
    name,
    value,
    draft: bench.draftOf(name),
    readOnly: bench.readOnly,
    begin: () => {
      gesture.current = bench.newId()
    },
    end: () => {
      gesture.current = null
    },
    take: (next) => bench.edit(change(next), gesture.current ?? bench.newId()),
    keepDraft: (text) => bench.keepDraft(name, text),
    dropDraft: () => bench.dropDraft(name),
  }
}

/** The same for a value at a path of the document: 'plan.rim.depthAtTailMm'. */
export const useDocumentField = <Value>(name: string, value: Value): FieldBinding<Value> =>
  useSheetField(name, value, (next) => setField(name, next))
