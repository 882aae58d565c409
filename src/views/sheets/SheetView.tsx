import { type ComponentType, useEffect, useMemo, useState } from 'react'
import { useLocation } from 'wouter'
import type { NumberKey } from '../../core/catalogue.ts'
import type { Origin } from '../../core/instrument/placeByX.ts'
import type { NumberRef } from '../../drawing/drawing.ts'
import type { Sheet } from '../../words/sheets.ts'
import { useCommission, useShop, useWorkshop } from '../workshop.ts'
import { BlocksSheet } from './BlocksSheet.tsx'
import { DomesSheet } from './DomesSheet.tsx'
import { awaitField, focusField, goToAwaitedField } from './goToField.ts'
import { LiningsSheet } from './LiningsSheet.tsx'
import { NumberHelp } from './NumberHelp.tsx'
import { NumbersSheet } from './NumbersSheet.tsx'
import { OutlineSheet } from './OutlineSheet.tsx'
import { RosetteSheet } from './RosetteSheet.tsx'
import { type SheetBench, SheetBenchContext } from './sheetBench.ts'
import { sheetOfField } from './sheetOfField.ts'
import { type SheetPointer, SheetPointerContext } from './sheetPointer.ts'
import { SidesSheet } from './SidesSheet.tsx'
import './sheets.css'
import './tables.css'

const SHEET_PARTS: Readonly<Record<Sheet, ComponentType>> = {
  outline: OutlineSheet,
  sides: SidesSheet,
  domes: DomesSheet,
  blocks: BlocksSheet,
  linings: LiningsSheet,
  rosette: RosetteSheet,
  numbers: NumbersSheet,
}

/** One question about the instrument in hand, with its answer, its fields and its tables. */
export function SheetView({ id, sheet }: { readonly id: string; readonly sheet: Sheet }) {
  const bench = useBenchOf(id)
  const [lit, light] = useState<NumberRef | null>(null)
  const [helpOf, openHelp] = useState<NumberKey | null>(null)
  const pointer = useMemo<SheetPointer>(() => ({ lit, light, openHelp }), [lit])
  const isReady = bench !== null
  useEffect(() => {
    if (!isReady) return undefined
    // The frame takes the focus when a place opens; the field it was opened for comes after that.
    const timer = setTimeout(() => goToAwaitedField(sheet), 0)
    return () => clearTimeout(timer)
  }, [isReady, sheet])
  if (bench === null) return null
  const Part = SHEET_PARTS[sheet]
  return (
    <SheetBenchContext value={bench}>
      <SheetPointerContext value={pointer}>
        <Part />
        {helpOf !== null && <NumberHelp number={helpOf} onClose={() => openHelp(null)} />}
      </SheetPointerContext>
    </SheetBenchContext>
  )
}

function useBenchOf(id: string): SheetBench | null {
  const { commission, drafts, shop, newGesture } = useWorkshop()
  const [, navigate] = useLocation()
  const doc = useCommission((state) => (state.id === id ? (state.record?.doc ?? null) : null))
  const computed = useCommission((state) => (state.id === id ? state.computed : null))
  const readOnly = useCommission((state) => state.readOnly !== null)
  const shopDoc = useShop((state) => state.shop)
  const isShopOpen = useShop((state) => state.status === 'ready')
  return useMemo(() => {
    if (doc === null || computed === null) return null
    return {
      id,
      number: doc.number,
      plan: doc.plan,
      computed,
      units: shopDoc.units,
      origin: shopDoc.origin,
      tolerances: { own: doc.tolerances, shop: shopDoc.tolerances },
      fixtures: shopDoc.fixtures,
      readOnly,
      newId: newGesture,
      edit: (recipe, gesture) => void commission.edit(recipe, gesture),
      editShop: isShopOpen ? (recipe, gesture) => void shop.edit(recipe, gesture) : null,
      chooseOrigin: (origin: Origin) => void shop.change('origin', origin, newGesture()),
      draftOf: (name) => drafts.textOf(id, name),
      keepDraft: (name, text) => drafts.keep(id, name, text),
      dropDraft: (name) => drafts.clear(id, name),
      goToField: (field) => {
        if (focusField(field)) return
        awaitField(field)
        navigate(`/i/${id}/${sheetOfField(field)}`)
      },
    } satisfies SheetBench
  }, [id, doc, computed, readOnly, shopDoc, isShopOpen, commission, drafts, shop, newGesture, navigate])
}
