import type { Geometry } from '../compute.ts'
import type { FindingCode } from '../findings.ts'
import { domeReach } from '../instrument/domeReach.ts'
import type { Numbers } from '../numbers.ts'
import type { Plan } from '../plan.ts'
import type { PlanField } from '../planFields.ts'
import type { Report } from './report.ts'

// Limits are common practice, no published source, unless said.
/** A dome whose rim slopes by more than asin of this is no guitar; one by more than the second is unusual. */
const DOME_TOO_TIGHT = 0.5
const DOME_STEEP = 0.26
const FLAT_ABOVE_MM = 0.02
/** A cap a little wider than the rim is pressed into it. */
const CAP_OVER_RIM = 1.02

export function domeMisfits(plan: Plan, numbers: Numbers, geometry: Geometry, report: Report) {
  const { top, back, lengthMm } = geometry
  const reach = domeReach(
    geometry.outline.isMirrored ? [geometry.outline.bass] : [geometry.outline.bass, geometry.outline.treble],
    back,
    lengthMm,
    plan.rim.depthAtTailMm - plan.rim.depthAtNeckMm,
  )
  const tight = (code: FindingCode, field: PlanField, radiusMm: number, reachMm: number) => {
    if (reachMm / radiusMm > DOME_STEEP)
      report(code, reachMm / radiusMm > DOME_TOO_TIGHT ? 'cannot' : 'care', [field], { radiusMm, reachMm })
  }
  if (top.form === 'sphere' || top.form === 'flatUpperBout')
    tight('topTooTight', 'top.radiusMm', plan.top.radiusMm, reach.topMm)
  if (back.form !== 'flat') tight('backTooTight', 'back.radiusMm', plan.back.radiusMm, reach.backMm)

  if (top.form === 'flatUpperBout') {
    const fromMm = plan.top.flatFromMm
    if (fromMm >= lengthMm) report('flatOutsideBody', 'cannot', ['top.flatFromMm'], { fromMm, lengthMm })
    else {
      const slope = Math.tan(typeof top.flatSlopeRad === 'number' ? top.flatSlopeRad : 0)
      const start = top.dish.heightMm(fromMm, geometry.halfWidthAtMm(fromMm))
      const above = numbers.rim
        .filter((row) => row.xMm > fromMm)
        .map((row) => start - (row.xMm - fromMm) * slope - top.dish.heightMm(row.xMm, row.yMm))
      const byMm = Math.max(0, ...above)
      if (byMm > FLAT_ABOVE_MM)
        report(
          'flatAboveDome',
          'cannot',
          plan.top.flatSlope === 'entered'
            ? ['top.flatSlopeDeg', 'top.flatFromMm']
            : ['top.flatFromMm', 'bridge.thicknessMm', 'bridge.saddleShowingMm', 'board.thicknessMm', 'top.flatSlope'],
          { byMm },
        )
    }
  }
  if (top.form === 'flatRim') {
    const riseMm = plan.top.riseAtSaddleMm
    const reachMm = Math.sqrt(Math.max(2 * plan.top.radiusMm * riseMm - riseMm * riseMm, 0))
    const halfWidthMm = geometry.halfWidthAtMm(numbers.scale.saddleLineMm)
    if (reachMm > halfWidthMm * CAP_OVER_RIM)
      report('plateRiseTooGreat', 'care', ['top.riseAtSaddleMm', 'top.radiusMm'], { reachMm, halfWidthMm })
  }
}
