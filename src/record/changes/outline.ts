import { castDraft } from 'immer'
import type { DrawnPathPlan, HalfWidthReading, OutlinePiece } from '../../core/plan.ts'
import type { CommissionRecord } from '../commission.ts'
import type { Recipe } from '../edit.ts'
import { type ReadingList, sortReadings } from '../readings.ts'

/** Replaces the half outline, whole: its pieces make sense only together. */
export function setPieces(pieces: readonly OutlinePiece[]): Recipe<CommissionRecord> {
  return ({ doc }) => {
    doc.plan.outline.pieces = pieces.map((piece) => ({ ...piece }))
  }
}

/** Takes the outline from a drawing: it is drawn that way from now on; the ways not in use keep their values. */
export function setDrawnPath(drawnPath: DrawnPathPlan): Recipe<CommissionRecord> {
  return ({ doc }) => {
    doc.plan.outline.kind = 'drawnPath'
    doc.plan.outline.drawnPath = castDraft(structuredClone(drawnPath))
  }
}

/** Replaces one list of readings, whole; it is kept by rising distance from the tail. */
export function setReadings(list: ReadingList, readings: readonly HalfWidthReading[]): Recipe<CommissionRecord> {
  return ({ doc }) => {
    doc.plan.outline.halfWidths[list] = sortReadings(readings).map(([fromTailMm, halfWidthMm]) => [
      fromTailMm,
      halfWidthMm,
    ])
  }
}
