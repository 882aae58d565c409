import { betweenBindingsMm } from '../instrument/edgeCut.ts'
import { cutsOf } from '../edgesPart.ts'
import type { Numbers } from '../numbers.ts'
import type { Plan } from '../plan.ts'
import type { PlanField } from '../planFields.ts'
import type { Report } from './report.ts'

// Limits are common practice, no published source.
const LEAST_PLATE_MM = 0.5
const LEAST_BACK_MM = 1
const BEND_EASY_TIMES = 25
const BEND_HARD_TIMES = 15

const SHAPED_BY: Readonly<Record<Plan['outline']['kind'], PlanField>> = {
  compassArcs: 'outline.pieces',
  keyWidths: 'outline.keyWidths.waistMm',
  halfWidths: 'outline.halfWidths.rows',
  drawnPath: 'outline.drawnPath',
}

/** Bindings and purflings, the wedge at the tail and the strip on the back. */
export function edgeMisfits(plan: Plan, numbers: Numbers, report: Report) {
  if (plan.binding.thicknessMm > 0) bindingMisfits(plan, numbers, report)
  for (const plate of ['top', 'back'] as const) {
    const leftMm = plate === 'top' ? numbers.edges.topLeftMm : numbers.edges.backLeftMm
    if (typeof leftMm === 'number' && leftMm < LEAST_PLATE_MM)
      report(
        'purflingTooDeep',
        leftMm <= 0 ? 'cannot' : 'care',
        ['edges.purflingDepthMm', plate === 'top' ? 'plates.topMm' : 'plates.backMm'],
        { plate: plate === 'top' ? 0 : 1, leftMm },
      )
  }
  wedgeMisfits(plan, numbers, report)
  backStripMisfits(plan, numbers, report)
}

function bindingMisfits(plan: Plan, numbers: Numbers, report: Report) {
  const { binding, linings, plates, rim } = plan
  const rows = [...numbers.rim, ...numbers.trebleRim]
  const betweenMm = betweenBindingsMm(Math.min(...rows.map(({ depthMm }) => depthMm)), cutsOf(plan))
  if (betweenMm <= 0) report('bindingsMeet', 'cannot', ['binding.heightMm'], { byMm: -betweenMm })

  const plateMm = Math.max(plates.topMm, plates.backMm)
  if (binding.heightMm < plateMm)
    report('bindingTooLow', 'care', ['binding.heightMm', plates.topMm < plateMm ? 'plates.backMm' : 'plates.topMm'], {
      heightMm: binding.heightMm,
      plateMm,
    })

  // Through the side it stands on the lining alone. Where that is cut through as well, the ledge on the lining has its own finding.
  const throughMm = binding.thicknessMm - rim.sideThicknessMm
  if (throughMm >= 0) {
    const belowMm = Math.max(
      binding.heightMm - plates.topMm - linings.top.heightMm,
      binding.heightMm - plates.backMm - linings.back.heightMm,
    )
    report(
      'bindingThroughSide',
      belowMm > 0 && throughMm > 0 ? 'cannot' : 'care',
      ['binding.thicknessMm', 'rim.sideThicknessMm', 'binding.heightMm'],
      { throughMm, ...(belowMm > 0 && throughMm > 0 ? { belowMm } : {}) },
    )
  }

  const { tightestRadiusMm: radiusMm, tightestAtMm: atMm } = numbers.edges
  if (typeof radiusMm !== 'number' || typeof atMm !== 'number') return
  const times = radiusMm / binding.thicknessMm
  if (times >= BEND_EASY_TIMES) return
  report('bindingTight', 'care', ['binding.thicknessMm', SHAPED_BY[plan.outline.kind]], {
    radiusMm,
    atMm,
    thicknessMm: binding.thicknessMm,
    times,
    isHard: times < BEND_HARD_TIMES ? 1 : 0,
  })
}

function wedgeMisfits({ blocks, edges, rim }: Plan, { endWedge }: Numbers, report: Report) {
  const { blockLeftMm, besideMm, woodTopMm, woodBackMm } = endWedge
  if (typeof blockLeftMm === 'number' && blockLeftMm < blocks.tail.thicknessMm / 2)
    report(
      'wedgeThroughSide',
      blockLeftMm <= 0 ? 'cannot' : 'care',
      ['edges.wedgeDepthMm', 'blocks.tail.thicknessMm'],
      { leftMm: blockLeftMm, intoMm: edges.wedgeDepthMm - rim.sideThicknessMm },
    )
  if (typeof besideMm === 'number' && besideMm < 0)
    report(
      'wedgeWiderThanBlock',
      'care',
      [edges.wedgeTopMm < edges.wedgeBackMm ? 'edges.wedgeBackMm' : 'edges.wedgeTopMm', 'blocks.tail.widthMm'],
      { byMm: -2 * besideMm },
    )
  if (typeof woodTopMm === 'number' && typeof woodBackMm === 'number' && Math.max(woodTopMm, woodBackMm) <= 0)
    report('wedgeAllPurfling', 'cannot', ['edges.wedgePurflingMm', 'edges.wedgeTopMm', 'edges.wedgeBackMm'], {
      purflingMm: edges.wedgePurflingMm,
    })
}

function backStripMisfits({ bracing, edges }: Plan, { backStrip }: Numbers, report: Report) {
  const { leftMm } = backStrip
  if (typeof leftMm !== 'number' || leftMm >= LEAST_BACK_MM) return
  // Let in right through, it is held by the strip inside alone.
  const isHeld = leftMm > 0 || bracing.stripWidthMm > edges.backStripMm
  report(
    'backStripTooDeep',
    isHeld ? 'care' : 'cannot',
    ['edges.backStripDepthMm', 'plates.backMm', ...(leftMm > 0 ? [] : (['bracing.stripWidthMm'] as const))],
    { leftMm, isHeld: isHeld ? 1 : 0 },
  )
}
