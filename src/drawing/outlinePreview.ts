import { type Path, pathBounds, pathEnd, strokesFrom } from '../core/geometry/path.ts'
import type { Point } from '../core/geometry/point.ts'
import { distanceMm } from '../core/geometry/point.ts'
import type { PathCommand } from './drawing.ts'
import { svgNumber, svgPath } from './svgPath.ts'

/** The halves of a drawn outline ready to be looked at, lying as in the plan: neck to the right, treble below. Places in mm, y down. */
export interface OutlinePreview {
  readonly viewBox: string
  readonly bass: string
  readonly treble: string
  readonly centreline: string
  /** Height of the lettering, and where each word stands. */
  readonly letteringMm: number
  readonly tailAt: Point
  readonly neckAt: Point
  readonly bassAt: Point
  readonly trebleAt: Point
}

/** Room round the body, and lettering, as shares of its length. */
const ROOM_SHARE = 0.05
const LETTERING_SHARE = 0.045

/** Draws two halves that run from the tail (0, 0) to the neck, y the half-width; treble null: the bass half mirrored. */
export function outlinePreview(bass: Path, treble: Path | null): OutlinePreview {
  const lengthMm = Math.max(pathEnd(bass).x, 1)
  const bassMm = pathBounds(bass).maxY
  const trebleMm = pathBounds(treble ?? bass).maxY
  const room = ROOM_SHARE * lengthMm
  const letteringMm = LETTERING_SHARE * lengthMm
  const box = [-room, -bassMm - room, lengthMm + 2 * room, bassMm + trebleMm + 2 * room]
  const middle = 0.28 * lengthMm
  return {
    viewBox: box.map((value) => svgNumber(value, 2)).join(' '),
    bass: svgPath(halfCommands(bass, -1), 2),
    treble: svgPath(halfCommands(treble ?? bass, 1), 2),
    centreline: svgPath(
      [
        ['M', -room, 0],
        ['L', lengthMm + room, 0],
      ],
      2,
    ),
    letteringMm,
    tailAt: { x: room, y: -letteringMm / 2 },
    neckAt: { x: lengthMm - room, y: -letteringMm / 2 },
    bassAt: { x: middle, y: -bassMm / 2 },
    trebleAt: { x: middle, y: trebleMm / 2 },
  }
}

/** A path with its own y turned by the sign: lines, arcs and cubics as they are. */
function halfCommands(path: Path, sign: 1 | -1): PathCommand[] {
  const at = ({ x, y }: Point) => [x, sign * y] as const
  return [
    ['M', ...at(path.start)],
    ...strokesFrom(path).map(({ from, stroke }): PathCommand => {
      if (stroke.kind === 'cubic') return ['C', ...at(stroke.control1), ...at(stroke.control2), ...at(stroke.to)]
      if (stroke.kind === 'line' || stroke.bulge === 0) return ['L', ...at(stroke.to)]
      const size = Math.abs(stroke.bulge)
      const radiusMm = (distanceMm(from, stroke.to) * (1 + size * size)) / (4 * size)
      return ['A', radiusMm, size > 1 ? 1 : 0, stroke.bulge * sign > 0 ? 1 : 0, ...at(stroke.to)]
    }),
  ]
}
