import * as z from 'zod/mini'
import {
  type Change,
  type CommissionRecord,
  commissionDoc,
  documentHead,
  type Fact,
  type ModelRecord,
  type ShopRecord,
  shopDoc,
} from './commission.ts'
import { modelDoc } from './houseModel.ts'

export type DocumentRecord = CommissionRecord | ModelRecord | ShopRecord

export const commissionRow = z.strictObject({
  ...documentHead.shape,
  kind: z.literal('commission'),
  doc: commissionDoc,
})
export const shopRow = z.strictObject({ ...documentHead.shape, kind: z.literal('shop'), doc: shopDoc })
export const modelRow = z.strictObject({ ...documentHead.shape, kind: z.literal('model'), doc: modelDoc })
export const documentRow = z.discriminatedUnion('kind', [commissionRow, modelRow, shopRow])

/** A document with everything that belongs to it; changes and facts in the order of the log. */
export interface Bundle<Row extends DocumentRecord = CommissionRecord> {
  readonly row: Row
  readonly changes: readonly Change[]
  readonly facts: readonly Fact[]
}

interface Placed {
  readonly seq: number
  readonly deviceId: string
}

/** The order of the log: by place, ties by device. Never by clock. */
export function byPlace(a: Placed, b: Placed): number {
  if (a.seq !== b.seq) return a.seq - b.seq
  return a.deviceId < b.deviceId ? -1 : a.deviceId > b.deviceId ? 1 : 0
}

/** The highest place taken in from each device. */
export function seenIn(
  entries: readonly Placed[],
  from: Readonly<Record<string, number>> = {},
): Record<string, number> {
  const seen = { ...from }
  for (const { deviceId, seq } of entries) seen[deviceId] = Math.max(seen[deviceId] ?? 0, seq)
  return seen
}

/** The place the next entry takes: after everything this document has seen from any device. */
export function nextSeq(row: { readonly seen: Readonly<Record<string, number>> }): number {
  return 1 + Math.max(0, ...Object.values(row.seen))
}
