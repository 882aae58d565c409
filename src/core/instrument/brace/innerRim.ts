import { type Curve, insetPoint } from '../../geometry/curve.ts'
import { pieceTurningRad } from '../../geometry/piece.ts'
import type { Point } from '../../geometry/point.ts'
import { findRoot } from '../../geometry/root.ts'

/** The inner face of the sides, seen in plan: x from the tail, y to the treble side, so that the bass half lies at negative y. */
export interface InnerRim {
  readonly sideThicknessMm: number
  readonly bass: HalfFace
  readonly treble: HalfFace
}

/** One half with its own half-width upward: the outer face and, place by place, the inner one. */
interface HalfFace {
  readonly outer: Curve
  readonly places: readonly FacePlace[]
}
interface FacePlace {
  /** Along the outer face. */
  readonly sMm: number
  readonly x: number
  readonly y: number
}

export type RimSide = 'bass' | 'treble'
/** A place on the inner face. */
export interface RimPlaceIn {
  readonly side: RimSide
  /** Along the outer face of that side from the tail, where the inner face lies square under it. */
  readonly alongOuterMm: number
  readonly point: Point
}

const PLACES_A_HALF = 100
const TURN_A_STEP_RAD = 0.2
const MOST_A_PIECE = 60
/** A piece shorter than this is passed over. */
const TINY_MM = 1e-6
/** Just before a corner, where the piece before it still speaks. */
const JUST_MM = 1e-9
/** Two places no further apart along the outer face than this are joined straight: a corner, or the gap at the centreline. */
const JOINED_MM = 1e-5
const ROOT_MM = 1e-10
/** What a ray meets nearer than this is where it starts. */
const START_MM = 1e-7

/** A plan's outline stays the same while other fields are typed: its places are found once. */
const placesBefore = new WeakMap<Curve, readonly number[]>()

/** Arc lengths at which a half is looked at: ends of pieces, corners from both sides, and evenly between. */
function placesOf(curve: Curve): readonly number[] {
  const before = placesBefore.get(curve)
  if (before !== undefined) return before
  const places: number[] = []
  const isCorner = (sMm: number) => curve.corners.some((corner) => Math.abs(corner.sMm - sMm) < TINY_MM)
  const stepMm = Math.max(curve.lengthMm / PLACES_A_HALF, TINY_MM)
  curve.pieces.forEach((piece, i) => {
    const [fromMm, toMm] = [curve.startsMm[i]!, curve.startsMm[i + 1]!]
    if (toMm - fromMm < TINY_MM) return
    const turnRad = Math.abs(pieceTurningRad(piece, piece.lengthMm))
    const steps = Math.min(Math.ceil(Math.max(piece.lengthMm / stepMm, turnRad / TURN_A_STEP_RAD, 1)), MOST_A_PIECE)
    if (places.length === 0 || isCorner(fromMm)) places.push(fromMm)
    for (let j = 1; j < steps; j++) places.push(fromMm + (piece.lengthMm * j) / steps)
    places.push(isCorner(toMm) ? toMm - JUST_MM : toMm)
  })
  placesBefore.set(curve, places)
  return places
}

/** Inner faces as found last: of the side, of the linings of top and back. */
const facesBefore = new WeakMap<Curve, readonly { readonly sideThicknessMm: number; readonly face: HalfFace }[]>()
const MOST_FACES = 3

function faceOf(outer: Curve, sideThicknessMm: number): HalfFace {
  const before = facesBefore.get(outer) ?? []
  const known = before.find((one) => one.sideThicknessMm === sideThicknessMm)
  if (known !== undefined) return known.face
  const inner = placesOf(outer).map((sMm) => ({ sMm, ...insetPoint(outer, sMm, sideThicknessMm) }))
  const [first, last] = [inner[0], inner.at(-1)]
  // Where a half does not end on the centreline, a straight square to it closes it.
  const places = [
    ...(first === undefined ? [] : [{ ...first, y: 0 }]),
    ...inner,
    ...(last === undefined ? [] : [{ ...last, y: 0 }]),
  ]
  const face = { outer, places }
  facesBefore.set(outer, [{ sideThicknessMm, face }, ...before].slice(0, MOST_FACES))
  return face
}

/** The inner face of both halves of a body. */
export function innerRimOf(
  halves: { readonly bass: Curve; readonly treble: Curve },
  sideThicknessMm: number,
): InnerRim {
  const bass = faceOf(halves.bass, sideThicknessMm)
  return {
    sideThicknessMm,
    bass,
    treble: halves.treble === halves.bass ? bass : faceOf(halves.treble, sideThicknessMm),
  }
}

/** Where a value, known at two places of a half, changes its sign between them: to 1e-10 mm along the outer face. */
function rootBetween(
  rim: InnerRim,
  side: RimSide,
  i: number,
  value: (point: Point) => number,
  signs: readonly [number, number],
): RimPlaceIn {
  const { outer, places } = rim[side]
  const [a, b] = [places[i]!, places[i + 1]!]
  const flip = side === 'bass' ? -1 : 1
  const at = (alongOuterMm: number, { x, y }: Point): RimPlaceIn => ({
    side,
    alongOuterMm,
    point: { x, y: flip * y },
  })
  if (b.sMm - a.sMm < JOINED_MM) {
    const share = signs[0] === signs[1] ? 0 : signs[0] / (signs[0] - signs[1])
    return at(a.sMm, { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) })
  }
  const inner = (s: number) => insetPoint(outer, s, rim.sideThicknessMm)
  const s = findRoot(
    (u) => {
      if (u === a.sMm) return signs[0]
      if (u === b.sMm) return signs[1]
      const { x, y } = inner(u)
      return value({ x, y: flip * y })
    },
    a.sMm,
    b.sMm,
    ROOT_MM,
  )
  return at(s, inner(s))
}

/** Where a straight line through a point crosses the inner face, as seen from place to place: nearest first. */
interface Crossing {
  readonly side: RimSide
  readonly i: number
  /** Along the line, nearly. */
  readonly alongMm: number
  readonly signs: readonly [number, number]
}
function lineCrossings(rim: InnerRim, from: Point, way: Point): Crossing[] {
  const found: Crossing[] = []
  for (const side of ['bass', 'treble'] as const) {
    const flip = side === 'bass' ? -1 : 1
    const { places } = rim[side]
    // The cross product of the line's way with every place, as one sum.
    const [byX, byY, level] = [-way.y, flip * way.x, way.y * from.x - way.x * from.y]
    let before = 0
    for (let i = 0; i < places.length; i++) {
      const b = places[i]!
      const here = byX * b.x + byY * b.y + level
      if (i > 0 && before <= 0 !== here <= 0) {
        const a = places[i - 1]!
        const share = before / (before - here)
        const x = a.x + share * (b.x - a.x)
        const y = flip * (a.y + share * (b.y - a.y))
        found.push({
          side,
          i: i - 1,
          alongMm: way.x * (x - from.x) + way.y * (y - from.y),
          signs: [before, here],
        })
      }
      before = here
    }
  }
  return found.sort((a, b) => a.alongMm - b.alongMm)
}

function exactly(rim: InnerRim, from: Point, way: Point, { side, i, signs }: Crossing) {
  const place = rootBetween(rim, side, i, (p) => way.x * (p.y - from.y) - way.y * (p.x - from.x), signs)
  return { place, alongMm: way.x * (place.point.x - from.x) + way.y * (place.point.y - from.y) }
}

/** How far a place seen from point to point can lie before the true one. */
const SEEN_MM = 30

/**
 * Where a ray first leaves the inner rim, for a start inside it; `way` of length 1. Sampled, then refined on the exact parallel curve
 * to 1e-9 mm. null where it meets nothing: from outside, looking away. Source: derived.
 */
export function meetRim(rim: InnerRim, from: Point, way: Point): RimPlaceIn | null {
  let nearest: { readonly place: RimPlaceIn; readonly alongMm: number } | null = null
  for (const crossing of lineCrossings(rim, from, way)) {
    if (crossing.alongMm < -SEEN_MM) continue
    // What is seen further away than what was found exactly, by more than samples can be off, is no longer looked at.
    if (nearest !== null && crossing.alongMm > nearest.alongMm + 1) break
    const found = exactly(rim, from, way, crossing)
    if (found.alongMm > START_MM && (nearest === null || found.alongMm < nearest.alongMm)) nearest = found
  }
  return nearest?.place ?? null
}

/** Ends of a stretch may touch the inner face; this much of it does not count. */
const TOUCH_MM = 1e-3

/** Whether a stretch between two places inside the rim or on it leaves it on the way; `ends`: which of them are known to lie on it. */
export function leavesRim(
  rim: InnerRim,
  from: Point,
  to: Point,
  ends: readonly Pick<RimPlaceIn, 'side' | 'alongOuterMm'>[],
): boolean {
  const lengthMm = Math.hypot(to.x - from.x, to.y - from.y)
  if (lengthMm <= 2 * TOUCH_MM) return false
  const way = { x: (to.x - from.x) / lengthMm, y: (to.y - from.y) / lengthMm }
  const isBetween = (alongMm: number) => alongMm > TOUCH_MM && alongMm < lengthMm - TOUCH_MM
  const isEnd = ({ side, i }: Crossing) => {
    const { places } = rim[side]
    const [a, b] = [places[i]!.sMm - JOINED_MM, places[i + 1]!.sMm + JOINED_MM]
    return ends.some((end) => end.side === side && end.alongOuterMm >= a && end.alongOuterMm <= b)
  }
  // Between its ends it crosses nothing, and still lies outside all the way: beside a waist.
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }
  return (
    !isInsideRim(rim, middle) ||
    lineCrossings(rim, from, way).some(
      (crossing) =>
        isBetween(crossing.alongMm) && !isEnd(crossing) && isBetween(exactly(rim, from, way, crossing).alongMm),
    )
  )
}

/** The inner face at a distance from the tail, on one side: the outermost place where there are several; held to where the face is. */
export function rimAtX(rim: InnerRim, side: RimSide, xMm: number): RimPlaceIn {
  const { places } = rim[side]
  const found: RimPlaceIn[] = []
  let nearest = places[0] ?? { sMm: 0, x: 0, y: 0 }
  for (let i = 0; i < places.length; i++) {
    const place = places[i]!
    if (Math.abs(place.x - xMm) < Math.abs(nearest.x - xMm)) nearest = place
    const before = places[i - 1]
    if (before === undefined || before.x <= xMm === place.x <= xMm) continue
    found.push(rootBetween(rim, side, i - 1, ({ x }) => x - xMm, [before.x - xMm, place.x - xMm]))
  }
  const outermost = found.reduce<RimPlaceIn | null>(
    (best, one) => (best === null || Math.abs(one.point.y) > Math.abs(best.point.y) ? one : best),
    null,
  )
  if (outermost !== null) return outermost
  const flip = side === 'bass' ? -1 : 1
  return { side, alongOuterMm: nearest.sMm, point: { x: nearest.x, y: flip * nearest.y } }
}

/** Nearer than this to the stretch between two places, the exact face is asked. */
const NEAR_MM = 1

/** Whether a point lies within the inner face of the sides; on it, to 1e-6 mm, counts. */
export function isInsideRim(rim: InnerRim, point: Point): boolean {
  const side: RimSide = point.y < 0 ? 'bass' : 'treble'
  const { places } = rim[side]
  const up = Math.abs(point.y)
  // Upward from the point the face is crossed once more going toward the neck than coming back; past a mitre it runs the other way round.
  let turns = 0
  for (let i = 1; i < places.length; i++) {
    const [a, b] = [places[i - 1]!, places[i]!]
    if (a.x <= point.x === b.x <= point.x) continue
    const isFar = up < Math.min(a.y, b.y) - NEAR_MM || up > Math.max(a.y, b.y) + NEAR_MM
    const y = isFar
      ? a.y
      : Math.abs(rootBetween(rim, side, i - 1, ({ x }) => x - point.x, [a.x - point.x, b.x - point.x]).point.y)
    if (y >= up - 1e-6) turns += b.x > a.x ? 1 : -1
  }
  return turns === 1
}
