import type { TypedUnit } from '../../format/typedReading.ts'
import type { Side } from './spots.ts'

/** What was in hand when the bench was left: for as long as the page stands. */
const stages = new Map<string, string>()
const spots = new Map<string, number>()
const units = new Map<string, TypedUnit>()
let side: Side = 'bass'

/** Lays a stage of an instrument in hand: where the bench opens next. */
export const layInHand = (instrumentId: string, stageId: string): void => void stages.set(instrumentId, stageId)
export const stageLaidInHand = (instrumentId: string): string | null => stages.get(instrumentId) ?? null

export const keepSpot = (stageId: string, at: number): void => void spots.set(stageId, at)
export const keptSpot = (stageId: string): number => spots.get(stageId) ?? 0

/** The unit last read in, by the kind of number. */
export const keepUnit = (quantity: string, unit: TypedUnit): void => void units.set(quantity, unit)
export const keptUnit = (quantity: string): TypedUnit | null => units.get(quantity) ?? null

export const keepSide = (next: Side): void => {
  side = next
}
export const keptSide = (): Side => side
