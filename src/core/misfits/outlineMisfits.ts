import type { Geometry } from '../compute.ts'
import { MOST_OPEN } from '../instrument/compassArcs.ts'
import { crossesItself } from '../instrument/crossing.ts'
import { CUTAWAY_MISFITS } from '../instrument/cutaway.ts'
import { LEAST_READINGS } from '../instrument/halfWidths.ts'
import type { Numbers } from '../numbers.ts'
import type { Plan } from '../plan.ts'
import type { PlanField } from '../planFields.ts'
import { keyWidthMisfits } from './keyWidthMisfits.ts'
import type { Report } from './report.ts'

// Limits are common practice, no published source, unless said.
const CLOSES_WITHIN_MM = 0.05
const CORNER_FROM_RAD = 0.003
/** A drawing is hardly ever closer than a degree. */
const DRAWN_CORNER_FROM_RAD = 0.02

/** What drew the outline: where to mend it. */
const DRAWN_BY: Readonly<Record<Plan['outline']['kind'], readonly PlanField[]>> = {
  compassArcs: ['outline.pieces', 'outline.lengthMm'],
  keyWidths: [
    'outline.lengthMm',
    'outline.keyWidths.lowerBoutMm',
    'outline.keyWidths.waistMm',
    'outline.keyWidths.upperBoutMm',
  ],
  halfWidths: ['outline.halfWidths.rows', 'outline.lengthMm'],
  drawnPath: ['outline.drawnPath'],
}

export function outlineMisfits(plan: Plan, numbers: Numbers, geometry: Geometry, report: Report) {
  const { outline } = geometry
  const drawnBy = DRAWN_BY[plan.outline.kind]
  const { alongMm, acrossMm, cornerRad } = outline.closure
  if (outline.openCount > MOST_OPEN)
    report('outlineTooManyOpen', 'cannot', ['outline.pieces'], { open: outline.openCount })
  else {
    if (Math.hypot(alongMm, acrossMm) > CLOSES_WITHIN_MM)
      report('outlineDoesNotClose', 'cannot', drawnBy, { alongMm, acrossMm })
    const isDrawn = plan.outline.kind === 'drawnPath'
    if (Math.abs(cornerRad) > (isDrawn ? DRAWN_CORNER_FROM_RAD : CORNER_FROM_RAD))
      report('outlineHasCorner', isDrawn ? 'care' : 'cannot', drawnBy.slice(0, 1), { cornerRad })
  }
  if (crossesItself(outline.bass) || (!outline.isMirrored && crossesItself(outline.treble)))
    report('outlineCrossesItself', 'cannot', drawnBy)
  if (plan.outline.kind === 'drawnPath' && plan.outline.drawnPath === null)
    report('drawnPathMissing', 'cannot', ['outline.drawnPath'])
  if (plan.outline.kind === 'keyWidths') keyWidthMisfits(plan, numbers, outline.fairness, report)
  readingMisfits(plan, geometry, report)
  cutawayMisfits(plan, geometry, report)
}

function readingMisfits(plan: Plan, { outline }: Geometry, report: Report) {
  const { reading } = outline
  if (reading === null) return
  const { halfWidths, lengthMm } = plan.outline
  if (lengthMm === null) report('readingsNeedLength', 'cannot', ['outline.lengthMm'])
  if (reading.rows.length < LEAST_READINGS) {
    report('readingsTooFew', 'cannot', ['outline.halfWidths.rows'], {
      count: reading.rows.length,
      least: LEAST_READINGS,
    })
    return
  }
  const worst = reading.worst === null ? undefined : reading.rows[reading.worst]
  if (!reading.within && worst !== undefined)
    report('readingsNotFair', 'cannot', ['outline.halfWidths.rows', 'outline.halfWidths.readToMm'], {
      fromTailMm: worst.fromTailMm,
      halfWidthMm: worst.halfWidthMm,
      byMm: Math.abs(worst.departureMm),
      readToMm: halfWidths.readToMm,
    })
}

function cutawayMisfits(plan: Plan, { outline }: Geometry, report: Report) {
  const { cutaway } = plan.outline
  if (cutaway.form === 'none') return
  if (outline.cut === null) {
    report('cutawayOnOwnTreble', 'care', ['outline.cutaway.form'])
    return
  }
  if (outline.cut.fits) return
  report(
    'cutawayDoesNotFit',
    'cannot',
    [
      'outline.cutaway.leavesAtMm',
      'outline.cutaway.hollowRadiusMm',
      ...(cutaway.form === 'rounded' ? (['outline.cutaway.hornRadiusMm'] as const) : []),
      'outline.cutaway.meetsNeckAtMm',
    ],
    { reason: CUTAWAY_MISFITS.indexOf(outline.cut.reason) },
  )
}
