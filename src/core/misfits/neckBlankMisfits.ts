import type { Figure } from '../figure.ts'
import type { FindingCode } from '../findings.ts'
import type { Numbers } from '../numbers.ts'
import type { Plan } from '../plan.ts'
import type { PlanField } from '../planFields.ts'
import type { Report } from './report.ts'

// Limits are common practice, no published source.
const BEHIND_ROD_MM = 5
/** Less than this comes through while the neck is carved. */
const BEHIND_ROD_LEAST_MM = 2
const ROD_SHORT_MM = 30
const ROD_TO_BOLT_MM = 2
const BEHIND_TENON_MM = 5
const BESIDE_TENON_MM = 10
const BOLT_TO_END_MM = 8
const HEAD_CORE_MM = 9
const POST_TO_END_MM = 5
const OVER_NUT_RAD = { least: (7 * Math.PI) / 180, most: (15.5 * Math.PI) / 180 }
/** Rollers lie in slots under the face: the strings come down steeply. */
const INTO_SLOT_RAD = (26 * Math.PI) / 180
const SIDE_RAD = (12 * Math.PI) / 180

export function neckBlankMisfits(plan: Plan, { neck, head, tuners }: Numbers, report: Report) {
  const least = (
    code: FindingCode,
    found: Figure,
    enoughMm: number,
    name: string,
    fields: readonly PlanField[],
    cannotMm = 0,
  ) => {
    if (typeof found === 'number' && found < enoughMm)
      report(code, found < cannotMm ? 'cannot' : 'care', fields, { [name]: found })
  }
  least(
    'rodTooDeep',
    neck.woodBehindRodMm,
    BEHIND_ROD_MM,
    'woodMm',
    ['neck.rodDepthMm', 'neck.thicknessAtFirstMm', 'board.thicknessMm'],
    BEHIND_ROD_LEAST_MM,
  )
  least('rodMeetsBolt', neck.rodToBoltMm, ROD_TO_BOLT_MM, 'clearMm', ['neck.rodDepthMm', 'neck.boltsAtMm'])
  const beforeMm = neck.rodEndsBeforeJointMm
  if (typeof beforeMm === 'number' && beforeMm > ROD_SHORT_MM)
    report('rodTooShort', 'care', ['neck.rodLengthMm', 'neck.rodFromNutMm'], { byMm: beforeMm })
  if (typeof beforeMm === 'number' && beforeMm < 0) {
    const byMm = -beforeMm - (plan.neck.joint === 'butt' ? 0 : plan.neck.tenonDepthMm)
    if (byMm > 0) report('rodEntersBody', 'care', ['neck.rodLengthMm', 'neck.rodFromNutMm'], { byMm })
  }
  least('tenonTooDeep', neck.blockBehindTenonMm, BEHIND_TENON_MM, 'leftMm', [
    'neck.tenonDepthMm',
    'blocks.neck.thicknessMm',
  ])
  least('tenonTooWide', neck.blockBesideTenonMm, BESIDE_TENON_MM, 'leftMm', [
    'neck.tenonWidthMm',
    'blocks.neck.widthMm',
  ])
  least('boltOffHeel', neck.boltToHeelEndMm, BOLT_TO_END_MM, 'leftMm', ['neck.boltsAtMm', 'rim.depthAtNeckMm'])
  if (head.coreMm < HEAD_CORE_MM)
    report(
      'headTooThin',
      head.coreMm <= 0 ? 'cannot' : 'care',
      ['head.thicknessMm', 'head.faceVeneerMm', 'head.backVeneerMm'],
      { coreMm: head.coreMm },
    )
  const leftMm = tuners.map(({ fromNutMm }) => head.lengthMm - fromNutMm - head.holeMm / 2)
  const nearestMm = Math.min(...leftMm)
  if (nearestMm < POST_TO_END_MM)
    report(
      'postOffHead',
      nearestMm < 0 ? 'cannot' : 'care',
      ['head.lengthMm', 'head.postSpacingMm', 'head.firstPostMm', 'head.tuners'],
      { string: leftMm.indexOf(nearestMm) + 1, leftMm: nearestMm },
    )
  const low = OVER_NUT_RAD.least
  const high = plan.head.postMm === 0 ? INTO_SLOT_RAD : OVER_NUT_RAD.most
  const off = (angle: number) => Math.max(low - angle, angle - high)
  let worst = -1
  let widest = -1
  tuners.forEach(({ overNutRad, sideRad }, i) => {
    if (off(overNutRad) > 0 && (worst < 0 || off(overNutRad) > off(tuners[worst]!.overNutRad))) worst = i
    if (Math.abs(sideRad) > SIDE_RAD && (widest < 0 || Math.abs(sideRad) > Math.abs(tuners[widest]!.sideRad)))
      widest = i
  })
  if (worst >= 0)
    report('nutAngleUnusual', 'care', ['head.angleDeg', 'head.stringOverFaceMm', 'head.firstPostMm'], {
      string: worst + 1,
      overNutRad: tuners[worst]!.overNutRad,
    })
  if (widest >= 0)
    report('stringBendsAtNut', 'care', ['head.firstAcrossMm', 'head.lastAcrossMm', 'head.firstPostMm'], {
      string: widest + 1,
      sideRad: tuners[widest]!.sideRad,
    })
}
