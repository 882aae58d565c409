import type { Point } from '../../../src/core/geometry/point.ts'
import type { Drawing, LineRole } from '../../../src/drawing/drawing.ts'
import { svgPath } from '../../../src/drawing/svgPath.ts'
import { pointsAlong } from '../svgArc.ts'

/** The paths of one role as points, read from the text of each path; where they begin among them. */
export const linesOf = ({ shapes }: Drawing, role: LineRole, perStep = 16): Point[][] =>
  shapes.flatMap((shape) => {
    if (shape.kind !== 'path' || shape.role !== role) return []
    const [first] = shape.commands
    const start = first?.[0] === 'M' ? [{ x: first[1], y: first[2] }] : []
    return [[...start, ...pointsAlong(svgPath(shape.commands, 9), perStep)]]
  })

/** The line to cut, as points. */
export const cutLine = (drawing: Drawing, perStep = 16): Point[] => linesOf(drawing, 'cut', perStep)[0] ?? []

const CELL_MM = 4

/** A great many points, asked for the nearest one: brute force over those in the squares around, and over all where they hold none. */
export function nearestIn(points: readonly Point[]): (at: Point) => number {
  const cells = new Map<string, Point[]>()
  const keyOf = (i: number, j: number) => `${i} ${j}`
  for (const point of points) {
    const key = keyOf(Math.floor(point.x / CELL_MM), Math.floor(point.y / CELL_MM))
    const cell = cells.get(key)
    if (cell === undefined) cells.set(key, [point])
    else cell.push(point)
  }
  return ({ x, y }) => {
    const [i, j] = [Math.floor(x / CELL_MM), Math.floor(y / CELL_MM)]
    for (let ring = 1; ring < 40; ring++) {
      let least = Number.POSITIVE_INFINITY
      for (let a = i - ring; a <= i + ring; a++)
        for (let b = j - ring; b <= j + ring; b++)
          for (const point of cells.get(keyOf(a, b)) ?? [])
            least = Math.min(least, Math.hypot(point.x - x, point.y - y))
      // What is not in these squares lies further off than the ring is wide.
      if (least <= ring * CELL_MM) return least
    }
    return Number.POSITIVE_INFINITY
  }
}
