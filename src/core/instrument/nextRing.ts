import type { RingPlan } from '../plan.ts'

const WOOD_BETWEEN_MM = 3
const STARTING_WIDTH_MM = 4

/** Where a further ring would stand: outside all others, or of the hole, wood left between, at a usual width. Common practice. */
export function nextRing(holeRadiusMm: number, rings: readonly RingPlan[], cutterMm: number): Omit<RingPlan, 'order'> {
  const outermost = Math.max(holeRadiusMm, ...rings.map((ring) => Math.max(ring.innerRadiusMm, ring.outerRadiusMm)))
  const innerRadiusMm = Math.min(outermost + WOOD_BETWEEN_MM, 150)
  return {
    innerRadiusMm,
    outerRadiusMm: innerRadiusMm + Math.max(STARTING_WIDTH_MM, cutterMm),
    join: 'closed',
    gapMm: null,
    tileCount: null,
  }
}
