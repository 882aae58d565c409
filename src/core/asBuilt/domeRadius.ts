import { halfWidthAtMm } from '../instrument/body.ts'
import { makeBack } from '../instrument/back.ts'
import { gapsUnderStraightedge, type StraightedgeGaps } from '../instrument/straightedge.ts'
import { makeTop } from '../instrument/top.ts'

import { flatSlopeRad } from '../neckPart.ts'
import type { Plan } from '../plan.ts'
import type { Reading } from './reading.ts'
import type { ShapedPlan } from './rimDepths.ts'

const STEPS = 24
/** A dome flatter than this is flat to any straightedge: under 0.001 mm across a body. */
const LEAST_CURVATURE_PER_MM = 1e-7
/** How much of a gap has to come from the dome's curvature for it to say anything about it, mm: below, a feeler's error would be the radius. */
const LEAST_SAY_MM = 0.2

type Plate = 'top' | 'back'

/**
 * The radius of a dome that brings out the gaps read under a straightedge, mm; of several gaps the one with the least sum of squares. null where
 * the plate is flat, or where the dome hardly shows in them (on the flat of an upper bout; a crown over a flat rim of a height of its own).
 *
 * Gauss-Newton on the curvature, of which a gap is all but a multiple; a bounded count of steps, each kept to a change by half. Derived: the
 * inverse of the sagitta where the place lies over the axis.
 */
export function radiusFromGaps({ plan, shape }: ShapedPlan, plate: Plate, readings: readonly Reading[]): number | null {
  if (plan[plate].form === 'flat') return null
  const gapsAt = (radiusMm: number): StraightedgeGaps => gapsOf(plan, shape, plate, radiusMm)
  let curvature = 1 / plan[plate].radiusMm
  for (let step = 0; step < STEPS; step++) {
    const here = gapsAt(1 / curvature)
    const nudge = curvature * 1e-6
    const beside = gapsAt(1 / (curvature + nudge))
    let [square, along] = [0, 0]
    for (const { number, value } of readings) {
      const name = number.slice(plate.length + 1) as keyof StraightedgeGaps
      const [gap, next] = [here[name], beside[name]]
      if (typeof gap !== 'number' || typeof next !== 'number') continue
      const gain = (next - gap) / nudge
      square += gain * gain
      along += gain * (value - gap)
    }
    if (!(Math.sqrt(square) * curvature > LEAST_SAY_MM)) return null
    const change = Math.min(Math.max(along / square, -curvature / 2), curvature)
    curvature = Math.max(curvature + change, LEAST_CURVATURE_PER_MM)
  }
  return 1 / curvature
}

/** The gaps of a plate at another radius, the body as it is. */
function gapsOf(plan: Plan, shape: ShapedPlan['shape'], plate: Plate, radiusMm: number): StraightedgeGaps {
  const { outline, across, placed, scale } = shape
  const { lengthMm, bass } = outline
  if (plate === 'back') {
    const back = makeBack({ ...plan.back, radiusMm }, lengthMm, plan.rim.depthAtTailMm, plan.rim.depthAtNeckMm)
    return gapsUnderStraightedge(back.surface, 'down', across, lengthMm)
  }
  const top = makeTop(
    { ...plan.top, radiusMm },
    {
      lengthMm,
      saddleLineMm: scale.saddleLineMm,
      halfWidthAtMm: (x) => halfWidthAtMm(bass, x),
      flatSlopeRad: (flat) => flatSlopeRad(plan, placed, flat),
    },
  )
  return gapsUnderStraightedge(top.plate, 'up', across, lengthMm)
}
