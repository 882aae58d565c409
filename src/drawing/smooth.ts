import type { Point } from '../core/geometry/point.ts'
import type { PathCommand } from './drawing.ts'
import { through } from './line.ts'

/** A smooth line through points: cubics whose directions are those of the chords on either side (Catmull & Rom 1974). */
export function curveThrough(points: readonly Point[]): PathCommand[] {
  if (points.length < 3) return through(points)
  const first = points[0]!
  const commands: PathCommand[] = [['M', first.x, first.y]]
  for (let i = 1; i < points.length; i++) {
    const a = points[i - 1]!
    const b = points[i]!
    const before = points[i - 2] ?? a
    const after = points[i + 1] ?? b
    commands.push([
      'C',
      a.x + (b.x - before.x) / 6,
      a.y + (b.y - before.y) / 6,
      b.x - (after.x - a.x) / 6,
      b.y - (after.y - a.y) / 6,
      b.x,
      b.y,
    ])
  }
  return commands
}
