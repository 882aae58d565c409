import type { Numbers } from '../numbers.ts'
import type { Plan } from '../plan.ts'
import type { Report } from './report.ts'

// Limits are common practice, no published source.
const UNDER_SLOT_MM = 1.5
const EDGE_MM = 3
/** A nut whose ends stand further apart than this does not sit on a head drawn square. */
const NUT_MM = 1

export function boardMisfits(plan: Plan, { board, frets }: Numbers, report: Report) {
  const bassAheadMm = board.nutBassAheadMm === 'none' ? 0 : board.nutBassAheadMm
  const trebleAheadMm = board.nutTrebleAheadMm === 'none' ? 0 : board.nutTrebleAheadMm
  const last = frets.at(-1)
  if (last !== undefined) {
    // Both measured from the nut on the centreline.
    const endMm = board.nutToJointMm + board.overBodyMm
    const bassPastMm = last.bassEdgeMm - bassAheadMm - endMm
    const treblePastMm = last.trebleEdgeMm - trebleAheadMm - endMm
    const byMm = Math.max(bassPastMm, treblePastMm)
    if (byMm > 1e-9)
      report(
        'fretPastBoardEnd',
        'cannot',
        ['board.endBeyondLastFretMm', 'scale.squareFret', 'scale.lengthMm', 'scale.trebleLengthMm'],
        { byMm, side: bassPastMm > treblePastMm ? 0 : 1 },
      )
  }
  const nutMm = Math.abs(bassAheadMm - trebleAheadMm)
  if (nutMm > NUT_MM)
    report('nutSlants', 'care', ['scale.squareFret', 'scale.lengthMm', 'scale.trebleLengthMm', 'head.lengthMm'], {
      byMm: nutMm,
      side: bassAheadMm > trebleAheadMm ? 0 : 1,
    })
  if (board.overBodyMm < -1e-9)
    report('boardEndsBeforeJoint', 'cannot', ['scale.frets', 'scale.jointFret', 'board.endBeyondLastFretMm'], {
      byMm: -board.overBodyMm,
    })
  if (board.leftUnderSlotMm < UNDER_SLOT_MM)
    report('slotTooDeep', board.leftUnderSlotMm <= 0 ? 'cannot' : 'care', ['frets.slotDepthMm', 'board.thicknessMm'], {
      leftMm: board.leftUnderSlotMm,
    })
  const { tangMm } = plan.frets
  if (tangMm > board.slotDepthMm + 1e-9)
    report('tangDeeperThanSlot', 'cannot', ['frets.slotDepthMm', 'frets.tangMm'], { tangMm, slotMm: board.slotDepthMm })
  else if (tangMm > board.slotAtEdgeMm + 1e-9)
    // A slot can follow the radius, by hand or in a jig: then its edge is as deep as its middle.
    report('tangDeeperAtEdge', 'care', ['frets.slotDepthMm', 'frets.tangMm', 'board.radiusMm'], {
      tangMm,
      slotMm: board.slotAtEdgeMm,
    })
  const edgeMm = Math.min(board.edgeAtNutMm, board.edgeAtJointMm, board.edgeAtEndMm)
  if (edgeMm < EDGE_MM)
    report('boardEdgeThin', edgeMm <= 0 ? 'cannot' : 'care', ['board.thicknessMm', 'board.radiusMm'], { edgeMm })
}
