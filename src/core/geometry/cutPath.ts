import type { Path, PathPlace } from './path.ts'
import { pathEnd, strokesFrom, strokeStart } from './path.ts'
import { splitStroke, type StraightLine, strokeCrossings } from './stroke.ts'

/** The two parts of a path at a place on it; a part with nothing in it has no strokes. */
export function splitPath(path: Path, { stroke: i, t }: PathPlace): readonly [Path, Path] {
  const stroke = path.strokes[i]
  if (stroke === undefined || (i === 0 && t <= 0)) {
    const empty = (start: Path['start']): Path => ({ start, strokes: [] })
    return stroke === undefined && i > 0 ? [path, empty(pathEnd(path))] : [empty(path.start), path]
  }
  const before = path.strokes.slice(0, i)
  const after = path.strokes.slice(i + 1)
  const from = strokeStart(path, i)
  if (t <= 0)
    return [
      { start: path.start, strokes: before },
      { start: from, strokes: [stroke, ...after] },
    ]
  if (t >= 1)
    return [
      { start: path.start, strokes: [...before, stroke] },
      { start: stroke.to, strokes: after },
    ]
  const [first, second] = splitStroke(from, stroke, t)
  return [
    { start: path.start, strokes: [...before, first] },
    { start: first.to, strokes: [second, ...after] },
  ]
}

/** The part of a path from one place to a later one. */
export function partOfPath(path: Path, from: PathPlace, to: PathPlace): Path {
  const [upTo] = splitPath(path, to)
  const t = from.stroke === to.stroke && to.t > 0 && to.t < 1 ? from.t / to.t : from.t
  return splitPath(upTo, { stroke: from.stroke, t })[1]
}

/** Where a path crosses a straight line, or ends a stroke on it, in order; two strokes that meet on the line both say so. */
export const crossPath = (path: Path, line: StraightLine): PathPlace[] =>
  strokesFrom(path).flatMap(({ from, stroke }, i) => strokeCrossings(from, stroke, line).map((t) => ({ stroke: i, t })))
