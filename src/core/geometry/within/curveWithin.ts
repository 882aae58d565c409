import type { Curve } from '../curve.ts'
import { makeCurve } from '../curve.ts'
import { straight } from '../piece.ts'
import type { Point } from '../point.ts'
import { makeChain, makeGrid } from './chain.ts'
import { makeChainFit } from './chainFit.ts'
import { closeEnds } from './closeEnds.ts'
import { departureMm } from './departures.ts'
import { makeFeet } from './feet.ts'
import { guessChain } from './guess.ts'
import { fitShape } from './shapeFit.ts'

export interface WithinAim {
  readonly start: { readonly point: Point; readonly headingRad: number; readonly curvaturePerMm: number | null }
  readonly end: {
    readonly point: Point
    readonly headingRad: number | null
    readonly curvaturePerMm: number | null
  }
  /** In order along the curve, ends excluded. */
  readonly readings: readonly Point[]
  /** Each reading's error, mm, above 0: the curve passes no further than this from it. */
  readonly withinMm: number
  /**
   * guitar: curvature goes up, down, up, down on the way, each perhaps not at all, so at most two inflections round one waist, and is
   * not negative at an end where it is free. free: any number of turns.
   */
  readonly shape: 'guitar' | 'free'
}

export interface WithinResult {
  readonly curve: Curve
  /** It passes within the error of every reading, and meets its ends. */
  readonly within: boolean
  /** Signed distance of each reading from the curve: positive where it lies outside, to the left of the way. */
  readonly departuresMm: readonly number[]
  readonly largestMm: number
  /** Index of the reading furthest from the curve; null when there is none. */
  readonly worst: number | null
  readonly iterations: number
}

/** Pieces of the curve. */
const PIECES = 80
/** Ends closer than this to what they should meet are met, part of the unit. */
const LEAST_MISS = 1e-9
/** Numbers up to these are taken as they are, past them as these: extent, turning between the ends, curvature over the extent. */
const LEAST_EXTENT_MM = 1e-3
const MOST_EXTENT_MM = 1e6
const MOST_TURN_RAD = 4 * Math.PI
const MOST_BEND = 200
const LEAST_ERROR = 1e-8

/**
 * The fair curve that stays within a stated error of many readings: among curves of pieces with curvature linear in arc length that meet
 * their ends, have the shape and pass no further than the error from any reading, nor further from all of them together
 * than errors of that size would leave them, the one with the least integral of (dk/ds)^2 ds. It interpolates nothing.
 *
 * Starts from the readings alone; the work is bounded by a count. Whatever is asked, a finite curve comes back; where none passes within the
 * error, the nearest found; where ends and readings all but coincide, a short straight. Readings that are no numbers, or lie beyond 1 km, are left out of the fit.
 *
 * Source of the aim: Moreton & Sequin 1992, Functional optimization for fair surface design (SIGGRAPH); of the limit on all together: Morozov
 * 1966, the discrepancy principle, as in Hansen, Rank-Deficient and Discrete Ill-Posed Problems (from memory). The method is our own.
 */
export function curveWithin(aim: WithinAim): WithinResult {
  const { start, end, readings, withinMm, shape } = aim
  const origin = start.point
  const kept = readings.map((reading) => from(origin, reading)).filter(isNear)
  const away = from(origin, end.point)
  const last = isNear(away) ? away : { x: 0, y: 0 }
  const extent = Math.max(...[...kept, last].map((point) => Math.hypot(point.x, point.y)))
  const unitMm = Math.max(extent, LEAST_EXTENT_MM)
  const inUnits = (point: Point): Point => ({ x: point.x / unitMm, y: point.y / unitMm })
  const targets = kept.map(inUnits)
  const place = inUnits(last)
  const headingRad = end.headingRad === null ? null : nearTurn(start.headingRad, end.headingRad)

  const grid = makeGrid(PIECES)
  const guess = guessChain(grid, targets, place, start.headingRad, headingRad)
  const chain = makeChain(grid, start.headingRad, guess.z)
  const fit = makeChainFit(chain, makeFeet(targets, guess.t), {
    ...place,
    headingRad,
    startCurvature: inBounds(start.curvaturePerMm, unitMm),
    endCurvature: inBounds(end.curvaturePerMm, unitMm),
  })
  const within = withinMm > LEAST_ERROR * unitMm ? Math.min(withinMm / unitMm, 1) : LEAST_ERROR
  const { signs, iterations } = fitShape(fit, { within, fourPhases: shape === 'guitar' })
  const closed = closeEnds(fit, origin, unitMm, signs)
  const sound = extent >= LEAST_EXTENT_MM && isFinite(closed.curve)
  const curve = sound ? closed.curve : makeCurve({ point: origin, headingRad: start.headingRad }, [straight(unitMm)])

  const departuresMm = readings.map((reading) => departureMm(curve, reading))
  const sizes = departuresMm.map(Math.abs)
  const largestMm = Math.max(0, ...sizes)
  return {
    curve,
    within: sound && last === away && largestMm <= withinMm && closed.missMm <= LEAST_MISS * unitMm,
    departuresMm,
    largestMm,
    worst: readings.length > 0 ? sizes.indexOf(largestMm) : null,
    iterations,
  }
}

const isFinite = (curve: Curve): boolean =>
  curve.lengthMm > 0 &&
  curve.places.every(({ point, headingRad }) => Number.isFinite(point.x + point.y + headingRad)) &&
  curve.pieces.every((piece) => Number.isFinite(piece.endCurvaturePerMm + piece.startCurvaturePerMm))

const from = (origin: Point, point: Point): Point => ({ x: point.x - origin.x, y: point.y - origin.y })

const isNear = (point: Point): boolean => Math.abs(point.x) < MOST_EXTENT_MM && Math.abs(point.y) < MOST_EXTENT_MM

/** The heading at the end, whole turns taken off where there are many between the two. */
function nearTurn(startRad: number, endRad: number): number {
  const turn = endRad - startRad
  if (Math.abs(turn) <= MOST_TURN_RAD) return endRad
  return startRad + Math.atan2(Math.sin(turn), Math.cos(turn))
}

const inBounds = (curvaturePerMm: number | null, unitMm: number): number | null =>
  curvaturePerMm === null ? null : Math.min(Math.max(curvaturePerMm * unitMm, -MOST_BEND), MOST_BEND)
