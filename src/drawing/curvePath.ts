import type { Curve } from '../core/geometry/curve.ts'
import { type Piece, pieceCurvaturePerMm, pieceTurningRad, type Place, placeOnPiece } from '../core/geometry/piece.ts'
import type { PathCommand } from './drawing.ts'

export interface Stretch {
  readonly fromMm?: number
  readonly toMm?: number
  /** Distance of the parallel, to the right of the way: inward, for an outline. */
  readonly insetMm?: number
  /** Across the centreline. */
  readonly mirrored?: boolean
}

const CLOSE_MM = 0.002
/** Below this curvature an arc's centre lies so far off that single-precision renderers misplace it; a cubic takes its place. */
const ARC_LEAST_PER_MM = 1 / 20000
const ARC_MOST_RAD = 3

/**
 * A stretch of a curve, or of its parallel, as path commands: straights as lines, arcs as arcs, the rest as cubics that stay
 * within 0.005 mm of it.
 */
export function curveCommands(curve: Curve, stretch: Stretch = {}): PathCommand[] {
  const fromMm = Math.max(stretch.fromMm ?? 0, 0)
  const toMm = Math.min(stretch.toMm ?? curve.lengthMm, curve.lengthMm)
  const inset = stretch.insetMm ?? 0
  const flip = stretch.mirrored === true ? -1 : 1
  const commands: PathCommand[] = []
  const onParallel = ({ point, headingRad }: Place) => ({
    x: point.x + inset * Math.sin(headingRad),
    y: flip * (point.y - inset * Math.cos(headingRad)),
  })
  curve.pieces.forEach((piece, i) => {
    const startMm = curve.startsMm[i]!
    const a = Math.max(fromMm - startMm, 0)
    const b = Math.min(toMm - startMm, piece.lengthMm)
    if (b - a <= 1e-9) return
    const place = (u: number) => placeOnPiece(piece, curve.places[i]!, u)
    const first = onParallel(place(a))
    commands.push([commands.length === 0 ? 'M' : 'L', first.x, first.y])
    const parts = partsOf(piece, a, b)
    for (let part = 1; part <= parts; part++) {
      const u = a + ((b - a) * (part - 1)) / parts
      const v = a + ((b - a) * part) / parts
      const end = onParallel(place(v))
      const k = piece.startCurvaturePerMm
      if (isStraight(piece)) commands.push(['L', end.x, end.y])
      else if (isArc(piece)) commands.push(['A', Math.abs(1 / k - inset), 0, k * flip > 0 ? 0 : 1, end.x, end.y])
      else commands.push(cubic(piece, place(u), place(v), u, v, inset, flip))
    }
  })
  return dropIdleLines(commands)
}

const isStraight = (piece: Piece) => piece.startCurvaturePerMm === 0 && piece.endCurvaturePerMm === 0
const isArc = (piece: Piece) =>
  piece.startCurvaturePerMm === piece.endCurvaturePerMm && Math.abs(piece.startCurvaturePerMm) > ARC_LEAST_PER_MM

function partsOf(piece: Piece, a: number, b: number): number {
  if (isStraight(piece)) return 1
  const bend = Math.max(Math.abs(pieceCurvaturePerMm(piece, a)), Math.abs(pieceCurvaturePerMm(piece, b)))
  const turnRad = bend * (b - a)
  if (isArc(piece)) return Math.max(1, Math.ceil(turnRad / ARC_MOST_RAD))
  // A cubic over a stretch h that turns by p departs from it by about h p^3 / 384.
  const even = Math.ceil((((b - a) * turnRad ** 3) / (384 * CLOSE_MM)) ** 0.25)
  return Math.min(Math.max(1, even, Math.ceil(turnRad / 0.6)), 64)
}

/** A cubic with the curve's ends and directions and the handles of a circle of the same turning: (4/3) tan(p/4) / p of the length. */
function cubic(piece: Piece, start: Place, end: Place, u: number, v: number, inset: number, flip: number): PathCommand {
  const turn = pieceTurningRad(piece, v) - pieceTurningRad(piece, u)
  const handleOf = Math.abs(turn) < 1e-6 ? 1 / 3 : ((4 / 3) * Math.tan(turn / 4)) / turn
  const handle = (v - u - inset * turn) * handleOf
  const at = ({ point, headingRad }: Place) => ({
    x: point.x + inset * Math.sin(headingRad),
    y: point.y - inset * Math.cos(headingRad),
  })
  const p = at(start)
  const q = at(end)
  return [
    'C',
    p.x + handle * Math.cos(start.headingRad),
    flip * (p.y + handle * Math.sin(start.headingRad)),
    q.x - handle * Math.cos(end.headingRad),
    flip * (q.y - handle * Math.sin(end.headingRad)),
    q.x,
    flip * q.y,
  ]
}

/** Without the joining lines between pieces that meet anyway. */
function dropIdleLines(commands: readonly PathCommand[]): PathCommand[] {
  let x = Number.NaN
  let y = Number.NaN
  return commands.filter((command) => {
    if (command[0] === 'Z') return true
    const endX = command.at(-2) as number
    const endY = command.at(-1) as number
    const idle = command[0] === 'L' && Math.hypot(endX - x, endY - y) < 1e-9
    x = endX
    y = endY
    return !idle
  })
}
