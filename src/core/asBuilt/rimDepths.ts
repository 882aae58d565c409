import type { BodyShape } from '../bodyShape.ts'
import { curveAt } from '../geometry/curve.ts'
import { makeBack } from '../instrument/back.ts'
import type { NumberKey } from '../numbers.ts'
import type { Plan } from '../plan.ts'
import type { Reading } from './reading.ts'

/** A plan with the body it gives. */
export interface ShapedPlan {
  readonly plan: Plan
  readonly shape: BodyShape
}

/** Rim depth without plates at a place of the rim, or at the neck as dished. */
interface DepthRead {
  readonly x: number
  readonly y: number
  /** The top edge there over the rim plane. */
  readonly topMm: number
  readonly depthMm: number
}

/** So little that it only decides where the readings say nothing. */
const RIDGE = 1e-10
const STEPS = 8
const NUDGE_MM = 1e-3

/**
 * The depths at tail and neck that bring out what was read round the rim, mm: of all pairs the one with the least sum of squares, and where the
 * readings leave a way open (one place, say) the pair next to `start`. Bass and treble readings count alike.
 *
 *   depth(x, y) = top edge(x, y) - back(x, y; D_tail, D_neck)      radii, plates and flat as they stand in the plan
 *
 * A fixed number of Gauss-Newton steps: the back moves all but evenly with either depth. Derived.
 */
export function depthsFromReadings(
  { plan, shape }: ShapedPlan,
  start: { readonly depthAtTailMm: number; readonly depthAtNeckMm: number },
  readings: readonly Reading[],
): { readonly depthAtTailMm: number; readonly depthAtNeckMm: number } {
  const { lengthMm } = shape.outline
  const reads = readings.flatMap((one) => depthRead(plan, shape, one) ?? [])
  const atEnds = endsFromReads(reads, lengthMm)
  if (atEnds !== null)
    return { depthAtTailMm: atEnds.tailMm ?? start.depthAtTailMm, depthAtNeckMm: atEnds.neckMm ?? start.depthAtNeckMm }
  let [tail, neck] = [start.depthAtTailMm, start.depthAtNeckMm]
  const missMm = ({ x, y, topMm, depthMm }: DepthRead, tailMm: number, neckMm: number): number =>
    topMm - makeBack(plan.back, lengthMm, tailMm, neckMm).surface.heightMm(x, y) - depthMm
  for (let step = 0; step < STEPS; step++) {
    let [a, b, c] = [RIDGE, 0, RIDGE]
    let [p, q] = [RIDGE * (tail - start.depthAtTailMm), RIDGE * (neck - start.depthAtNeckMm)]
    for (const read of reads) {
      const miss = missMm(read, tail, neck)
      const byTail = (missMm(read, tail + NUDGE_MM, neck) - miss) / NUDGE_MM
      const byNeck = (missMm(read, tail, neck + NUDGE_MM) - miss) / NUDGE_MM
      a += byTail * byTail
      b += byTail * byNeck
      c += byNeck * byNeck
      p += byTail * miss
      q += byNeck * miss
    }
    const determinant = a * c - b * b
    if (!(determinant > 0)) break
    tail -= (c * p - b * q) / determinant
    neck -= (a * q - b * p) / determinant
  }
  return { depthAtTailMm: tail, depthAtNeckMm: neck }
}

/** Where only the ends were read nothing is to be solved: there the back stands at the depths themselves. */
function endsFromReads(reads: readonly DepthRead[], lengthMm: number) {
  const isTail = ({ x, y }: DepthRead) => x === 0 && y === 0
  const isNeck = ({ x, y }: DepthRead) => x === lengthMm && y === 0
  if (!reads.every((read) => isTail(read) || isNeck(read))) return null
  const depthOf = (found: readonly DepthRead[]): number | null =>
    found.length === 0 ? null : found.reduce((sum, { depthMm, topMm }) => sum + depthMm - topMm, 0) / found.length
  return { tailMm: depthOf(reads.filter(isTail)), neckMm: depthOf(reads.filter(isNeck)) }
}

/** What one reading says of the rim's depth; null where this body has no such place. */
function depthRead(
  plan: Plan,
  { outline, top }: BodyShape,
  { number, alongMm, value, side }: Reading,
): DepthRead | null {
  const { bass, treble, lengthMm } = outline
  const end = curveAt(bass, bass.lengthMm).point
  const planedAtNeckMm = top.rim.heightMm(end.x, end.y)
  const platesMm = plan.plates.topMm + plan.plates.backMm
  const tail = { x: 0, y: 0, topMm: 0 }
  const planed = { x: lengthMm, y: 0, topMm: planedAtNeckMm }
  switch (number) {
    case 'sides.depthAtTailMm':
      return { ...tail, depthMm: value }
    case 'sides.bodyDepthAtTailMm':
      return { ...tail, depthMm: value - platesMm }
    case 'sides.depthAtNeckMm':
      return { x: lengthMm, y: 0, topMm: 0, depthMm: value }
    case 'sides.depthAtNeckPlanedMm':
      return { ...planed, depthMm: value }
    case 'sides.bodyDepthAtNeckMm':
      return { ...planed, depthMm: value - platesMm }
    default: {
      if (alongMm === null) return null
      const isTreble = number.startsWith('treble') || (side === 'treble' && !outline.isMirrored)
      const half = isTreble ? treble : bass
      const { x, y } = curveAt(half, Math.min(Math.max(alongMm, 0), half.lengthMm)).point
      return { x, y, topMm: top.rim.heightMm(x, y), depthMm: value }
    }
  }
}

/** Numbers that are the depth of the rim at a place along it, and tell that place. */
export const DEPTHS_ROUND_THE_RIM = [
  'rim[].depthMm',
  'trebleRim[].depthMm',
  'places[].depthMm',
  'treblePlaces[].depthMm',
] as const satisfies readonly NumberKey[]
