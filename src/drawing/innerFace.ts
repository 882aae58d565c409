import type { Geometry } from '../core/compute.ts'
import { type Curve, curveAt, insetPoint } from '../core/geometry/curve.ts'
import type { RimSite } from '../core/instrument/rim.ts'

export type HalfName = 'bass' | 'treble'

/** The pieces of wood of one side, from the tail. */
export const woodOf = ({ rimSite, trebleSites }: Geometry, side: HalfName): readonly RimSite[] =>
  side === 'bass' ? [rimSite] : trebleSites

/** The inner face of one piece of wood, between two arc lengths of its outer face, counted from where the piece begins. */
export interface InnerStretch {
  readonly site: RimSite
  readonly fromMm: number
  readonly toMm: number
}

/** The inner faces of a side, piece by piece. Where two pieces meet at a horn they end in its mitre. */
export function innerStretches(geometry: Geometry, side: HalfName): InnerStretch[] {
  const sites = woodOf(geometry, side)
  const mitres = sites.slice(1).map((site, i) => mitreMm(sites[i]!.half, site.half, site.sideThicknessMm))
  return sites.map((site, i) => ({
    site,
    fromMm: mitres[i - 1]?.afterMm ?? 0,
    toMm: mitres[i]?.beforeMm ?? site.half.lengthMm,
  }))
}

const MITRE_ROUNDS = 12

/**
 * Where the parallels of two curves cross beside the corner they meet in: arc lengths on both, by Newton's method from what two straights
 * would give. Where they do not cross within half of either (the corner looks inward) both go on to their ends.
 */
export function mitreMm(
  before: Curve,
  after: Curve,
  insetMm: number,
): { readonly beforeMm: number; readonly afterMm: number } {
  const uncut = { beforeMm: before.lengthMm, afterMm: 0 }
  const turnRad = curveAt(before, before.lengthMm).headingRad - curveAt(after, 0).headingRad
  const cutMm = insetMm * Math.tan(turnRad / 2)
  if (!(cutMm > 0) || cutMm > before.lengthMm / 2 || cutMm > after.lengthMm / 2) return uncut
  let [s, u] = [before.lengthMm - cutMm, cutMm]
  for (let round = 0; round < MITRE_ROUNDS; round++) {
    const [p, q] = [insetPoint(before, s, insetMm), insetPoint(after, u, insetMm)]
    const [a, b] = [curveAt(before, s), curveAt(after, u)]
    const [ka, kb] = [1 - insetMm * a.curvaturePerMm, 1 - insetMm * b.curvaturePerMm]
    const [ax, ay] = [ka * Math.cos(a.headingRad), ka * Math.sin(a.headingRad)]
    const [bx, by] = [kb * Math.cos(b.headingRad), kb * Math.sin(b.headingRad)]
    const determinant = ay * bx - ax * by
    if (Math.abs(determinant) < 1e-9) return uncut
    const [dx, dy] = [q.x - p.x, q.y - p.y]
    s = Math.min(Math.max(s + (bx * dy - by * dx) / determinant, before.lengthMm / 2), before.lengthMm)
    u = Math.min(Math.max(u + (ax * dy - ay * dx) / determinant, 0), after.lengthMm / 2)
  }
  const [p, q] = [insetPoint(before, s, insetMm), insetPoint(after, u, insetMm)]
  return Math.hypot(p.x - q.x, p.y - q.y) < 1e-6 ? { beforeMm: s, afterMm: u } : uncut
}
