import type { Geometry } from '../compute.ts'
import { LEAST_LEVER_MM, STEEPEST_SLOPE } from '../instrument/neck/neckSet.ts'
import type { Numbers } from '../numbers.ts'
import type { Plan } from '../plan.ts'
import type { PlanField } from '../planFields.ts'
import type { Report } from './report.ts'

// Limits are common practice, no published source.
const IN_TOP_MM = 0.1
const IN_TOP_TOO_FAR_MM = 0.5
/** A board's end that stands freer than this wants a strip under it. */
const FREE_MM = 1.5

const HEIGHTS: readonly PlanField[] = ['bridge.thicknessMm', 'bridge.saddleShowingMm', 'board.thicknessMm']

export function neckSetMisfits(plan: Plan, numbers: Numbers, geometry: Geometry, report: Report) {
  const { neckSet, bridge } = numbers
  const follows = plan.top.form === 'flatUpperBout' && plan.top.flatSlope === 'neckSet'
  const leverMm = bridge.jointToSaddleMm - (geometry.lengthMm - plan.top.flatFromMm)
  if (follows && leverMm < LEAST_LEVER_MM)
    report('flatTooNearSaddle', 'cannot', ['top.flatFromMm', 'top.flatSlope'], { leverMm, leastMm: LEAST_LEVER_MM })
  else if (Math.abs(geometry.neck.built.slope) >= STEEPEST_SLOPE)
    report('neckTooSteep', 'cannot', [...HEIGHTS, 'setup.actionBassMm'], { angleRad: neckSet.angleRad })
  const lowest = neckSet.gaps.reduce((a, b) => (b.gapMm < a.gapMm ? b : a))
  if (lowest.gapMm < -IN_TOP_MM)
    report(
      'boardStandsInTop',
      lowest.gapMm < -IN_TOP_TOO_FAR_MM ? 'cannot' : 'care',
      follows ? ['top.flatFromMm', ...HEIGHTS] : ['top.form', 'top.flatSlope', ...HEIGHTS],
      { byMm: -lowest.gapMm, fromJointMm: lowest.fromJointMm },
    )
  const widest = neckSet.gaps.reduce((a, b) => (b.gapMm > a.gapMm ? b : a))
  if (widest.gapMm > FREE_MM)
    report('boardStandsFree', 'care', HEIGHTS, { gapMm: widest.gapMm, fromJointMm: widest.fromJointMm })
}
