import { splitPath } from './cutPath.ts'
import { nearZeroRad } from './hermiteClothoid.ts'
import type { Path, PathPlace, Similarity } from './path.ts'
import { endsMeet, joinPaths, pathBounds, strokesFrom, strokeStart, transformPath } from './path.ts'
import type { StraightLine } from './stroke.ts'
import { strokeHeadingRad, strokeLengthMm } from './stroke.ts'

/** The path with a line back to its start where it does not end there. */
export const closePath = (path: Path): Path =>
  endsMeet(path, 0) ? path : { start: path.start, strokes: [...path.strokes, { kind: 'line', to: path.start }] }

/** A closed path begun at another of its places. */
export function beginAt(path: Path, place: PathPlace): Path {
  const [before, after] = splitPath(path, place)
  return after.strokes.length === 0 ? before : joinPaths(after, before)
}

/** Turned by less than this, two lines are one. */
const STRAIGHT_RAD = 1e-4
/** What lies beyond a line by no more than this still lies on it. */
const ON_LINE_MM = 0.05
/** A line this long, compared with all that lies along it, is the centreline of a half. */
const CENTRELINE_SHARE = 0.9

/**
 * What is left of a closed path without the one straight line that all of it stands on, ends on the line; null where there is none.
 * A half outline drawn together with its centreline is such a path.
 */
export function withoutBaseLine(closed: Path): Path | null {
  const fresh = beginAt(closed, { stroke: startOfStraight(closed), t: 0 })
  const rows: { first: number; count: number; lengthMm: number }[] = []
  let heading: number | null = null
  strokesFrom(fresh).forEach(({ from, stroke }, i) => {
    const lengthMm = strokeLengthMm(from, stroke)
    if (stroke.kind !== 'line') heading = null
    else {
      const next = strokeHeadingRad(from, stroke, 0)
      const last = rows.at(-1)
      if (last !== undefined && heading !== null && Math.abs(nearZeroRad(next - heading)) < STRAIGHT_RAD) {
        last.count++
        last.lengthMm += lengthMm
      } else rows.push({ first: i, count: 1, lengthMm })
      heading = next
    }
  })
  const longest = rows.toSorted((a, b) => b.lengthMm - a.lengthMm)[0]
  if (longest === undefined || longest.count === fresh.strokes.length) return null
  const from = strokeStart(fresh, longest.first)
  const to = fresh.strokes[longest.first + longest.count - 1]!.to
  const line: StraightLine = { point: from, headingRad: Math.atan2(to.y - from.y, to.x - from.x) }
  const turned = beginAt(fresh, { stroke: longest.first, t: 0 })
  const rest: Path = { start: to, strokes: turned.strokes.slice(longest.count) }
  const { minX, maxX, minY, maxY } = pathBounds(transformPath(rest, lineToAxis(line)))
  const oneSided = Math.min(-minY, maxY) <= ON_LINE_MM
  return oneSided && longest.lengthMm >= CENTRELINE_SHARE * (maxX - minX) ? rest : null
}

/** Index of a stroke that does not go on straight from the one before it. */
function startOfStraight(closed: Path): number {
  const all = strokesFrom(closed)
  const found = all.findIndex(({ from, stroke }, i) => {
    const before = all[(i + all.length - 1) % all.length]!
    const turn = strokeHeadingRad(from, stroke, 0) - strokeHeadingRad(before.from, before.stroke, 1)
    return stroke.kind !== 'line' || before.stroke.kind !== 'line' || Math.abs(nearZeroRad(turn)) >= STRAIGHT_RAD
  })
  return Math.max(found, 0)
}

/** What turns and shifts the plane so that the line becomes the x axis, its point the origin. */
export function lineToAxis({ point, headingRad }: StraightLine): Similarity {
  const [cos, sin] = [Math.cos(headingRad), Math.sin(headingRad)]
  return {
    rotationRad: -headingRad,
    shift: { x: -cos * point.x - sin * point.y, y: sin * point.x - cos * point.y },
  }
}
