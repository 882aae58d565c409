import type { Curve } from '../curve.ts'
import { makeCurve } from '../curve.ts'
import { factorPositive, solveLower, solveUpper } from '../fair/denseSolve.ts'
import type { Piece } from '../piece.ts'
import type { Point } from '../point.ts'
import type { Way } from './bounds.ts'
import { sumChain } from './chain.ts'
import type { ChainFit } from './chainFit.ts'
import type { EndAim, EndRows } from './ends.ts'
import { makeEndRows, sumEnds } from './ends.ts'
import { placeFeet } from './feet.ts'

export interface ClosedCurve {
  readonly curve: Curve
  /** How far it ends from what it should meet there; headings and curvatures counted over the unit. */
  readonly missMm: number
}

/** Corrections toward the end, and a miss that is none. */
const MOST_STEPS = 6
const LEAST_MISS_MM = 1e-10
/** Rises smaller than this are none; free ends that bend less than the second are flat; other bends below the third are none. */
const LEAST_RISE = 1e-8
const LEAST_END = 1e-5
const LEAST_BEND = 1e-12

/**
 * The curve a fitted chain stands for, from `start` on, in mm, with its end met to rounding: what is missing is taken up by length and
 * rises, these in proportion to their size, so that none changes its sign. With `signs`, what is against them is set to nothing first.
 */
export function closeEnds(fit: ChainFit, start: Point, unitMm: number, signs: readonly Way[] | null): ClosedCurve {
  const { chain, feet } = fit
  const n = chain.grid.unknownCount
  const aim = signs === null ? fit.ends : settleBounds(fit, signs)
  const rows = makeEndRows(aim, n)
  const give = chain.z.map((value, u) => {
    if (u === 0 || (u === 1 && (signs === null || aim.startCurvature !== null))) return 1
    return signs === null ? 1 / chain.grid.pieceCount : Math.abs(value)
  })
  let curve = buildCurve(fit, aim, start, unitMm)
  let missMm = Number.MAX_VALUE
  for (let steps = 0; steps < MOST_STEPS; steps++) {
    sumChain(chain)
    placeFeet(chain, feet)
    sumEnds(chain, feet, aim, rows)
    const trial = buildCurve(fit, aim, start, unitMm)
    // The curve's own finer sums speak for its end.
    const end = trial.places.at(-1)!.point
    rows.value[0] = (end.x - start.x) / unitMm - aim.x
    rows.value[1] = (end.y - start.y) / unitMm - aim.y
    const miss = unitMm * rows.value.reduce((most, value) => Math.max(most, Math.abs(value)), 0)
    if (!(miss < missMm)) break
    curve = trial
    missMm = miss
    const step = missMm < LEAST_MISS_MM ? null : leastStep(rows, give, n)
    if (step === null) break
    const next = chain.z.map((value, u) => value + step[u]!)
    if (!(next[0]! > chain.z[0]! / 2) || turnsOtherwise(next, signs)) break
    chain.z = next
  }
  return { curve, missMm }
}

const turnsOtherwise = (z: Float64Array, signs: readonly Way[] | null): boolean =>
  signs?.some((sign, i) => z[2 + i]! * sign < 0) ?? false

/** Sets what is against the signs to nothing; gives the ends, with a free curvature that its bound holds now fixed at 0. */
function settleBounds(fit: ChainFit, signs: readonly Way[]): EndAim {
  const { chain, ends } = fit
  const z = chain.z.map((value, u) => (u > 1 && value * signs[u - 2]! < LEAST_RISE ? 0 : value))
  const startHeld = ends.startCurvature === null && z[1]! < LEAST_END
  if (startHeld) z[1] = 0
  const end = z.reduce((sum, value, u) => (u === 0 ? 0 : sum + value), 0)
  chain.z = z
  return {
    ...ends,
    startCurvature: startHeld ? 0 : ends.startCurvature,
    endCurvature: ends.endCurvature === null && end < LEAST_END ? 0 : ends.endCurvature,
  }
}

/** The step that brings the rows to nothing with the least sum of step^2 / give; null where there is none. */
function leastStep(rows: EndRows, give: Float64Array, n: number): Float64Array | null {
  const { count, slope, value } = rows
  const matrix = new Float64Array(count * count)
  for (let r = 0; r < count; r++) {
    for (let q = 0; q <= r; q++) {
      for (let u = 0; u < n; u++) matrix[r * count + q]! += slope[r * n + u]! * give[u]! * slope[q * n + u]!
    }
  }
  if (!factorPositive(matrix, count)) return null
  const pull = value.map((part) => -part)
  solveLower(matrix, count, pull)
  solveUpper(matrix, count, pull)
  const step = new Float64Array(n)
  for (let r = 0; r < count; r++) for (let u = 0; u < n; u++) step[u]! += give[u]! * slope[r * n + u]! * pull[r]!
  return step
}

function buildCurve(fit: ChainFit, aim: EndAim, start: Point, unitMm: number): Curve {
  const { grid, z, startHeadingRad } = fit.chain
  const lengthMm = z[0]! * unitMm
  const curvature = (bend: number) => (Math.abs(bend) < LEAST_BEND ? 0 : bend / lengthMm)
  const pieces: Piece[] = []
  let bend = z[1]!
  let before = aim.startCurvature === null ? curvature(bend) : aim.startCurvature / unitMm
  for (let i = 0; i < grid.pieceCount; i++) {
    bend += z[2 + i]!
    const last = i === grid.pieceCount - 1 && aim.endCurvature !== null
    const after = last ? aim.endCurvature / unitMm : z[2 + i] === 0 ? before : curvature(bend)
    pieces.push({ lengthMm: lengthMm * grid.shares[i]!, startCurvaturePerMm: before, endCurvaturePerMm: after })
    before = after
  }
  return makeCurve({ point: start, headingRad: startHeadingRad }, pieces)
}
