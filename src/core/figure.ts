/** A value as computed: a number, 'flat' for a curvature of nothing, 'none' where there is no such thing on this instrument. */
export type Figure = number | 'flat' | 'none'

/** The radius of a curvature, signed like it; 'flat' where it is straight within one part in 1e9 of a millimetre. */
export function radiusOf(curvaturePerMm: number): number | 'flat' {
  return Math.abs(curvaturePerMm) < 1e-9 ? 'flat' : 1 / curvaturePerMm
}

/** The curvature of a radius. */
export const curvatureOf = (radiusMm: number | 'flat'): number => (radiusMm === 'flat' ? 0 : 1 / radiusMm)
