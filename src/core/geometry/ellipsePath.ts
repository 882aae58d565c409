import type { Path, Stroke } from './path.ts'
import type { Point } from './point.ts'

/**
 * A stretch of an ellipse: centre + u cos t + v sin t for t from `fromRad` over `sweepRad`. u and v are any two radii that belong
 * together (conjugate), so that whatever shears, scales or mirrors an ellipse only has to do so to its vectors.
 */
export interface EllipseArc {
  readonly centre: Point
  readonly u: Point
  readonly v: Point
  readonly fromRad: number
  readonly sweepRad: number
}

/** Radii that differ by less than this share are one. */
const SAME_SHARE = 1e-7
/** A cubic for a quarter of the unit circle strays by this much; for other sweeps with the sixth power. Derived (checked in the test). */
const QUARTER_DEPARTURE = 2.73e-4
const MOST_PARTS = 64

/** An ellipse as a path: circles as arcs, exactly; others as cubics that stay within `closeMm`. */
export function pathOfEllipse(ellipse: EllipseArc, closeMm: number): Path {
  const { centre, u, v, fromRad, sweepRad } = ellipse
  const at = (t: number): Point => ({
    x: centre.x + u.x * Math.cos(t) + v.x * Math.sin(t),
    y: centre.y + u.y * Math.cos(t) + v.y * Math.sin(t),
  })
  const size = Math.max(Math.hypot(u.x, u.y), Math.hypot(v.x, v.y))
  const round =
    Math.abs(Math.hypot(u.x, u.y) - Math.hypot(v.x, v.y)) <= SAME_SHARE * size &&
    Math.abs(u.x * v.x + u.y * v.y) <= SAME_SHARE * size * size
  // Two vectors at odds are at most this much longer together.
  const quarters = Math.abs(sweepRad) / (Math.PI / 2)
  const parts = round
    ? Math.max(1, Math.ceil(Math.abs(sweepRad) / Math.PI - 1e-9))
    : Math.min(
        Math.max(1, Math.ceil(quarters * ((QUARTER_DEPARTURE * Math.SQRT2 * size) / closeMm) ** (1 / 6))),
        MOST_PARTS,
      )
  const step = sweepRad / parts
  const left = u.x * v.y - u.y * v.x >= 0 ? 1 : -1
  const whole = Math.abs(Math.abs(sweepRad) - 2 * Math.PI) < 1e-9
  const start = at(fromRad)
  const handle = (4 / 3) * Math.tan(step / 4)
  const strokes = Array.from({ length: parts }, (_, i): Stroke => {
    const [a, b] = [fromRad + i * step, fromRad + (i + 1) * step]
    const to = whole && i === parts - 1 ? start : at(b)
    if (round) return { kind: 'arc', to, bulge: left * Math.tan(step / 4) }
    const along = (t: number, sign: number): Point => ({
      x: at(t).x + sign * handle * (v.x * Math.cos(t) - u.x * Math.sin(t)),
      y: at(t).y + sign * handle * (v.y * Math.cos(t) - u.y * Math.sin(t)),
    })
    return { kind: 'cubic', control1: along(a, 1), control2: along(b, -1), to }
  })
  return { start, strokes }
}
