import { ringsInOrder } from '../instrument/rosette.ts'
import type { Numbers } from '../numbers.ts'
import type { Plan } from '../plan.ts'
import type { Report } from './report.ts'

// Limits are common practice, no published source, unless said.
const UNDER_CHANNEL_MM = 0.6

export function ringMisfits(plan: Plan, numbers: Numbers, report: Report) {
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
        report('ringGapShows', 'cannot', ['rosette.rings', 'board.endBeyondLastFretMm', 'board.widthAtTwelfthMm'], {
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
