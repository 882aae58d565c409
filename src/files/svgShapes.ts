import { pathOfEllipse } from '../core/geometry/ellipsePath.ts'
import type { Path, Stroke } from '../core/geometry/path.ts'
import { joinPaths } from '../core/geometry/path.ts'
import type { Point } from '../core/geometry/point.ts'
import { type Affine, movePoint } from './affine.ts'
import { readLength, readNumbers } from './svgLength.ts'
import { moveEllipse, readPathData, type SubPath } from './svgPathData.ts'

/** The attributes of an element, by name. */
export type Attributes = Readonly<Record<string, string>>

export const SHAPES: ReadonlySet<string> = new Set(['path', 'line', 'polyline', 'polygon', 'circle', 'ellipse', 'rect'])

/** A shape element as paths, moved by a transform; curves within `close` where they are not exact. */
export function readShape(
  name: string,
  attributes: Attributes,
  affine: Affine,
  close: number,
): readonly SubPath[] | 'badPath' | 'tooMany' {
  if (name === 'path') return attributes['d'] === undefined ? [] : readPathData(attributes['d'], affine, close)
  const points = name === 'polyline' || name === 'polygon' ? readNumbers(attributes['points'] ?? '') : []
  if (points === null || points.length % 2 === 1) return 'badPath'
  if (name === 'polyline' || name === 'polygon') return polyline(points, name === 'polygon', affine)
  const lengths = readLengths(attributes)
  if (lengths === null) return 'badPath'
  const of = (key: string) => lengths[key] ?? 0
  if (name === 'line') return polyline([of('x1'), of('y1'), of('x2'), of('y2')], false, affine)
  if (name === 'rect') return rectangle(lengths, affine, close)
  const rx = name === 'circle' ? of('r') : (lengths['rx'] ?? of('ry'))
  const ry = name === 'circle' ? of('r') : (lengths['ry'] ?? of('rx'))
  if (!(rx > 0 && ry > 0)) return []
  const centre = { x: of('cx'), y: of('cy') }
  return [{ path: quarterTurns(centre, rx, ry, 0, 4, affine, close), isClosed: true }]
}

const LENGTHS = ['x', 'y', 'width', 'height', 'x1', 'y1', 'x2', 'y2', 'cx', 'cy', 'r', 'rx', 'ry']

/** The lengths an element gives, by name; null where one of them cannot be read. What is auto is not given. */
function readLengths(attributes: Attributes): Readonly<Record<string, number>> | null {
  const found: Record<string, number> = {}
  for (const key of LENGTHS) {
    const text = attributes[key]
    if (text === undefined || text === 'auto') continue
    const length = readLength(text)
    if (length === null) return null
    found[key] = length
  }
  return found
}

function polyline(numbers: readonly number[], isClosed: boolean, affine: Affine): SubPath[] {
  const points: Point[] = []
  for (let i = 0; i + 1 < numbers.length; i += 2) {
    const [x, y] = [numbers[i]!, numbers[i + 1]!]
    if (points.length === 0 || x !== numbers[i - 2] || y !== numbers[i - 1]) points.push(movePoint(affine, { x, y }))
  }
  const [start, ...others] = points
  if (start === undefined || others.length === 0) return []
  const last = others.at(-1)!
  const meets = last.x === start.x && last.y === start.y
  const strokes = others.map((to): Stroke => ({ kind: 'line', to }))
  if (isClosed && !meets) strokes.push({ kind: 'line', to: start })
  return [{ path: { start, strokes }, isClosed: isClosed || meets }]
}

/** A stretch of an upright ellipse, in quarters from that at +x on towards +y. */
function quarterTurns(
  centre: Point,
  rx: number,
  ry: number,
  first: number,
  count: number,
  affine: Affine,
  close: number,
): Path {
  const upright = { centre, u: { x: rx, y: 0 }, v: { x: 0, y: ry } }
  const [fromRad, sweepRad] = [(first * Math.PI) / 2, (count * Math.PI) / 2]
  return pathOfEllipse(moveEllipse(affine, { ...upright, fromRad, sweepRad }), close)
}

/** Source: SVG 1.1, section 9.2: where it starts, and how its corners are rounded. */
function rectangle(lengths: Readonly<Record<string, number>>, affine: Affine, close: number): SubPath[] {
  const { x = 0, y = 0, width = 0, height = 0 } = lengths
  if (!(width > 0 && height > 0)) return []
  const rx = Math.min(lengths['rx'] ?? lengths['ry'] ?? 0, width / 2)
  const ry = Math.min(lengths['ry'] ?? lengths['rx'] ?? 0, height / 2)
  const [right, bottom] = [x + width, y + height]
  if (!(rx > 0 && ry > 0)) return polyline([x, y, right, y, right, bottom, x, bottom], true, affine)
  const corners = [
    { x: right - rx, y: y + ry },
    { x: right - rx, y: bottom - ry },
    { x: x + rx, y: bottom - ry },
    { x: x + rx, y: y + ry },
  ]
  const start = movePoint(affine, { x: x + rx, y })
  const path = corners.reduce(
    (drawn: Path, corner, i) => {
      const round = quarterTurns(corner, rx, ry, i + 3, 1, affine, close)
      const side: Path = { start, strokes: [...drawn.strokes, { kind: 'line', to: round.start }] }
      return joinPaths(side, round)
    },
    { start, strokes: [] },
  )
  return [{ path, isClosed: true }]
}
