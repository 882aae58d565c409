import type { Piece, Place } from './piece.ts'
import { pieceCurvaturePerMm, pieceTurningRad, placeOnPiece } from './piece.ts'
import type { Point } from './point.ts'
import { integrate } from './quadrature.ts'
import { findRoot } from './root.ts'

/**
 * A chain of pieces, each starting where the one before ends, in the same direction but for its corners. Measured by arc length s
 * from its start, mm.
 */
export interface Curve {
  readonly pieces: readonly Piece[]
  /** Arc length at which each piece starts, and at the end the whole length: one entry more than pieces. */
  readonly startsMm: readonly number[]
  /** Where each piece starts, and at the end where the curve ends: one entry more than pieces. */
  readonly places: readonly Place[]
  readonly lengthMm: number
  /** Where it breaks its direction; none where it is smooth. */
  readonly corners: readonly Corner[]
}

export interface Corner {
  readonly sMm: number
  /** Turned to the right, radians: positive where the outline is convex. */
  readonly turnRad: number
}

/** What a curve is at one arc length. The normal points to the left of the way: outward, for an outline. */
export interface CurvePoint extends Place {
  readonly sMm: number
  readonly curvaturePerMm: number
  readonly normal: Point
}

/** The curve of some pieces from a start; `turnsRad[i]` is turned to the right at the corner before piece i, nothing where left out. */
export function makeCurve(start: Place, pieces: readonly Piece[], turnsRad: readonly number[] = []): Curve {
  const startsMm = [0]
  const places: Place[] = []
  const corners: Corner[] = []
  let at = start
  pieces.forEach((piece, i) => {
    const turnRad = turnsRad[i] ?? 0
    if (turnRad !== 0) {
      corners.push({ sMm: startsMm[i]!, turnRad })
      at = { point: at.point, headingRad: at.headingRad - turnRad }
    }
    places.push(at)
    startsMm.push(startsMm[i]! + piece.lengthMm)
    at = placeOnPiece(piece, at, piece.lengthMm)
  })
  return { pieces, startsMm, places: [...places, at], lengthMm: startsMm.at(-1)!, corners }
}

/** Index of the piece that holds arc length s; s before the start or past the end falls to the first or last piece. */
function pieceIndex(curve: Curve, sMm: number): number {
  let low = 0
  let high = curve.pieces.length - 1
  while (low < high) {
    const middle = (low + high + 1) >> 1
    if (curve.startsMm[middle]! <= sMm) low = middle
    else high = middle - 1
  }
  return low
}

/** Point, heading, curvature and left normal at arc length s; s is held within 0..length. Where pieces meet, the later one speaks. */
export function curveAt(curve: Curve, sMm: number): CurvePoint {
  const s = Math.min(Math.max(sMm, 0), curve.lengthMm)
  const i = pieceIndex(curve, s)
  const piece = curve.pieces[i]
  const start = curve.places[i] ?? { point: { x: 0, y: 0 }, headingRad: 0 }
  if (piece === undefined) return { ...start, sMm: 0, curvaturePerMm: 0, normal: leftNormal(start.headingRad) }
  const along = s - curve.startsMm[i]!
  const { point, headingRad } = placeOnPiece(piece, start, along)
  return {
    point,
    headingRad,
    sMm: s,
    curvaturePerMm: pieceCurvaturePerMm(piece, along),
    normal: leftNormal(headingRad),
  }
}

const leftNormal = (headingRad: number): Point => ({ x: -Math.sin(headingRad), y: Math.cos(headingRad) })

/** Turning to the right from the start to s, radians, corners on the way included. */
export function turningToRad(curve: Curve, sMm: number): number {
  const s = Math.min(Math.max(sMm, 0), curve.lengthMm)
  const i = pieceIndex(curve, s)
  const piece = curve.pieces[i]
  if (piece === undefined) return 0
  return curve.places[0]!.headingRad - curve.places[i]!.headingRad + pieceTurningRad(piece, s - curve.startsMm[i]!)
}

/** The point at distance `insetMm` to the RIGHT of the curve at s: the inner face, for an outline. */
export function insetPoint(curve: Curve, sMm: number, insetMm: number): Point {
  const { point, normal } = curveAt(curve, sMm)
  return { x: point.x - normal.x * insetMm, y: point.y - normal.y * insetMm }
}

/** Length of the parallel at `insetMm` to the right, from the start to s: s - t x turning, exactly, on a curve without corners. */
export function insetLengthMm(curve: Curve, sMm: number, insetMm: number): number {
  return Math.min(Math.max(sMm, 0), curve.lengthMm) - insetMm * turningToRad(curve, sMm)
}

/** The stretch of a curve between two of its arc lengths, as a curve of its own: a corner at either end of it is left out. */
export function stretchOfCurve(curve: Curve, fromMm: number, toMm: number): Curve {
  const pieces: Piece[] = []
  const turnsRad: number[] = []
  let start: Place | null = null
  curve.pieces.forEach((piece, i) => {
    const a = Math.max(fromMm - curve.startsMm[i]!, 0)
    const b = Math.min(toMm - curve.startsMm[i]!, piece.lengthMm)
    if (b - a <= 1e-9) return
    const corner = curve.corners.find(({ sMm }) => sMm === curve.startsMm[i])
    turnsRad.push(start === null || a > 0 ? 0 : (corner?.turnRad ?? 0))
    start ??= placeOnPiece(piece, curve.places[i]!, a)
    pieces.push({
      lengthMm: b - a,
      startCurvaturePerMm: pieceCurvaturePerMm(piece, a),
      endCurvaturePerMm: pieceCurvaturePerMm(piece, b),
    })
  })
  return makeCurve(start ?? curve.places[0]!, pieces, turnsRad)
}

/** Signed area between the curve and the x axis, mm2: the integral of y dx along the curve. */
export function areaUnderMm2(curve: Curve): number {
  let area = 0
  curve.pieces.forEach((piece, i) => {
    const parts = Math.max(1, Math.ceil(Math.abs(pieceTurningRad(piece, piece.lengthMm))))
    for (let p = 0; p < parts; p++) {
      area += integrate(
        (u) => {
          const place = placeOnPiece(piece, curve.places[i]!, u)
          return place.point.y * Math.cos(place.headingRad)
        },
        (piece.lengthMm * p) / parts,
        (piece.lengthMm * (p + 1)) / parts,
      )
    }
  })
  return area
}

/** Arc lengths strictly inside a piece at which it has turned by `turnRad` from its start: roots of a quadratic. */
function turnedAtMm(piece: Piece, turnRad: number): number[] {
  const slope = piece.lengthMm > 0 ? (piece.endCurvaturePerMm - piece.startCurvaturePerMm) / piece.lengthMm : 0
  const k = piece.startCurvaturePerMm
  const inside = (u: number) => u >= 0 && u <= piece.lengthMm
  if (slope === 0) return k === 0 ? [] : [turnRad / k].filter(inside)
  const under = k * k + 2 * slope * turnRad
  if (under < 0) return []
  const q = -(k + (k < 0 ? -1 : 1) * Math.sqrt(under))
  const roots = [q / slope]
  if (q !== 0) roots.push((-2 * turnRad) / q)
  return roots.filter(inside).sort((a, b) => a - b)
}

/**
 * Arc lengths where the curve heads along `headingRad` or exactly against it, or turns past it in a corner, in order; a straight
 * that does so all along gives none.
 */
export function headingsAtMm(curve: Curve, headingRad: number): number[] {
  const found: number[] = []
  curve.pieces.forEach((piece, i) => {
    const start = curve.places[i]!.headingRad - headingRad
    const turns = [0, piece.lengthMm, ...(extremeTurnAtMm(piece) ?? [])].map((u) => start - pieceTurningRad(piece, u))
    const first = Math.ceil(Math.min(...turns) / Math.PI - 1e-12)
    const last = Math.floor(Math.max(...turns) / Math.PI + 1e-12)
    for (let n = first; n <= last; n++) {
      for (const u of turnedAtMm(piece, start - n * Math.PI)) {
        const s = curve.startsMm[i]! + u
        if (!found.some((other) => Math.abs(other - s) < 1e-6)) found.push(s)
      }
    }
  })
  curve.corners.forEach(({ sMm, turnRad }) => {
    const after = curve.places[pieceIndex(curve, sMm)]!.headingRad - headingRad
    const [low, high] = [Math.min(after, after + turnRad), Math.max(after, after + turnRad)]
    const passes = Math.floor(high / Math.PI) * Math.PI >= low
    if (passes && !found.some((other) => Math.abs(other - sMm) < 1e-6)) found.push(sMm)
  })
  return found.sort((a, b) => a - b)
}

const extremeTurnAtMm = (piece: Piece): number[] | undefined => {
  const { startCurvaturePerMm: a, endCurvaturePerMm: b, lengthMm } = piece
  return a * b < 0 ? [(lengthMm * a) / (a - b)] : undefined
}

/** Every arc length at which the curve stands over this x, in order, to 1e-10 mm; none where it never does. */
export function crossingsOfXMm(curve: Curve, xMm: number): number[] {
  const stops = [...new Set([...curve.startsMm, ...headingsAtMm(curve, Math.PI / 2)])].sort((a, b) => a - b)
  const found: number[] = []
  const add = (s: number) => {
    if (!found.some((other) => Math.abs(other - s) < 1e-7)) found.push(s)
  }
  let before = curveAt(curve, 0).point.x - xMm
  if (before === 0) add(0)
  for (let i = 1; i < stops.length; i++) {
    const after = curveAt(curve, stops[i]!).point.x - xMm
    if (after === 0) add(stops[i]!)
    else if (before < 0 !== after < 0 && before !== 0)
      add(findRoot((s) => curveAt(curve, s).point.x - xMm, stops[i - 1]!, stops[i]!, 1e-10))
    before = after
  }
  return found
}
