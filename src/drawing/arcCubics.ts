import type { Point } from '../core/geometry/point.ts'
import { arcCentre } from './bounds.ts'
import type { PathCommand } from './drawing.ts'

/** A step of a path for writers that know no arcs. */
export type CubicCommand = Exclude<PathCommand, readonly ['A', ...unknown[]]>

const CLOSE_MM = 0.0002
/** A cubic that meets a quarter of a circle at its ends and its middle departs from it by this part of the radius; by the sixth power of the angle (derived). */
const OF_QUARTER = 2.73e-4
const MOST_RAD = Math.PI / 4

/** The same path with its arcs as cubics, each over 45 degrees at most and within 0.0002 mm of its arc. Lines and cubics stay as they are. */
export function arcCubics(commands: readonly PathCommand[]): CubicCommand[] {
  const cubics: CubicCommand[] = []
  let at: Point = { x: 0, y: 0 }
  let start = at
  for (const command of commands) {
    if (command[0] === 'Z') {
      cubics.push(command)
      at = start
      continue
    }
    const end = { x: command.at(-2) as number, y: command.at(-1) as number }
    if (command[0] === 'A') cubics.push(...cubicsOfArc(at, command, end))
    else cubics.push(command)
    if (command[0] === 'M') start = end
    at = end
  }
  return cubics
}

function cubicsOfArc(
  from: Point,
  [, radius, isLong, isClockwise]: readonly ['A', number, 0 | 1, 0 | 1, number, number],
  to: Point,
): CubicCommand[] {
  if (from.x === to.x && from.y === to.y) return []
  const { centre, fromRad, sweepRad, radiusMm } = arcCentre(from, radius, isLong, isClockwise, to)
  const mostRad = Math.min(
    MOST_RAD,
    (Math.PI / 2) * (CLOSE_MM / (OF_QUARTER * Math.max(radiusMm, CLOSE_MM))) ** (1 / 6),
  )
  const steps = Math.max(Math.ceil(Math.abs(sweepRad) / mostRad), 1)
  const stepRad = sweepRad / steps
  const handleMm = (4 / 3) * Math.tan(stepRad / 4) * radiusMm
  const on = (rad: number) => ({ x: centre.x + radiusMm * Math.cos(rad), y: centre.y + radiusMm * Math.sin(rad) })
  return Array.from({ length: steps }, (_, i): CubicCommand => {
    const [a, b] = [fromRad + i * stepRad, fromRad + (i + 1) * stepRad]
    const p = i === 0 ? from : on(a)
    const q = i === steps - 1 ? to : on(b)
    return [
      'C',
      p.x - handleMm * Math.sin(a),
      p.y + handleMm * Math.cos(a),
      q.x + handleMm * Math.sin(b),
      q.y - handleMm * Math.cos(b),
      q.x,
      q.y,
    ]
  })
}
