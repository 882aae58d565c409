import type { Curve } from '../geometry/curve.ts'
import { fairCurve } from '../geometry/fair/fairCurve.ts'
import { curvatureOf } from '../figure.ts'
import type { KeyWidthsPlan, Radius } from '../plan.ts'

export interface FairOutline {
  readonly curve: Curve
  readonly fair: boolean
  readonly missMm: number
  /** Which width it is best to move: 0 lower bout, 1 waist, 2 upper bout. */
  readonly culprit: number | null
  /** Whether the three places follow one another between tail and neck. */
  readonly inOrder: boolean
}

const curvature = (radius: Radius | null): number | null => (radius === null ? null : curvatureOf(radius))

/** The fairest half outline through a lower bout, a waist and an upper bout. Places out of order are taken in the order they stand. */
export function fairThrough(widths: KeyWidthsPlan, lengthMm: number): FairOutline {
  const through = [
    { x: widths.lowerBoutAtMm, y: widths.lowerBoutMm / 2 },
    { x: widths.waistAtMm, y: widths.waistMm / 2 },
    { x: widths.upperBoutAtMm, y: widths.upperBoutMm / 2 },
  ]
  const inOrder =
    widths.lowerBoutAtMm < widths.waistAtMm &&
    widths.waistAtMm < widths.upperBoutAtMm &&
    widths.upperBoutAtMm < lengthMm
  const { curve, fair, missMm, culprit } = fairCurve({
    lengthMm,
    through: through.toSorted((a, b) => a.x - b.x),
    tailCurvaturePerMm: curvature(widths.tailRadiusMm),
    neckFlatHalfWidthMm: widths.neckFlatMm / 2,
    neckCurvaturePerMm: widths.neckFlatMm > 0 ? 0 : curvature(widths.neckRadiusMm),
  })
  return { curve, fair: fair && inOrder, missMm, culprit, inOrder }
}
