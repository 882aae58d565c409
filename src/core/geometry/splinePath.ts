import type { Path, Stroke } from './path.ts'
import type { Point } from './point.ts'
import { distanceMm } from './point.ts'

/** A B-spline, perhaps rational: knots in rising order, one weight a control point or none at all. */
export interface Spline {
  readonly degree: number
  readonly knots: readonly number[]
  readonly points: readonly Point[]
  readonly weights: readonly number[] | null
}

/** Control point with its weight multiplied in. */
type Weighted = readonly [x: number, y: number, w: number]

const MOST_DEGREE = 11
const MOST_HALVINGS = 8
const LOOKS = [0.15, 0.3, 0.5, 0.7, 0.85]

/**
 * A spline as a path of cubics: exactly where it is not rational and of degree 3 or less, within `closeMm` otherwise. null where
 * the numbers describe no spline: too few knots, knots that fall back, weights that are not above 0.
 */
export function pathOfSpline(spline: Spline, closeMm: number): Path | null {
  if (!isSpline(spline)) return null
  const { degree, knots, points } = spline
  const weights = spline.weights?.some((w) => w !== spline.weights![0]) === true ? spline.weights : null
  const controls = points.map(({ x, y }, i): Weighted => {
    const w = weights?.[i] ?? 1
    return [x * w, y * w, w]
  })
  const strokes: Stroke[] = []
  let start: Point | null = null
  for (let span = degree; span < points.length; span++) {
    if (!(knots[span + 1]! > knots[span]!)) continue
    const bezier = bezierOfSpan(knots, controls, degree, span)
    start ??= plain(bezier[0]!)
    if (weights === null && degree <= 3) strokes.push(cubicOfBezier(bezier.map(plain)))
    else addHermite(bezier, closeMm, MOST_HALVINGS, strokes)
  }
  return start === null ? null : { start, strokes }
}

function isSpline({ degree, knots, points, weights }: Spline): boolean {
  return (
    Number.isInteger(degree) &&
    degree >= 1 &&
    degree <= MOST_DEGREE &&
    points.length > degree &&
    knots.length === points.length + degree + 1 &&
    knots.every((knot, i) => Number.isFinite(knot) && (i === 0 || knot >= knots[i - 1]!)) &&
    (weights === null || (weights.length === points.length && weights.every((w) => w > 0 && Number.isFinite(w))))
  )
}

const plain = ([x, y, w]: Weighted): Point => ({ x: x / w, y: y / w })
const mix = (a: Weighted, b: Weighted, t: number): Weighted => [
  a[0] + (b[0] - a[0]) * t,
  a[1] + (b[1] - a[1]) * t,
  a[2] + (b[2] - a[2]) * t,
]

/**
 * Bezier points of the span from knot i to i + 1: the blossom with p - j arguments at its start and j at its end, which is what
 * inserting each of the two knots p times comes to. Source: Ramshaw 1989, Blossoms are polar forms (from memory).
 */
function bezierOfSpan(knots: readonly number[], controls: readonly Weighted[], p: number, i: number): Weighted[] {
  return Array.from({ length: p + 1 }, (_, j) => {
    let row = controls.slice(i - p, i + 1)
    for (let r = 1; r <= p; r++) {
      const at = r <= j ? knots[i + 1]! : knots[i]!
      row = row.slice(1).map((next, k) => {
        const low = knots[i - p + r + k]!
        const high = knots[i + 1 + k]!
        return mix(row[k]!, next, (at - low) / (high - low))
      })
    }
    return row[0]!
  })
}

/** A Bezier curve of degree 1 to 3 raised to 3. */
function cubicOfBezier(points: readonly Point[]): Stroke {
  const [a, b, c, d] = points as readonly [Point, Point, Point?, Point?]
  if (c === undefined) return { kind: 'line', to: b }
  const two = (p: Point, q: Point): Point => ({ x: p.x + (2 * (q.x - p.x)) / 3, y: p.y + (2 * (q.y - p.y)) / 3 })
  if (d === undefined) return { kind: 'cubic', control1: two(a, b), control2: two(c, b), to: c }
  return { kind: 'cubic', control1: b, control2: c, to: d }
}

/** Cubics with the points and speeds of a Bezier curve of any degree at their ends, halved until they are close. */
function addHermite(bezier: readonly Weighted[], closeMm: number, halvings: number, strokes: Stroke[]): void {
  const p = bezier.length - 1
  const from = plain(bezier[0]!)
  const to = plain(bezier[p]!)
  const a = speedAtEnd(bezier[0]!, bezier[1]!, p)
  const b = speedAtEnd(bezier[p]!, bezier[p - 1]!, p)
  const control1 = { x: from.x + a.x / 3, y: from.y + a.y / 3 }
  const control2 = { x: to.x + b.x / 3, y: to.y + b.y / 3 }
  const away = LOOKS.map((t) => {
    const u = 1 - t
    const at = (q: number, r: number, s: number, v: number) =>
      u * u * u * q + 3 * u * u * t * r + 3 * u * t * t * s + t * t * t * v
    const onCubic = { x: at(from.x, control1.x, control2.x, to.x), y: at(from.y, control1.y, control2.y, to.y) }
    return distanceMm(onCubic, plain(splitBezier(bezier, t)[1][0]!))
  })
  if (halvings === 0 || Math.max(...away) <= closeMm / 2) strokes.push({ kind: 'cubic', control1, control2, to })
  else for (const half of splitBezier(bezier, 0.5)) addHermite(half, closeMm, halvings - 1, strokes)
}

/** Speed out of an end of a rational Bezier curve, towards its inside: p (w1/w0) (P1 - P0). */
function speedAtEnd(end: Weighted, next: Weighted, p: number): Point {
  const share = (p * next[2]) / end[2]
  return { x: share * (plain(next).x - plain(end).x), y: share * (plain(next).y - plain(end).y) }
}

/** De Casteljau. */
function splitBezier(bezier: readonly Weighted[], t: number): readonly [Weighted[], Weighted[]] {
  const before = [bezier[0]!]
  const after = [bezier.at(-1)!]
  let row = [...bezier]
  while (row.length > 1) {
    row = row.slice(1).map((next, k) => mix(row[k]!, next, t))
    before.push(row[0]!)
    after.unshift(row.at(-1)!)
  }
  return [before, after]
}
