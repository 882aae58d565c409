import type { Fretboard } from './neck/fretboard.ts'

export interface ScaleNumbers {
  /** Nut to the uncompensated saddle line, on the centreline; of the outer strings where the frets are fanned. */
  readonly lengthMm: number
  readonly bassMm: number
  readonly trebleMm: number
  /** From the joint to the uncompensated saddle line, and the line's place from the tail. */
  readonly jointToSaddleMm: number
  readonly saddleLineMm: number
  readonly boardEndMm: number
}

/** Where the scale lies over the body: from the fret at the joint to the saddle it is S x 2^(-J/12). Source: equal temperament (ISO 16). */
export function measureScale(shape: Fretboard): ScaleNumbers {
  return {
    lengthMm: shape.scaleMm,
    bassMm: shape.bassScaleMm,
    trebleMm: shape.trebleScaleMm,
    jointToSaddleMm: shape.jointMm - shape.saddleLine.xMm,
    saddleLineMm: shape.saddleLine.xMm,
    boardEndMm: shape.endMm,
  }
}
