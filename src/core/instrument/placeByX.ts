import { type Curve, crossingsOfXMm, curveAt } from '../geometry/curve.ts'

/** Where a maker lays out from, and along what. */
export const ORIGINS = ['tail', 'neckEdge', 'saddleLine'] as const
export type Origin = (typeof ORIGINS)[number]
export const WAYS_ALONG = ['centreline', 'outerFace'] as const
export type WayAlong = (typeof WAYS_ALONG)[number]

/** How distances are told: tail plus toward the neck, neck edge plus toward the tail, saddle line plus toward the neck. */
export interface Layout {
  readonly half: Curve
  readonly lengthMm: number
  readonly saddleLineMm: number
  readonly origin: Origin
  readonly along: WayAlong
}

/** Arc length on the outer face at which the side stands over x: the outermost where it passes it more than once; null where it never does. */
export function placeByX(half: Curve, xMm: number): number | null {
  let found: number | null = null
  let outermostMm = Number.NEGATIVE_INFINITY
  for (const s of crossingsOfXMm(half, xMm)) {
    const { y } = curveAt(half, s).point
    if (y > outermostMm + 1e-9) {
      found = s
      outermostMm = y
    }
  }
  return found
}

/** How far the place at arc length s lies from the origin, mm, signed as the layout says. */
export function distanceFromOriginMm(layout: Layout, sMm: number): number {
  const { half } = layout
  return layout.along === 'centreline'
    ? tellMm(layout.origin, curveAt(half, sMm).point.x, endsAtMm(layout))
    : tellMm(layout.origin, Math.min(Math.max(sMm, 0), half.lengthMm), endsAtMm(layout))
}

/** The same for a place on the centreline given by its x. */
export const distanceOfXMm = (layout: Omit<Layout, 'half' | 'along'>, xMm: number): number =>
  tellMm(layout.origin, xMm, layout)

/** Arc length of the place at a distance from the origin; null where the side does not reach there. */
export function placeAtDistance(layout: Layout, distanceMm: number): number | null {
  const { half, origin } = layout
  const ends = endsAtMm(layout)
  const from =
    origin === 'tail' ? distanceMm : origin === 'neckEdge' ? ends.lengthMm - distanceMm : ends.saddleLineMm + distanceMm
  if (layout.along === 'centreline') return placeByX(half, from)
  return from >= 0 && from <= half.lengthMm ? from : null
}

/** The least and the greatest distance that the side reaches, mm. */
export function distanceRangeMm(layout: Layout): { readonly minMm: number; readonly maxMm: number } {
  const xs = [0, ...layout.half.places.map((place) => place.point.x)]
  const from = layout.along === 'centreline' ? [Math.min(...xs), Math.max(...xs)] : [0, layout.half.lengthMm]
  const told = from.map((at) => tellMm(layout.origin, at, endsAtMm(layout)))
  return { minMm: Math.min(...told), maxMm: Math.max(...told) }
}

interface EndsAt {
  readonly lengthMm: number
  readonly saddleLineMm: number
}

/** Neck edge and saddle line, measured from the tail the way the layout measures. A saddle line off the side falls to its nearer end. */
function endsAtMm(layout: Layout): EndsAt {
  if (layout.along === 'centreline') return layout
  const { half, saddleLineMm } = layout
  const saddle = placeByX(half, saddleLineMm) ?? (saddleLineMm <= 0 ? 0 : half.lengthMm)
  return { lengthMm: half.lengthMm, saddleLineMm: saddle }
}

const tellMm = (origin: Origin, at: number, ends: EndsAt): number =>
  origin === 'tail' ? at : origin === 'neckEdge' ? ends.lengthMm - at : at - ends.saddleLineMm

/** Index of the station that stands at arc length s within 1e-6 mm; null where none does. */
export function stationAt(alongMm: readonly number[], sMm: number): number | null {
  const at = alongMm.findIndex((along) => Math.abs(along - sMm) < 1e-6)
  return at < 0 ? null : at
}

/** Arc length of the next station from s toward the tail or the neck; null past the last one. */
export function nextStationMm(alongMm: readonly number[], sMm: number, toward: 'tail' | 'neck'): number | null {
  const found =
    toward === 'tail' ? alongMm.findLast((along) => along < sMm - 1e-6) : alongMm.find((along) => along > sMm + 1e-6)
  return found ?? null
}

/** Numbers that are places on the centreline, told from the tail. */
const PLACES_ON_CENTRELINE: ReadonlySet<string> = new Set([
  'body.lowerBoutAtMm',
  'body.waistAtMm',
  'body.upperBoutAtMm',
  'sides.deepestInsideAtMm',
  'top.flatFromMm',
  'back.axisAtMm',
  'back.lowestAtMm',
  'scale.saddleLineMm',
  'scale.boardEndMm',
  'soundhole.centreMm',
  'cutaway.hornAtMm',
])
export const isPlaceOnCentreline = (key: string): boolean => PLACES_ON_CENTRELINE.has(key)
