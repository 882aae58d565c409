import type { Top } from './top.ts'

/** Where a top is no smooth surface: it breaks straight across at some x, and along a line to either side of the centreline. */
export interface TopCrease {
  readonly breaksAtXMm: readonly number[]
  /** From the centreline to that line at x; 0 where there is none. */
  readonly halfWidthAtMm: (xMm: number) => number
}

const SMOOTH: TopCrease = { breaksAtXMm: [], halfWidthAtMm: () => 0 }

/**
 * The creases of a top: where a flat upper bout begins and where flat and dish meet on it; the foot of a dome on a flat rim.
 *
 *   flat     y^2 = R^2 - (sqrt(R^2 - L^2/4) + z)^2 - (x - L/2)^2     z height of the flat, R dish, L body length
 *   flat rim y^2 = h (2 R - h) - (x - s)^2                           h rise at the saddle line s
 *
 * Source: derived; valid while the radii are greater than half the body.
 */
export function creaseOfTop(top: Top, lengthMm: number, saddleLineMm: number): TopCrease {
  const { radiusMm, flat, flatSlopeRad, riseAtSaddleMm } = top
  if (typeof radiusMm !== 'number') return SMOOTH
  if (flat !== null && typeof flatSlopeRad === 'number') {
    const underMm = Math.sqrt(Math.max(radiusMm * radiusMm - (lengthMm * lengthMm) / 4, 0))
    const fall = Math.tan(flatSlopeRad)
    return {
      breaksAtXMm: [flat.fromMm],
      halfWidthAtMm: (x) => {
        if (x < flat.fromMm) return 0
        const upMm = underMm + flat.startMm - (x - flat.fromMm) * fall
        return rootOf((radiusMm - upMm) * (radiusMm + upMm) - (x - lengthMm / 2) ** 2)
      },
    }
  }
  if (typeof riseAtSaddleMm !== 'number') return SMOOTH
  const footMm2 = riseAtSaddleMm * (2 * radiusMm - riseAtSaddleMm)
  const footMm = rootOf(footMm2)
  return {
    breaksAtXMm: [saddleLineMm - footMm, saddleLineMm + footMm],
    halfWidthAtMm: (x) => rootOf(footMm2 - (x - saddleLineMm) ** 2),
  }
}

const rootOf = (square: number): number => (square > 0 ? Math.sqrt(square) : 0)
