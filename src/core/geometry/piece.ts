import type { Point } from './point.ts'
import { integrateHeading } from './quadrature.ts'

/**
 * A stretch of plane curve whose signed curvature is linear in arc length: a straight (0, 0), an arc (k, k) or a clothoid.
 * Curvature is positive where the curve turns clockwise, to the right of its way: an outline walked from the tail up the
 * treble side and on to the neck is then positive where it is convex.
 */
export interface Piece {
  readonly lengthMm: number
  readonly startCurvaturePerMm: number
  readonly endCurvaturePerMm: number
}

/** Where a curve stands and looks: heading is anticlockwise from +x. */
export interface Place {
  readonly point: Point
  readonly headingRad: number
}

export const straight = (lengthMm: number): Piece => ({ lengthMm, startCurvaturePerMm: 0, endCurvaturePerMm: 0 })

/** An arc of the given signed radius (positive convex) and sweep in radians (not negative). */
export const arc = (radiusMm: number, sweepRad: number): Piece => ({
  lengthMm: Math.abs(radiusMm) * sweepRad,
  startCurvaturePerMm: 1 / radiusMm,
  endCurvaturePerMm: 1 / radiusMm,
})

export function pieceCurvaturePerMm(piece: Piece, alongMm: number): number {
  if (piece.lengthMm <= 0) return piece.startCurvaturePerMm
  return piece.startCurvaturePerMm + ((piece.endCurvaturePerMm - piece.startCurvaturePerMm) * alongMm) / piece.lengthMm
}

/** How far the piece has turned to the right after `alongMm`, in radians: the integral of its curvature. */
export function pieceTurningRad(piece: Piece, alongMm: number): number {
  return ((piece.startCurvaturePerMm + pieceCurvaturePerMm(piece, alongMm)) / 2) * alongMm
}

/**
 * Where the piece stands after `alongMm`, starting at `start`.
 * Straights and arcs in closed form (the chord of a sweep p is s sin(p/2)/(p/2), which also holds for p = 0);
 * clothoids by quadrature to double precision.
 */
export function placeOnPiece(piece: Piece, start: Place, alongMm: number): Place {
  const { point, headingRad } = start
  const turned = pieceTurningRad(piece, alongMm)
  if (piece.startCurvaturePerMm === piece.endCurvaturePerMm) {
    const half = turned / 2
    const chordMm = alongMm * (Math.abs(half) < 1e-8 ? 1 : Math.sin(half) / half)
    return {
      point: { x: point.x + chordMm * Math.cos(headingRad - half), y: point.y + chordMm * Math.sin(headingRad - half) },
      headingRad: headingRad - turned,
    }
  }
  const heading = (u: number) => headingRad - pieceTurningRad(piece, u)
  const bend = Math.max(Math.abs(piece.startCurvaturePerMm), Math.abs(piece.endCurvaturePerMm)) * alongMm
  const parts = Math.max(1, Math.ceil(bend))
  let { x, y } = point
  for (let i = 0; i < parts; i++) {
    const from = (alongMm * i) / parts
    const to = (alongMm * (i + 1)) / parts
    const chord = integrateHeading(heading, from, to)
    x += chord.x
    y += chord.y
  }
  return { point: { x, y }, headingRad: headingRad - turned }
}
