import { type ComponentType, lazy, Suspense, useEffect, useMemo, useState } from 'react'
import { useLocation } from 'wouter'
import type { NumberKey } from '../../core/catalogue.ts'
import type { Origin } from '../../core/instrument/placeByX.ts'
import type { NumberRef } from '../../drawing/drawing.ts'
import type { Sheet } from '../../words/sheets.ts'
import { useFamilies } from '../useFamilies.ts'
import { useCommission, useShop, useWorkshop } from '../workshop.ts'
import { awaitField, focusField, goToAwaitedField } from './goToField.ts'
import { type PlannedBench, type SheetBench, SheetBenchContext } from './sheetBench.ts'
import { sheetOfField } from './sheetOfField.ts'
import { type SheetPointer, SheetPointerContext } from './sheetPointer.ts'
import './sheets.css'
import './tables.css'

/** Each sheet comes when it is first opened; the frame shows the last one until then. */
const SHEET_PARTS: Readonly<Record<Sheet, ComponentType>> = {
  outline: lazy(async () => ({ default: (await import('./OutlineSheet.tsx')).OutlineSheet })),
  sides: lazy(async () => ({ default: (await import('./SidesSheet.tsx')).SidesSheet })),
  domes: lazy(async () => ({ default: (await import('./DomesSheet.tsx')).DomesSheet })),
  blocks: lazy(async () => ({ default: (await import('./BlocksSheet.tsx')).BlocksSheet })),
  linings: lazy(async () => ({ default: (await import('./LiningsSheet.tsx')).LiningsSheet })),
  rosette: lazy(async () => ({ default: (await import('./RosetteSheet.tsx')).RosetteSheet })),
  bracing: lazy(async () => ({ default: (await import('./box/BracingSheet.tsx')).BracingSheet })),
  edges: lazy(async () => ({ default: (await import('./box/EdgesSheet.tsx')).EdgesSheet })),
  air: lazy(async () => ({ default: (await import('./box/AirSheet.tsx')).AirSheet })),
  cutting: lazy(async () => ({ default: (await import('./cutting/CuttingSheet.tsx')).CuttingSheet })),
  frets: lazy(async () => ({ default: (await import('./neck/FretsSheet.tsx')).FretsSheet })),
  strings: lazy(async () => ({ default: (await import('./neck/StringsSheet.tsx')).StringsSheet })),
  neckSet: lazy(async () => ({ default: (await import('./neck/NeckSetSheet.tsx')).NeckSetSheet })),
  bridge: lazy(async () => ({ default: (await import('./neck/BridgeSheet.tsx')).BridgeSheet })),
  neck: lazy(async () => ({ default: (await import('./neck/NeckSheet.tsx')).NeckSheet })),
  numbers: lazy(async () => ({ default: (await import('./NumbersSheet.tsx')).NumbersSheet })),
}

/** What a number is comes when it is first asked. */
const NumberHelp = lazy(async () => ({ default: (await import('./NumberHelp.tsx')).NumberHelp }))

/** One question about the instrument in hand, with its answer, its fields and its tables. */
export function SheetView({ id, sheet }: { readonly id: string; readonly sheet: Sheet }) {
  const bench = useBenchOf(id)
  const [lit, light] = useState<NumberRef | null>(null)
  const [helpOf, openHelp] = useState<NumberKey | null>(null)
  const pointer = useMemo<SheetPointer>(() => ({ lit, light, openHelp }), [lit])
  if (bench === null) return null
  const Part = SHEET_PARTS[sheet]
  return (
    <SheetBenchContext value={bench}>
      <SheetPointerContext value={pointer}>
        <Part />
        <Arrival sheet={sheet} />
        {helpOf !== null && (
          <Suspense fallback={null}>
            <NumberHelp number={helpOf} onClose={() => openHelp(null)} />
          </Suspense>
        )}
      </SheetPointerContext>
    </SheetBenchContext>
  )
}

/** Once the sheet stands: to the field it was opened for. The frame takes the focus when a place opens; the field comes after that. */
function Arrival({ sheet }: { readonly sheet: Sheet }) {
  useEffect(() => {
    const timer = setTimeout(() => goToAwaitedField(sheet), 0)
    return () => clearTimeout(timer)
  }, [sheet])
  return null
}

function useBenchOf(id: string): SheetBench | null {
  const { commission, drafts, shop, newGesture, computedOf } = useWorkshop()
  const [, navigate] = useLocation()
  const doc = useCommission((state) => (state.id === id ? (state.record?.doc ?? null) : null))
  const builtPlan = useCommission((state) => (state.id === id ? (state.builtDoc?.plan ?? null) : null))
  const computed = useCommission((state) => (state.id === id ? state.computed : null))
  const taken = useCommission((state) => state.taken)
  const facts = useCommission((state) => state.facts)
  const readOnly = useCommission((state) => state.readOnly !== null)
  const shopDoc = useShop((state) => state.shop)
  const families = useFamilies()
  const isShopOpen = useShop((state) => state.status === 'ready')
  // What may be asked for stays the same from stroke to stroke: fields that have not changed are told by it.
  const asked = useMemo(
    () =>
      ({
        newId: newGesture,
        edit: (recipe, gesture) => void commission.edit(recipe, gesture),
        chooseOrigin: (origin: Origin) => void shop.change('origin', origin, newGesture()),
        draftOf: (name) => drafts.textOf(id, name),
        keepDraft: (name, text) => drafts.keep(id, name, text),
        dropDraft: (name) => drafts.clear(id, name),
        goToField: (field, inside = null) => {
          if (focusField(field, inside)) return
          awaitField(field, inside)
          navigate(`/i/${id}/${sheetOfField(field)}`)
        },
      }) satisfies Partial<SheetBench>,
    [id, commission, drafts, shop, newGesture, navigate],
  )
  const plan = doc?.plan ?? null
  const planned = useMemo<PlannedBench | null>(() => {
    if (taken.length === 0 || plan === null) return null
    return {
      ...computedOf(plan),
      taken,
      dayOf: (readingId) => facts.find((fact) => fact.id === readingId)?.at.slice(0, 10) ?? null,
      goToReadings: () => navigate(`/i/${id}/readings`),
    }
  }, [taken, plan, facts, computedOf, navigate, id])
  return useMemo(() => {
    if (doc === null || computed === null || builtPlan === null) return null
    return {
      ...asked,
      id,
      number: doc.number,
      title: doc.title,
      family: doc.family,
      plan: doc.plan,
      builtPlan,
      computed,
      planned,
      units: shopDoc.units,
      origin: shopDoc.origin,
      tolerances: { own: doc.tolerances, shop: shopDoc.tolerances },
      fixtures: shopDoc.fixtures,
      taps: shopDoc.taps,
      families,
      readOnly,
      editShop: isShopOpen ? (recipe, gesture) => void shop.edit(recipe, gesture) : null,
    } satisfies SheetBench
  }, [asked, id, doc, builtPlan, computed, planned, readOnly, shopDoc, families, isShopOpen, shop])
}
