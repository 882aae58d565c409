import type { Numbers } from '../numbers.ts'
import type { Plan } from '../plan.ts'
import type { Report } from './report.ts'

// Limits are common practice, no published source.
const UNDER_SLOT_MM = 1.5
const EDGE_MM = 3

export function boardMisfits(plan: Plan, { board }: Numbers, report: Report) {
  if (board.overBodyMm < -1e-9)
    report('boardEndsBeforeJoint', 'cannot', ['scale.frets', 'scale.jointFret', 'board.endBeyondLastFretMm'], {
      byMm: -board.overBodyMm,
    })
  if (board.leftUnderSlotMm < UNDER_SLOT_MM)
    report('slotTooDeep', board.leftUnderSlotMm <= 0 ? 'cannot' : 'care', ['frets.slotDepthMm', 'board.thicknessMm'], {
      leftMm: board.leftUnderSlotMm,
    })
  if (plan.frets.tangMm > board.slotAtEdgeMm + 1e-9)
    report('tangDeeperThanSlot', 'cannot', ['frets.slotDepthMm', 'frets.tangMm', 'board.radiusMm'], {
      tangMm: plan.frets.tangMm,
      slotMm: board.slotAtEdgeMm,
    })
  const edgeMm = Math.min(board.edgeAtNutMm, board.edgeAtJointMm, board.edgeAtEndMm)
  if (edgeMm < EDGE_MM)
    report('boardEdgeThin', edgeMm <= 0 ? 'cannot' : 'care', ['board.thicknessMm', 'board.radiusMm'], { edgeMm })
}
