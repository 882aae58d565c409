import type { Outline } from '../instrument/outline.ts'
import type { Numbers } from '../numbers.ts'
import type { Plan } from '../plan.ts'
import type { PlanField } from '../planFields.ts'
import type { Report } from './report.ts'

/** Common practice, no published source. */
const FOUND_WITHIN_MM = 0.5

const WIDTHS = [
  'outline.keyWidths.lowerBoutMm',
  'outline.keyWidths.waistMm',
  'outline.keyWidths.upperBoutMm',
] as const satisfies PlanField[]
const PLACES = [
  'outline.keyWidths.lowerBoutAtMm',
  'outline.keyWidths.waistAtMm',
  'outline.keyWidths.upperBoutAtMm',
] as const satisfies PlanField[]

export function keyWidthMisfits(plan: Plan, numbers: Numbers, fairness: Outline['fairness'], report: Report) {
  if (fairness === null) return
  if (plan.outline.lengthMm === null) report('keyWidthsNeedLength', 'cannot', ['outline.lengthMm'])
  if (!fairness.inOrder) {
    report('keyWidthsOutOfOrder', 'cannot', PLACES)
    return
  }
  if (!fairness.fair) {
    const which = fairness.culprit ?? 1
    const { tailRadiusMm, neckRadiusMm, neckFlatMm } = plan.outline.keyWidths
    const fields: PlanField[] = [WIDTHS[which] ?? WIDTHS[1], PLACES[which] ?? PLACES[1]]
    // An end held to a radius can be what no fair curve meets.
    if (tailRadiusMm !== null) fields.push('outline.keyWidths.tailRadiusMm')
    if (neckFlatMm === 0 && neckRadiusMm !== null) fields.push('outline.keyWidths.neckRadiusMm')
    report('keyWidthsNotFair', 'cannot', fields, { missMm: fairness.missMm, which })
    return
  }
  const { body } = numbers
  const keys = plan.outline.keyWidths
  if (body.waistMm === 'none') {
    report('keyWidthsNoWaist', 'care', [WIDTHS[1], PLACES[1]])
    return
  }
  const wanted = [keys.lowerBoutMm, keys.waistMm, keys.upperBoutMm]
  const widths = [body.lowerBoutMm, body.waistMm, body.upperBoutMm]
  const places = [body.lowerBoutAtMm, body.waistAtMm, body.upperBoutAtMm]
  wanted.forEach((want, which) => {
    const foundMm = widths[which]
    const foundAtMm = places[which]
    if (typeof foundMm !== 'number' || typeof foundAtMm !== 'number') return
    if (Math.abs(foundMm - want) > FOUND_WITHIN_MM)
      report('keyWidthNotWidest', 'care', [PLACES[which]!, WIDTHS[which]!], {
        which,
        foundMm,
        foundAtMm,
        wantedMm: want,
      })
  })
}
