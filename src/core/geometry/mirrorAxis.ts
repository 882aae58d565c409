import type { Curve } from './curve.ts'
import { curveAt } from './curve.ts'
import type { Point } from './point.ts'
import type { StraightLine } from './stroke.ts'

export interface MirrorAxis extends StraightLine {
  /** Root of the mean square distance between places as far to either side along the curve, one of them mirrored. */
  readonly rmsMm: number
}

const COARSE = 360
const FINE = 240
const MOST_TRIED = 6
const GOLDEN_STEPS = 48
/** Axes that fit as well as the best but for this share, or this closely, are axes too; the longest body counts. */
const AS_GOOD_SHARE = 1.5
const AS_GOOD_MM = 0.02

/**
 * The axis in which a closed curve is most nearly its own mirror image, least squares; of several as good (an ellipse has two) the one
 * along which the curve is longest. Places s before and s after a place on the axis are taken for mirror images:
 *
 *   e^(2 i a) = sum z w / |sum z w|     z, w the two as complex numbers about the mean of all: the axis for a given place, closed form
 *
 * which place is searched first among all pairs of evenly spaced points, then by golden section. Bounded by counts. Derived.
 */
export function findMirrorAxis(curve: Curve): MirrorAxis {
  const points = Array.from({ length: COARSE }, (_, j) => curveAt(curve, (curve.lengthMm * j) / COARSE).point)
  const rms = Array.from({ length: COARSE }, (_, m) => {
    const mirrored = points.map((_, j) => points[(m - j + COARSE) % COARSE]!)
    return axisOfPairs(points, mirrored).rmsMm
  })
  const step = curve.lengthMm / COARSE
  const dips = rms
    .map((value, m) => ({ value, m }))
    .filter(({ value, m }) => value <= rms[(m + 1) % COARSE]! && value <= rms[(m - 1 + COARSE) % COARSE]!)
    .toSorted((a, b) => a.value - b.value)
    .slice(0, MOST_TRIED)
    .map(({ m }) => refine(curve, (m - 1) * step, (m + 1) * step))
  const best = Math.min(...dips.map(({ rmsMm }) => rmsMm))
  const good = dips.filter(({ rmsMm }) => rmsMm <= Math.max(AS_GOOD_SHARE * best, AS_GOOD_MM))
  const long = (axis: MirrorAxis) => {
    const along = points.map(({ x, y }) => x * Math.cos(axis.headingRad) + y * Math.sin(axis.headingRad))
    return Math.max(...along) - Math.min(...along)
  }
  return good.reduce((a, b) => (long(b) > long(a) * (1 + 1e-9) ? b : a))
}

/** The axis whose two places on the curve lie at half a sum between `low` and `high`. */
function refine(curve: Curve, low: number, high: number): MirrorAxis {
  const lengthMm = curve.lengthMm
  const wrap = (s: number) => s - lengthMm * Math.floor(s / lengthMm)
  const axisAt = (sum: number) => {
    const from = Array.from({ length: FINE }, (_, j) => sum / 2 + (lengthMm * (j + 0.5)) / (2 * FINE))
    const here = from.map((s) => curveAt(curve, wrap(s)).point)
    const there = from.map((s) => curveAt(curve, wrap(sum - s)).point)
    return axisOfPairs(here, there)
  }
  const share = (Math.sqrt(5) - 1) / 2
  let [a, b] = [low, high]
  let [c, d] = [b - share * (b - a), a + share * (b - a)]
  let [atC, atD] = [axisAt(c), axisAt(d)]
  for (let i = 0; i < GOLDEN_STEPS; i++) {
    if (atC.rmsMm <= atD.rmsMm) {
      ;[b, d, atD] = [d, c, atC]
      c = b - share * (b - a)
      atC = axisAt(c)
    } else {
      ;[a, c, atC] = [c, d, atD]
      d = a + share * (b - a)
      atD = axisAt(d)
    }
  }
  return atC.rmsMm <= atD.rmsMm ? atC : atD
}

/** The axis that best turns each point into its partner. */
function axisOfPairs(here: readonly Point[], there: readonly Point[]): MirrorAxis {
  const count = here.length
  let [x, y] = [0, 0]
  for (let j = 0; j < count; j++) {
    x += (here[j]!.x + there[j]!.x) / (2 * count)
    y += (here[j]!.y + there[j]!.y) / (2 * count)
  }
  let [re, im] = [0, 0]
  for (let j = 0; j < count; j++) {
    const [a, b] = [here[j]!.x - x, here[j]!.y - y]
    const [c, d] = [there[j]!.x - x, there[j]!.y - y]
    re += a * c - b * d
    im += a * d + b * c
  }
  const headingRad = Math.atan2(im, re) / 2
  const [cos, sin] = [Math.cos(2 * headingRad), Math.sin(2 * headingRad)]
  let squares = 0
  for (let j = 0; j < count; j++) {
    const [a, b] = [here[j]!.x - x, here[j]!.y - y]
    squares += (there[j]!.x - x - cos * a - sin * b) ** 2 + (there[j]!.y - y - sin * a + cos * b) ** 2
  }
  return { point: { x, y }, headingRad, rmsMm: Math.sqrt(squares / count) }
}
