import type { Figure } from '../../figure.ts'
import { clearanceMm, type ConvexPolygon } from '../../geometry/convexPolygon.ts'
import type { BridgePlan } from '../../neckPlan.ts'
import type { PlacedBrace } from './placedBrace.ts'

export interface BridgePlateNumbers {
  /** Where its edge toward the tail stands, from the tail. */
  readonly fromTailMm: Figure
  readonly lengthMm: Figure
  readonly tailWidthMm: Figure
  readonly neckWidthMm: Figure
  readonly thicknessMm: Figure
  /** How far each wing of the bridge reaches past the plate, at the bridge's middle; negative where the plate reaches further. */
  readonly wingsBeyondMm: Figure
  /** How far the plate reaches past the outermost pin to its own side, the least of them; negative where it falls short. */
  readonly besidePinsMm: Figure
  /** From the plate to the nearest brace it is fitted between; negative where it lies over one. */
  readonly toBraceMm: Figure
}

export interface BridgePlateSite {
  readonly frontEdgeMm: number
  readonly backEdgeMm: number
  readonly pins: readonly { readonly atMm: number; readonly acrossMm: number }[]
  /** The plate's corners; null without one. */
  readonly plate: ConvexPolygon | null
  /** What is left to the brace that comes nearest to it; null where none does. */
  readonly nearest: { readonly clearMm: number } | null
}

/** The plate's corners in plan; null without a plate. Bass at the tail first, then round by the neck. */
export function plateCorners(bridge: BridgePlan): ConvexPolygon | null {
  if (bridge.plateMm <= 0) return null
  const [fromMm, toMm] = [
    Math.min(bridge.plateFromMm, bridge.plateToMm),
    Math.max(bridge.plateFromMm, bridge.plateToMm),
  ]
  const [tail, neck] = [bridge.plateTailWidthMm / 2, bridge.plateNeckWidthMm / 2]
  return [
    { x: fromMm, y: -tail },
    { x: toMm, y: -neck },
    { x: toMm, y: neck },
    { x: fromMm, y: tail },
  ]
}

/** Fans and patches go over the plate or under it; every other brace of the top it is fitted between. */
const isBesidePlate = ({ plan }: PlacedBrace): boolean =>
  plan.plate === 'top' && plan.kind !== 'fan' && plan.kind !== 'patch'

/** The brace of the top that comes nearest to the plate, or lies furthest under it, by its place among those placed. */
export function nearestToPlate(
  plate: ConvexPolygon,
  placed: readonly PlacedBrace[],
): { readonly index: number; readonly clearMm: number } | null {
  return placed.reduce<{ index: number; clearMm: number } | null>((best, brace, index) => {
    if (!isBesidePlate(brace)) return best
    const clearMm = clearanceMm(plate, brace.corners)
    return best === null || clearMm < best.clearMm ? { index, clearMm } : best
  }, null)
}

/** The plate glued inside under the bridge, mm: straight from its width at the tail side to that at the neck side. Source: derived. */
export function measureBridgePlate(bridge: BridgePlan, site: BridgePlateSite): BridgePlateNumbers {
  const { plate } = site
  if (plate === null)
    return {
      fromTailMm: 'none',
      lengthMm: 'none',
      tailWidthMm: 'none',
      neckWidthMm: 'none',
      thicknessMm: 'none',
      wingsBeyondMm: 'none',
      besidePinsMm: 'none',
      toBraceMm: 'none',
    }
  const [tail, neck] = [plate[3]!, plate[2]!]
  const lengthMm = neck.x - tail.x
  const halfWidthAtMm = (x: number) => {
    const share = lengthMm > 0 ? Math.min(Math.max((x - tail.x) / lengthMm, 0), 1) : 0
    return tail.y + (neck.y - tail.y) * share
  }
  const besides = site.pins.map(({ atMm, acrossMm }) => halfWidthAtMm(atMm) - Math.abs(acrossMm))
  return {
    fromTailMm: tail.x,
    lengthMm,
    tailWidthMm: bridge.plateTailWidthMm,
    neckWidthMm: bridge.plateNeckWidthMm,
    thicknessMm: bridge.plateMm,
    wingsBeyondMm: bridge.lengthMm / 2 - halfWidthAtMm((site.frontEdgeMm + site.backEdgeMm) / 2),
    besidePinsMm: besides.length > 0 ? Math.min(...besides) : 'none',
    toBraceMm: site.nearest?.clearMm ?? 'none',
  }
}
