import { type ReactNode, useMemo, useState } from 'react'
import type { NumberKey } from '../../src/core/catalogue.ts'
import { asBuilt } from '../../src/core/asBuilt.ts'
import type { Reading } from '../../src/core/asBuilt/reading.ts'
import { compute } from '../../src/core/compute.ts'
import type { Fixtures } from '../../src/core/fixture.ts'
import type { Origin } from '../../src/core/instrument/placeByX.ts'
import type { Plan } from '../../src/core/plan.ts'
import type { PlanField } from '../../src/core/planFields.ts'
import { STARTING_UNITS, type ShopUnits } from '../../src/core/quantity.ts'
import { allowsValue } from '../../src/record/allowsValue.ts'
import { beginCommission, beginShop } from '../../src/record/changes/begin.ts'
import type { Change, CommissionRecord, ShopDoc, ShopRecord } from '../../src/record/commission.ts'
import { editDocument, type Recipe } from '../../src/record/edit.ts'
import type { NumberRef } from '../../src/drawing/drawing.ts'
import { STARTING_SHOP } from '../../src/state/shopStore.ts'
import { NumberHelp } from '../../src/views/sheets/NumberHelp.tsx'
import { type SheetBench, SheetBenchContext } from '../../src/views/sheets/sheetBench.ts'
import { SheetPointerContext } from '../../src/views/sheets/sheetPointer.ts'

/** What a test can look at of the bench it put a sheet on. */
export interface Watched {
  readonly record: CommissionRecord
  readonly changes: readonly Change[]
  readonly sentTo: readonly PlanField[]
  readonly drafts: Map<string, string>
  readonly refused: number
  readonly enter: (recipe: Recipe<CommissionRecord>, gesture: string) => CommissionRecord
  readonly send: (field: PlanField) => void
}

let last = 0
/** uuids that count up: a test's own. */
const nextId = (): string => {
  last += 1
  return `0f000000-0000-4000-8000-${String(last).padStart(12, '0')}`
}
const DEVICE = '0e000000-0000-4000-8000-000000000001'
const MOMENT = '2027-03-12T10:00:00.000Z'
const NOTHING_READ: readonly Reading[] = []
const metaOf = (gesture: string) => ({ deviceId: DEVICE, at: MOMENT, gesture, newId: nextId })

export function watchedBench(plan: Plan): Watched {
  const begun = beginCommission(
    { number: '27-01', title: 'Test', family: 'steelString', model: null, plan, stages: [] },
    metaOf(nextId()),
  )
  if (!begun.ok) throw new Error(JSON.stringify(begun.problem))
  let record = begun.value.row
  let changes: readonly Change[] = []
  let refused = 0
  const sentTo: PlanField[] = []
  return {
    get record() {
      return record
    },
    get changes() {
      return changes
    },
    get refused() {
      return refused
    },
    sentTo,
    drafts: new Map(),
    enter(recipe, gesture) {
      const edited = editDocument(record, changes, recipe, metaOf(gesture))
      if (edited.ok) {
        record = edited.value.row
        changes = [...changes, ...edited.value.changes]
      } else refused += 1
      return record
    },
    send: (field) => void sentTo.push(field),
  }
}

function shopWith(fixtures: Fixtures, units: ShopUnits, taps: ShopDoc['taps']): ShopRecord {
  const begun = beginShop(
    { ...STARTING_SHOP, units, fixtures: structuredClone(fixtures) as ShopDoc['fixtures'], taps },
    metaOf(nextId()),
  )
  if (!begun.ok) throw new Error(JSON.stringify(begun.problem))
  return begun.value.row
}

/** A bench whose edits go through the record's own way of editing, held in memory. */
export function FakeBench({
  watched,
  units = STARTING_UNITS,
  fixtures = {},
  taps = {},
  families = {},
  readings = NOTHING_READ,
  children,
}: {
  readonly watched: Watched
  readonly units?: ShopUnits
  /** What the shop has to begin with. */
  readonly fixtures?: Fixtures
  /** Boxes it has tapped, and the families of its instruments. */
  readonly taps?: ShopDoc['taps']
  readonly families?: SheetBench['families']
  /** What was measured since it was planned. */
  readonly readings?: readonly Reading[]
  readonly children: ReactNode
}) {
  const [record, setRecord] = useState(watched.record)
  const [shop, setShop] = useState(() => shopWith(fixtures, units, taps))
  const [origin, setOrigin] = useState<Origin>('tail')
  const [lit, light] = useState<NumberRef | null>(null)
  const [helpOf, openHelp] = useState<NumberKey | null>(null)
  const { doc } = record
  const built = useMemo(() => asBuilt(doc.plan, readings, allowsValue), [doc.plan, readings])
  const computed = useMemo(() => compute(built.plan), [built.plan])
  const planned = useMemo(
    () =>
      built.taken.length === 0
        ? null
        : {
            ...compute(doc.plan),
            taken: built.taken,
            dayOf: () => MOMENT.slice(0, 10),
            goToReadings: () => undefined,
          },
    [doc.plan, built],
  )
  const bench: SheetBench = {
    id: record.id,
    number: doc.number,
    title: doc.title,
    family: doc.family,
    plan: doc.plan,
    builtPlan: built.plan,
    computed,
    planned,
    units,
    origin,
    tolerances: { own: doc.tolerances, shop: {} },
    fixtures: shop.doc.fixtures,
    taps: shop.doc.taps,
    families,
    readOnly: false,
    newId: nextId,
    edit: (recipe, gesture) => setRecord(watched.enter(recipe, gesture)),
    editShop: (recipe, gesture) => {
      const edited = editDocument(shop, [], recipe, metaOf(gesture))
      if (edited.ok) setShop(edited.value.row)
    },
    chooseOrigin: setOrigin,
    draftOf: (name) => watched.drafts.get(name) ?? null,
    keepDraft: (name, text) => void watched.drafts.set(name, text),
    dropDraft: (name) => void watched.drafts.delete(name),
    goToField: watched.send,
  }
  return (
    <SheetBenchContext value={bench}>
      <SheetPointerContext value={{ lit, light, openHelp }}>
        {children}
        {helpOf !== null && <NumberHelp number={helpOf} onClose={() => openHelp(null)} />}
      </SheetPointerContext>
    </SheetBenchContext>
  )
}
