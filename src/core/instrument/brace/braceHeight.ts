import type { BraceEndPlan, BracePlan } from '../../boxPlan.ts'

/**
 * Height one end's taper leaves at a distance from that end, mm.
 *
 *   straight   e + (H - e) u / T
 *   scoop      e + (H - e) (u / T)^2     hollow: it leaves the thin end level and comes up to the ridge with an edge
 *
 * H whole height, e height at the end (held to H), T taper's length, u distance from the end. Source: derived; the hollow's shape is
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

/** Height of a brace over its gluing face at a distance from its `from` end, mm: the lower of what both tapers leave. */
export const braceHeightMm = (plan: BracePlan, lengthMm: number, alongMm: number): number =>
  Math.min(leftMm(plan.from, plan.heightMm, alongMm), leftMm(plan.to, plan.heightMm, lengthMm - alongMm))
