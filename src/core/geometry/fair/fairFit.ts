import type { ChainSpace } from './chainSpace.ts'
import { makeChainSpace } from './chainSpace.ts'
import type { Curve } from '../curve.ts'
import { curveAt, headingsAtMm, makeCurve } from '../curve.ts'
import type { ChainAim } from './fairAim.ts'
import type { FairCurveAim } from './fairCurve.ts'
import { fitChain } from './fairSolve.ts'
import { guessChain } from './fairStart.ts'
import type { Piece } from '../piece.ts'
import { straight } from '../piece.ts'
import type { Point } from '../point.ts'
import { distanceMm } from '../point.ts'

/** Pieces along the whole curve: enough that more would move it by a few 0.001 mm; no span has fewer than LEAST_PIECES. */
const PIECES = 72
const LEAST_PIECES = 3
/** How far beyond the planes of tail and neck, or below the axis, the curve may run. */
const OVERRUN_MM = 0.05
/** Weights of the misses when points cannot all be met, each fit starting from the one before. */
const SOFTNESS = [1e4, 1e5, 1e6]
/** A chain that turns more than this in all, to and fro, is no outline. */
const MOST_TURNING_RAD = 30

export interface FairFit {
  readonly curve: Curve
  readonly fair: boolean
  readonly missMm: number
  /** Index, in the aim, of the point worst met, or nearest to where the curve runs out of bounds. */
  readonly worst: number
  readonly iterations: number
}

/** Half as many pieces: enough to see whether points can be met at all. */
export function canPass(aim: FairCurveAim, kept: readonly number[]): FairFit {
  return fitThrough(aim, kept, PIECES / 2, false)
}

/** The fit through some of the points; `yielding`: where they cannot be met, go as near as may be. */
export function fitThrough(aim: FairCurveAim, kept: readonly number[], pieceCount = PIECES, yielding = true): FairFit {
  const { lengthMm, neckFlatHalfWidthMm: flat } = aim
  const points = kept.map((i) => aim.through[i]!)
  const stops = [{ x: 0, y: 0 }, ...points, { x: lengthMm, y: flat }].map((p) => ({
    x: p.x / lengthMm,
    y: p.y / lengthMm,
  }))
  const tail = aim.tailCurvaturePerMm === null ? null : aim.tailCurvaturePerMm * lengthMm
  const neck = aim.neckCurvaturePerMm === null ? null : aim.neckCurvaturePerMm * lengthMm
  const chords = stops.slice(1).map((stop, j) => distanceMm(stops[j]!, stop))
  const whole = chords.reduce((sum, chord) => sum + chord, 0)
  const space = makeChainSpace(chords.map((chord) => Math.max(LEAST_PIECES, Math.round((pieceCount * chord) / whole))))
  const rows = new Float64Array(space.rowCount)
  stops.slice(1).forEach((stop, j) => rows.set([stop.x, stop.y], 2 * j))
  rows.set([-Math.PI / 2, neck ?? 0], space.rowCount - 2)
  const exact: ChainAim = {
    space,
    rows,
    startGiven: tail !== null,
    endGiven: neck !== null,
    fourPhases: true,
    softness: null,
  }
  const guess = guessChain(space, stops, tail, neck)
  let { z, solved, iterations } = fitChain(exact, guess, true)
  if (!solved && yielding) {
    // As near as may be; and from there once more exactly.
    z = guess
    let hard = true
    for (const softness of SOFTNESS) {
      const soft = fitChain({ ...exact, softness }, z, false)
      iterations += soft.iterations
      hard = soft.solved && turningRad(space, soft.z) <= MOST_TURNING_RAD
      if (hard) z = soft.z
      else if (z !== guess) break
    }
    if (hard) {
      const again = fitChain(exact, z, false)
      iterations += again.iterations
      if (again.solved) ({ z, solved } = again)
    }
  }
  if (turningRad(space, z) > MOST_TURNING_RAD) {
    z = guess
    solved = false
  }
  const curve = buildCurve(aim, space, z)
  const over = findOverrun(curve, lengthMm, points)
  const gaps = points.map((point, j) => distanceMm(point, curve.places[1 + lastPiece(space, j)]!.point))
  const end = curve.places.at(-1)!.point
  const missMm = Math.max(...gaps, distanceMm(end, { x: lengthMm, y: 0 }), over.byMm)
  const worst = over.byMm > OVERRUN_MM ? over.nearest : gaps.indexOf(Math.max(...gaps))
  return { curve, fair: solved && over.byMm <= OVERRUN_MM, missMm, worst: kept[worst] ?? 0, iterations }
}

/** Turning of a chain, each way counted as positive. */
function turningRad(space: ChainSpace, z: Float64Array): number {
  let sum = 0
  let k = z[0]!
  for (let i = 0; i < space.pieceCount; i++) {
    const next = k + z[1 + i]!
    sum += Math.max(Math.abs(k), Math.abs(next)) * z[1 + space.pieceCount + space.spanOf[i]!]! * space.shareOf[i]!
    k = next
  }
  return Number.isFinite(sum) ? sum : Number.MAX_VALUE
}

const lastPiece = (space: ChainSpace, span: number): number => space.spanOf.lastIndexOf(span)

function buildCurve(aim: FairCurveAim, space: ChainSpace, z: Float64Array): Curve {
  const { pieceCount, shareOf, spanOf } = space
  const { lengthMm, neckFlatHalfWidthMm: flat } = aim
  const pieces: Piece[] = []
  let k = z[0]! / lengthMm
  let sum = z[0]!
  for (let i = 0; i < pieceCount; i++) {
    const span = spanOf[i]!
    sum += z[1 + i]!
    const next = sum / lengthMm
    pieces.push({
      lengthMm: z[1 + pieceCount + span]! * lengthMm * shareOf[i]!,
      startCurvaturePerMm: k,
      endCurvaturePerMm: next,
    })
    k = next
  }
  if (flat > 0) pieces.push(straight(flat))
  return makeCurve({ point: { x: 0, y: 0 }, headingRad: Math.PI / 2 }, pieces)
}

/** How far the curve runs beyond tail, neck end or axis, and which of the points is next to the place. */
function findOverrun(curve: Curve, lengthMm: number, points: readonly Point[]): { byMm: number; nearest: number } {
  let byMm = 0
  let at = 0
  for (const s of [...headingsAtMm(curve, Math.PI / 2), ...headingsAtMm(curve, 0)]) {
    const { x, y } = curveAt(curve, s).point
    const by = Math.max(-x, x - lengthMm, -y)
    if (by > byMm) {
      byMm = by
      at = x
    }
  }
  const gaps = points.map((point) => Math.abs(point.x - at))
  return { byMm, nearest: gaps.indexOf(Math.min(...gaps)) }
}
