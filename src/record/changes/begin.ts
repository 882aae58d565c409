import type { Plan } from '../../core/plan.ts'
import {
  type Change,
  type CommissionDoc,
  type CommissionRecord,
  SCHEMA_VERSION,
  type ShopDoc,
  type ShopRecord,
} from '../commission.ts'
import type { Bundle, DocumentRecord } from '../document.ts'
import { checkRow } from '../door.ts'
import type { EditMeta } from '../edit.ts'
import type { DoorProblem } from '../problem.ts'
import { accept, type Result } from '../result.ts'
import type { StageKey } from '../patterns/stages.ts'
import { copiedStages, orderOfKeys } from '../stageOrders.ts'

/** What a maker says, or a model gives, when an instrument is begun. */
export interface Beginning {
  readonly number: string
  readonly title: string
  readonly family: CommissionDoc['family']
  /** The model it starts from, kept as it was then; null for a plan of its own. */
  readonly model: { readonly modelId: string | null; readonly name: string; readonly plan: Plan } | null
  readonly plan: Plan
  /** Stages as the house has them, or the order of a shop’s own, which is copied. */
  readonly stages: readonly StageKey[] | CommissionDoc['stages']
  readonly brief?: Partial<CommissionDoc['brief']>
}

const EMPTY_BRIEF: CommissionDoc['brief'] = {
  client: '',
  contact: '',
  wishes: '',
  orderedOn: null,
  promisedOn: null,
  notes: '',
}

/** A new commission with its first change. */
export function beginCommission(beginning: Beginning, meta: EditMeta): Result<Bundle, DoorProblem> {
  const stages = isKeys(beginning.stages)
    ? orderOfKeys(beginning.stages, meta.newId)
    : copiedStages(beginning.stages, meta.newId)
  return beginDocument<CommissionRecord>(
    {
      id: meta.newId(),
      kind: 'commission',
      schemaVersion: SCHEMA_VERSION,
      seen: {},
      deletedAt: null,
      doc: structuredClone({
        number: beginning.number,
        title: beginning.title,
        family: beginning.family,
        archivedOn: null,
        demo: false,
        brief: { ...EMPTY_BRIEF, ...beginning.brief },
        plan: beginning.plan as CommissionDoc['plan'],
        tolerances: {},
        stages,
        modelAsTaken: beginning.model as CommissionDoc['modelAsTaken'],
      }),
    },
    meta,
  )
}

const isKeys = (stages: Beginning['stages']): stages is readonly StageKey[] => Array.isArray(stages)

/** A copy under a new id, number and title: own log, no facts, no dates of the other's, never part of the demo. `plan`: its own, or as it was built. */
export function duplicateCommission(
  of: CommissionRecord,
  names: { readonly number: string; readonly title: string },
  meta: EditMeta,
  plan: Plan = of.doc.plan,
): Result<Bundle, DoorProblem> {
  return beginDocument<CommissionRecord>(
    {
      id: meta.newId(),
      kind: 'commission',
      schemaVersion: SCHEMA_VERSION,
      seen: {},
      deletedAt: null,
      doc: structuredClone({
        ...of.doc,
        ...names,
        plan: plan as CommissionDoc['plan'],
        archivedOn: null,
        demo: false,
        brief: { ...of.doc.brief, orderedOn: null, promisedOn: null },
        stages: copiedStages(of.doc.stages, meta.newId),
      }),
    },
    meta,
  )
}

/** The shop has one document, the same on every device. */
export const SHOP_ID = '00000000-0000-4000-8000-000000000001'

export function beginShop(doc: ShopDoc, meta: EditMeta): Result<Bundle<ShopRecord>, DoorProblem> {
  return beginDocument<ShopRecord>(
    { id: SHOP_ID, kind: 'shop', schemaVersion: SCHEMA_VERSION, seen: {}, deletedAt: null, doc },
    meta,
  )
}

/** A document at the start of its log: one change holds it whole. */
export function beginDocument<Row extends DocumentRecord>(row: Row, meta: EditMeta): Result<Bundle<Row>, DoorProblem> {
  const checked = checkRow<Row>(row)
  if (!checked.ok) return checked
  const first: Change = {
    id: meta.newId(),
    docId: row.id,
    deviceId: meta.deviceId,
    seq: 1,
    at: meta.at,
    gesture: meta.gesture,
    path: [],
    value: { ...row, seen: {} },
    after: null,
    undoes: null,
  }
  return accept({ row: { ...row, seen: { [meta.deviceId]: 1 } }, changes: [first], facts: [] })
}

/** The next free number of a series: the last run of digits counted up, its width kept, until nobody has it. */
export function nextFreeNumber(number: string, taken: readonly string[]): string {
  const match = /^(.*?)(\d+)(\D*)$/s.exec(number)
  if (match === null) return number
  const [, head = '', digits = '', tail = ''] = match
  const used = new Set(taken)
  for (let n = Number(digits) + 1; ; n += 1) {
    const next = `${head}${String(n).padStart(digits.length, '0')}${tail}`
    if (!used.has(next) || !Number.isSafeInteger(n)) return next
  }
}
