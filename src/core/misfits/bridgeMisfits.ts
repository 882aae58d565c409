import { MOST_MM } from '../instrument/neck/compensation.ts'
import type { Numbers } from '../numbers.ts'
import type { Plan } from '../plan.ts'
import type { Report } from './report.ts'

// Limits are common practice, no published source.
const SHOWING_MM = 1.2
const BREAK_RAD = (6 * Math.PI) / 180
const BREAK_MOST_RAD = (60 * Math.PI) / 180
const UNDER_SLOT_MM = 1.5
/** A pin is about 5 thick; a tied string's hole hardly anything. */
const PIN_MM = 5
const HOLE_TO_SLOT_MM = 3
const SLANT_RAD = (3 * Math.PI) / 180
/** How far an estimated compensation may be off: a third of itself, and never less than this. */
const ROUGH_PART = 1 / 3
const ROUGH_MM = 1
const HOLDS_TO_EDGE_MM = 3
const PLATE_BEYOND_MM = 3

export function bridgeMisfits(plan: Plan, { bridge, strings, pins }: Numbers, report: Report) {
  const { saddleWidthMm, saddleFromFrontMm, widthMm } = plan.bridge
  let lowest = -1
  let flattest = -1
  let steepest = -1
  strings.forEach((row, i) => {
    if (lowest < 0 || row.saddleShowingMm < strings[lowest]!.saddleShowingMm) lowest = i
    if (flattest < 0 || row.breakRad < strings[flattest]!.breakRad) flattest = i
    if (steepest < 0 || row.breakRad > strings[steepest]!.breakRad) steepest = i
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
  const holesMm = pins.map(({ atMm, acrossMm }) => {
    const slotMm = bridge.saddleMiddleAtMm + bridge.slotFromCrownMm + Math.tan(bridge.slantRad) * acrossMm
    const holeMm = plan.bridge.holds === 'pins' ? PIN_MM / 2 : 0
    return (slotMm - atMm) * Math.cos(bridge.slantRad) - saddleWidthMm / 2 - holeMm
  })
  const woodMm = Math.min(...holesMm)
  if (woodMm <= 0 || (plan.bridge.holds === 'pins' && woodMm < HOLE_TO_SLOT_MM))
    report(
      'holdsInSlot',
      woodMm <= 0 ? 'cannot' : 'care',
      ['bridge.holdsBehindMm', 'bridge.pinRun', 'bridge.saddleWidthMm'],
      { string: holesMm.indexOf(woodMm) + 1, woodMm },
    )
  const steep = strings[steepest]
  // A hole in the slot is said already: the angle there means nothing.
  if (steep !== undefined && woodMm > 0 && steep.breakRad > BREAK_MOST_RAD)
    report('breakAngleGreat', 'care', ['bridge.holdsBehindMm', 'bridge.saddleShowingMm', 'bridge.tieHoleOverTopMm'], {
      string: steepest + 1,
      breakRad: steep.breakRad,
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
  if (plan.scale.fan === 'fanned' && Math.abs(bridge.slantRad) > SLANT_RAD)
    report(
      'slotSlantsOnBridge',
      'care',
      ['bridge.widthMm', 'bridge.saddleLengthMm', 'scale.squareFret', 'scale.trebleLengthMm'],
      { slantRad: Math.abs(bridge.slantRad), differMm: Math.abs(bridge.slotEndsDifferMm) },
    )
  const beyond = strings.findIndex(({ compensationMm }) => compensationMm === MOST_MM)
  if (beyond >= 0)
    report('octaveOutOfReach', 'care', ['strings.set', 'setup.actionBassMm', 'setup.actionTrebleMm'], {
      string: beyond + 1,
    })
  // The saddle's line is its middle: a crown has half its width to either side. The estimates are rough: only one that would leave
  // the saddle however they err is worth a word.
  const halfMm = saddleWidthMm / 2
  const outsMm = strings.map(({ compensationMm: estimate, crownBehindLineMm: at }) =>
    typeof at === 'number' && typeof estimate === 'number'
      ? Math.abs(at) - Math.max(Math.abs(estimate) * ROUGH_PART, ROUGH_MM) - halfMm
      : -halfMm,
  )
  const outMm = Math.max(...outsMm)
  const furthest = outsMm.indexOf(outMm)
  const far = strings[furthest]
  if (far !== undefined && outMm > 0)
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
      { string: furthest + 1, byMm: Math.abs(Number(far.crownBehindLineMm)), halfMm },
    )
  // A tied string's hole opens at the block's front: it only has to stand on the bridge.
  const toEdgeMm = Math.min(...pins.map(({ atMm }) => atMm)) - bridge.backEdgeAtMm
  if (toEdgeMm < (plan.bridge.holds === 'pins' ? HOLDS_TO_EDGE_MM : 0))
    report(
      'holdsOffBridge',
      toEdgeMm < 0 ? 'cannot' : 'care',
      ['bridge.holdsBehindMm', 'bridge.widthMm', 'bridge.pinRun'],
      { byMm: toEdgeMm },
    )
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
