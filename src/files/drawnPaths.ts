import type { Path } from '../core/geometry/path.ts'
import type { Point } from '../core/geometry/point.ts'
import type { DrawnFile, DrawnFileProblem, DrawnPath, DrawnUnit, LeftOutKind } from '../record/drawnFile.ts'
import { accept, type Result, refuse } from '../record/result.ts'

/** No outline comes near these; more is refused before it is read. */
export const MOST_DRAWN_BYTES = 5_000_000
export const MOST_STROKES = 20_000
const MOST_AWAY = 100_000
const LONGEST_NAME = 80

/** How closely other curves are followed by cubics; in a file without a unit, where a unit may be an inch, more closely. */
export const closeTo = (mmPerUnit: number | null): number => (mmPerUnit === null ? 0.00001 : 0.0005)

/** A name from a file, fit to be shown on a line. */
export const shortName = (name: string): string =>
  Array.from(name, (sign) => (/[\p{Cc}\p{Cf}]/u.test(sign) ? ' ' : sign))
    .join('')
    .trim()
    .slice(0, LONGEST_NAME)

/** Gathers what was read of a file: paths, what was left out, and the first thing that is wrong. */
export function gatherDrawing() {
  const paths: DrawnPath[] = []
  const counts = new Map<LeftOutKind, number>()
  let strokes = 0
  let problem: DrawnFileProblem | null = null
  const fail = (code: DrawnFileProblem) => {
    problem ??= code
  }
  return {
    fail,
    hasFailed: () => problem !== null,
    leaveOut: (kind: LeftOutKind) => counts.set(kind, (counts.get(kind) ?? 0) + 1),
    countOf: (kind: LeftOutKind) => counts.get(kind) ?? 0,
    /** A path with nothing in it is passed over; one that cannot stand ends the reading. */
    add: (name: string, path: Path, isClosed: boolean) => {
      if (path.strokes.length === 0) return
      strokes += path.strokes.length
      if (strokes > MOST_STROKES) fail('tooMany')
      else if (!isWithinReach(path)) fail('outOfRange')
      else paths.push({ name: shortName(name), path, isClosed })
    },
    finish: (unit: DrawnUnit | null): Result<DrawnFile, DrawnFileProblem> => {
      if (problem !== null) return refuse(problem)
      if (paths.length === 0) return refuse('nothingDrawn')
      return accept({ paths, unit, leftOut: [...counts].map(([kind, count]) => ({ kind, count })) })
    },
  }
}

export type Gathering = ReturnType<typeof gatherDrawing>

function isWithinReach({ start, strokes }: Path): boolean {
  const near = ({ x, y }: Point) => Math.abs(x) <= MOST_AWAY && Math.abs(y) <= MOST_AWAY
  return (
    near(start) &&
    strokes.every((stroke) => {
      if (!near(stroke.to)) return false
      if (stroke.kind === 'cubic') return near(stroke.control1) && near(stroke.control2)
      // A bulge beyond this is a circle all but closed on itself.
      return stroke.kind === 'line' || Math.abs(stroke.bulge) <= 1e4
    })
  )
}
