import type { Bounds, Stroke } from './path.ts'
import type { Point } from './point.ts'
import { distanceMm } from './point.ts'
import { integrate } from './quadrature.ts'
import { findRoot } from './root.ts'

type Cubic = Extract<Stroke, { kind: 'cubic' }>

const lerp = (a: Point, b: Point, t: number): Point => ({ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t })

/** Sweep of an arc, radians, positive turning left; none for the other strokes. */
export const strokeSweepRad = (stroke: Stroke): number => (stroke.kind === 'arc' ? 4 * Math.atan(stroke.bulge) : 0)

const bearing = (a: Point, b: Point): number => Math.atan2(b.y - a.y, b.x - a.x)

/** The point at parameter t, 0 to 1; arcs and lines run evenly. */
export function strokeAt(from: Point, stroke: Stroke, t: number): Point {
  if (t <= 0) return from
  if (t >= 1) return stroke.to
  if (stroke.kind === 'line') return lerp(from, stroke.to, t)
  if (stroke.kind === 'cubic') return splitCubic(from, stroke, t)[0].to
  // The chord of a part of the sweep, turned by half of what is left: holds its digits as the arc grows flat.
  const half = strokeSweepRad(stroke) / 2
  const whole = Math.sin(half)
  const share = Math.abs(half) < 1e-9 || whole === 0 ? t : Math.sin(half * t) / whole
  const chordMm = distanceMm(from, stroke.to) * share
  const heading = bearing(from, stroke.to) - half * (1 - t)
  return { x: from.x + chordMm * Math.cos(heading), y: from.y + chordMm * Math.sin(heading) }
}

/** Heading at t, anticlockwise from +x; where a cubic stands still, the way it leaves or comes. 0 for a stroke of no length. */
export function strokeHeadingRad(from: Point, stroke: Stroke, t: number): number {
  if (stroke.kind === 'line') return bearing(from, stroke.to)
  if (stroke.kind === 'arc') return bearing(from, stroke.to) + strokeSweepRad(stroke) * (t - 0.5)
  const { control1, control2, to } = stroke
  const points = [from, control1, control2, to]
  const size = Math.max(...points.map((p) => distanceMm(from, p)))
  if (t > 0 && t < 1) {
    const slope = cubicSlope(from, stroke, t)
    if (Math.hypot(slope.x, slope.y) > 1e-9 * size) return Math.atan2(slope.y, slope.x)
    return bearing(strokeAt(from, stroke, Math.max(t - 1e-4, 0)), strokeAt(from, stroke, Math.min(t + 1e-4, 1)))
  }
  const [still, ...others] = t <= 0 ? points : points.reverse()
  const next = others.find((p) => distanceMm(still!, p) > 1e-9 * size) ?? still!
  return t <= 0 ? bearing(still!, next) : bearing(next, still!)
}

/** Derivative by the parameter. */
export function cubicSlope(from: Point, { control1: b, control2: c, to: d }: Cubic, t: number): Point {
  const u = 1 - t
  const at = (p: number, q: number, r: number, s: number) =>
    3 * (u * u * (q - p) + 2 * u * t * (r - q) + t * t * (s - r))
  return { x: at(from.x, b.x, c.x, d.x), y: at(from.y, b.y, c.y, d.y) }
}

export function strokeLengthMm(from: Point, stroke: Stroke): number {
  const chordMm = distanceMm(from, stroke.to)
  if (stroke.kind === 'line') return chordMm
  if (stroke.kind === 'arc') {
    const half = strokeSweepRad(stroke) / 2
    const whole = Math.sin(half)
    return Math.abs(half) < 1e-9 || whole === 0 ? chordMm : (chordMm * half) / whole
  }
  return cubicLengthMm(from, stroke)
}

/** Halves that differ from the whole by less than this share are long enough known. */
const LENGTH_SHARE = 1e-11
const MOST_HALVINGS = 10

function cubicLengthMm(from: Point, cubic: Cubic): number {
  const speed = (t: number) => {
    const { x, y } = cubicSlope(from, cubic, t)
    return Math.hypot(x, y)
  }
  const between = (a: number, b: number, whole: number, halvings: number): number => {
    const middle = (a + b) / 2
    const left = integrate(speed, a, middle)
    const right = integrate(speed, middle, b)
    if (halvings === 0 || Math.abs(left + right - whole) <= LENGTH_SHARE * (left + right)) return left + right
    return between(a, middle, left, halvings - 1) + between(middle, b, right, halvings - 1)
  }
  return between(0, 1, integrate(speed, 0, 1), MOST_HALVINGS)
}

export function reverseStroke(from: Point, stroke: Stroke): Stroke {
  if (stroke.kind === 'line') return { kind: 'line', to: from }
  if (stroke.kind === 'arc') return { kind: 'arc', to: from, bulge: -stroke.bulge }
  return { kind: 'cubic', control1: stroke.control2, control2: stroke.control1, to: from }
}

/** The two parts of a stroke at t; together they are the stroke. */
export function splitStroke(from: Point, stroke: Stroke, t: number): readonly [Stroke, Stroke] {
  if (stroke.kind === 'cubic') return splitCubic(from, stroke, t)
  const middle = strokeAt(from, stroke, t)
  if (stroke.kind === 'line') return [{ kind: 'line', to: middle }, stroke]
  const quarter = Math.atan(stroke.bulge)
  return [
    { kind: 'arc', to: middle, bulge: Math.tan(quarter * t) },
    { kind: 'arc', to: stroke.to, bulge: Math.tan(quarter * (1 - t)) },
  ]
}

/** De Casteljau. */
function splitCubic(from: Point, { control1, control2, to }: Cubic, t: number): readonly [Cubic, Cubic] {
  const a = lerp(from, control1, t)
  const b = lerp(control1, control2, t)
  const c = lerp(control2, to, t)
  const d = lerp(a, b, t)
  const e = lerp(b, c, t)
  const middle = lerp(d, e, t)
  return [
    { kind: 'cubic', control1: a, control2: d, to: middle },
    { kind: 'cubic', control1: e, control2: c, to },
  ]
}

/** The part of a stroke from parameter a to b, 0 <= a < b <= 1, and where it starts. */
export function partOfStroke(from: Point, stroke: Stroke, a: number, b: number): { from: Point; stroke: Stroke } {
  if (a <= 0 && b >= 1) return { from, stroke }
  const upTo = b >= 1 ? stroke : splitStroke(from, stroke, b)[0]
  if (a <= 0) return { from, stroke: upTo }
  const [before, after] = splitStroke(from, upTo, a / b)
  return { from: before.to, stroke: after }
}

/** The stroke begun elsewhere: the handle of a cubic goes along, an arc keeps its sweep. */
export function withStart(from: Point, stroke: Stroke, start: Point): Stroke {
  if (stroke.kind !== 'cubic') return stroke
  const { control1 } = stroke
  return { ...stroke, control1: { x: control1.x + start.x - from.x, y: control1.y + start.y - from.y } }
}

/** The stroke ended elsewhere. */
export function withEnd(stroke: Stroke, end: Point): Stroke {
  if (stroke.kind !== 'cubic') return { ...stroke, to: end }
  const { control2, to } = stroke
  return { ...stroke, to: end, control2: { x: control2.x + end.x - to.x, y: control2.y + end.y - to.y } }
}

/** Parameters strictly inside where the stroke runs along a heading or against it. */
function extremesAt(from: Point, stroke: Stroke, headingRad: number): number[] {
  if (stroke.kind === 'line') return []
  const inside = (t: number) => t > 0 && t < 1
  if (stroke.kind === 'arc') {
    const sweep = strokeSweepRad(stroke)
    if (sweep === 0) return []
    const first = strokeHeadingRad(from, stroke, 0) - headingRad
    const low = Math.ceil(Math.min(first, first + sweep) / Math.PI)
    const high = Math.floor(Math.max(first, first + sweep) / Math.PI)
    const found: number[] = []
    for (let n = low; n <= high && found.length < 4; n++) found.push((n * Math.PI - first) / sweep)
    return found.filter(inside)
  }
  // Across the heading, the slope of the cubic is a quadratic a u^2 + 2 b u t + c t^2.
  const across = (p: Point, q: Point) => Math.cos(headingRad) * (q.y - p.y) - Math.sin(headingRad) * (q.x - p.x)
  const a = across(from, stroke.control1)
  const b = across(stroke.control1, stroke.control2)
  const c = across(stroke.control2, stroke.to)
  const square = a - 2 * b + c
  const under = (b - a) ** 2 - square * a
  if (under < 0) return []
  const q = a - b + (a - b < 0 ? -1 : 1) * Math.sqrt(under)
  return [q / square, a / q].filter(inside).sort((s, t) => s - t)
}

export function strokeBounds(from: Point, stroke: Stroke): Bounds {
  const xs = [from.x, stroke.to.x, ...extremesAt(from, stroke, Math.PI / 2).map((t) => strokeAt(from, stroke, t).x)]
  const ys = [from.y, stroke.to.y, ...extremesAt(from, stroke, 0).map((t) => strokeAt(from, stroke, t).y)]
  return { minX: Math.min(...xs), minY: Math.min(...ys), maxX: Math.max(...xs), maxY: Math.max(...ys) }
}

/** A straight line without ends: a point on it and its direction. */
export interface StraightLine {
  readonly point: Point
  readonly headingRad: number
}

/** Distance of a point from a straight line, positive to the left of its way. */
export const offLineMm = ({ point, headingRad }: StraightLine, p: Point): number =>
  Math.cos(headingRad) * (p.y - point.y) - Math.sin(headingRad) * (p.x - point.x)

/** Parameters, in order, at which the stroke crosses a straight line; an end that lies on it counts. At most three inside. */
export function strokeCrossings(from: Point, stroke: Stroke, line: StraightLine): number[] {
  const off = (t: number) => offLineMm(line, strokeAt(from, stroke, t))
  const stops = [0, ...extremesAt(from, stroke, line.headingRad), 1]
  const found: number[] = []
  for (let i = 0; i < stops.length; i++) {
    const here = off(stops[i]!)
    if (here === 0) found.push(stops[i]!)
    const next = stops[i + 1]
    if (next !== undefined && here * off(next) < 0) found.push(findRoot(off, stops[i]!, next, 1e-15))
  }
  return found
}
