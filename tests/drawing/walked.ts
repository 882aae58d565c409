import type { Curve } from '../../src/core/geometry/curve.ts'
import type { Point } from '../../src/core/geometry/point.ts'

/** A curve walked in steps of a twentieth of a millimetre by its curvature alone, up to a length of the way. */
export function walked(curve: Curve, toMm: number): Point[] {
  const first = curve.places[0]!
  let { x, y } = first.point
  let heading = first.headingRad
  let sMm = 0
  const points = [{ x, y }]
  curve.pieces.forEach((piece) => {
    heading -= curve.corners
      .filter((corner) => Math.abs(corner.sMm - sMm) < 1e-9)
      .reduce((sum, c) => sum + c.turnRad, 0)
    const steps = Math.ceil(piece.lengthMm / 0.05)
    const step = piece.lengthMm / steps
    for (let i = 0; i < steps && sMm + step * i < toMm; i++) {
      const bend =
        piece.startCurvaturePerMm + ((piece.endCurvaturePerMm - piece.startCurvaturePerMm) * (i + 0.5)) / steps
      heading -= (bend * step) / 2
      x += step * Math.cos(heading)
      y += step * Math.sin(heading)
      heading -= (bend * step) / 2
      points.push({ x, y })
    }
    sMm += piece.lengthMm
  })
  return points
}

/** How far the nearest of some points lies. */
export const nearest = (point: Point, points: readonly Point[]): number =>
  points.reduce((least, { x, y }) => Math.min(least, Math.hypot(point.x - x, point.y - y)), Number.POSITIVE_INFINITY)
