import type { OutlinePiece } from '../../core/plan.ts'
import type { CommissionRecord } from '../commission.ts'
import type { Recipe } from '../edit.ts'

/** Replaces the half outline, whole: its pieces make sense only together. */
export function setPieces(pieces: readonly OutlinePiece[]): Recipe<CommissionRecord> {
  return ({ doc }) => {
    doc.plan.outline.pieces = pieces.map((piece) => ({ ...piece }))
  }
}
