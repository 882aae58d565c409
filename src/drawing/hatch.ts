import type { Point } from '../core/geometry/point.ts'
import type { PathCommand } from './drawing.ts'

const MOST_LINES = 60

/** Slanting lines, rising to the right on the sheet, over a shape with straight sides that bulges everywhere: wood that is cut through. */
export function hatch(corners: readonly Point[], apartMm: number): PathCommand[] {
  // A line is one where x + y stays the same.
  const sums = corners.map(({ x, y }) => x + y)
  const low = Math.min(...sums)
  const high = Math.max(...sums)
  const step = Math.max(apartMm * Math.SQRT2, (high - low) / MOST_LINES)
  const commands: PathCommand[] = []
  for (let sum = low + step / 2; sum < high; sum += step) {
    const ends = corners.flatMap((a, i): Point[] => {
      const b = corners[(i + 1) % corners.length]!
      const before = a.x + a.y - sum
      const after = b.x + b.y - sum
      if (before < 0 === after < 0) return []
      const part = before / (before - after)
      return [{ x: a.x + (b.x - a.x) * part, y: a.y + (b.y - a.y) * part }]
    })
    const [from, to] = ends
    if (from !== undefined && to !== undefined) commands.push(['M', from.x, from.y], ['L', to.x, to.y])
  }
  return commands
}
