import { degFromRad } from '../units/angle.ts'
import type { SolvedPiece } from './compassArcs.ts'

/** A solved piece in the terms of the plan: what an open field of it came out as. */
export interface SolvedValues {
  readonly radiusMm: number | 'flat'
  readonly sweepDeg: number
  readonly lengthMm: number
}

/** Radius without the sign of its bend, sweep in degrees, length in mm. */
export function solvedValues(piece: SolvedPiece): SolvedValues {
  return {
    radiusMm: typeof piece.radiusMm === 'number' ? Math.abs(piece.radiusMm) : 'flat',
    sweepDeg: degFromRad(piece.sweepRad),
    lengthMm: piece.lengthMm,
  }
}
