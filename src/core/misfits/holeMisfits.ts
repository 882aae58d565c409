import type { Geometry } from '../compute.ts'
import type { Numbers } from '../numbers.ts'
import type { Plan } from '../plan.ts'
import type { Report } from './report.ts'

// Limits are common practice, no published source, unless said.
const HOLE_TO_RING_MM = 2.5
const HOLE_TO_EDGE_MM = 5
/** A board may just reach over the edge of the hole; much further is hardly meant. */
const BOARD_OVER_HOLE_MM = 5

export function holeMisfits(plan: Plan, numbers: Numbers, geometry: Geometry, report: Report) {
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
    report('boardCoversHole', 'care', ['scale.frets', 'board.endBeyondLastFretMm', 'soundhole.centreMm'], {
      overHoleMm,
    })
  const toRing = numbers.soundhole.toFirstRingMm
  if (typeof toRing === 'number' && toRing < HOLE_TO_RING_MM)
    report('holeRingTooClose', toRing < 0 ? 'cannot' : 'care', ['soundhole.radiusMm', 'rosette.rings'], {
      clearMm: toRing,
    })
}
