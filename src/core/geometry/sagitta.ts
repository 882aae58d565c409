/**
 * Height of a circle's arc over its chord (the sagitta), mm.
 *
 *   h = (c^2/4) / (R + sqrt(R^2 - c^2/4))     keeps its digits as R grows
 *
 * Valid for a chord up to the diameter; a longer chord is taken as the diameter.
 * Source: Pythagoras on the section through the axis.
 */
export function sagittaMm(radiusMm: number, chordMm: number): number {
  const half = Math.min(Math.abs(chordMm) / 2, radiusMm)
  return (half * half) / (radiusMm + Math.sqrt(radiusMm * radiusMm - half * half))
}

/** Radius of the circle that stands `sagittaMm` (> 0) over a chord: R = c^2/(8 s) + s/2, mm. */
export const radiusFromSagittaMm = (sagittaMm: number, chordMm: number): number =>
  (chordMm * chordMm) / (8 * sagittaMm) + sagittaMm / 2

/** How far a curve of this curvature has dropped from its tangent at a distance across: k y^2 / (1 + sqrt(1 - k^2 y^2)); |k y| is held to 1. */
export function dropMm(curvaturePerMm: number, acrossMm: number): number {
  const bend = Math.min(Math.abs(curvaturePerMm * acrossMm), 1)
  return (curvaturePerMm * acrossMm * acrossMm) / (1 + Math.sqrt(1 - bend * bend))
}
