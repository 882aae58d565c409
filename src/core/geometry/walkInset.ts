import type { Curve } from './curve.ts'
import { pieceCurvaturePerMm, pieceTurningRad, type Piece, type Place, placeOnPiece } from './piece.ts'
import type { Point } from './point.ts'
import { THREE_POINTS, TWO_POINTS } from './quadrature.ts'
import { findRoot } from './root.ts'

/** A place on a parallel, and the way along x that it stands for: the integral of f dx along the parallel is the sum of f(x, y) dx. */
export interface InsetStep {
  readonly x: number
  readonly y: number
  readonly dx: number
}

/** So far is walked at once with three points; they then leave less than 1e-7 of the whole, like two points on a short stretch. */
const MOST_TURN_RAD = 0.3
/** Lengths as parts of the whole curve, so that a box twice as large is walked alike. */
const MOST_PART = 1 / 12
const SHORT_TURN_RAD = 0.1
const SHORT_PART = 1 / 36
const MOST_PARTS = 1000
/** A mitre is followed to corners of 150 degrees. */
const MITRE_RAD = (75 * Math.PI) / 180

/** A plan's outline stays the same while other fields are typed: its steps are found once. */
const walkedBefore = new WeakMap<Curve, { readonly asked: string; readonly steps: readonly InsetStep[] }>()

/**
 * The steps along the parallel at `insetMm` to the right of a curve, with straight mitres at its corners: Gauss-Legendre on short
 * stretches. A stretch ends where the parallel stands over one of `breaksAtXMm`, since f may jump there. Source: derived.
 */
export function walkInset(curve: Curve, insetMm: number, breaksAtXMm: readonly number[]): readonly InsetStep[] {
  const asked = [insetMm, ...breaksAtXMm].join()
  const before = walkedBefore.get(curve)
  if (before?.asked === asked) return before.steps
  const steps = walk(curve, insetMm, breaksAtXMm)
  walkedBefore.set(curve, { asked, steps })
  return steps
}

function walk(curve: Curve, insetMm: number, breaksAtXMm: readonly number[]): InsetStep[] {
  const steps: InsetStep[] = []
  const runs = curve.pieces.flatMap((piece, i) => (piece.lengthMm > 1e-9 ? [{ piece, start: curve.places[i]! }] : []))
  const turnsRad = runs.map(({ start }, i) => {
    const last = runs[i - 1]
    if (last === undefined) return 0
    return last.start.headingRad - pieceTurningRad(last.piece, last.piece.lengthMm) - start.headingRad
  })
  let reached: Point | null = null
  runs.forEach(({ piece, start }, i) => {
    const turnRad = turnsRad[i]!
    const fromMm = shortenedMm(turnRad, insetMm, piece)
    const toMm = piece.lengthMm - shortenedMm(turnsRad[i + 1] ?? 0, insetMm, piece)
    const parts = partsOf(piece, start, [fromMm, toMm], curve.lengthMm)
    if (reached !== null && Math.abs(turnRad) > SMOOTH_RAD) {
      const next = insetAt(parts[0]!, 0, insetMm)
      const mitre = turnRad < 0 ? mitreOf(start, turnRad, insetMm) : next
      addLine(steps, reached, mitre)
      addLine(steps, mitre, next)
    }
    for (const part of parts) addPart(steps, part, insetMm, breaksAtXMm)
    const last = parts.at(-1)!
    reached = insetAt(last, last.lengthMm, insetMm)
  })
  return steps
}

const SMOOTH_RAD = 1e-6

/** What a mitre takes from the end of a piece at a corner that stands out; at one that looks inward the parallel runs on instead. */
const shortenedMm = (turnRad: number, insetMm: number, piece: Piece): number =>
  turnRad > SMOOTH_RAD ? Math.min(insetMm * Math.tan(Math.min(turnRad / 2, MITRE_RAD)), piece.lengthMm / 2) : 0

/** Where the parallels meet at a corner that looks inward, whose second side begins at `start`. */
function mitreOf({ point, headingRad }: Place, turnRad: number, insetMm: number): Point {
  const middleRad = headingRad + turnRad / 2
  const farMm = insetMm / Math.cos(Math.min(-turnRad / 2, MITRE_RAD))
  return { x: point.x + farMm * Math.sin(middleRad), y: point.y - farMm * Math.cos(middleRad) }
}

/** A short stretch of one piece. */
interface Part extends Place {
  readonly lengthMm: number
  readonly curvaturePerMm: number
  readonly sharpensPerMm2: number
  readonly isShort: boolean
}

function partsOf(piece: Piece, start: Place, [fromMm, toMm]: readonly [number, number], wholeMm: number): Part[] {
  const lengthMm = Math.max(toMm - fromMm, 0)
  const bendPerMm = Math.max(Math.abs(piece.startCurvaturePerMm), Math.abs(piece.endCurvaturePerMm))
  const turnRad = bendPerMm * lengthMm
  const count = Math.ceil(Math.min(Math.max(turnRad / MOST_TURN_RAD, lengthMm / (MOST_PART * wholeMm), 1), MOST_PARTS))
  return Array.from({ length: count }, (_, k) => {
    const a = fromMm + (lengthMm * k) / count
    const { point, headingRad } = a === 0 ? start : placeOnPiece(piece, start, a)
    return {
      point,
      headingRad,
      lengthMm: lengthMm / count,
      curvaturePerMm: pieceCurvaturePerMm(piece, a),
      sharpensPerMm2: (piece.endCurvaturePerMm - piece.startCurvaturePerMm) / piece.lengthMm,
      isShort: lengthMm < SHORT_PART * wholeMm && turnRad < SHORT_TURN_RAD,
    }
  })
}

const headingAt = ({ headingRad, curvaturePerMm, sharpensPerMm2 }: Part, u: number): number =>
  headingRad - u * (curvaturePerMm + (sharpensPerMm2 * u) / 2)

/** Where the parallel stands u mm from the part's start. */
function insetAt(part: Part, u: number, insetMm: number): Point {
  let { x, y } = part.point
  for (const { at, weight } of THREE_POINTS) {
    const way = headingAt(part, u * at)
    x += u * weight * Math.cos(way)
    y += u * weight * Math.sin(way)
  }
  const here = headingAt(part, u)
  return { x: x + insetMm * Math.sin(here), y: y - insetMm * Math.cos(here) }
}

function addPart(steps: InsetStep[], part: Part, insetMm: number, breaksAtXMm: readonly number[]): void {
  const stops = [0, part.lengthMm]
  if (breaksAtXMm.length > 0) {
    const xAt = (u: number) => insetAt(part, u, insetMm).x
    const [first, last] = [xAt(0), xAt(part.lengthMm)]
    for (const breakMm of breaksAtXMm)
      if (first < breakMm !== last < breakMm) stops.push(findRoot((u) => xAt(u) - breakMm, 0, part.lengthMm, 1e-9))
    stops.sort((a, b) => a - b)
  }
  for (let i = 1; i < stops.length; i++) {
    const [fromMm, wayMm] = [stops[i - 1]!, stops[i]! - stops[i - 1]!]
    for (const { at, weight } of part.isShort ? TWO_POINTS : THREE_POINTS) {
      const u = fromMm + wayMm * at
      const bend = part.curvaturePerMm + part.sharpensPerMm2 * u
      const dxPerMm = Math.cos(headingAt(part, u)) * (1 - insetMm * bend)
      const { x, y } = insetAt(part, u, insetMm)
      steps.push({ x, y, dx: wayMm * weight * dxPerMm })
    }
  }
}

function addLine(steps: InsetStep[], a: Point, b: Point): void {
  for (const { at, weight } of THREE_POINTS)
    steps.push({ x: a.x + at * (b.x - a.x), y: a.y + at * (b.y - a.y), dx: weight * (b.x - a.x) })
}
