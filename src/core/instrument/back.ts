import type { Figure } from '../figure.ts'
import { plane, sphere, type Surface } from '../geometry/surface.ts'
import type { BackPlan } from '../plan.ts'

export interface BackNumbers {
  readonly form: BackPlan['form']
  readonly radiusMm: Figure
  /** Where the axis of the spherical back stands, from the tail; with taper well toward it, even outside the body. */
  readonly axisAtMm: Figure
  /** The back's lowest place on the centreline, and how far it lies under the rim plane. */
  readonly lowestAtMm: number
  readonly lowestUnderRimPlaneMm: number
  /** Gap under a straightedge from rim to rim across the dished back, and along the centreline. */
  readonly gapAcrossLowerBoutMm: Figure
  readonly gapAcrossWaistMm: Figure
  readonly gapAcrossUpperBoutMm: Figure
  readonly gapAlongMm: number
}

export interface Back {
  readonly form: BackPlan['form']
  readonly radiusMm: number | 'flat'
  readonly axisAtMm: Figure
  /** Height of the rim's back edge, and of the plate's inside, over the rim plane: negative, since the back lies below. */
  readonly surface: Surface
}

/**
 * The surface of the back between tail (0, 0, -depthAtTail) and neck (L, 0, -depthAtNeck), bulging away from the body.
 *
 * Sphere: its centre lies in the plane y = 0 on the perpendicular bisector of that chord c, which puts its axis at
 *   x_c = L/2 - (Dt - Dn) sqrt(R^2 - c^2/4) / c
 * Across only: a cylinder of radius R lying along the chord. Flat: the plane through the chord.
 * Source: derived. A radius under half the chord is taken as half the chord; the finding is made elsewhere.
 */
export function makeBack(plan: BackPlan, lengthMm: number, depthAtTailMm: number, depthAtNeckMm: number): Back {
  const fallMm = depthAtTailMm - depthAtNeckMm
  const chordMm = Math.hypot(lengthMm, fallMm)
  const chord = plane(-depthAtTailMm, fallMm / lengthMm)
  if (plan.form === 'flat') return { form: 'flat', radiusMm: 'flat', axisAtMm: 'none', surface: chord }
  const { radiusMm } = plan
  if (plan.form === 'across') {
    const stretch = chordMm / lengthMm
    const leftMm = (y: number) => Math.sqrt(Math.max(radiusMm * radiusMm - y * y, (radiusMm * radiusMm) / 1e4))
    return {
      form: 'across',
      radiusMm,
      axisAtMm: 'none',
      surface: {
        heightMm: (x, y) => chord.heightMm(x, y) + (stretch * (y * y)) / (radiusMm + leftMm(y)),
        slope: (x, y) => ({ x: chord.slope(x, y).x, y: (stretch * y) / leftMm(y) }),
      },
    }
  }
  const toChordMm = Math.sqrt(Math.max(radiusMm * radiusMm - (chordMm * chordMm) / 4, 0))
  const axisAtMm = lengthMm / 2 - (fallMm * toChordMm) / chordMm
  return {
    form: 'sphere',
    radiusMm,
    axisAtMm,
    surface: sphere(radiusMm, axisAtMm, { x: 0, z: -depthAtTailMm }, 'down'),
  }
}
