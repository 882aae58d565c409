import { type Figure, radiusOf } from '../figure.ts'
import { arc, type Piece, type Place, pieceTurningRad, straight } from '../geometry/piece.ts'
import { type Curve, makeCurve } from '../geometry/curve.ts'
import type { OutlinePiece } from '../plan.ts'
import { radFromDeg } from '../units/angle.ts'

export interface SolvedPiece {
  readonly radiusMm: Figure
  readonly sweepRad: number
  readonly lengthMm: number
}

/** How far a half outline misses closing: along and across at the neck, and the corner the two halves would make there. */
export interface Closure {
  readonly alongMm: number
  readonly acrossMm: number
  readonly cornerRad: number
}

export interface CompassChain {
  readonly half: Curve
  readonly pieces: readonly SolvedPiece[]
  readonly openCount: number
  readonly closure: Closure
}

/** A half outline starts at the tail square to the centreline. */
export const TAIL: Place = { point: { x: 0, y: 0 }, headingRad: Math.PI / 2 }

/** Of these three conditions (length, closing on the centreline, square to it) a chain can have as many values open. */
export const MOST_OPEN = 3

interface Open {
  readonly piece: number
  readonly what: 'radiusMm' | 'sweepDeg' | 'lengthMm'
}

/**
 * A half outline from a chain of tangent arcs and straights; values left open (null) are solved so that it closes at the neck.
 *
 * Up to three can be. Fewer open values than conditions leave what remains as the closure; more are set to their starting guesses.
 * Solved by damped least squares (Levenberg 1944, Marquardt 1963) from a fixed list of starts: the first that closes within 1e-9 mm is taken,
 * else the one that misses least, so that one chain always gives one outline.
 * lengthMm null: the chain gives the length, and only the other two conditions are asked.
 */
export function closeChain(pieces: readonly OutlinePiece[], lengthMm: number | null): CompassChain {
  const open = openValues(pieces)
  const scaleMm = lengthMm ?? 500
  const missOf = (values: readonly number[]) => {
    const chain = build(pieces, open, values)
    const { alongMm, acrossMm, cornerRad } = closureOf(chain, lengthMm)
    return [alongMm, acrossMm, cornerRad * scaleMm]
  }
  let values = startingValues(open, pieces, scaleMm)[0] ?? []
  if (open.length > 0 && open.length <= MOST_OPEN) {
    let least = Number.POSITIVE_INFINITY
    for (const start of startingValues(open, pieces, scaleMm)) {
      const found = leastSquares(missOf, start, (v) => held(open, v))
      if (found.miss < least - 1e-12) {
        least = found.miss
        values = found.values
      }
      if (least < 1e-9) break
    }
  }
  const chain = build(pieces, open, values)
  const half = makeCurve(TAIL, chain)
  return {
    half,
    pieces: chain.map((piece) => ({
      radiusMm: radiusOf(piece.startCurvaturePerMm),
      sweepRad: Math.abs(pieceTurningRad(piece, piece.lengthMm)),
      lengthMm: piece.lengthMm,
    })),
    openCount: open.length,
    closure: closureOf(chain, lengthMm),
  }
}

function openValues(pieces: readonly OutlinePiece[]): Open[] {
  return pieces.flatMap((piece, i): Open[] => {
    if (piece.kind === 'straight') return piece.lengthMm === null ? [{ piece: i, what: 'lengthMm' }] : []
    const found: Open[] = []
    if (piece.radiusMm === null) found.push({ piece: i, what: 'radiusMm' })
    if (piece.sweepDeg === null) found.push({ piece: i, what: 'sweepDeg' })
    return found
  })
}

function build(pieces: readonly OutlinePiece[], open: readonly Open[], values: readonly number[]): Piece[] {
  const value = (i: number, what: Open['what'], given: number | null) =>
    given ?? values[open.findIndex((one) => one.piece === i && one.what === what)] ?? 0
  return pieces.map((piece, i) => {
    if (piece.kind === 'straight') return straight(value(i, 'lengthMm', piece.lengthMm))
    const radiusMm = value(i, 'radiusMm', piece.radiusMm)
    return arc(piece.bend === 'convex' ? radiusMm : -radiusMm, radFromDeg(value(i, 'sweepDeg', piece.sweepDeg)))
  })
}

function closureOf(chain: readonly Piece[], lengthMm: number | null): Closure {
  const end = makeCurve(TAIL, chain).places.at(-1)!
  return {
    alongMm: lengthMm === null ? 0 : end.point.x - lengthMm,
    acrossMm: end.point.y,
    cornerRad: end.headingRad + Math.PI / 2,
  }
}

/** Sweeps share what the given ones leave of the half turn; radii and straights are tried small, middling and large. */
function startingValues(open: readonly Open[], pieces: readonly OutlinePiece[], scaleMm: number): number[][] {
  if (open.length > MOST_OPEN) return [open.map((one) => (one.what === 'sweepDeg' ? 30 : scaleMm / 5))]
  let turnDeg = 180
  let openTurn = 0
  pieces.forEach((piece) => {
    if (piece.kind === 'straight') return
    if (piece.sweepDeg !== null) turnDeg -= piece.bend === 'convex' ? piece.sweepDeg : -piece.sweepDeg
    else openTurn += piece.bend === 'convex' ? 1 : -1
  })
  const shareDeg = openTurn === 0 ? 40 : Math.min(Math.max(turnDeg / openTurn, 2), 120)
  const tries = open.map((one): number[] => {
    if (one.what === 'sweepDeg') return [shareDeg, 25, 70, 6]
    if (one.what === 'radiusMm') return [0.25, 0.12, 0.6, 2].map((part) => part * scaleMm)
    return [0.04, 0.2].map((part) => part * scaleMm)
  })
  return tries.reduce<number[][]>((starts, list) => starts.flatMap((start) => list.map((one) => [...start, one])), [[]])
}

/** Held within what can be drawn. */
const held = (open: readonly Open[], values: readonly number[]): number[] =>
  values.map((value, i) => {
    const what = open[i]?.what
    if (what === 'sweepDeg') return Math.min(Math.max(value, 0), 200)
    if (what === 'radiusMm') return Math.min(Math.max(value, 5), 20000)
    return Math.min(Math.max(value, 0), 600)
  })

function leastSquares(
  missOf: (values: readonly number[]) => number[],
  start: readonly number[],
  hold: (values: readonly number[]) => number[],
): { values: number[]; miss: number } {
  let values = hold(start)
  let miss = missOf(values)
  let size = Math.hypot(...miss)
  let damping = 1e-3
  for (let count = 0; count < 60 && size > 1e-11; count++) {
    const columns = values.map((value, j) => {
      const step = 1e-6 * Math.max(Math.abs(value), 1)
      const ahead = missOf(values.map((v, i) => (i === j ? v + step : v)))
      const behind = missOf(values.map((v, i) => (i === j ? v - step : v)))
      return ahead.map((a, r) => (a - behind[r]!) / (2 * step))
    })
    const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, x, r) => sum + x * b[r]!, 0)
    const normal = columns.map((a, i) => columns.map((b, j) => dot(a, b) * (i === j ? 1 + damping : 1)))
    const step = solve(
      normal,
      columns.map((column) => -dot(column, miss)),
    )
    const next = hold(values.map((value, i) => value + step[i]!))
    const nextMiss = missOf(next)
    const nextSize = Math.hypot(...nextMiss)
    if (nextSize < size) {
      const gain = size - nextSize
      values = next
      miss = nextMiss
      size = nextSize
      damping = Math.max(damping / 8, 1e-12)
      if (gain < 1e-13) break
    } else {
      damping *= 10
      if (damping > 1e8) break
    }
  }
  return { values, miss: size }
}

/** A linear system of at most three rows by Gauss with row exchange; a row of nothing gives 0. */
function solve(matrix: number[][], right: number[]): number[] {
  const n = right.length
  const rows = matrix.map((row, i) => [...row, right[i]!])
  for (let i = 0; i < n; i++) {
    let best = i
    for (let r = i + 1; r < n; r++) if (Math.abs(rows[r]![i]!) > Math.abs(rows[best]![i]!)) best = r
    ;[rows[i], rows[best]] = [rows[best]!, rows[i]!]
    const pivot = rows[i]![i]!
    if (Math.abs(pivot) < 1e-300) continue
    for (let r = 0; r < n; r++) {
      if (r === i) continue
      const factor = rows[r]![i]! / pivot
      for (let c = i; c <= n; c++) rows[r]![c]! -= factor * rows[i]![c]!
    }
  }
  return rows.map((row, i) => (Math.abs(row[i]!) < 1e-300 ? 0 : row[n]! / row[i]!))
}
