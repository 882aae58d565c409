import type { Numbers } from '../numbers.ts'
import type { Plan } from '../plan.ts'
import type { PlanField } from '../planFields.ts'
import type { Report } from './report.ts'

// Limits are common practice, no published source, unless said.
const BEND_HARD_TIMES = 15
const BEND_CARE_TIMES = 25
const SHALLOWEST_SIDE_MM = 15

export function sideMisfits(plan: Plan, numbers: Numbers, report: Report) {
  const { tightestRadiusMm: radiusMm, tightestAtMm: atMm } = numbers.body
  const thicknessMm = plan.rim.sideThicknessMm
  const shape: PlanField = plan.outline.kind === 'compassArcs' ? 'outline.pieces' : 'outline.keyWidths.waistMm'
  if (typeof radiusMm === 'number' && typeof atMm === 'number') {
    const values = { radiusMm, atMm, thicknessMm, times: radiusMm / thicknessMm }
    if (values.times < BEND_HARD_TIMES)
      report('sidesTooTightToBend', 'cannot', ['rim.sideThicknessMm', shape], {
        ...values,
        bendableMm: radiusMm / BEND_HARD_TIMES,
      })
    else if (values.times < BEND_CARE_TIMES)
      report('sidesTightToBend', 'care', ['rim.sideThicknessMm', shape], {
        ...values,
        easyMm: radiusMm / BEND_CARE_TIMES,
      })
  }
  const shallowest = numbers.rim.reduce((a, b) => (b.depthMm < a.depthMm ? b : a))
  if (shallowest.depthMm < SHALLOWEST_SIDE_MM)
    report('sideTooShallow', 'cannot', ['rim.depthAtTailMm', 'rim.depthAtNeckMm', 'back.radiusMm', 'top.radiusMm'], {
      depthMm: shallowest.depthMm,
      atMm: shallowest.alongOuterMm,
    })
}
