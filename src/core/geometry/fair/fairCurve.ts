import type { Curve } from '../curve.ts'
import { makeCurve } from '../curve.ts'
import { canPass, fitThrough } from './fairFit.ts'
import { arc } from '../piece.ts'
import type { Point } from '../point.ts'
import { distanceMm } from '../point.ts'

/** Half an outline, asked for by a few of its points: from (0, 0) square to the axis to the neck end, square to it again. */
export interface FairCurveAim {
  /** Above 0. */
  readonly lengthMm: number
  /** Points to pass through, by rising x, all with 0 < x < length and y > 0; normally lower bout, waist, upper bout. */
  readonly through: readonly Point[]
  /** Curvature at the tail, 0 for flat; null: free. */
  readonly tailCurvaturePerMm: number | null
  /** Above 0: the curve reaches (length, this) heading for the axis, and a straight goes on to (length, 0). 0: no flat. */
  readonly neckFlatHalfWidthMm: number
  /** Curvature where the curve reaches the neck end, 0 into a flat; null: free. */
  readonly neckCurvaturePerMm: number | null
}

export interface FairCurveResult {
  readonly curve: Curve
  /** The curve does all that was asked. */
  readonly fair: boolean
  /**
   * How far the curve stays from the worst of its points or from its end, or runs beyond tail, neck end or axis, whichever is more.
   * 0 where the numbers describe no body.
   */
  readonly missMm: number
  /** Index of the point it is best to move; null where fair. */
  readonly culprit: number | null
  /** Newton steps taken, in all. */
  readonly iterations: number
}

/** How many points are left out in turn, the worst met first, to find the one to move. */
const MOST_TRIALS = 3
/** Lengths outside these, and curvatures, and half widths, beyond this many times 1/length, or length, describe no body. */
const LEAST_LENGTH_MM = 1e-3
const MOST_LENGTH_MM = 1e6
const MOST_CURVATURE = 200
const MOST_HEIGHT = 5

/**
 * The fair curve through a few points: among the curves with continuous curvature (here linear in arc length, piece by piece)
 * that pass through them and meet the ends, with curvature going up, down, up, down on the way (each perhaps not at all, turns
 * where they like, so at most one inflection on either side of the waist), the one with the least integral of (dk/ds)^2 ds.
 *
 * A free end curvature is not negative. Starts from the aim alone; the work is bounded by a count. Whatever is asked, a finite
 * curve comes back; where it is not fair, it is the nearest to the points that was found with curvature going up, down, up,
 * down. Points out of order or out of bounds are left out of it, and the first of them is the culprit.
 *
 * Source of the aim: Moreton & Sequin 1992, Functional optimization for fair surface design (SIGGRAPH); Levien 2009, From
 * Spiral to Spline. The rule on the turns and the method are our own.
 */
export function fairCurve(aim: FairCurveAim): FairCurveResult {
  const { lengthMm, through } = aim
  if (!describesBody(aim)) {
    return {
      curve: halfCircle(lengthMm),
      fair: false,
      missMm: 0,
      culprit: through.length > 0 ? 0 : null,
      iterations: 0,
    }
  }
  const kept: number[] = []
  through.forEach((point, i) => {
    const after = kept.length > 0 ? through[kept.at(-1)!]!.x : 0
    const margin = 1e-6 * lengthMm
    if (point.x > after + margin && point.x < lengthMm - margin && point.y > 0 && point.y < MOST_HEIGHT * lengthMm)
      kept.push(i)
  })
  const fit = fitThrough(aim, kept)
  let { iterations } = fit
  const stray = through.findIndex((_, i) => !kept.includes(i))
  if (stray >= 0) {
    const gap = distanceToCurveMm(fit.curve, through[stray]!)
    return { curve: fit.curve, fair: false, missMm: Math.max(gap, fit.missMm), culprit: stray, iterations }
  }
  if (fit.fair || kept.length === 0) {
    return { curve: fit.curve, fair: fit.fair, missMm: fit.missMm, culprit: null, iterations }
  }
  return { curve: fit.curve, fair: false, missMm: fit.missMm, culprit: findCulprit(), iterations }

  /** The worst met point without which the others can be met; failing that, the worst met. */
  function findCulprit(): number {
    const gaps = kept.map((i) => distanceToCurveMm(fit.curve, through[i]!))
    const order = [...kept].sort((a, b) => (a === fit.worst ? -1 : b === fit.worst ? 1 : gaps[b]! - gaps[a]!))
    for (const i of order.slice(0, MOST_TRIALS)) {
      const others = kept.filter((other) => other !== i)
      const trial = canPass(aim, others)
      iterations += trial.iterations
      if (trial.fair) return i
    }
    return order[0]!
  }
}

const isLength = (lengthMm: number): boolean => lengthMm > LEAST_LENGTH_MM && lengthMm < MOST_LENGTH_MM

/** Whether length, flat and end curvatures are numbers a body can have; false for NaN too. */
function describesBody({
  lengthMm,
  neckFlatHalfWidthMm: flat,
  tailCurvaturePerMm,
  neckCurvaturePerMm,
}: FairCurveAim): boolean {
  const ends = [tailCurvaturePerMm ?? 0, neckCurvaturePerMm ?? 0]
  return (
    isLength(lengthMm) &&
    flat >= 0 &&
    flat < MOST_HEIGHT * lengthMm &&
    ends.every((k) => Math.abs(k) * lengthMm < MOST_CURVATURE)
  )
}

/** Distance from a point to the nearest place between two pieces: near enough to say which point is worst. */
const distanceToCurveMm = (curve: Curve, point: Point): number =>
  curve.places.reduce((least, place) => Math.min(least, distanceMm(point, place.point) || 0), Number.MAX_VALUE)

/** Something finite to draw where the numbers describe no body at all. */
function halfCircle(lengthMm: number): Curve {
  const radiusMm = isLength(lengthMm) ? lengthMm / 2 : 1
  return makeCurve({ point: { x: 0, y: 0 }, headingRad: Math.PI / 2 }, [arc(radiusMm, Math.PI)])
}
