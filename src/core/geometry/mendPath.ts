import type { Path, Stroke } from './path.ts'
import { movePathEnd, pathEnd, reversePath } from './path.ts'
import { strokeLengthMm, withStart } from './stroke.ts'

/**
 * A path without its strokes shorter than `tinyMm`: what follows one starts where it started. The path still ends where it did; what
 * is tiny all over has no strokes left.
 */
export function dropTiny(path: Path, tinyMm: number): Path {
  const strokes: Stroke[] = []
  let drawnFrom = path.start
  let at = path.start
  for (const stroke of path.strokes) {
    const moved = at === drawnFrom ? stroke : withStart(drawnFrom, stroke, at)
    drawnFrom = stroke.to
    if (strokeLengthMm(at, moved) < tinyMm) continue
    strokes.push(moved)
    at = stroke.to
  }
  const kept = { start: path.start, strokes }
  return strokes.length === 0 || at === drawnFrom ? kept : movePathEnd(kept, pathEnd(path))
}

/** Steps in which places are compared. */
const PER_MM = 1e6

/** A text that is the same for paths drawn over each other, either way round. */
export function strokeKey(path: Path): string {
  const there = spell(path)
  const back = spell(reversePath(path))
  return there < back ? there : back
}

const spell = ({ start, strokes }: Path): string =>
  [start, ...strokes.flatMap(numbersOf)]
    .flatMap((part) => (typeof part === 'number' ? [part] : [part.x, part.y]))
    .map((value) => Math.round(value * PER_MM) + 0)
    .join(' ')

const numbersOf = (stroke: Stroke) => {
  if (stroke.kind === 'line') return [stroke.to]
  if (stroke.kind === 'arc') return [stroke.bulge, stroke.to]
  return [stroke.control1, stroke.control2, stroke.to]
}
