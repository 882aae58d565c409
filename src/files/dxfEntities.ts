import { pathOfEllipse } from '../core/geometry/ellipsePath.ts'
import type { Path, Stroke } from '../core/geometry/path.ts'
import { transformPath } from '../core/geometry/path.ts'
import type { Point } from '../core/geometry/point.ts'
import { pathOfSpline } from '../core/geometry/splinePath.ts'
import type { LeftOutKind } from '../record/drawnFile.ts'
import { type DxfEntity, numberOf, numbersOf } from './dxfGroups.ts'

/** What an entity gives: a path in the file's units, a kind that is not read, or a fault. */
export type DxfShape =
  | { readonly path: Path; readonly isClosed: boolean }
  | { readonly leftOut: LeftOutKind }
  | { readonly problem: 'badEntity' }

const FAULT: DxfShape = { problem: 'badEntity' }
const TILTED: DxfShape = { leftOut: 'tilted' }
/** Heights and tilts below this are none. */
const FLAT = 1e-6

const rad = (deg: number): number => (deg * Math.PI) / 180
const isPoint = ({ x, y }: Point): boolean => Number.isFinite(x) && Number.isFinite(y)
const pointOf = (entity: DxfEntity, code: number): Point => ({
  x: numberOf(entity, code),
  y: numberOf(entity, code + 10),
})

/** The way an entity looks: 1 towards the reader, -1 away, so that it is drawn mirrored; null for any other tilt. */
function facing(entity: DxfEntity): 1 | -1 | null {
  const [x, y, z] = [numberOf(entity, 210, 0), numberOf(entity, 220, 0), numberOf(entity, 230, 1)]
  return Math.abs(x) <= FLAT && Math.abs(y) <= FLAT && z !== 0 ? (z < 0 ? -1 : 1) : null
}

/** A shape given in its own plane, brought into the drawing's: seen from behind, x runs the other way. */
function laidFlat(entity: DxfEntity, path: Path, isClosed: boolean): DxfShape {
  const way = facing(entity)
  if (way === null) return TILTED
  return { path: way === 1 ? path : transformPath(path, { scale: -1, mirrored: true }), isClosed }
}

export function readLine(entity: DxfEntity): DxfShape {
  const [start, to] = [pointOf(entity, 10), pointOf(entity, 11)]
  if (!isPoint(start) || !isPoint(to)) return FAULT
  if (Math.abs(numberOf(entity, 30, 0) - numberOf(entity, 31, 0)) > FLAT) return TILTED
  return { path: { start, strokes: isSame(start, to) ? [] : [{ kind: 'line', to }] }, isClosed: false }
}

/** A whole circle, or an arc from one angle on to another, anticlockwise in degrees. */
export function readArc(entity: DxfEntity, close: number): DxfShape {
  const centre = pointOf(entity, 10)
  const radius = numberOf(entity, 40)
  const whole = entity.type === 'CIRCLE'
  const fromRad = whole ? 0 : rad(numberOf(entity, 50))
  const turn = whole ? 2 * Math.PI : rad(numberOf(entity, 51)) - fromRad
  if (!isPoint(centre) || !(radius > 0) || !Number.isFinite(fromRad + turn)) return FAULT
  const sweepRad = whole ? turn : forward(turn)
  const round = { centre, u: { x: radius, y: 0 }, v: { x: 0, y: radius }, fromRad, sweepRad }
  return laidFlat(entity, pathOfEllipse(round, close), whole || sweepRad === 2 * Math.PI)
}

/** A turn brought to more than none and up to a whole one. */
const forward = (turn: number): number => {
  const part = turn - 2 * Math.PI * Math.floor(turn / (2 * Math.PI))
  return part < 1e-12 ? 2 * Math.PI : part
}

export function readEllipse(entity: DxfEntity, close: number): DxfShape {
  const [centre, u] = [pointOf(entity, 10), pointOf(entity, 11)]
  const way = facing(entity)
  const ratio = numberOf(entity, 40)
  const fromRad = numberOf(entity, 41, 0)
  const turn = numberOf(entity, 42, 2 * Math.PI) - fromRad
  if (!isPoint(centre) || !isPoint(u) || !(ratio > 0) || !Number.isFinite(fromRad + turn)) return FAULT
  if (way === null || Math.abs(numberOf(entity, 31, 0)) > FLAT) return TILTED
  if (!(Math.hypot(u.x, u.y) > 0)) return FAULT
  const sweepRad = Math.abs(turn - 2 * Math.PI) < 1e-6 ? 2 * Math.PI : forward(turn)
  const v = { x: -u.y * ratio * way, y: u.x * ratio * way }
  return { path: pathOfEllipse({ centre, u, v, fromRad, sweepRad }, close), isClosed: sweepRad === 2 * Math.PI }
}

interface Vertex extends Point {
  readonly bulge: number
}

/** Vertices with bulges, of the light kind (one list of groups) or the old (an entity each). */
export function readPolyline(entity: DxfEntity): DxfShape {
  const flags = numberOf(entity, 70, 0)
  const isOld = entity.type === 'POLYLINE'
  if (isOld && (flags & (16 | 64)) !== 0) return { leftOut: 'other' }
  if (isOld && (flags & 8) !== 0 && !isLevel(entity.vertices.map((vertex) => numberOf(vertex, 30, 0)))) return TILTED
  const vertices = isOld ? oldVertices(entity) : lightVertices(entity)
  if (!vertices.every((vertex) => isPoint(vertex) && Number.isFinite(vertex.bulge))) return FAULT
  const [start] = vertices
  if (start === undefined) return FAULT
  const isClosed = (flags & 1) !== 0
  const strokes = vertices.flatMap((from, i): Stroke[] => {
    const to = vertices[i + 1] ?? (isClosed ? start : from)
    if (isSame(from, to)) return []
    const end = { x: to.x, y: to.y }
    return [from.bulge === 0 ? { kind: 'line', to: end } : { kind: 'arc', to: end, bulge: from.bulge }]
  })
  return laidFlat(entity, { start: { x: start.x, y: start.y }, strokes }, isClosed)
}

const isLevel = (heights: readonly number[]): boolean => heights.every((z) => Math.abs(z - heights[0]!) <= FLAT)
const isSame = (a: Point, b: Point): boolean => a.x === b.x && a.y === b.y

/** Without the frame of control points a smoothed polyline keeps beside its own. */
const oldVertices = (entity: DxfEntity): Vertex[] =>
  entity.vertices
    .filter((vertex) => (numberOf(vertex, 70, 0) & 16) === 0)
    .map((vertex) => ({ ...pointOf(vertex, 10), bulge: numberOf(vertex, 42, 0) }))

function lightVertices({ groups }: DxfEntity): Vertex[] {
  const found: { x: number; y: number; bulge: number }[] = []
  for (const { code, value } of groups) {
    const number = value === '' ? Number.NaN : Number(value)
    const last = found.at(-1)
    if (code === 10) found.push({ x: number, y: Number.NaN, bulge: 0 })
    else if (code === 20 && last !== undefined) last.y = number
    else if (code === 42 && last !== undefined) last.bulge = number
  }
  return found
}

export function readSpline(entity: DxfEntity, close: number): DxfShape {
  const [xs, ys, zs] = [numbersOf(entity, 10), numbersOf(entity, 20), numbersOf(entity, 30)]
  if (xs.length === 0 && numbersOf(entity, 11).length > 0) return { leftOut: 'fitSpline' }
  if (!isLevel(zs)) return TILTED
  if (xs.length !== ys.length || !xs.every((x, i) => isPoint({ x, y: ys[i]! }))) return FAULT
  const weights = numbersOf(entity, 41)
  const path = pathOfSpline(
    {
      degree: numberOf(entity, 71, 3),
      knots: numbersOf(entity, 40),
      points: xs.map((x, i) => ({ x, y: ys[i]! })),
      weights: weights.length === 0 ? null : weights,
    },
    close,
  )
  return path === null ? FAULT : { path, isClosed: (numberOf(entity, 70, 0) & 1) !== 0 }
}
