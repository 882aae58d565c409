import type { Geometry } from '../compute.ts'
import type { Finding } from '../findings.ts'
import type { Numbers } from '../numbers.ts'
import type { Plan } from '../plan.ts'
import { airMisfits } from './airMisfits.ts'
import { boardMisfits } from './boardMisfits.ts'
import { bracingMisfits } from './bracingMisfits.ts'
import { bridgeMisfits } from './bridgeMisfits.ts'
import { blockMisfits } from './blockMisfits.ts'
import { domeMisfits } from './domeMisfits.ts'
import { edgeMisfits } from './edgeMisfits.ts'
import { holeMisfits } from './holeMisfits.ts'
import { insideMisfits } from './insideMisfits.ts'
import { neckBlankMisfits } from './neckBlankMisfits.ts'
import { neckSetMisfits } from './neckSetMisfits.ts'
import { outlineMisfits } from './outlineMisfits.ts'
import type { Report } from './report.ts'
import { ringMisfits } from './ringMisfits.ts'
import { stringMisfits } from './stringMisfits.ts'
import { sideMisfits } from './sideMisfits.ts'

/** Everything that does not fit, in the order in which a body is thought out. Names the fields to change. */
export function findMisfits(plan: Plan, numbers: Numbers, geometry: Geometry): Finding[] {
  const found: Finding[] = []
  const report: Report = (code, weight, fields, values = {}) => found.push({ code, weight, fields, values })
  outlineMisfits(plan, numbers, geometry, report)
  sideMisfits(plan, numbers, report)
  domeMisfits(plan, numbers, geometry, report)
  blockMisfits(plan, geometry, report)
  insideMisfits(plan, numbers, report)
  holeMisfits(plan, numbers, geometry, report)
  ringMisfits(plan, numbers, report)
  boardMisfits(plan, numbers, report)
  stringMisfits(plan, numbers, report)
  neckSetMisfits(plan, numbers, geometry, report)
  bridgeMisfits(plan, numbers, report)
  neckBlankMisfits(plan, numbers, report)
  bracingMisfits(plan, numbers, geometry, report)
  edgeMisfits(plan, numbers, report)
  airMisfits(plan, numbers, report)
  return found
}
