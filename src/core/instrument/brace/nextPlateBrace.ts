import type { BraceEndPlan, BracePlan, PlateSide } from '../../boxPlan.ts'
import { type ConvexPolygon, overlapMm, toPolygonMm } from '../../geometry/convexPolygon.ts'
import type { Point } from '../../geometry/point.ts'
import { halfMm } from './halfMm.ts'
import { type InnerRim, isInsideRim, rimAtX } from './innerRim.ts'
import type { PlacedBrace } from './placedBrace.ts'

/** What a new brace has to stay clear of on its plate, mm. */
export interface PlateSite {
  readonly lengthMm: number
  readonly rim: InnerRim
  readonly placed: readonly PlacedBrace[]
  /** Blocks, and the plate under the bridge. */
  readonly keepClear: readonly ConvexPolygon[]
  readonly hole: { readonly centreMm: number; readonly radiusMm: number } | null
}

/** Part of the body's length from the tail near which a new brace stands, so that it is seen at once and dragged from there. */
const PART = 0.45
/** From rim to rim only this near to it, as a part of the length. */
const NEAR_PART = 0.1
/** Lengths a short one is tried at, as parts of the body's, and the ways it may lie: across, along, and half-way between. */
const SHORT_PARTS = [0.3, 0.2, 0.12, 0.07] as const
const WAYS: readonly Point[] = [
  { x: 0, y: 1 },
  { x: 1, y: 0 },
  { x: Math.SQRT1_2, y: Math.SQRT1_2 },
  { x: Math.SQRT1_2, y: -Math.SQRT1_2 },
]
const STEP_MM = 10
/** Clear of everything by this. */
const ROOM_MM = 4

/**
 * A brace to start from, of a section that suits the size of the body: across from rim to rim where that is free, else a short one in the
 * nearest free place, and where there is none, across after all. Common practice, no published source.
 */
export function nextPlateBrace(plate: PlateSide, site: PlateSite): Omit<BracePlan, 'order'> {
  const growth = Math.min(Math.max(site.lengthMm / 490, 0.5), 1.3)
  const widthMm = halfMm(8 * growth)
  const across = freeAcross(site, widthMm)
  const short = across === null ? freeShort(site, widthMm) : null
  const where = (end: 'from' | 'to'): Pick<BraceEndPlan, 'stops' | 'side' | 'xMm' | 'yMm'> =>
    short === null
      ? {
          stops: 'rimAt',
          side: end === 'from' ? 'bass' : 'treble',
          xMm: across ?? Math.round(site.lengthMm * PART),
          yMm: 0,
        }
      : { stops: 'here', side: short[end].y < 0 ? 'bass' : 'treble', xMm: short[end].x, yMm: short[end].y }
  const taperMm = short === null ? halfMm(40 * growth) : halfMm(Math.min(40 * growth, 0.35 * short.lengthMm))
  const end = (which: 'from' | 'to'): BraceEndPlan => ({
    ...where(which),
    braceId: null,
    letInMm: short === null ? halfMm(2.5 * growth) : 0,
    taper: 'scoop',
    taperMm,
    endHeightMm: halfMm(2.5 * growth),
  })
  return {
    plate,
    kind: 'other',
    twin: false,
    from: end('from'),
    to: end('to'),
    widthMm,
    heightMm: halfMm((short === null ? 13 : 9) * growth),
    underside: 'dome',
    archRadiusMm: plate === 'top' ? 8000 : 4500,
    lapped: false,
  }
}

/** The footprint of a brace with room round it. */
function footprint(a: Point, b: Point, widthMm: number): ConvexPolygon {
  const lengthMm = Math.max(Math.hypot(b.x - a.x, b.y - a.y), STEP_MM)
  const way = { x: (b.x - a.x) / lengthMm, y: (b.y - a.y) / lengthMm }
  const asideMm = widthMm / 2 + ROOM_MM
  const corner = ({ x, y }: Point, along: number, aside: number): Point => ({
    x: x + along * way.x - aside * way.y,
    y: y + along * way.y + aside * way.x,
  })
  return [
    corner(a, -ROOM_MM, -asideMm),
    corner(b, ROOM_MM, -asideMm),
    corner(b, ROOM_MM, asideMm),
    corner(a, -ROOM_MM, asideMm),
  ]
}

const isFree = (corners: ConvexPolygon, { placed, keepClear, hole }: PlateSite): boolean =>
  placed.every((brace) => overlapMm(corners, brace.corners) <= 0) &&
  keepClear.every((other) => overlapMm(corners, other) <= 0) &&
  (hole === null || toPolygonMm(corners, { x: hole.centreMm, y: 0 }) > hole.radiusMm)

/** How far from the tail a brace from rim to rim meets nothing. */
function freeAcross(site: PlateSite, widthMm: number): number | null {
  const wantedMm = Math.round(site.lengthMm * PART)
  for (let awayMm = 0; awayMm <= NEAR_PART * site.lengthMm; awayMm += STEP_MM)
    for (const xMm of [wantedMm + awayMm, wantedMm - awayMm]) {
      const [a, b] = [rimAtX(site.rim, 'bass', xMm).point, rimAtX(site.rim, 'treble', xMm).point]
      if (isFree(footprint(a, b, widthMm), site)) return xMm
    }
  return null
}

function freeShort(
  site: PlateSite,
  widthMm: number,
): { readonly from: Point; readonly to: Point; readonly lengthMm: number } | null {
  const { lengthMm, rim } = site
  const wanted = { x: Math.round(lengthMm * PART), y: 0 }
  const reach = Math.ceil(lengthMm / STEP_MM)
  const places: Point[] = []
  for (let i = -reach; i <= reach; i++)
    for (let j = -reach; j <= reach; j++) places.push({ x: wanted.x + i * STEP_MM, y: j * STEP_MM })
  const awayMm = ({ x, y }: Point) => Math.hypot(x - wanted.x, y - wanted.y)
  const inside = places
    .filter((place) => awayMm(place) < lengthMm && isInsideRim(rim, place))
    .sort((a, b) => awayMm(a) - awayMm(b))
  for (const part of SHORT_PARTS)
    for (const { x, y } of inside)
      for (const way of WAYS) {
        const reachMm = (part * lengthMm) / 2
        const from = { x: halfMm(x - reachMm * way.x), y: halfMm(y - reachMm * way.y) }
        const to = { x: halfMm(x + reachMm * way.x), y: halfMm(y + reachMm * way.y) }
        const corners = footprint(from, to, widthMm)
        if (isFree(corners, site) && corners.every((corner) => isInsideRim(rim, corner)))
          return { from, to, lengthMm: part * lengthMm }
      }
  return null
}
