import type { BraceEndPlan, BracePlan } from '../../boxPlan.ts'
import type { Point } from '../../geometry/point.ts'
import type { PlacedBrace } from './placedBrace.ts'

interface Reach {
  readonly minMm: number
  readonly maxMm: number
}

/** A hand places no finer than this. */
const GRAIN_MM = 0.5

const held = (mm: number, { minMm, maxMm }: Reach): number =>
  Math.min(Math.max(Math.round(mm / GRAIN_MM) * GRAIN_MM, minMm), maxMm) + 0

/**
 * What is entered for an end that was moved to a place of the body, mm, to the half millimetre and held to what may be entered. An end at the
 * rim keeps to it: only its side and its distance from the tail follow. `placed` is the copy that was moved: of a twin, what is entered
 * is the other one's mirror image.
 */
export function movedEnd(
  brace: BracePlan,
  placed: PlacedBrace,
  end: 'from' | 'to',
  to: Point,
  reach: { readonly xMm: Reach; readonly yMm: Reach },
): Partial<BraceEndPlan> {
  const yMm = held(placed.plan === brace ? to.y : -to.y, reach.yMm)
  const xMm = held(to.x, reach.xMm)
  return brace[end].stops === 'rimAt' ? { xMm, side: yMm < 0 ? 'bass' : 'treble' } : { xMm, yMm }
}
