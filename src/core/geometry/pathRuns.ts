import { nearZeroRad } from './hermiteClothoid.ts'
import type { Path } from './path.ts'
import { strokesFrom, strokeStart } from './path.ts'
import type { Point } from './point.ts'
import { strokeHeadingRad, strokeLengthMm } from './stroke.ts'

/** A row of short lines that stands for a curve: its vertices, both ends included. */
export interface PointRun {
  /** Index of the first of its strokes. */
  readonly firstStroke: number
  readonly strokeCount: number
  readonly points: readonly Point[]
}

/** Fewer lines than this are lines. */
const LEAST_LINES = 8
/** From this turn on a vertex is a corner. */
const CORNER_RAD = (25 * Math.PI) / 180

/**
 * The rows of 8 or more lines, each turning by less than 25 degrees against the one before, in which an outline was traced point by
 * point: a fair curve can be laid through the vertices of each. Lines of no length break no row.
 */
export function pointRuns(path: Path): PointRun[] {
  const runs: PointRun[] = []
  let first = 0
  let count = 0
  let heading: number | null = null
  const close = () => {
    const points = [strokeStart(path, first), ...path.strokes.slice(first, first + count).map(({ to }) => to)]
    if (count >= LEAST_LINES) runs.push({ firstStroke: first, strokeCount: count, points: withoutRepeats(points) })
    heading = null
    count = 0
  }
  strokesFrom(path).forEach(({ from, stroke }, i) => {
    if (stroke.kind !== 'line') return close()
    if (strokeLengthMm(from, stroke) > 0) {
      const next = strokeHeadingRad(from, stroke, 0)
      if (heading !== null && Math.abs(nearZeroRad(next - heading)) >= CORNER_RAD) close()
      heading = next
    }
    if (count === 0) first = i
    count++
  })
  close()
  return runs
}

const withoutRepeats = (points: readonly Point[]): Point[] =>
  points.filter((p, i) => i === 0 || p.x !== points[i - 1]!.x || p.y !== points[i - 1]!.y)
