import type { Point } from '../../core/geometry/point.ts'

/** A circular arc as DXF has it: anticlockwise from one direction to another, y up, degrees. */
export interface DxfArc {
  readonly centre: Point
  readonly radiusMm: number
  readonly fromDeg: number
  readonly toDeg: number
}

/**
 * The arc between two places with y up, of a given radius, the longer or the shorter way round, clockwise or anticlockwise. A radius too
 * short to reach is lengthened until it does, as SVG has it. Both places the same: null. Source: SVG 1.1, appendix F.6.5, for a circle.
 */
export function arcBetween(
  from: Point,
  to: Point,
  radiusMm: number,
  isLong: boolean,
  isClockwise: boolean,
): DxfArc | null {
  const chordMm = Math.hypot(to.x - from.x, to.y - from.y)
  if (chordMm === 0) return null
  const reachMm = Math.max(Math.abs(radiusMm), chordMm / 2)
  const offMm = Math.sqrt(Math.max((reachMm - chordMm / 2) * (reachMm + chordMm / 2), 0))
  // The centre of the shorter arc lies to the left of the way when it runs anticlockwise.
  const side = isLong === isClockwise ? 1 : -1
  const centre = {
    x: (from.x + to.x) / 2 - (side * offMm * (to.y - from.y)) / chordMm,
    y: (from.y + to.y) / 2 + (side * offMm * (to.x - from.x)) / chordMm,
  }
  const directionDeg = ({ x, y }: Point) => ((Math.atan2(y - centre.y, x - centre.x) * 180) / Math.PI + 360) % 360
  const [fromDeg, toDeg] = isClockwise ? [directionDeg(to), directionDeg(from)] : [directionDeg(from), directionDeg(to)]
  return { centre, radiusMm: reachMm, fromDeg, toDeg }
}

const SAME_MM = 1e-6

/** Arcs that go once round together, each beginning where the one before ends. */
export function isWholeCircle(arcs: readonly DxfArc[]): boolean {
  const [first] = arcs
  if (first === undefined) return false
  const turnDeg = arcs.reduce((sum, { fromDeg, toDeg }) => sum + ((toDeg - fromDeg + 360) % 360), 0)
  return (
    Math.abs(turnDeg - 360) * first.radiusMm < 360 * SAME_MM &&
    arcs.every(
      ({ centre, radiusMm }) =>
        Math.hypot(centre.x - first.centre.x, centre.y - first.centre.y) < SAME_MM &&
        Math.abs(radiusMm - first.radiusMm) < SAME_MM,
    )
  )
}
