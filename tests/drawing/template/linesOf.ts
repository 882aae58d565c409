import type { Point } from '../../../src/core/geometry/point.ts'
import type { Drawing, LineRole, PathShape } from '../../../src/drawing/drawing.ts'
import { svgPath } from '../../../src/drawing/svgPath.ts'
import { pointsAlong } from '../svgArc.ts'

/** The paths of one role. */
export const pathsOf = (drawing: Drawing, role: LineRole): PathShape[] =>
  drawing.shapes.filter((shape): shape is PathShape => shape.kind === 'path' && shape.role === role)

/** The corners of a path, its start first; of arcs and curves their ends. */
export const cornersOf = ({ commands }: PathShape): Point[] =>
  commands.flatMap((step) => (step[0] === 'Z' ? [] : [{ x: step.at(-2) as number, y: step.at(-1) as number }]))

/** Points along a path as its text would be read by another program. */
export const pointsOf = ({ commands }: PathShape, perStep = 16): Point[] => pointsAlong(svgPath(commands, 9), perStep)

/** Where a straight path crosses a height of the sheet. */
export function crossingAt(path: PathShape, y: number): number {
  const [a, b] = cornersOf(path)
  return a!.x + ((b!.x - a!.x) * (y - a!.y)) / (b!.y - a!.y)
}
