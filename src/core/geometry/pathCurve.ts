import { clothoidBetween, nearZeroRad } from './hermiteClothoid.ts'
import type { Curve } from './curve.ts'
import { makeCurve } from './curve.ts'
import type { Path, Stroke } from './path.ts'
import { strokesFrom } from './path.ts'
import type { Piece, Place } from './piece.ts'
import { placeOnPiece, straight } from './piece.ts'
import type { Point } from './point.ts'
import { distanceMm } from './point.ts'
import { cubicSlope, partOfStroke, strokeAt, strokeHeadingRad, strokeLengthMm, strokeSweepRad } from './stroke.ts'

export interface PathCurve {
  readonly curve: Curve
  /** How far the curve strays at most from the path, at the places looked at: nowhere but along cubics. */
  readonly largestDepartureMm: number
}

/** A piece with its headings at both ends, so that a break between it and its neighbours can be seen. */
interface Aimed {
  readonly piece: Piece
  readonly startRad: number
  readonly endRad: number
}

/** At the places looked at; between them a little more, never 0.001 mm. */
const CLOSE_MM = 0.0005
const LOOKS = [0.12, 0.28, 0.5, 0.72, 0.88]
/** One clothoid takes no more of a turn than this. */
const MOST_TURN_RAD = 1
const MOST_HALVINGS = 9
/** Of the whole curve; past it each cubic gets one piece. */
const MOST_PIECES = 60_000
/** A smaller break is rounding, and taken for none. */
const LEAST_TURN_RAD = 1e-12

/**
 * A drawn path as a curve by arc length. Lines and arcs become straights and arcs, exactly; a cubic becomes a chain of clothoids that
 * starts, ends and joins on it in its direction and stays within 0.001 mm. Where strokes meet at an angle the curve has a corner.
 * Strokes of no length are passed over; the work is bounded by counts. Any finite path gives a finite curve.
 */
export function curveOfPath(path: Path): PathCurve {
  const aimed: Aimed[] = []
  let largestDepartureMm = 0
  for (const { from, stroke } of strokesFrom(path)) {
    if (stroke.kind === 'cubic') {
      const halvings = aimed.length < MOST_PIECES ? MOST_HALVINGS : 0
      largestDepartureMm = Math.max(largestDepartureMm, addCubic(from, stroke, halvings, aimed))
    } else addExactly(from, stroke, aimed)
  }
  const turns = aimed.map(({ startRad }, i) => {
    const turn = i === 0 ? 0 : nearZeroRad(aimed[i - 1]!.endRad - startRad)
    return Math.abs(turn) < LEAST_TURN_RAD ? 0 : turn
  })
  const start = { point: path.start, headingRad: aimed[0]?.startRad ?? 0 }
  const pieces = aimed.map(({ piece }) => piece)
  return { curve: makeCurve(start, pieces, turns), largestDepartureMm }
}

function addExactly(from: Point, stroke: Stroke, aimed: Aimed[]): void {
  const lengthMm = strokeLengthMm(from, stroke)
  if (!(lengthMm > 0)) return
  const k = -strokeSweepRad(stroke) / lengthMm
  aimed.push({
    piece: k === 0 ? straight(lengthMm) : { lengthMm, startCurvaturePerMm: k, endCurvaturePerMm: k },
    startRad: strokeHeadingRad(from, stroke, 0),
    endRad: strokeHeadingRad(from, stroke, 1),
  })
}

type Cubic = Extract<Stroke, { kind: 'cubic' }>

/** Adds the pieces of a cubic, halved until they are close; gives how far the worst of them strays. */
function addCubic(from: Point, cubic: Cubic, halvings: number, aimed: Aimed[]): number {
  const start: Place = { point: from, headingRad: strokeHeadingRad(from, cubic, 0) }
  const end: Place = { point: cubic.to, headingRad: strokeHeadingRad(from, cubic, 1) }
  const gentle = turnOfHandlesRad(from, cubic) <= MOST_TURN_RAD
  if (gentle || halvings === 0) {
    const piece = gentle ? clothoidBetween(start, end) : null
    if (piece !== null) {
      const departureMm = departureOf(from, cubic, piece, start)
      if (departureMm <= CLOSE_MM || halvings === 0) {
        aimed.push({ piece, startRad: start.headingRad, endRad: end.headingRad })
        return departureMm
      }
    }
  }
  if (halvings > 0) {
    const first = partOfStroke(from, cubic, 0, 0.5)
    const second = partOfStroke(from, cubic, 0.5, 1)
    const before = addCubic(first.from, first.stroke as Cubic, halvings - 1, aimed)
    return Math.max(before, addCubic(second.from, second.stroke as Cubic, halvings - 1, aimed))
  }
  // What turns too sharply for a clothoid even now is a point of the cubic: its chord, with corners.
  const chord: Stroke = { kind: 'line', to: cubic.to }
  addExactly(from, chord, aimed)
  return Math.max(...LOOKS.map((t) => toSegmentMm(strokeAt(from, cubic, t), from, cubic.to)))
}

/** How much the polygon of the handles turns: the cubic turns no more. */
function turnOfHandlesRad(from: Point, { control1, control2, to }: Cubic): number {
  const points = [from, control1, control2, to]
  const size = Math.max(...points.map((p) => distanceMm(from, p)))
  const kept = points.filter((p, i) => i === 0 || distanceMm(points[i - 1]!, p) > 1e-9 * size)
  const headings = kept.slice(1).map((p, i) => Math.atan2(p.y - kept[i]!.y, p.x - kept[i]!.x))
  return headings.slice(1).reduce((sum, heading, i) => sum + Math.abs(nearZeroRad(heading - headings[i]!)), 0)
}

/** How far the piece strays from the cubic, square to it, at a few places. */
function departureOf(from: Point, cubic: Cubic, piece: Piece, start: Place): number {
  return LOOKS.reduce((most, share) => {
    const { point } = placeOnPiece(piece, start, share * piece.lengthMm)
    let t = share
    for (let step = 0; step < 8; step++) {
      const foot = strokeAt(from, cubic, t)
      const slope = cubicSlope(from, cubic, t)
      const change = ((point.x - foot.x) * slope.x + (point.y - foot.y) * slope.y) / (slope.x ** 2 + slope.y ** 2)
      if (!Number.isFinite(change)) break
      t = Math.min(Math.max(t + change, 0), 1)
      if (Math.abs(change) < 1e-9) break
    }
    return Math.max(most, distanceMm(point, strokeAt(from, cubic, t)))
  }, 0)
}

function toSegmentMm(p: Point, a: Point, b: Point): number {
  const long = (b.x - a.x) ** 2 + (b.y - a.y) ** 2
  const t = long > 0 ? Math.min(Math.max(((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / long, 0), 1) : 0
  return distanceMm(p, { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t })
}
