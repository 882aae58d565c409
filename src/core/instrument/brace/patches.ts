import type { BracingPlan } from '../../boxPlan.ts'
import type { Figure } from '../../figure.ts'
import { spanInBand } from '../../geometry/convexPolygon.ts'
import type { PlacedBrace } from './placedBrace.ts'

export interface PatchNumbers {
  /** The ring of wood round the hole's edge on the inside. */
  readonly holeRing: { readonly innerRadiusMm: Figure; readonly outerRadiusMm: Figure; readonly thicknessMm: Figure }
  /** Square patches over lapped crossings of the top: how many, their sides, how thick. */
  readonly cross: { readonly count: number; readonly sideMm: Figure; readonly thicknessMm: Figure }
  /** The strip over the back's joint; its length all together. */
  readonly strip: { readonly widthMm: Figure; readonly thicknessMm: Figure; readonly lengthMm: Figure }
}

/** One stretch of the strip over the back's joint. */
export interface JointStripRow {
  /** From the tail. */
  readonly fromMm: number
  readonly toMm: number
  readonly lengthMm: number
}

export interface PatchSite {
  readonly holeRadiusMm: number
  /** Lapped crossings of the top. */
  readonly crossings: number
  readonly strip: readonly JointStripRow[]
}

/** Patches of the plates, mm. The ring begins `holeRingSetBackMm` from the hole's edge. Source: plain sums, derived. */
export function measurePatches(bracing: BracingPlan, { holeRadiusMm, crossings, strip }: PatchSite): PatchNumbers {
  const innerRadiusMm = holeRadiusMm + bracing.holeRingSetBackMm
  const hasRing = bracing.holeRingMm > 0
  const hasCross = bracing.crossPatchMm > 0
  const hasStrip = bracing.stripWidthMm > 0
  return {
    holeRing: {
      innerRadiusMm: hasRing ? innerRadiusMm : 'none',
      outerRadiusMm: hasRing ? innerRadiusMm + bracing.holeRingMm : 'none',
      thicknessMm: hasRing ? bracing.holeRingThicknessMm : 'none',
    },
    cross: {
      count: hasCross ? crossings : 0,
      sideMm: hasCross ? bracing.crossPatchMm : 'none',
      thicknessMm: hasCross ? bracing.crossPatchThicknessMm : 'none',
    },
    strip: {
      widthMm: hasStrip ? bracing.stripWidthMm : 'none',
      thicknessMm: hasStrip ? bracing.stripThicknessMm : 'none',
      lengthMm: hasStrip ? strip.reduce((sum, row) => sum + row.lengthMm, 0) : 'none',
    },
  }
}

/** A stretch shorter than this is no piece of wood. */
const LEAST_MM = 0.5

/**
 * The strip over the back's joint: from block to block, cut square wherever the footprint of a back brace lies in its way, mm. A brace
 * square to the centreline takes its width; one at angle a takes w / sin a + ws / tan a, ws the strip's width. None where it is 0 wide.
 * Source: derived.
 */
export function jointStripRows(
  stripWidthMm: number,
  between: { readonly fromMm: number; readonly toMm: number },
  placed: readonly PlacedBrace[],
): JointStripRow[] {
  if (stripWidthMm <= 0) return []
  const taken = placed
    .filter(({ plan }) => plan.plate === 'back')
    .flatMap(({ corners }) => spanInBand(corners, stripWidthMm / 2) ?? [])
    .sort((a, b) => a.fromMm - b.fromMm)
  const rows: JointStripRow[] = []
  let atMm = between.fromMm
  for (const { fromMm, toMm } of [...taken, { fromMm: between.toMm, toMm: between.toMm }]) {
    const endMm = Math.min(fromMm, between.toMm)
    if (endMm - atMm >= LEAST_MM) rows.push({ fromMm: atMm, toMm: endMm, lengthMm: endMm - atMm })
    atMm = Math.max(atMm, toMm)
  }
  return rows
}
