import type { Curve } from '../geometry/curve.ts'
import type { OutlinePlan } from '../plan.ts'
import { type Closure, closeChain, type SolvedPiece } from './compassArcs.ts'
import { type CutTreble, cutTreble } from './cutaway.ts'
import { type DrawnHalves, halvesOfPath } from './drawnOutline.ts'
import { type ReadOutline, readOutline } from './halfWidths.ts'
import { fairThrough } from './keyWidths.ts'

/** The outer face of the sides, both halves from the tail to the neck, each with its own half-width upward. */
export interface Outline {
  readonly bass: Curve
  readonly treble: Curve
  /** The treble half is the bass half seen in a mirror: then they are one curve. */
  readonly isMirrored: boolean
  /** Arc length at which the wood of the treble side ends: at the neck, or where a cutaway meets the joint. */
  readonly trebleWoodEndMm: number
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
  /** Only for measured half-widths: how the curve lies to what was read. */
  readonly reading: Omit<ReadOutline, 'curve'> | null
  /** Only for a drawn path. */
  readonly drawn: Omit<DrawnHalves, 'bass' | 'treble' | 'lengthMm'> | null
  /** Only where a cutaway is asked for. */
  readonly cut: CutTreble | null
}

const CLOSED: Closure = { alongMm: 0, acrossMm: 0, cornerRad: 0 }

/** What an outline was drawn as last: one plan always gives the same, and a stroke in another field need not draw it again. */
const drawnBefore = new WeakMap<OutlinePlan, Outline>()

/** The outline of a plan, whatever way it is drawn, with its cutaway. */
export function drawOutline(plan: OutlinePlan): Outline {
  const before = drawnBefore.get(plan)
  if (before !== undefined) return before
  const outline = withCutaway(drawHalves(plan), plan)
  drawnBefore.set(plan, outline)
  return outline
}

type Halves = Omit<Outline, 'trebleWoodEndMm' | 'cut'>

function drawHalves(plan: OutlinePlan): Halves {
  const plain = { pieces: [], openCount: 0, closure: CLOSED, fairness: null, reading: null, drawn: null } as const
  const mirrored = (half: Curve) => ({ bass: half, treble: half, isMirrored: true })
  if (plan.kind === 'compassArcs') {
    const chain = closeChain(plan.pieces, plan.lengthMm)
    const end = chain.half.places.at(-1)!.point
    return {
      ...plain,
      ...mirrored(chain.half),
      lengthMm: Math.max(plan.lengthMm ?? end.x, 1),
      pieces: chain.pieces,
      openCount: chain.openCount,
      closure: chain.closure,
    }
  }
  if (plan.kind === 'halfWidths') {
    const lengthMm = plan.lengthMm ?? lengthOfReadings(plan)
    const { curve, ...reading } = readOutline(plan.halfWidths, lengthMm)
    return { ...plain, ...mirrored(curve), lengthMm, reading }
  }
  if (plan.kind === 'drawnPath' && plan.drawnPath !== null) {
    const { bass, treble, lengthMm, ...drawn } = halvesOfPath(plan.drawnPath)
    const half = treble === null ? mirrored(bass) : { bass, treble, isMirrored: false }
    return { ...plain, ...half, lengthMm, closure: drawn.closure, drawn }
  }
  const lengthMm = plan.lengthMm ?? lengthWithoutOne(plan)
  const { curve, ...fairness } = fairThrough(plan.keyWidths, lengthMm)
  return { ...plain, ...mirrored(curve), lengthMm, fairness }
}

function withCutaway(halves: Halves, plan: OutlinePlan): Outline {
  const wholeMm = halves.treble.lengthMm
  if (plan.cutaway.form === 'none' || !halves.isMirrored) return { ...halves, trebleWoodEndMm: wholeMm, cut: null }
  const cut = cutTreble(halves.bass, plan.cutaway, halves.lengthMm)
  return { ...halves, treble: cut.treble, isMirrored: false, trebleWoodEndMm: cut.woodEndMm, cut }
}

/** Key widths need a length; where none is given the upper bout stands at the four fifths that are usual. Common practice. */
const lengthWithoutOne = (plan: OutlinePlan): number => plan.keyWidths.upperBoutAtMm / 0.8

/** So do readings: where none is given, the body ends one more step beyond the last. */
function lengthOfReadings({ halfWidths }: OutlinePlan): number {
  const at = [...halfWidths.rows, ...halfWidths.neckRows].map(([fromTailMm]) => fromTailMm)
  return Math.max(60, ...at) * 1.03
}
