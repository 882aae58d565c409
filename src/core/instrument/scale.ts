export interface ScaleNumbers {
  /** From the joint to the uncompensated saddle line, and the line's place from the tail. */
  readonly jointToSaddleMm: number
  readonly saddleLineMm: number
  readonly boardEndMm: number
}

/**
 * From the fret at the joint to the saddle, uncompensated: S x 2^(-J/12), mm.
 * Source: equal temperament (ISO 16 pitch; the twelfth root of two), the rule of every fret table.
 */
export const jointToSaddleMm = (scaleMm: number, jointFret: number): number => scaleMm * 2 ** (-jointFret / 12)

/** Saddle line and end of the board, from the tail, for a body of this length. */
export function measureScale(lengthMm: number, scaleMm: number, jointFret: number, overBodyMm: number): ScaleNumbers {
  const toSaddleMm = jointToSaddleMm(scaleMm, jointFret)
  return { jointToSaddleMm: toSaddleMm, saddleLineMm: lengthMm - toSaddleMm, boardEndMm: lengthMm - overBodyMm }
}
