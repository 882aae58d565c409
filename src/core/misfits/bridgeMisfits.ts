import { MOST_MM } from '../instrument/neck/compensation.ts'
import type { Numbers } from '../numbers.ts'
import type { Plan } from '../plan.ts'
import type { Report } from './report.ts'

// Limits are common practice, no published source.
const SHOWING_MM = 1.2
const BREAK_RAD = (6 * Math.PI) / 180
const UNDER_SLOT_MM = 1.5
const HOLDS_TO_EDGE_MM = 3
const PLATE_BEYOND_MM = 3

export function bridgeMisfits(plan: Plan, { bridge, strings }: Numbers, report: Report) {
  const { saddleWidthMm, saddleFromFrontMm, widthMm, holdsBehindMm } = plan.bridge
  let lowest = -1
  let flattest = -1
  strings.forEach((row, i) => {
    if (lowest < 0 || row.saddleShowingMm < strings[lowest]!.saddleShowingMm) lowest = i
    if (flattest < 0 || row.breakRad < strings[flattest]!.breakRad) flattest = i
  })
  const low = strings[lowest]
  if (low !== undefined && low.saddleShowingMm < SHOWING_MM)
    report(
      'saddleTooLow',
      low.saddleShowingMm <= 0 ? 'cannot' : 'care',
      ['bridge.saddleShowingMm', 'bridge.thicknessMm', 'board.radiusMm'],
      { string: lowest + 1, showingMm: low.saddleShowingMm },
    )
  const flat = strings[flattest]
  if (flat !== undefined && flat.breakRad < BREAK_RAD)
    report('breakAngleSmall', 'care', ['bridge.saddleShowingMm', 'bridge.holdsBehindMm'], {
      string: flattest + 1,
      breakRad: flat.breakRad,
    })
  if (bridge.woodUnderSlotMm < UNDER_SLOT_MM)
    report(
      'saddleSlotTooDeep',
      bridge.woodUnderSlotMm <= 0 ? 'cannot' : 'care',
      ['bridge.slotDepthMm', 'bridge.thicknessMm'],
      { leftMm: bridge.woodUnderSlotMm },
    )
  // The slot lies aslant: at its ends it reaches further than in the middle.
  const reachMm = saddleWidthMm / 2 + Math.abs(bridge.slotEndsDifferMm) / 2
  const overMm = Math.max(reachMm - (saddleFromFrontMm - bridge.slotFromCrownMm), saddleFromFrontMm + reachMm - widthMm)
  if (overMm > 0) report('saddleOffBridge', 'cannot', ['bridge.saddleFromFrontMm', 'bridge.widthMm'], { byMm: overMm })
  const beyond = strings.findIndex(({ compensationMm }) => compensationMm === MOST_MM)
  if (beyond >= 0)
    report('octaveOutOfReach', 'care', ['strings.set', 'setup.actionBassMm', 'setup.actionTrebleMm'], {
      string: beyond + 1,
    })
  let furthest = -1
  strings.forEach(({ crownBehindLineMm: at }, i) => {
    const best = furthest < 0 ? 0 : Number(strings[furthest]!.crownBehindLineMm)
    if (typeof at === 'number' && Math.abs(at) > Math.abs(best)) furthest = i
  })
  const far = strings[furthest]
  const byMm = far === undefined ? 0 : Math.abs(Number(far.crownBehindLineMm))
  // The estimates are rough: only a crown that would leave the saddle is worth a word.
  if (byMm > saddleWidthMm)
    report(
      'saddleTooNarrow',
      'care',
      [
        'bridge.compensation',
        'bridge.compensationBassMm',
        'bridge.compensationTrebleMm',
        'bridge.saddleWidthMm',
        'strings.set',
      ],
      { string: furthest + 1, byMm, widthMm: saddleWidthMm },
    )
  const toEdgeMm = widthMm - saddleFromFrontMm - holdsBehindMm
  if (plan.bridge.holds === 'pins' && toEdgeMm < HOLDS_TO_EDGE_MM)
    report('holdsOffBridge', toEdgeMm < 0 ? 'cannot' : 'care', ['bridge.holdsBehindMm', 'bridge.widthMm'], {
      byMm: toEdgeMm,
    })
  const { plateBehindHoldsMm: behind, plateBeforeSaddleMm: before } = bridge
  if (plan.bridge.holds === 'pins' && typeof behind === 'number' && typeof before === 'number')
    if (Math.min(behind, before) < PLATE_BEYOND_MM)
      report(
        'plateMissesBridge',
        Math.min(behind, before) < 0 ? 'cannot' : 'care',
        ['bridge.plateFromMm', 'bridge.plateToMm'],
        { behindMm: behind, beforeMm: before },
      )
}
