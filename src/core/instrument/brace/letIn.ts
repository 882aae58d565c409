import type { PlateSide } from '../../boxPlan.ts'
import { type InnerRim, meetRim } from './innerRim.ts'
import type { PlacedBrace, PlacedEnd } from './placedBrace.ts'

/** The inner edge of the lining under either plate, as a rim of its own. */
export type LiningEdges = Readonly<Record<PlateSide, InnerRim>>

/** How much of a brace lies over the lining at one end, mm along the brace; all of it where the brace never leaves the lining. */
function overLiningMm(edge: InnerRim, brace: PlacedBrace, which: 'from' | 'to'): number {
  const { point } = brace[which]
  const sign = which === 'from' ? 1 : -1
  const way = { x: sign * brace.way.x, y: sign * brace.way.y }
  const met = meetRim(edge, point, way)
  if (met === null) return brace.lengthMm
  return Math.min(Math.hypot(met.point.x - point.x, met.point.y - point.y), brace.lengthMm)
}

/**
 * The braces with their tips: an end at the rim is let into a pocket of the lining, from the lining's inner edge toward the side, measured along the
 * brace. What the pocket leaves of the lining, the brace stops short of the side:
 *
 *   short = w - d, none under 0    w the lining along the brace, d the let-in
 *
 * so that no tip ever stands beyond the inner face. Source: derived; that ends are let into the lining is common practice.
 */
export const withTips = (placed: readonly PlacedBrace[], edges: LiningEdges): PlacedBrace[] =>
  placed.map((brace) => {
    const tip = (which: 'from' | 'to'): PlacedEnd => {
      const end = brace[which]
      if (end.at !== 'rim') return end
      const liningMm = overLiningMm(edges[brace.plan.plate], brace, which)
      return { ...end, liningMm, shortMm: Math.max(liningMm - brace.plan[which].letInMm, 0) }
    }
    return { ...brace, from: tip('from'), to: tip('to') }
  })

/** From tip to tip, mm; nothing where both ends leave none of it. */
export const finishedLengthMm = ({ lengthMm, from, to }: PlacedBrace): number =>
  Math.max(lengthMm - from.shortMm - to.shortMm, 0)
