import type { ShopRecord } from '../commission.ts'
import type { Recipe } from '../edit.ts'
import type { Family } from '../patterns/stages.ts'
import { copiedStages } from '../stageOrders.ts'
import type { StageEntry } from '../stageSchema.ts'

/** Keeps the building order of an instrument for the next ones; `id` is a fresh uuid, `newId` gives one for each stage. */
export function savePattern(
  id: string,
  name: string,
  family: Family,
  stages: Readonly<Record<string, StageEntry>>,
  newId: () => string,
): Recipe<ShopRecord> {
  const copied = copiedStages(structuredClone(stages), newId)
  return ({ doc }) => {
    doc.patterns[id] = { name, family, stages: copied }
  }
}

/** Brings back a building order that was removed. */
export function bringBackPattern(id: string, pattern: ShopRecord['doc']['patterns'][string]): Recipe<ShopRecord> {
  return ({ doc }) => {
    doc.patterns[id] = structuredClone(pattern)
  }
}

/** Calls a building order something else; an id that is not there changes nothing. */
export function renamePattern(id: string, name: string): Recipe<ShopRecord> {
  return ({ doc }) => {
    const pattern = doc.patterns[id]
    if (pattern !== undefined) pattern.name = name
  }
}

export function removePattern(id: string): Recipe<ShopRecord> {
  return ({ doc }) => {
    delete doc.patterns[id]
  }
}
