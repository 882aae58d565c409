import { type Curve, insetPoint } from '../../core/geometry/curve.ts'
import type { Point } from '../../core/geometry/point.ts'

/** Where two parallels meet: arc lengths of the curve that ends there and of the one that begins there. */
export interface Meeting {
  readonly beforeMm: number
  readonly afterMm: number
}

const STEPS = 48
const ROUNDS = 8
const CLOSE_MM = 1e-9
/** How far from the corner it is looked for, in parts of the distance of the parallel: the nearest meeting is the one that counts. */
const REACHES = [1, 4, 16, 64, 256]

interface Stretch {
  readonly fromMm: number
  readonly toMm: number
}

/**
 * Where the parallel of a curve's end meets that of the next curve's beginning, nearest to both; null where they never do. Both are broken into
 * straights, and the two that cross are broken again until they are shorter than 1e-9 mm.
 */
export function meetingOf(before: Curve, after: Curve, insetMm: number): Meeting | null {
  for (const reach of REACHES) {
    const reachMm = Math.max(reach * Math.abs(insetMm), CLOSE_MM)
    let a: Stretch = { fromMm: Math.max(before.lengthMm - reachMm, 0), toMm: before.lengthMm }
    let b: Stretch = { fromMm: 0, toMm: Math.min(reachMm, after.lengthMm) }
    let found = crossing(before, a, after, b, insetMm)
    if (found === null) continue
    for (let round = 0; round < ROUNDS && a.toMm - a.fromMm > CLOSE_MM; round++) {
      ;[a, b] = [around(found.before, before.lengthMm), around(found.after, after.lengthMm)]
      const closer = crossing(before, a, after, b, insetMm)
      if (closer === null) break
      found = closer
    }
    return { beforeMm: middleOf(found.before), afterMm: middleOf(found.after) }
  }
  return null
}

const middleOf = ({ fromMm, toMm }: Stretch): number => (fromMm + toMm) / 2

/** A little more than a stretch, within its curve: a straight meets where the curve beside it no longer does. */
function around({ fromMm, toMm }: Stretch, lengthMm: number): Stretch {
  const more = (toMm - fromMm) / 2
  return { fromMm: Math.max(fromMm - more, 0), toMm: Math.min(toMm + more, lengthMm) }
}

interface Pair {
  readonly before: Stretch
  readonly after: Stretch
}

/** The two straights that cross, nearest to the end of the one and the beginning of the other. */
function crossing(before: Curve, a: Stretch, after: Curve, b: Stretch, insetMm: number): Pair | null {
  const stops = ({ fromMm, toMm }: Stretch) =>
    Array.from({ length: STEPS + 1 }, (_, i) => fromMm + ((toMm - fromMm) * i) / STEPS)
  const [as, bs] = [stops(a), stops(b)]
  const ps = as.map((s) => insetPoint(before, s, insetMm))
  const qs = bs.map((s) => insetPoint(after, s, insetMm))
  let best: Pair | null = null
  let nearest = Number.POSITIVE_INFINITY
  for (let i = 0; i < STEPS; i++) {
    for (let j = 0; j < STEPS; j++) {
      const far = STEPS - i + j
      if (far >= nearest || !cross(ps[i]!, ps[i + 1]!, qs[j]!, qs[j + 1]!)) continue
      nearest = far
      best = { before: { fromMm: as[i]!, toMm: as[i + 1]! }, after: { fromMm: bs[j]!, toMm: bs[j + 1]! } }
    }
  }
  return best
}

/** Which side of the way from p to q a point lies on. */
const sideOf = (p: Point, q: Point, at: Point): number => (q.x - p.x) * (at.y - p.y) - (q.y - p.y) * (at.x - p.x)

/** Two that lie along one line do not cross. */
function cross(p: Point, q: Point, r: Point, s: Point): boolean {
  const [a, b, c, d] = [sideOf(p, q, r), sideOf(p, q, s), sideOf(r, s, p), sideOf(r, s, q)]
  return a * b <= 0 && c * d <= 0 && (a !== b || c !== d)
}
