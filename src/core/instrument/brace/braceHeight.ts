import type { BraceEndPlan, BracePlan } from '../../boxPlan.ts'
import type { PlacedBrace } from './placedBrace.ts'

/**
 * Height one end's taper leaves at a distance from that end, mm.
 *
 *   straight   e + (H - e) u / T
 *   scoop      e + (H - e) (u / T)^2     hollow: it leaves the thin end level and comes up to the ridge with an edge
 *
 * H whole height, e height at the end (held to H), T taper's length, u distance from the tip. Source: derived; the hollow's shape is
 * practice: a scraped or sanded hollow lies close to a parabola.
 */
function leftMm(end: BraceEndPlan, heightMm: number, fromEndMm: number): number {
  const u = Math.max(fromEndMm, 0)
  if (end.taper === 'none' || u >= end.taperMm) return heightMm
  const endMm = endHeightMm(end, heightMm)
  const share = u / end.taperMm
  return endMm + (heightMm - endMm) * (end.taper === 'scoop' ? share * share : share)
}

/** What an end's taper leaves of the height at the very end, mm; the whole height where it has none. */
export const endHeightMm = (end: BraceEndPlan, heightMm: number): number =>
  end.taper === 'none' || end.taperMm <= 0 ? heightMm : Math.min(end.endHeightMm, heightMm)

/** How far the tips of a brace stay short of its two ends. */
export interface TipsShort {
  readonly fromMm: number
  readonly toMm: number
}
const AT_THE_ENDS: TipsShort = { fromMm: 0, toMm: 0 }

/** Height of a brace over its gluing face at a distance from its `from` end, mm: the lower of what both tapers leave, each from its tip. */
export const braceHeightMm = (plan: BracePlan, lengthMm: number, alongMm: number, short = AT_THE_ENDS): number =>
  Math.min(
    leftMm(plan.from, plan.heightMm, alongMm - short.fromMm),
    leftMm(plan.to, plan.heightMm, lengthMm - alongMm - short.toMm),
  )

/** The same of one that is placed. */
export const placedHeightMm = ({ plan, lengthMm, from, to }: PlacedBrace, alongMm: number): number =>
  braceHeightMm(plan, lengthMm, alongMm, { fromMm: from.shortMm, toMm: to.shortMm })
