import type { Geometry } from '../compute.ts'
import { blockFits } from '../instrument/block.ts'
import type { Plan } from '../plan.ts'
import type { Report } from './report.ts'

export function blockMisfits(plan: Plan, geometry: Geometry, report: Report) {
  const { half, sideThicknessMm } = geometry.rimSite
  if (!blockFits(plan.blocks.tail, { half, sideThicknessMm, end: 'tail' }))
    report('blockWiderThanBody', 'cannot', ['blocks.tail.widthMm'], { end: 0 })
  if (!blockFits(plan.blocks.neck, { half, sideThicknessMm, end: 'neck' }))
    report('blockWiderThanBody', 'cannot', ['blocks.neck.widthMm'], { end: 1 })
}
