import type { Figure } from '../figure.ts'
import type { Surface } from '../geometry/surface.ts'

/** Gaps in the middle under a straightedge laid across a dished plate from rim to rim, and along it from tail to neck. */
export interface StraightedgeGaps {
  readonly gapAcrossLowerBoutMm: Figure
  readonly gapAcrossWaistMm: Figure
  readonly gapAcrossUpperBoutMm: Figure
  readonly gapAlongMm: number
}

/** A place across the body: x along the centreline, and the half-widths of its two rim points. */
export interface Across {
  readonly x: number
  readonly bassY: number
  readonly trebleY: number
}

/**
 * How far a dome on the centreline stands beyond the straight line between two rim points at the same place along the body,
 * measured square to the rim plane; on the hollow side this is the gap a straightedge shows. Exact.
 */
export function gapsUnderStraightedge(
  surface: Surface,
  bulges: 'up' | 'down',
  across: { readonly lowerBout: Across | null; readonly waist: Across | null; readonly upperBout: Across | null },
  lengthMm: number,
): StraightedgeGaps {
  const away = bulges === 'up' ? 1 : -1
  const gap = (at: Across | null): Figure => {
    if (at === null) return 'none'
    const [bassMm, trebleMm] = [surface.heightMm(at.x, at.bassY), surface.heightMm(at.x, at.trebleY)]
    const wide = at.bassY + at.trebleY
    const lineMm = wide > 0 ? bassMm + ((trebleMm - bassMm) * at.bassY) / wide : bassMm
    return away * (surface.heightMm(at.x, 0) - lineMm)
  }
  const ends = (surface.heightMm(0, 0) + surface.heightMm(lengthMm, 0)) / 2
  return {
    gapAcrossLowerBoutMm: gap(across.lowerBout),
    gapAcrossWaistMm: gap(across.waist),
    gapAcrossUpperBoutMm: gap(across.upperBout),
    gapAlongMm: away * (surface.heightMm(lengthMm / 2, 0) - ends),
  }
}
