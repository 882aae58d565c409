import type { Figure } from '../figure.ts'
import type { RingPlan, RosettePlan } from '../plan.ts'

export interface RosetteNumbers {
  readonly channelDepthMm: number
  readonly rings: readonly RingNumbers[]
}

export interface RingNumbers {
  readonly innerRadiusMm: number
  readonly outerRadiusMm: number
  readonly widthMm: number
  /** The angle over which the board hides the whole width of the ring, and that length at its mid radius. */
  readonly hiddenRad: number
  readonly hiddenMm: number
  readonly gapRad: number
  readonly gapMm: number
  /** The strip to bend in, at mid radius, and the arc that shows. */
  readonly stripLengthMm: number
  readonly visibleRad: number
  /** Radii on which the cutter's centre runs for the channel's two walls, and how many circles clear it. */
  readonly innerCutterCircleMm: number
  readonly outerCutterCircleMm: number
  readonly passes: Figure
  readonly tileRad: Figure
  readonly tileLengthMm: Figure
}

/** The end of the board over the body: square, at a distance from the ring's centre, tapering toward the joint. */
export interface BoardEnd {
  readonly fromCentreMm: number
  readonly halfWidthMm: number
  /** Half the widening per mm toward the end. */
  readonly taper: number
}

/**
 * The angle, symmetric about the centreline, over which the board hides the whole width of a ring, radians.
 *
 *   end:   ri cos p >= e   (ro cos p >= e behind the centre)    p_end = acos(e / ri), or acos(e / ro) where e < 0
 *   sides: ro sin p <= h - m (ro cos p - e)                     p_side = asin((h + m e) / (ro sqrt(1 + m^2))) - atan m
 *
 * hidden = 2 min(p_end, p_side); nothing where the end stands beyond the ring. With a parallel board (m = 0) this is the
 * plain 2 min(asin(w / 2 ro), acos(e / ri)). Source: derived.
 */
export function hiddenRad(innerRadiusMm: number, outerRadiusMm: number, board: BoardEnd): number {
  const { fromCentreMm: e, halfWidthMm: h, taper: m } = board
  if (e >= innerRadiusMm) return 0
  const byEnd = Math.acos(Math.max(e / (e < 0 ? outerRadiusMm : innerRadiusMm), -1))
  const reach = (h + m * e) / (outerRadiusMm * Math.hypot(1, m))
  const bySides = reach >= 1 ? Math.PI : Math.asin(Math.max(reach, 0)) - Math.atan(m)
  return 2 * Math.max(0, Math.min(byEnd, bySides))
}

/** Rings in the order the maker keeps them. */
export function ringsInOrder(rosette: RosettePlan): { id: string; ring: RingPlan }[] {
  return Object.entries(rosette.rings)
    .map(([id, ring]) => ({ id, ring }))
    .sort((a, b) => (a.ring.order === b.ring.order ? (a.id < b.id ? -1 : 1) : a.ring.order < b.ring.order ? -1 : 1))
}

export function measureRosette(rosette: RosettePlan, board: BoardEnd): RosetteNumbers {
  return {
    channelDepthMm: Math.max(rosette.inlayMm - rosette.standsProudMm, 0),
    rings: ringsInOrder(rosette).map(({ ring }) => measureRing(ring, rosette, board)),
  }
}

/** One ring: gap, strip, cutting circles and tiles. A ring inside out is measured with its radii as they stand; its width is then 0. */
export function measureRing(ring: RingPlan, rosette: RosettePlan, board: BoardEnd): RingNumbers {
  const widthMm = Math.max(ring.outerRadiusMm - ring.innerRadiusMm, 0)
  const midMm = (ring.innerRadiusMm + ring.outerRadiusMm) / 2
  const hidden = hiddenRad(ring.innerRadiusMm, ring.outerRadiusMm, board)
  const hiddenMm = hidden * midMm
  const gapMm = ring.join === 'closed' ? 0 : (ring.gapMm ?? Math.max(hiddenMm - 2 * rosette.gapMarginMm, 0))
  const stripLengthMm = Math.max(2 * Math.PI * midMm - gapMm, 0)
  const step = rosette.cutterMm - rosette.passOverlapMm
  const passes =
    widthMm - rosette.cutterMm < 1e-9
      ? 1
      : step > 0
        ? 1 + Math.ceil((widthMm - rosette.cutterMm) / step - 1e-9)
        : 'none'
  return {
    innerRadiusMm: ring.innerRadiusMm,
    outerRadiusMm: ring.outerRadiusMm,
    widthMm,
    hiddenRad: hidden,
    hiddenMm,
    gapRad: gapMm / midMm,
    gapMm,
    stripLengthMm,
    visibleRad: 2 * Math.PI - hidden,
    innerCutterCircleMm: ring.innerRadiusMm + rosette.cutterMm / 2,
    outerCutterCircleMm: Math.max(ring.outerRadiusMm - rosette.cutterMm / 2, 0),
    passes,
    tileRad: ring.tileCount === null ? 'none' : stripLengthMm / midMm / ring.tileCount,
    tileLengthMm: ring.tileCount === null ? 'none' : stripLengthMm / ring.tileCount,
  }
}
