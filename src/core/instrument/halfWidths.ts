import { curvatureOf } from '../figure.ts'
import { type Curve, makeCurve } from '../geometry/curve.ts'
import { straight } from '../geometry/piece.ts'
import type { Point } from '../geometry/point.ts'
import { curveWithin } from '../geometry/within/curveWithin.ts'
import { orderReadings } from '../geometry/within/orderReadings.ts'
import type { HalfWidthReading, HalfWidthsPlan, Radius } from '../plan.ts'
import { TAIL } from './compassArcs.ts'

/** One reading and how far it lies outside the curve, mm; negative inside. */
export interface ReadingRow {
  readonly fromTailMm: number
  readonly halfWidthMm: number
  readonly departureMm: number
}

export interface ReadOutline {
  readonly curve: Curve
  /** Whether the curve stays within the reading error of every row. */
  readonly within: boolean
  readonly rows: readonly ReadingRow[]
  readonly largestMm: number
  /** Row in `rows` with the largest departure; null without any. */
  readonly worst: number | null
}

/** Fewer readings than this say nothing of a body. */
export const LEAST_READINGS = 5

const curvature = (radius: Radius | null): number | null => (radius === null ? null : curvatureOf(radius))
const pointOf = ([x, y]: HalfWidthReading): Point => ({ x, y })

/**
 * The half outline of measured half-widths: within the stated error of every reading, and of all such curves the fairest, with at most
 * one inflection on either side of the waist. A flat at the neck follows as a straight.
 * Source of the aim: Moreton & Sequin 1992; the error band is that of the table.
 */
export function readOutline(plan: HalfWidthsPlan, lengthMm: number): ReadOutline {
  const flatMm = plan.neckFlatMm / 2
  const readings = orderReadings({
    rows: plan.rows.map(pointOf),
    tailRows: plan.tailRows.map(pointOf),
    neckRows: plan.neckRows.map(pointOf),
    lengthMm,
    neckFlatHalfWidthMm: flatMm,
  })
  const found = curveWithin({
    start: { ...TAIL, curvaturePerMm: curvature(plan.tailRadiusMm) },
    end: {
      point: { x: lengthMm, y: flatMm },
      headingRad: -Math.PI / 2,
      curvaturePerMm: flatMm > 0 ? null : curvature(plan.neckRadiusMm),
    },
    readings,
    withinMm: plan.readToMm,
    shape: 'guitar',
  })
  const { curve } = found
  return {
    curve: flatMm > 0 ? makeCurve(TAIL, [...curve.pieces, straight(flatMm)]) : curve,
    within: found.within,
    rows: readings.map((at, i) => ({
      fromTailMm: at.x,
      halfWidthMm: at.y,
      departureMm: found.departuresMm[i] ?? 0,
    })),
    largestMm: found.largestMm,
    worst: found.worst,
  }
}
