import type { Curve } from '../geometry/curve.ts'
import type { OutlinePlan } from '../plan.ts'
import { type Closure, closeChain, type SolvedPiece } from './compassArcs.ts'
import { fairThrough } from './keyWidths.ts'

/** The outer face of the sides, half of it, from the tail to the neck; the other half is its mirror. */
export interface Outline {
  readonly half: Curve
  readonly lengthMm: number
  readonly pieces: readonly SolvedPiece[]
  /** Values that were left open: solved, or too many to solve. */
  readonly openCount: number
  readonly closure: Closure
  /** Only for key widths: whether a fair curve meets them. */
  readonly fairness: {
    readonly fair: boolean
    readonly missMm: number
    readonly culprit: number | null
    readonly inOrder: boolean
  } | null
}

const CLOSED: Closure = { alongMm: 0, acrossMm: 0, cornerRad: 0 }

export function drawOutline(plan: OutlinePlan): Outline {
  if (plan.kind === 'compassArcs') {
    const chain = closeChain(plan.pieces, plan.lengthMm)
    const end = chain.half.places.at(-1)!.point
    return {
      half: chain.half,
      lengthMm: Math.max(plan.lengthMm ?? end.x, 1),
      pieces: chain.pieces,
      openCount: chain.openCount,
      closure: chain.closure,
      fairness: null,
    }
  }
  const lengthMm = plan.lengthMm ?? lengthWithoutOne(plan)
  const { curve, ...fairness } = fairThrough(plan.keyWidths, lengthMm)
  return { half: curve, lengthMm, pieces: [], openCount: 0, closure: CLOSED, fairness }
}

/** Key widths need a length; where none is given the upper bout stands at the four fifths that are usual. Common practice. */
const lengthWithoutOne = (plan: OutlinePlan): number => plan.keyWidths.upperBoutAtMm / 0.8
