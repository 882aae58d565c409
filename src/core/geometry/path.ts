import type { Point } from './point.ts'
import { distanceMm } from './point.ts'
import { reverseStroke, strokeAt, strokeBounds, strokeLengthMm, withEnd, withStart } from './stroke.ts'

/** One stroke of a drawn path, from where the stroke before it ended. */
export type Stroke =
  | { readonly kind: 'line'; readonly to: Point }
  /** Bulge: tan(sweep/4), positive turning left (anticlockwise), as in DXF. A whole circle takes two. */
  | { readonly kind: 'arc'; readonly to: Point; readonly bulge: number }
  | { readonly kind: 'cubic'; readonly control1: Point; readonly control2: Point; readonly to: Point }

/** A path as it was drawn: plain data, nothing derived. Millimetres, y up. */
export interface Path {
  readonly start: Point
  readonly strokes: readonly Stroke[]
}

/** A place on a path: which stroke, and its parameter there, 0 to 1. */
export interface PathPlace {
  readonly stroke: number
  readonly t: number
}

export interface Bounds {
  readonly minX: number
  readonly minY: number
  readonly maxX: number
  readonly maxY: number
}

/** Scaled, then perhaps mirrored in the x axis, then turned anticlockwise, then shifted. What is left out changes nothing. */
export interface Similarity {
  readonly scale?: number
  readonly mirrored?: boolean
  readonly rotationRad?: number
  readonly shift?: Point
}

export const pathEnd = (path: Path): Point => path.strokes.at(-1)?.to ?? path.start

/** Where stroke i starts. */
export const strokeStart = (path: Path, i: number): Point => (i <= 0 ? path.start : path.strokes[i - 1]!.to)

/** Each stroke with where it starts, in order. */
export const strokesFrom = (path: Path): { readonly from: Point; readonly stroke: Stroke }[] =>
  path.strokes.map((stroke, i) => ({ from: strokeStart(path, i), stroke }))

export const reversePath = (path: Path): Path => ({
  start: pathEnd(path),
  strokes: strokesFrom(path)
    .map(({ from, stroke }) => reverseStroke(from, stroke))
    .reverse(),
})

export function transformPath(path: Path, similarity: Similarity): Path {
  const { scale = 1, mirrored = false, rotationRad = 0, shift = { x: 0, y: 0 } } = similarity
  const cos = scale * Math.cos(rotationRad)
  const sin = scale * Math.sin(rotationRad)
  const flip = mirrored ? -1 : 1
  const move = ({ x, y }: Point): Point => ({
    x: shift.x + cos * x - sin * flip * y,
    y: shift.y + sin * x + cos * flip * y,
  })
  return {
    start: move(path.start),
    strokes: path.strokes.map((stroke): Stroke => {
      const to = move(stroke.to)
      if (stroke.kind === 'line') return { kind: 'line', to }
      if (stroke.kind === 'arc') return { kind: 'arc', to, bulge: flip * stroke.bulge }
      return { kind: 'cubic', control1: move(stroke.control1), control2: move(stroke.control2), to }
    }),
  }
}

/** One path after the other; the second is moved at its start by what is left between them. */
export function joinPaths(first: Path, second: Path): Path {
  return { start: first.start, strokes: [...first.strokes, ...movePathStart(second, pathEnd(first)).strokes] }
}

/** The path with its first stroke drawn over to another start. */
export function movePathStart(path: Path, start: Point): Path {
  const [first, ...rest] = path.strokes
  return first === undefined
    ? { start, strokes: [] }
    : { start, strokes: [withStart(path.start, first, start), ...rest] }
}

/** The path with its last stroke drawn over to another end. */
export function movePathEnd(path: Path, end: Point): Path {
  const last = path.strokes.at(-1)
  return last === undefined ? path : { start: path.start, strokes: [...path.strokes.slice(0, -1), withEnd(last, end)] }
}

/** Length of the whole path, mm: lines and arcs in closed form, cubics to about 1e-9 of their length. */
export const pathLengthMm = (path: Path): number =>
  strokesFrom(path).reduce((sum, { from, stroke }) => sum + strokeLengthMm(from, stroke), 0)

/** The point at a place; a place outside the path falls to its ends. */
export function pointAt(path: Path, { stroke: i, t }: PathPlace): Point {
  const stroke = path.strokes[i]
  if (stroke === undefined) return i < 0 ? path.start : pathEnd(path)
  return strokeAt(strokeStart(path, i), stroke, Math.min(Math.max(t, 0), 1))
}

/** The smallest upright box round the path, to rounding. */
export function pathBounds(path: Path): Bounds {
  const { x, y } = path.start
  return strokesFrom(path)
    .map(({ from, stroke }) => strokeBounds(from, stroke))
    .reduce(
      (all, one) => ({
        minX: Math.min(all.minX, one.minX),
        minY: Math.min(all.minY, one.minY),
        maxX: Math.max(all.maxX, one.maxX),
        maxY: Math.max(all.maxY, one.maxY),
      }),
      { minX: x, minY: y, maxX: x, maxY: y },
    )
}

/** Whether the ends meet within this distance. */
export const endsMeet = (path: Path, withinMm: number): boolean => distanceMm(path.start, pathEnd(path)) <= withinMm
