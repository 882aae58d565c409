import { beginAt, lineToAxis } from '../geometry/closedPath.ts'
import { curveAt } from '../geometry/curve.ts'
import { crossPath, partOfPath, splitPath } from '../geometry/cutPath.ts'
import { dropTiny } from '../geometry/mendPath.ts'
import type { Path, PathPlace } from '../geometry/path.ts'
import {
  joinPaths,
  movePathEnd,
  movePathStart,
  pathBounds,
  pathEnd,
  pointAt,
  reversePath,
  transformPath,
} from '../geometry/path.ts'
import { curveOfPath } from '../geometry/pathCurve.ts'
import { distanceMm } from '../geometry/point.ts'
import type { StraightLine } from '../geometry/stroke.ts'

/** A half stood on its axis: from (0, 0) to (length, 0) in the direction of the axis, on the side of positive y. */
export function standHalf(half: Path, axis: StraightLine): Path {
  const laid = transformPath(half, lineToAxis(axis))
  const { minY, maxY } = pathBounds(laid)
  const up = maxY >= -minY ? laid : transformPath(laid, { mirrored: true })
  const ordered = pathEnd(up).x >= up.start.x ? up : reversePath(up)
  // The axis runs through both ends; what rounding leaves is taken off.
  return movePathEnd(movePathStart(ordered, { x: 0, y: 0 }), { x: distanceMm(ordered.start, pathEnd(ordered)), y: 0 })
}

const PLACES = 400

/** How far along a half its greatest half-width stands; the first where there are several. */
export function widestAt(half: Path): number {
  const { curve } = curveOfPath(half)
  const points = Array.from({ length: PLACES + 1 }, (_, j) => curveAt(curve, (curve.lengthMm * j) / PLACES).point)
  return points.reduce((best, p) => (p.y > best.y + 1e-6 ? p : best)).x
}

export interface SplitOutline {
  /** Both from the lower x to the higher one, with positive y, starting at (0, 0). */
  readonly upper: Path
  readonly lower: Path
  readonly fromX: number
  readonly toX: number
}

/** A line that crosses more often is no outline. */
const MOST_CROSSINGS = 100
/** What stays this close to the axis between two crossings does not leave it. */
const ON_AXIS_MM = 0.01

/** What a cut beside the end of a stroke leaves of it. */
const SLIVER_MM = 1e-6

/** A closed path cut in two along the x axis; null where it does not cross it at two places. */
export function splitAtAxis(closed: Path): SplitOutline | null {
  const whole = beginAt(closed, farFromAxis(closed))
  const crossings = crossPath(whole, { point: { x: 0, y: 0 }, headingRad: 0 })
  const [first, second, ...more] = realCrossings(whole, crossings)
  if (first === undefined || second === undefined || more.length > 0) return null
  const one = dropTiny(partOfPath(whole, first, second), SLIVER_MM)
  const other = dropTiny(joinPaths(splitPath(whole, second)[1], splitPath(whole, first)[0]), SLIVER_MM)
  const along = [pointAt(whole, first).x, pointAt(whole, second).x].toSorted((a, b) => a - b)
  const axis = { point: { x: along[0]!, y: 0 }, headingRad: 0 }
  const upperFirst = pathBounds(one).maxY > pathBounds(other).maxY
  const [upper, lower] = upperFirst ? [one, other] : [other, one]
  return { upper: standHalf(upper, axis), lower: standHalf(lower, axis), fromX: along[0]!, toX: along[1]! }
}

/** The end or middle of a stroke that lies farthest from the axis: a path begun there does not begin at a crossing. */
function farFromAxis(path: Path): PathPlace {
  const places = path.strokes.flatMap((_, stroke): PathPlace[] => [0, 0.5].map((t) => ({ stroke, t })))
  const off = (place: PathPlace) => Math.abs(pointAt(path, place).y)
  return places.reduce((best, place) => (off(place) > off(best) ? place : best))
}

/** Crossings after which the path is on the other side; several in one place count as one, or none. */
function realCrossings(path: Path, crossings: readonly PathPlace[]): PathPlace[] {
  const found: PathPlace[] = []
  const end: PathPlace = { stroke: path.strokes.length - 1, t: 1 }
  let side = Math.sign(path.start.y)
  if (crossings.length > MOST_CROSSINGS) return []
  let pending: PathPlace | null = null
  crossings.forEach((place, i) => {
    pending ??= place
    const { minY, maxY } = pathBounds(partOfPath(path, place, crossings[i + 1] ?? end))
    if (Math.max(maxY, -minY) < ON_AXIS_MM) return
    const next = maxY > -minY ? 1 : -1
    if (next !== side) found.push(pending)
    side = next
    pending = null
  })
  return found
}
