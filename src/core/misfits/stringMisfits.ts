import type { Numbers } from '../numbers.ts'
import type { Plan } from '../plan.ts'
import type { Report } from './report.ts'

// Limits are common practice, no published source.
const EDGE_MM = 1.5
const GAP_MM = 2
/** From memory: fine music wire (ASTM A228) breaks somewhere over 2500 MPa; a margin below it. */
const WIRE_MPA = 2200
/** A set that is meant pulls more than this on every string: common practice. */
const STEEL_SLACK_N = 40
const NYLON_SLACK_N = 20

export function stringMisfits(plan: Plan, { strings, stringSet }: Numbers, report: Report) {
  const { leastEdgeMm, gapAtNutMm } = stringSet
  if (leastEdgeMm < EDGE_MM)
    report(
      'stringsOffBoard',
      leastEdgeMm < 0 ? 'cannot' : 'care',
      ['strings.nutSpreadMm', 'strings.saddleSpreadMm', 'board.nutWidthMm', 'board.widthAtTwelfthMm'],
      { leastMm: leastEdgeMm },
    )
  if (strings.length > 1 && gapAtNutMm < GAP_MM)
    report('stringsTooClose', gapAtNutMm <= 0 ? 'cannot' : 'care', ['strings.nutSpreadMm', 'strings.set'], {
      gapMm: gapAtNutMm,
    })
  const count = strings.filter(({ tensionN }) => tensionN === 'none').length
  if (count > 0)
    report('stringMassUnknown', 'care', ['strings.set'], {
      count,
      string: strings.findIndex(({ tensionN }) => tensionN === 'none') + 1,
    })
  strings.forEach(({ tensionN }, i) => {
    const isSteel = /steel/i.test(plan.strings.set[i]?.material ?? '')
    if (typeof tensionN === 'number' && tensionN < (isSteel ? STEEL_SLACK_N : NYLON_SLACK_N))
      report('stringSlack', 'care', ['strings.set', 'scale.lengthMm'], { string: i + 1, tensionN })
  })
  strings.forEach(({ stressMPa }, i) => {
    if (typeof stressMPa === 'number' && stressMPa > WIRE_MPA)
      report('stringOverstressed', 'care', ['strings.set', 'scale.lengthMm'], { string: i + 1, stressMPa })
  })
}
