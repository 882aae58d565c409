import type { Point } from '../../geometry/point.ts'
import { type InnerRim, isInsideRim, type RimSide } from './innerRim.ts'

/**
 * The place on the inner face of the sides nearest to a point of the body, mm: on the straights between the places the face is known at,
 * which lie less than 0.1 mm inside it. Source: derived.
 */
export function nearestRim(rim: InnerRim, { x, y }: Point): { readonly side: RimSide; readonly point: Point } {
  let best: { readonly side: RimSide; readonly point: Point } = { side: y < 0 ? 'bass' : 'treble', point: { x, y } }
  let least = Infinity
  for (const side of ['bass', 'treble'] as const) {
    const flip = side === 'bass' ? -1 : 1
    const { places } = rim[side]
    for (let i = 1; i < places.length; i++) {
      const [a, b] = [places[i - 1]!, places[i]!]
      const [dx, dy] = [b.x - a.x, b.y - a.y]
      const square = dx * dx + dy * dy
      const share = square === 0 ? 0 : Math.min(Math.max(((x - a.x) * dx + (flip * y - a.y) * dy) / square, 0), 1)
      const point = { x: a.x + share * dx, y: flip * (a.y + share * dy) }
      const awayMm = Math.hypot(point.x - x, point.y - y)
      if (awayMm < least) [least, best] = [awayMm, { side, point }]
    }
  }
  return best
}

/** How far in from a place at the rim a point on a grid is looked for, mm. */
const STEPS_MM = [0, 0.2, 0.5, 1, 2, 4, 8] as const

/** A point on a grid close to a place at the rim and inside it, on the way toward another point; the place itself where there is none. */
export function justInside(rim: InnerRim, place: Point, toward: Point, grainMm: number): Point {
  const awayMm = Math.hypot(toward.x - place.x, toward.y - place.y)
  const way = awayMm === 0 ? { x: 0, y: 0 } : { x: (toward.x - place.x) / awayMm, y: (toward.y - place.y) / awayMm }
  const onGrid = (mm: number) => Math.round(mm / grainMm) * grainMm
  for (const stepMm of STEPS_MM) {
    if (stepMm > awayMm) break
    const point = { x: onGrid(place.x + stepMm * way.x), y: onGrid(place.y + stepMm * way.y) }
    if (isInsideRim(rim, point)) return point
  }
  return place
}
