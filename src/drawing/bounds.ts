import type { Point } from '../core/geometry/point.ts'
import type { Bounds, PathCommand, Shape } from './drawing.ts'

/** One by one: there may be more points than a call takes arguments. */
export function boundsOf(points: readonly Point[]): Bounds {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity]
  for (const { x, y } of points) {
    minX = Math.min(minX, x)
    minY = Math.min(minY, y)
    maxX = Math.max(maxX, x)
    maxY = Math.max(maxY, y)
  }
  return { minX, minY, maxX, maxY }
}

export const around = (a: Bounds, b: Bounds): Bounds => ({
  minX: Math.min(a.minX, b.minX),
  minY: Math.min(a.minY, b.minY),
  maxX: Math.max(a.maxX, b.maxX),
  maxY: Math.max(a.maxY, b.maxY),
})

export const widthOf = (bounds: Bounds): number => bounds.maxX - bounds.minX
export const heightOf = (bounds: Bounds): number => bounds.maxY - bounds.minY

/** Whether two boxes share more than an edge. */
export const overlap = (a: Bounds, b: Bounds): boolean =>
  a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY

/** The box round all paths of a drawing, never without size. Cubics are held by their handles. */
export function shapesBounds(shapes: readonly Shape[]): Bounds {
  const points = shapes.flatMap((shape) => (shape.kind === 'path' ? pathPoints(shape.commands) : []))
  if (points.length === 0) return { minX: 0, minY: 0, maxX: 1, maxY: 1 }
  const { minX, minY, maxX, maxY } = boundsOf(points)
  return { minX, minY, maxX: Math.max(maxX, minX + 1), maxY: Math.max(maxY, minY + 1) }
}

/** Points that hold a path between them: its ends, handles, and where an arc reaches furthest. */
function pathPoints(commands: readonly PathCommand[]): Point[] {
  const points: Point[] = []
  let at: Point = { x: 0, y: 0 }
  for (const command of commands) {
    if (command[0] === 'Z') continue
    const end = { x: command.at(-2) as number, y: command.at(-1) as number }
    if (command[0] === 'C') points.push({ x: command[1], y: command[2] }, { x: command[3], y: command[4] })
    if (command[0] === 'A') points.push(...furthestOnArc(at, command[1], command[2], command[3], end))
    points.push(end)
    at = end
  }
  return points
}

/** The centre of an arc given by its ends (SVG 1.1, appendix F.6.5, for circles), and its sweep, positive clockwise on the sheet. */
export function arcCentre(
  from: Point,
  radiusMm: number,
  longWay: 0 | 1,
  clockwise: 0 | 1,
  to: Point,
): { centre: Point; fromRad: number; sweepRad: number; radiusMm: number } {
  const half = Math.hypot(to.x - from.x, to.y - from.y) / 2
  const radius = Math.max(radiusMm, half)
  const off = Math.sqrt(Math.max(radius * radius - half * half, 0)) * (longWay === clockwise ? -1 : 1)
  const scale = half === 0 ? 0 : off / (2 * half)
  const centre = {
    x: (from.x + to.x) / 2 - scale * (to.y - from.y),
    y: (from.y + to.y) / 2 + scale * (to.x - from.x),
  }
  const fromRad = Math.atan2(from.y - centre.y, from.x - centre.x)
  const toRad = Math.atan2(to.y - centre.y, to.x - centre.x)
  const turn = 2 * Math.PI
  const ahead = (((toRad - fromRad) % turn) + turn) % turn
  return { centre, fromRad, sweepRad: clockwise === 1 ? ahead : ahead - turn, radiusMm: radius }
}

function furthestOnArc(from: Point, radiusMm: number, longWay: 0 | 1, clockwise: 0 | 1, to: Point): Point[] {
  if (from.x === to.x && from.y === to.y) return []
  const arc = arcCentre(from, radiusMm, longWay, clockwise, to)
  const low = Math.min(arc.fromRad, arc.fromRad + arc.sweepRad)
  const high = Math.max(arc.fromRad, arc.fromRad + arc.sweepRad)
  const points: Point[] = []
  for (let n = Math.ceil(low / (Math.PI / 2)); n * (Math.PI / 2) <= high; n++) {
    const at = n * (Math.PI / 2)
    points.push({ x: arc.centre.x + arc.radiusMm * Math.cos(at), y: arc.centre.y + arc.radiusMm * Math.sin(at) })
  }
  return points
}
