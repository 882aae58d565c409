import svgpath from 'svgpath'
import { type EllipseArc, pathOfEllipse } from '../core/geometry/ellipsePath.ts'
import type { Path, Stroke } from '../core/geometry/path.ts'
import { movePathEnd } from '../core/geometry/path.ts'
import type { Point } from '../core/geometry/point.ts'
import { type Affine, movePoint, moveVector } from './affine.ts'
import { MOST_STROKES } from './drawnPaths.ts'

export interface SubPath {
  readonly path: Path
  readonly isClosed: boolean
}

const NUMBERS_OF: Readonly<Record<string, number>> = { m: 2, l: 2, h: 1, v: 1, c: 6, s: 4, q: 4, t: 2, a: 7 }

/** How many strokes path data asks for at the least: told before it is read, so that reading it is bounded. */
function countStrokes(data: string): number {
  let count = 0
  for (const [, command = '', rest = ''] of data.matchAll(/([a-df-zA-DF-Z])([^a-df-zA-DF-Z]*)/g)) {
    const numbers = rest.match(/(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?/g)?.length ?? 0
    count += numbers / (NUMBERS_OF[command.toLowerCase()] ?? 1)
  }
  return count
}

/** Ends of a drawn circle or the like that differ by rounding. */
const TOGETHER = 1e-6

/**
 * SVG path data as paths, one for each stretch drawn without lifting the pen, moved by a transform. Lines, cubics and (raised) quadratics
 * exactly, arcs as arcs where they end up round and as cubics within `close` where not.
 */
export function readPathData(data: string, affine: Affine, close: number): readonly SubPath[] | 'badPath' | 'tooMany' {
  if (countStrokes(data) > MOST_STROKES) return 'tooMany'
  const parsed = svgpath(data) as ReturnType<typeof svgpath> & { readonly err: string }
  if (parsed.err !== '') return 'badPath'
  const found: SubPath[] = []
  let strokes: Stroke[] = []
  let start: Point = { x: 0, y: 0 }
  const move = (p: Point) => movePoint(affine, p)
  let isWrong = false
  const lift = (isClosed: boolean) => {
    const first = move(start)
    const last = strokes.at(-1)?.to
    if (last !== undefined) {
      const gap = Math.hypot(last.x - first.x, last.y - first.y)
      if (isClosed && gap > TOGETHER) strokes.push({ kind: 'line', to: first })
      found.push({ path: { start: first, strokes }, isClosed: isClosed || gap <= TOGETHER })
    }
    strokes = []
  }
  parsed
    .abs()
    .unshort()
    .iterate((segment, _, x, y) => {
      const at = { x, y }
      const line = (to: Point) => {
        if (to.x !== x || to.y !== y) strokes.push({ kind: 'line', to: move(to) })
      }
      switch (segment[0]) {
        case 'M':
          lift(false)
          start = { x: segment[1], y: segment[2] }
          break
        case 'Z':
        case 'z':
          lift(true)
          break
        case 'L':
          line({ x: segment[1], y: segment[2] })
          break
        case 'H':
          line({ x: segment[1], y })
          break
        case 'V':
          line({ x, y: segment[1] })
          break
        case 'C': {
          const [, ax, ay, bx, by, cx, cy] = segment
          const [control1, control2, to] = [move({ x: ax, y: ay }), move({ x: bx, y: by }), move({ x: cx, y: cy })]
          strokes.push({ kind: 'cubic', control1, control2, to })
          break
        }
        case 'Q': {
          const [, ax, ay, bx, by] = segment
          const [from, middle, to] = [move(at), move({ x: ax, y: ay }), move({ x: bx, y: by })]
          strokes.push({ kind: 'cubic', control1: twoThirds(from, middle), control2: twoThirds(to, middle), to })
          break
        }
        case 'A': {
          const to = { x: segment[6], y: segment[7] }
          const arc = arcThrough(at, segment)
          if (arc === null) line(to)
          else strokes.push(...movePathEnd(pathOfEllipse(moveEllipse(affine, arc), close), move(to)).strokes)
          break
        }
        default:
          isWrong = true
      }
    })
  if (isWrong) return 'badPath'
  lift(false)
  return found
}

/** A quadratic raised to a cubic: its handles reach two thirds of the way to its one control point. */
const twoThirds = (from: Point, to: Point): Point => ({
  x: from.x + (2 * (to.x - from.x)) / 3,
  y: from.y + (2 * (to.y - from.y)) / 3,
})

/** An ellipse moved by a transform: its two radii go along. */
export const moveEllipse = (affine: Affine, { centre, u, v, fromRad, sweepRad }: EllipseArc): EllipseArc => ({
  centre: movePoint(affine, centre),
  u: moveVector(affine, u),
  v: moveVector(affine, v),
  fromRad,
  sweepRad,
})

type ArcSegment = readonly ['A', number, number, number, number, number, number, number]

/** The arc of an A command by its centre; null where it is a straight line. Source: SVG 1.1, appendix F.6. */
function arcThrough(
  from: Point,
  [, drawnX, drawnY, turnDeg, isLarge, isSweep, toX, toY]: ArcSegment,
): EllipseArc | null {
  const rx = Math.abs(drawnX)
  const ry = Math.abs(drawnY)
  const to = { x: toX, y: toY }
  if (!(rx > 0 && ry > 0) || (from.x === to.x && from.y === to.y)) return null
  const turn = (turnDeg * Math.PI) / 180
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)]
  const halfX = (from.x - to.x) / 2
  const halfY = (from.y - to.y) / 2
  // Half the chord in the frame in which the ellipse is the unit circle.
  const p = (cos * halfX + sin * halfY) / rx
  const q = (cos * halfY - sin * halfX) / ry
  const grow = Math.max(1, Math.hypot(p, q))
  const off = Math.sqrt(Math.max(0, 1 / ((p * p + q * q) / grow ** 2) - 1)) * (isLarge === isSweep ? -1 : 1)
  const [unitP, unitQ] = [p / grow, q / grow]
  const [centreP, centreQ] = [off * unitQ, -off * unitP]
  const u = { x: grow * rx * cos, y: grow * rx * sin }
  const v = { x: -grow * ry * sin, y: grow * ry * cos }
  const fromRad = Math.atan2(unitQ - centreQ, unitP - centreP)
  const toRad = Math.atan2(-unitQ - centreQ, -unitP - centreP)
  const sweep = toRad - fromRad
  const sweepRad = isSweep === 1 ? (sweep < 0 ? sweep + 2 * Math.PI : sweep) : sweep > 0 ? sweep - 2 * Math.PI : sweep
  const centre = {
    x: (from.x + to.x) / 2 + u.x * centreP + v.x * centreQ,
    y: (from.y + to.y) / 2 + u.y * centreP + v.y * centreQ,
  }
  return { centre, u, v, fromRad, sweepRad }
}
