import { useRef } from 'react'
import { setField } from '../../record/changes/setField.ts'
import type { CommissionRecord } from '../../record/commission.ts'
import type { Recipe } from '../../record/edit.ts'
import type { FieldBinding } from '../../ui/fieldBinding.ts'
import { type SheetBench, useSheetBench } from './sheetBench.ts'

/** What a field asks of the bench it stands on. */
export interface FieldHand extends Pick<SheetBench, 'readOnly' | 'newId' | 'edit' | 'keepDraft' | 'dropDraft'> {
  /** Text that was typed into this field and not taken. */
  readonly draft: string | null
}

/** Binds a field of a sheet to the record: one gesture for each visit, drafts kept under the field's name. */
export function useSheetField<Value>(
  name: string,
  value: Value,
  change: (value: Value) => Recipe<CommissionRecord>,
): FieldBinding<Value> {
  const bench = useSheetBench()
  return useFieldInHand({ ...bench, draft: bench.draftOf(name) }, name, value, change)
}

function useFieldInHand<Value>(
  { readOnly, newId, edit, draft, keepDraft, dropDraft }: FieldHand,
  name: string,
  value: Value,
  change: (value: Value) => Recipe<CommissionRecord>,
): FieldBinding<Value> {
  const gesture = useRef<string | null>(null)
  return {
    name,
    value,
    draft,
    readOnly,
    begin: () => {
      gesture.current = newId()
    },
    end: () => {
      gesture.current = null
    },
    take: (next) => edit(change(next), gesture.current ?? newId()),
    keepDraft: (text) => keepDraft(name, text),
    dropDraft: () => dropDraft(name),
  }
}

/** The same for a value at a path of the document: 'plan.rim.depthAtTailMm'. */
export const useDocumentField = <Value>(name: string, value: Value): FieldBinding<Value> =>
  useSheetField(name, value, (next) => setField(name, next))

/** The same, for a field that is drawn anew only when what it is told of the bench changes. */
export const useDocumentFieldInHand = <Value>(hand: FieldHand, name: string, value: Value): FieldBinding<Value> =>
  useFieldInHand(hand, name, value, (next) => setField(name, next))
