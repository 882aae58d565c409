import type { Point } from '../../core/geometry/point.ts'
import { type Cubic, cubicSteps } from '../../drawing/cubicSteps.ts'
import type { PathCommand } from '../../drawing/drawing.ts'
import { arcBetween, type DxfArc, isWholeCircle } from './dxfArc.ts'

/** What a path becomes in a DXF, y up. */
export type DxfShape =
  | { readonly kind: 'run'; readonly points: readonly Point[]; readonly isClosed: boolean }
  | ({ readonly kind: 'arc' } & DxfArc)
  | { readonly kind: 'circle'; readonly centre: Point; readonly radiusMm: number }
  | { readonly kind: 'cubic'; readonly cubic: Cubic }

/** How cubics are written: as they are, or as straight lines no further from them than this. */
export type DxfCurves = { readonly kind: 'splines' } | { readonly kind: 'polylines'; readonly closeMm: number }

const SAME_MM = 1e-6
const isSame = (a: Point, b: Point): boolean => Math.hypot(a.x - b.x, a.y - b.y) < SAME_MM

/** The shapes of a path whose y runs down: straight lines in runs, arcs, whole circles, cubics. */
export function dxfShapes(commands: readonly PathCommand[], curves: DxfCurves): DxfShape[] {
  return partsOf(commands).flatMap((part) => shapesOfPart(part, curves))
}

interface Part {
  readonly commands: readonly PathCommand[]
  readonly isClosed: boolean
}

/** The stretches a path is drawn in without lifting the pen. */
function partsOf(commands: readonly PathCommand[]): Part[] {
  const parts: { commands: PathCommand[]; isClosed: boolean }[] = []
  for (const command of commands) {
    const last = parts.at(-1)
    if (command[0] === 'M') parts.push({ commands: [command], isClosed: false })
    else if (last === undefined) continue
    else if (command[0] === 'Z') last.isClosed = true
    else if (last.isClosed) parts.push({ commands: [last.commands[0]!, command], isClosed: false })
    else last.commands.push(command)
  }
  return parts
}

function shapesOfPart({ commands, isClosed }: Part, curves: DxfCurves): DxfShape[] {
  const shapes: DxfShape[] = []
  let run: Point[] = []
  const endRun = () => {
    if (run.length > 1) shapes.push({ kind: 'run', points: run, isClosed: false })
    run = []
  }
  const [first] = commands
  if (first === undefined || first[0] !== 'M') return []
  const start = up(first[1], first[2])
  let at = start
  const goTo = (points: readonly Point[]) => {
    if (run.length === 0) run = [at]
    for (const point of points) if (!isSame(point, run.at(-1)!)) run.push(point)
  }
  for (const command of commands.slice(1)) {
    switch (command[0]) {
      case 'L': {
        const end = up(command[1], command[2])
        goTo([end])
        at = end
        break
      }
      case 'A': {
        endRun()
        const end = up(command[4], command[5])
        // A turn that is clockwise on a sheet with y down stays so to the eye.
        const arc = arcBetween(at, end, command[1], command[2] === 1, command[3] === 1)
        if (arc !== null) shapes.push({ kind: 'arc', ...arc })
        at = end
        break
      }
      case 'C': {
        const end = up(command[5], command[6])
        const cubic: Cubic = [at, up(command[1], command[2]), up(command[3], command[4]), end]
        if (curves.kind === 'polylines') goTo(cubicSteps(cubic, curves.closeMm))
        else {
          endRun()
          shapes.push({ kind: 'cubic', cubic })
        }
        at = end
        break
      }
      default:
    }
  }
  if (isClosed && !isSame(at, start)) {
    goTo([start])
    at = start
  }
  endRun()
  return closedUp(shapes, isSame(at, start))
}

/** A part that comes back to its start: one run of lines is a closed one, arcs of one centre a circle. */
function closedUp(shapes: readonly DxfShape[], comesBack: boolean): DxfShape[] {
  const [first] = shapes
  if (first === undefined || !comesBack) return [...shapes]
  if (first.kind === 'run' && shapes.length === 1 && first.points.length > 3)
    return [{ ...first, points: first.points.slice(0, -1), isClosed: true }]
  const arcs = shapes.filter((shape) => shape.kind === 'arc')
  return arcs.length === shapes.length && isWholeCircle(arcs)
    ? [{ kind: 'circle', centre: arcs[0]!.centre, radiusMm: arcs[0]!.radiusMm }]
    : [...shapes]
}

/** The one place where a plot is turned from y down to y up. */
export const up = (x: number, y: number): Point => ({ x, y: -y })
