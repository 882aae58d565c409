import type { BridgePlan } from '../../core/neckPlan.ts'
import type { BridgeNumbers, PinRow } from '../../core/instrument/neck/bridge.ts'
import type { PathShape } from '../drawing.ts'
import { drawn, through } from '../line.ts'

/** No width of a tie hole is planned: it is drawn about as wide as one is drilled, and never figured. */
const HALF_MM = 1

/** Two dashed walls of a hole that runs along the body. */
const walls = (fromMm: number, toMm: number, middleMm: number): PathShape[] =>
  [-HALF_MM, HALF_MM].map((off) =>
    drawn(
      'hidden',
      through([
        { x: fromMm, y: middleMm + off },
        { x: toMm, y: middleMm + off },
      ]),
    ),
  )

/** Tie holes from above, lengthwise through the block: from its back edge to where each comes out behind the saddle. None where one misses the bridge. */
export const tieHolesAbove = (pins: readonly PinRow[], { backEdgeAtMm }: BridgeNumbers): PathShape[] =>
  pins.flatMap(({ atMm, acrossMm }) => (atMm > backEdgeAtMm ? walls(backEdgeAtMm, atMm, acrossMm) : []))

/** The same in the plane of the centreline, the saddle at x 0 and the bridge's top at y 0. None where the block has no wood for it. */
export function tieHoleCut(bridge: BridgePlan, b: BridgeNumbers): PathShape[] {
  const middleMm = bridge.thicknessMm - bridge.tieHoleOverTopMm
  const isInWood = middleMm > 0 && bridge.tieHoleOverTopMm > 0 && b.holdsAtMm > b.backEdgeAtMm
  return isInWood ? walls(b.backEdgeAtMm - b.saddleMiddleAtMm, b.holdsAtMm - b.saddleMiddleAtMm, middleMm) : []
}
