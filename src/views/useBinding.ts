import { useRef } from 'react'
import { type Path, valueAt } from '../record/path.ts'
import type { FieldBinding } from '../ui/fieldBinding.ts'
import { useCommission, useDraft, useShop, useWorkshop } from './workshop.ts'

interface Bound<Value> {
  readonly docId: string
  /** Dotted name: of the draft, and of the field on the screen. */
  readonly name: string
  readonly value: Value
  readonly readOnly: boolean
  readonly take: (value: Value, gesture: string) => void
}

/** Hangs a field on anything that can be set; everything taken between `begin` and `end` is one gesture. */
export function useBindingTo<Value>({ docId, name, value, readOnly, take }: Bound<Value>): FieldBinding<Value> {
  const { drafts, newGesture } = useWorkshop()
  const draft = useDraft(docId, name)
  const gesture = useRef<string | null>(null)
  return {
    name,
    value,
    draft,
    readOnly,
    begin: () => {
      gesture.current = newGesture()
    },
    end: () => {
      gesture.current = null
    },
    take: (next) => take(next, gesture.current ?? newGesture()),
    keepDraft: (text) => drafts.keep(docId, name, text),
    dropDraft: () => drafts.clear(docId, name),
  }
}

/** Hangs a field on one value of the instrument in hand: 'plan.rim.depthAtTailMm', or the steps where one holds a dot. */
export function useBinding<Value>(field: string | Path): FieldBinding<Value> {
  const { commission } = useWorkshop()
  const path = typeof field === 'string' ? field.split('.') : field
  const docId = useCommission((state) => state.id) ?? ''
  const readOnly = useCommission((state) => state.status !== 'open' || state.readOnly !== null)
  const value = useCommission((state) => {
    const found = valueAt(state.record?.doc, path)
    return found.here ? found.value : null
  }) as Value
  return useBindingTo<Value>({
    docId,
    name: path.join('.'),
    value,
    readOnly,
    take: (next, gesture) => commission.change(path, next, gesture),
  })
}

/** Hangs a field on one value of the shop: 'units.bodyLength', 'name'. */
export function useShopBinding<Value>(field: string): FieldBinding<Value> {
  const { shop } = useWorkshop()
  const isOpen = useShop((state) => state.status === 'ready')
  const value = useShop((state) => {
    const found = valueAt(state.shop, field.split('.'))
    return found.here ? found.value : null
  }) as Value
  return useBindingTo<Value>({
    docId: 'shop',
    name: field,
    value,
    readOnly: !isOpen,
    take: (next, gesture) => shop.change(field, next, gesture),
  })
}
