import type { Figure } from '../figure.ts'
import { type Curve, insetPoint } from '../geometry/curve.ts'
import type { Point } from '../geometry/point.ts'
import { type CurveTable, signedDistanceMm, tabulate } from '../geometry/signedDistance.ts'

/** Both halves of an outline, each from tail to neck. */
export interface Halves {
  readonly bass: Curve
  readonly treble: Curve
  /** Whether the treble half is the bass half mirrored. */
  readonly isMirrored: boolean
}

/** The largest departure to one side of the mould's surface, and where along the instrument's centreline from its tail. */
export interface Departure {
  readonly byMm: number
  /** 'none' where it departs nowhere. */
  readonly atMm: Figure
  readonly half: 'bass' | 'treble' | 'both'
}

export interface MouldGap {
  /** Which way, and how far, the instrument is moved from tail on tail so that the larger departure is least. */
  readonly slide: { readonly toward: 'neck' | 'tail' | 'none'; readonly byMm: number }
  /** Where it stands outside the mould's surface: too large there. */
  readonly outside: Departure
  /** Where it stays inside the mould's surface: too small there. */
  readonly inside: Departure
  /** The larger of the two. */
  readonly gapMm: number
  /** Whether that is no more than sides give when they are clamped in. */
  readonly holds: boolean
  /** The larger departure with tail on tail. */
  readonly unslidMm: number
}

interface Pair {
  readonly wood: Curve
  readonly mould: CurveTable
  readonly half: Departure['half']
  readonly points: readonly Point[]
}

/** Half a millimetre of spring: common practice, no published source. */
const SPRINGS_MM = 0.5
/** Less than this is no departure, mm. */
const CLOSED_MM = 1e-6
/** Moved by less than this it has not been moved. */
const STILL_MM = 1e-4
const SAMPLES = 160
/** While it slides, every so many of them are looked at. */
const SLIDING_STRIDE = 2
/** No further than this either way, and first in this many steps. */
const MOST_SLIDE_MM = 30
const SCAN_STEPS = 12
const GOLDEN_STEPS = 36
const REFINE_STEPS = 30
const GOLDEN = (Math.sqrt(5) - 1) / 2

/**
 * How far an instrument's outline departs from the one a mould or a form was made to, square to it, once it is slid along the centreline
 * to where the largest departure is least. `insetMm` 0 compares outer faces; a form's surface stands that far inside both outlines.
 *
 * Samples along the outline, a bounded scan of slides with a golden section about the best, then the worst places refined between samples.
 * Source: derived.
 */
export function mouldGap(wood: Halves, mould: Halves, insetMm: number): MouldGap {
  const pairs = pairsOf(wood, mould, insetMm)
  const worst = (slideMm: number) => {
    const { outside, inside } = extremes(pairs, slideMm, insetMm, SLIDING_STRIDE)
    return Math.max(outside.valueMm, -inside.valueMm)
  }
  const slideMm = leastSlide(worst)
  const slid = departures(pairs, slideMm, insetMm)
  const unslid = departures(pairs, 0, insetMm)
  const gapMm = Math.max(slid.outside.byMm, slid.inside.byMm)
  return {
    slide: { toward: Math.abs(slideMm) < STILL_MM ? 'none' : slideMm > 0 ? 'neck' : 'tail', byMm: Math.abs(slideMm) },
    ...slid,
    gapMm,
    holds: gapMm <= SPRINGS_MM,
    unslidMm: Math.max(unslid.outside.byMm, unslid.inside.byMm),
  }
}

function pairsOf(wood: Halves, mould: Halves, insetMm: number): Pair[] {
  const pair = (woodHalf: Curve, mouldHalf: CurveTable, half: Departure['half']): Pair => ({
    wood: woodHalf,
    mould: mouldHalf,
    half,
    points: Array.from({ length: SAMPLES + 1 }, (_, i) =>
      insetPoint(woodHalf, (woodHalf.lengthMm * i) / SAMPLES, insetMm),
    ),
  })
  const bass = tabulate(mould.bass)
  if (wood.isMirrored && mould.isMirrored) return [pair(wood.bass, bass, 'both')]
  const treble = mould.isMirrored ? bass : tabulate(mould.treble)
  return [pair(wood.bass, bass, 'bass'), pair(wood.treble, treble, 'treble')]
}

interface Extreme {
  readonly pair: Pair
  readonly sample: number
  readonly valueMm: number
}

/** Distance to the parallel of the mould's outline: that to the outline itself, and the inset. */
function extremes(
  pairs: readonly Pair[],
  slideMm: number,
  insetMm: number,
  stride = 1,
): { outside: Extreme; inside: Extreme } {
  const first = { pair: pairs[0]!, sample: 0 }
  let outside: Extreme = { ...first, valueMm: Number.NEGATIVE_INFINITY }
  let inside: Extreme = { ...first, valueMm: Number.POSITIVE_INFINITY }
  for (const pair of pairs) {
    for (let sample = 0; sample < pair.points.length; sample += stride) {
      const { x, y } = pair.points[sample]!
      const valueMm = signedDistanceMm(pair.mould, { x: x + slideMm, y }) + insetMm
      if (valueMm > outside.valueMm) outside = { pair, sample, valueMm }
      if (valueMm < inside.valueMm) inside = { pair, sample, valueMm }
    }
  }
  return { outside, inside }
}

function leastSlide(worst: (slideMm: number) => number): number {
  const stepMm = (2 * MOST_SLIDE_MM) / SCAN_STEPS
  let best = 0
  let least = worst(0)
  if (least < 1e-9) return 0
  for (let i = 0; i <= SCAN_STEPS; i++) {
    const slideMm = -MOST_SLIDE_MM + i * stepMm
    const here = worst(slideMm)
    if (here < least) {
      least = here
      best = slideMm
    }
  }
  let a = best - stepMm
  let b = best + stepMm
  let c = b - GOLDEN * (b - a)
  let d = a + GOLDEN * (b - a)
  let atC = worst(c)
  let atD = worst(d)
  for (let count = 0; count < GOLDEN_STEPS; count++) {
    if (atC < atD) {
      ;[b, d, atD] = [d, c, atC]
      c = b - GOLDEN * (b - a)
      atC = worst(c)
    } else {
      ;[a, c, atC] = [c, d, atD]
      d = a + GOLDEN * (b - a)
      atD = worst(d)
    }
  }
  const slideMm = (a + b) / 2
  return worst(slideMm) < least ? slideMm : best
}

function departures(pairs: readonly Pair[], slideMm: number, insetMm: number): Pick<MouldGap, 'outside' | 'inside'> {
  const found = extremes(pairs, slideMm, insetMm)
  return {
    outside: refine(found.outside, 1, slideMm, insetMm),
    inside: refine(found.inside, -1, slideMm, insetMm),
  }
}

/** The worst place between the samples beside the worst sample; `way` 1 for outside, -1 for inside. */
function refine({ pair, sample }: Extreme, way: 1 | -1, slideMm: number, insetMm: number): Departure {
  const { wood, mould, half } = pair
  const stepMm = wood.lengthMm / SAMPLES
  const departMm = (s: number) => {
    const { x, y } = insetPoint(wood, s, insetMm)
    return way * (signedDistanceMm(mould, { x: x + slideMm, y }) + insetMm)
  }
  let a = Math.max(0, (sample - 1) * stepMm)
  let b = Math.min(wood.lengthMm, (sample + 1) * stepMm)
  for (let count = 0; count < REFINE_STEPS; count++) {
    const c = b - GOLDEN * (b - a)
    const d = a + GOLDEN * (b - a)
    if (departMm(c) > departMm(d)) b = d
    else a = c
  }
  const places = [(a + b) / 2, sample * stepMm]
  const [between, at] = places.map(departMm)
  const s = between! > at! ? places[0]! : places[1]!
  const byMm = Math.max(0, between!, at!)
  return { byMm, atMm: byMm < CLOSED_MM ? 'none' : insetPoint(wood, s, insetMm).x, half }
}
