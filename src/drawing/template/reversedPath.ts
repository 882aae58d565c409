import type { Point } from '../../core/geometry/point.ts'
import type { PathCommand } from '../drawing.ts'

/** An open path gone along the other way. */
export function reversedPath(commands: readonly PathCommand[]): PathCommand[] {
  const steps = commands.filter((command) => command[0] !== 'Z')
  const endOf = (i: number): Point => ({ x: steps[i]!.at(-2) as number, y: steps[i]!.at(-1) as number })
  if (steps.length === 0) return []
  const last = endOf(steps.length - 1)
  const back = steps.slice(1).map((command, i): PathCommand => {
    const { x, y } = endOf(i)
    if (command[0] === 'A') return ['A', command[1], command[2], command[3] === 1 ? 0 : 1, x, y]
    if (command[0] === 'C') return ['C', command[3], command[4], command[1], command[2], x, y]
    return ['L', x, y]
  })
  return [['M', last.x, last.y], ...back.toReversed()]
}
