import { type Curve, makeCurve } from '../geometry/curve.ts'
import { nearZeroRad } from '../geometry/hermiteClothoid.ts'
import type { Path } from '../geometry/path.ts'
import { curveOfPath } from '../geometry/pathCurve.ts'
import { type PointRun, pointRuns } from '../geometry/pathRuns.ts'
import type { Piece } from '../geometry/piece.ts'
import type { Point } from '../geometry/point.ts'
import { curveWithin } from '../geometry/within/curveWithin.ts'
import type { DrawnPathPlan } from '../plan.ts'
import type { Closure } from './compassArcs.ts'
import { SHARP_RAD } from './cutaway.ts'

/** Both halves of a drawn outline as curves, and how they lie to what was drawn. */
export interface DrawnHalves {
  readonly bass: Curve
  /** null: the bass half mirrored. */
  readonly treble: Curve | null
  readonly lengthMm: number
  /** How far the curve strays at most from the drawing. */
  readonly largestDepartureMm: number
  /** Whether every traced point is met as closely as asked. */
  readonly within: boolean
  readonly closure: Closure
}

interface Followed {
  readonly curve: Curve
  readonly largestDepartureMm: number
  readonly within: boolean
}

/** More traced points than this are thinned evenly: they lie closer together than a rule could read. */
const MOST_POINTS = 120

/**
 * The halves of a drawn outline. Straights, arcs and smooth curves are followed exactly (curves to 0.001 mm); rows of short lines, in
 * which an outline was traced point by point, are followed by the fairest curve that stays as near to their points as the plan asks.
 */
export function halvesOfPath({ bass, treble, readToMm }: DrawnPathPlan): DrawnHalves {
  const followedBass = followPath(bass, readToMm)
  const followedTreble = treble === null ? null : followPath(treble, readToMm)
  const both = followedTreble === null ? [followedBass] : [followedBass, followedTreble]
  const end = followedBass.curve.places.at(-1)!
  const atTailRad = nearZeroRad(Math.PI / 2 - followedBass.curve.places[0]!.headingRad)
  const atNeckRad = nearZeroRad(end.headingRad + Math.PI / 2)
  const sharpRad = followedBass.curve.corners.reduce(
    (most, { turnRad }) => (Math.abs(turnRad) > Math.max(SHARP_RAD, Math.abs(most)) ? turnRad : most),
    0,
  )
  const cornerRad = [atTailRad, atNeckRad, sharpRad].reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a))
  return {
    bass: followedBass.curve,
    treble: followedTreble?.curve ?? null,
    lengthMm: Math.max(end.point.x, 1),
    largestDepartureMm: Math.max(...both.map((one) => one.largestDepartureMm)),
    within: both.every((one) => one.within),
    closure: { alongMm: 0, acrossMm: end.point.y, cornerRad },
  }
}

/** One half as a curve, stretch by stretch. */
function followPath(path: Path, readToMm: number): Followed {
  const runs = pointRuns(path)
  if (runs.length === 0) return { ...curveOfPath(path), within: true }
  const pieces: Piece[] = []
  const turns: number[] = []
  let headingRad: number | null = null
  let firstRad = Math.PI / 2
  let largestDepartureMm = 0
  let within = true
  const append = (curve: Curve) => {
    const startRad = curve.places[0]!.headingRad
    if (headingRad === null) firstRad = startRad
    turns.push(headingRad === null ? 0 : nearZeroRad(headingRad - startRad))
    curve.pieces.forEach((piece, i) => {
      pieces.push(piece)
      if (i > 0) turns.push(curve.corners.find(({ sMm }) => sMm === curve.startsMm[i])?.turnRad ?? 0)
    })
    headingRad = curve.places.at(-1)!.headingRad
  }
  const exactly = (from: number, to: number) => {
    if (to <= from) return
    const found = curveOfPath({
      start: from === 0 ? path.start : path.strokes[from - 1]!.to,
      strokes: path.strokes.slice(from, to),
    })
    largestDepartureMm = Math.max(largestDepartureMm, found.largestDepartureMm)
    append(found.curve)
  }
  let next = 0
  for (const run of runs) {
    exactly(next, run.firstStroke)
    next = run.firstStroke + run.strokeCount
    const found = followPoints(run, headingRad, run.firstStroke === 0, next === path.strokes.length, readToMm)
    largestDepartureMm = Math.max(largestDepartureMm, found.largestMm)
    within &&= found.within
    append(found.curve)
  }
  exactly(next, path.strokes.length)
  return {
    curve: makeCurve({ point: path.start, headingRad: firstRad }, pieces, turns),
    largestDepartureMm,
    within,
  }
}

/** The fairest curve along a row of points: square to the centreline at tail and neck, going on in the direction it came in. */
function followPoints(
  { points }: PointRun,
  headingRad: number | null,
  atTail: boolean,
  atNeck: boolean,
  readToMm: number,
) {
  const [first, second, third] = [points[0]!, points[1]!, points[2] ?? points[1]!]
  const goesOn = headingRad !== null && Math.abs(nearZeroRad(headingRad - directionRad(first, second))) < SHARP_RAD * 5
  const startRad = atTail ? Math.PI / 2 : goesOn ? headingRad : entryRad(first, second, third)
  const inner = points.slice(1, -1)
  const every = Math.ceil(inner.length / MOST_POINTS)
  return curveWithin({
    start: { point: first, headingRad: startRad, curvaturePerMm: null },
    end: { point: points.at(-1)!, headingRad: atNeck ? -Math.PI / 2 : null, curvaturePerMm: null },
    readings: inner.filter((_, i) => i % every === 0),
    withinMm: readToMm,
    shape: 'free',
  })
}

const directionRad = (a: Point, b: Point): number => Math.atan2(b.y - a.y, b.x - a.x)

/** Direction at the first of three points, of the circle through them. */
const entryRad = (a: Point, b: Point, c: Point): number =>
  directionRad(a, b) - nearZeroRad(directionRad(b, c) - directionRad(a, b)) / 2
