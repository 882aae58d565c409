import type { Figure } from '../figure.ts'
import type { Point } from '../geometry/point.ts'
import type { Surface } from '../geometry/surface.ts'

/** Gaps in the middle under a straightedge laid across a dished plate from rim to rim, and along it from tail to neck. */
export interface StraightedgeGaps {
  readonly gapAcrossLowerBoutMm: Figure
  readonly gapAcrossWaistMm: Figure
  readonly gapAcrossUpperBoutMm: Figure
  readonly gapAlongMm: number
}

/**
 * How far the middle of a dome stands beyond the straight line between two rim points at the same place along the body,
 * measured square to the rim plane; on the hollow side this is the gap a straightedge shows. Exact.
 */
export function gapsUnderStraightedge(
  surface: Surface,
  bulges: 'up' | 'down',
  across: { readonly lowerBout: Point | null; readonly waist: Point | null; readonly upperBout: Point | null },
  lengthMm: number,
): StraightedgeGaps {
  const away = bulges === 'up' ? 1 : -1
  const gap = (at: Point | null): Figure =>
    at === null ? 'none' : away * (surface.heightMm(at.x, 0) - surface.heightMm(at.x, at.y))
  const ends = (surface.heightMm(0, 0) + surface.heightMm(lengthMm, 0)) / 2
  return {
    gapAcrossLowerBoutMm: gap(across.lowerBout),
    gapAcrossWaistMm: gap(across.waist),
    gapAcrossUpperBoutMm: gap(across.upperBout),
    gapAlongMm: away * (surface.heightMm(lengthMm / 2, 0) - ends),
  }
}
