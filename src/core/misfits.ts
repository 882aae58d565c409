import type { Geometry } from './compute.ts'
import type { Finding, FindingCode } from './findings.ts'
import { blockFits } from './instrument/block.ts'
import { MOST_OPEN } from './instrument/compassArcs.ts'
import { crossesItself } from './instrument/crossing.ts'
import { domeReach } from './instrument/domeReach.ts'
import { ringsInOrder } from './instrument/rosette.ts'
import type { Numbers } from './numbers.ts'
import type { Plan, PlanField } from './plan.ts'

// Limits are common practice, no published source, unless said.
const CLOSES_WITHIN_MM = 0.05
const CORNER_FROM_RAD = 0.003
const FOUND_WITHIN_MM = 0.5
const BEND_HARD_TIMES = 15
const BEND_CARE_TIMES = 25
/** A dome whose rim slopes by more than asin of this is no guitar; one by more than the second is unusual. */
const DOME_TOO_TIGHT = 0.5
const DOME_STEEP = 0.26
const FLAT_ABOVE_MM = 0.02
/** A cap a little wider than the rim is pressed into it. */
const CAP_OVER_RIM = 1.02
const SHALLOWEST_SIDE_MM = 15
const HOLE_TO_RING_MM = 2.5
const HOLE_TO_EDGE_MM = 5
/** A board may just reach over the edge of the hole; much further is hardly meant. */
const BOARD_OVER_HOLE_MM = 5
const UNDER_CHANNEL_MM = 0.6

type Report = (
  code: FindingCode,
  weight: Finding['weight'],
  fields: readonly PlanField[],
  values?: Record<string, number>,
) => void

/** Everything that does not fit, in the order in which a body is thought out. Names the fields to change. */
export function findMisfits(plan: Plan, numbers: Numbers, geometry: Geometry): Finding[] {
  const found: Finding[] = []
  const report: Report = (code, weight, fields, values = {}) => found.push({ code, weight, fields, values })
  outlineMisfits(plan, numbers, geometry, report)
  sideMisfits(plan, numbers, report)
  domeMisfits(plan, numbers, geometry, report)
  blockMisfits(plan, geometry, report)
  holeMisfits(plan, numbers, geometry, report)
  ringMisfits(plan, numbers, report)
  return found
}

function outlineMisfits(plan: Plan, numbers: Numbers, geometry: Geometry, report: Report) {
  const { outline } = geometry
  const drawnBy: PlanField[] =
    plan.outline.kind === 'compassArcs' ? ['outline.pieces', 'outline.lengthMm'] : ['outline.lengthMm', ...WIDTHS]
  const { alongMm, acrossMm, cornerRad } = outline.closure
  if (outline.openCount > MOST_OPEN)
    report('outlineTooManyOpen', 'cannot', ['outline.pieces'], { open: outline.openCount })
  else {
    if (Math.hypot(alongMm, acrossMm) > CLOSES_WITHIN_MM)
      report('outlineDoesNotClose', 'cannot', drawnBy, { alongMm, acrossMm })
    if (Math.abs(cornerRad) > CORNER_FROM_RAD) report('outlineHasCorner', 'cannot', ['outline.pieces'], { cornerRad })
  }
  if (crossesItself(outline.half)) report('outlineCrossesItself', 'cannot', drawnBy)

  const { fairness } = outline
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

function sideMisfits(plan: Plan, numbers: Numbers, report: Report) {
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

function domeMisfits(plan: Plan, numbers: Numbers, geometry: Geometry, report: Report) {
  const { top, back, lengthMm, rimSite } = geometry
  const reach = domeReach(rimSite.half, back, lengthMm, plan.rim.depthAtTailMm - plan.rim.depthAtNeckMm)
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
      if (byMm > FLAT_ABOVE_MM) report('flatAboveDome', 'cannot', ['top.flatSlopeDeg', 'top.flatFromMm'], { byMm })
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

function blockMisfits(plan: Plan, geometry: Geometry, report: Report) {
  const { half, sideThicknessMm } = geometry.rimSite
  if (!blockFits(plan.blocks.tail, { half, sideThicknessMm, end: 'tail' }))
    report('blockWiderThanBody', 'cannot', ['blocks.tail.widthMm'], { end: 0 })
  if (!blockFits(plan.blocks.neck, { half, sideThicknessMm, end: 'neck' }))
    report('blockWiderThanBody', 'cannot', ['blocks.neck.widthMm'], { end: 1 })
}

function holeMisfits(plan: Plan, numbers: Numbers, geometry: Geometry, report: Report) {
  const { centreMm, radiusMm, cutterMm } = plan.soundhole
  const outermost = Math.max(radiusMm, ...numbers.rosette.rings.map((ring) => ring.outerRadiusMm))
  const clearMm = Math.min(...numbers.rim.map((row) => Math.hypot(row.xMm - centreMm, row.yMm))) - outermost
  const inside = centreMm > 0 && centreMm < geometry.lengthMm
  if (!inside || clearMm < HOLE_TO_EDGE_MM)
    report('holeOffBody', 'cannot', ['soundhole.centreMm', 'soundhole.radiusMm', 'rosette.rings'], {
      clearMm: inside ? clearMm : -Math.abs(clearMm),
    })
  if (cutterMm > radiusMm) report('soundholeCutterTooWide', 'cannot', ['soundhole.cutterMm'], { cutterMm, radiusMm })
  const overHoleMm = radiusMm - numbers.soundhole.centreToBoardEndMm
  if (overHoleMm > BOARD_OVER_HOLE_MM)
    report('boardCoversHole', 'care', ['board.overBodyMm', 'soundhole.centreMm'], { overHoleMm })
  const toRing = numbers.soundhole.toFirstRingMm
  if (typeof toRing === 'number' && toRing < HOLE_TO_RING_MM)
    report('holeRingTooClose', toRing < 0 ? 'cannot' : 'care', ['soundhole.radiusMm', 'rosette.rings'], {
      clearMm: toRing,
    })
}

function ringMisfits(plan: Plan, numbers: Numbers, report: Report) {
  const { rosette } = plan
  const rings = ringsInOrder(rosette)
  rings.forEach(({ ring }, i) => {
    const measured = numbers.rosette.rings[i]!
    const at = { ring: i + 1 }
    if (ring.outerRadiusMm <= ring.innerRadiusMm) {
      report('ringInsideOut', 'cannot', ['rosette.rings'], at)
      return
    }
    rings.slice(i + 1).forEach(({ ring: other }, j) => {
      const byMm = Math.min(ring.outerRadiusMm, other.outerRadiusMm) - Math.max(ring.innerRadiusMm, other.innerRadiusMm)
      if (byMm > 1e-9) report('ringsOverlap', 'cannot', ['rosette.rings'], { ...at, other: i + j + 2, byMm })
    })
    if (ring.join === 'openUnderBoard') {
      const neededMm = measured.gapMm + 2 * rosette.gapMarginMm
      if (neededMm > measured.hiddenMm + 1e-9)
        report('ringGapShows', 'cannot', ['rosette.rings', 'board.overBodyMm', 'board.widthAtEndMm'], {
          ...at,
          gapMm: measured.gapMm,
          hiddenMm: measured.hiddenMm,
          marginMm: rosette.gapMarginMm,
        })
    }
    if (rosette.cutterMm > measured.widthMm + 1e-9)
      report('ringCutterTooWide', 'cannot', ['rosette.cutterMm', 'rosette.rings'], {
        ...at,
        widthMm: measured.widthMm,
        cutterMm: rosette.cutterMm,
      })
    else if (measured.passes === 'none')
      report('ringPassesDoNotAdvance', 'cannot', ['rosette.passOverlapMm', 'rosette.cutterMm'], at)
  })
  if (rings.length === 0) return
  const depthMm = numbers.rosette.channelDepthMm
  if (plan.plates.topMm - depthMm < UNDER_CHANNEL_MM)
    report('channelTooDeep', 'cannot', ['rosette.inlayMm', 'plates.topMm'], { depthMm, plateMm: plan.plates.topMm })
  if (rosette.standsProudMm >= rosette.inlayMm)
    report('ringProudOfInlay', 'cannot', ['rosette.standsProudMm', 'rosette.inlayMm'], {})
}
