import type { Point } from '../core/geometry/point.ts'
import type { PathCommand, Shape, Side } from './drawing.ts'

/** A change of place that keeps all lengths: a shift, or a mirror. */
export interface Change {
  readonly point: (point: Point) => Point
  readonly direction: (away: Point) => Point
  readonly isMirror: boolean
  /** Of a direction, clockwise on the sheet from +x. */
  readonly angleRad: (rad: number) => number
  readonly side: (side: Side) => Side
  /** Of a dimension line that runs clear of the drawing on this side. */
  readonly baseMm: (side: Side, baseMm: number) => number
}

/** A shape with its place changed; its letterings stay upright. */
export function changeShape(shape: Shape, change: Change): Shape {
  switch (shape.kind) {
    case 'path':
      return { ...shape, commands: shape.commands.map((command) => changeCommand(command, change)) }
    case 'linear': {
      const { line, side } = shape
      const ends = { from: change.point(shape.from), to: change.point(shape.to), side: change.side(side) }
      return line.way === 'inPlace'
        ? { ...shape, ...ends }
        : { ...shape, ...ends, line: { ...line, baseMm: change.baseMm(side, line.baseMm) } }
    }
    case 'ordinate':
    case 'label':
      return { ...shape, at: change.point(shape.at), away: change.direction(shape.away) }
    case 'radius':
      return { ...shape, centre: change.point(shape.centre), towardRad: change.angleRad(shape.towardRad) }
    case 'angle': {
      const turned = [change.angleRad(shape.fromRad), change.angleRad(shape.toRad)] as const
      const [fromRad, toRad] = change.isMirror ? [turned[1], turned[0]] : turned
      const figureAt = change.isMirror ? 1 - shape.figureAt : shape.figureAt
      return { ...shape, vertex: change.point(shape.vertex), fromRad, toRad, figureAt }
    }
    case 'station':
      return {
        ...shape,
        ticks: shape.ticks.map(({ from, to }) => ({ from: change.point(from), to: change.point(to) })),
        numberAt: change.point(shape.numberAt),
        away: change.direction(shape.away),
      }
  }
}

/** A step of a path with its place changed: in a mirror an arc runs the other way round. */
export function changeCommand(
  command: PathCommand,
  { point, isMirror }: Pick<Change, 'point' | 'isMirror'>,
): PathCommand {
  switch (command[0]) {
    case 'M':
    case 'L': {
      const { x, y } = point({ x: command[1], y: command[2] })
      return [command[0], x, y]
    }
    case 'A': {
      const { x, y } = point({ x: command[4], y: command[5] })
      const clockwise = isMirror ? (command[3] === 1 ? 0 : 1) : command[3]
      return ['A', command[1], command[2], clockwise, x, y]
    }
    case 'C': {
      const a = point({ x: command[1], y: command[2] })
      const b = point({ x: command[3], y: command[4] })
      const { x, y } = point({ x: command[5], y: command[6] })
      return ['C', a.x, a.y, b.x, b.y, x, y]
    }
    default:
      return command
  }
}
