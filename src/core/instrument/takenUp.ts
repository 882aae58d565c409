import type { LiningPlan } from '../plan.ts'
import type { BlockNumbers } from './block.ts'

/** Wood inside the box: what it takes of the air, and how much more of it for every mm that the box is deeper. Estimates. */
export interface WoodInside {
  readonly volumeMm3: number
  readonly perDepthMm2: number
}

/** A straight stick glued in. */
export interface Stick {
  readonly lengthMm: number
  readonly widthMm: number
  readonly heightMm: number
}

/** How much of its width times height a lining fills, kerfs and gaps taken off. Common practice, no published source. */
const LINING_SHARE: Readonly<Record<LiningPlan['kind'], number>> = {
  kerfed: 0.55,
  reversedKerf: 0.75,
  solidBent: 0.65,
  singleBlocks: 0.45,
}

/** How much of its width times height a brace fills over its length: tapered at its ends, its ridge rounded. Common practice. */
const BRACE_SHARE = 0.75

const flatWood = (volumeMm3: number): WoodInside => ({ volumeMm3: Math.max(volumeMm3, 0), perDepthMm2: 0 })

/**
 * A block: its width, as far as it reaches to either side, times its thickness, times the mean of its two heights. Its glue face falls
 * back from the middle by the rise, near enough as a parabola does, so that a third of the rise goes off the thickness.
 */
export function woodOfBlock(block: BlockNumbers): WoodInside {
  const widthMm = (block.contour.at(-1)?.acrossMm ?? 0) + block.trebleReachMm
  const meanMm = Math.max(block.thicknessMm - block.contourRiseMm / 3, 0)
  const perDepthMm2 = Math.max(widthMm, 0) * meanMm
  return { volumeMm3: Math.max((perDepthMm2 * (block.heightAtFaceMm + block.heightInsideMm)) / 2, 0), perDepthMm2 }
}

/** The lining of one edge of the rim, by the length glued. */
export const woodOfLining = (lining: LiningPlan, lengthMm: number): WoodInside =>
  flatWood(lengthMm * lining.widthMm * lining.heightMm * LINING_SHARE[lining.kind])

/** Braces of the sides, of whole rectangular wood: deeper with the box. */
export function woodOfSideBraces(lengthsMm: readonly number[], widthMm: number, thicknessMm: number): WoodInside {
  const sectionMm2 = Math.max(widthMm * thicknessMm, 0)
  return {
    volumeMm3: sectionMm2 * lengthsMm.reduce((sum, lengthMm) => sum + Math.max(lengthMm, 0), 0),
    perDepthMm2: sectionMm2 * lengthsMm.length,
  }
}

/** Braces of top and back. */
export const woodOfBraces = (braces: readonly Stick[]): WoodInside =>
  flatWood(
    BRACE_SHARE * braces.reduce((sum, { lengthMm, widthMm, heightMm }) => sum + lengthMm * widthMm * heightMm, 0),
  )

/** A flat patch whose width runs straight from one end to the other; nothing where it has no thickness. */
export const woodOfPatch = (lengthMm: number, widthsMm: readonly [number, number], thicknessMm: number): WoodInside =>
  flatWood((Math.max(lengthMm, 0) * (widthsMm[0] + widthsMm[1]) * thicknessMm) / 2)

/** A flat ring of wood round the hole. */
export const woodOfRing = (innerRadiusMm: number, widthMm: number, thicknessMm: number): WoodInside =>
  flatWood(Math.PI * widthMm * (2 * innerRadiusMm + widthMm) * thicknessMm)

/** All of it together. */
export const allWood = (pieces: readonly WoodInside[]): WoodInside =>
  pieces.reduce(
    (sum, one) => ({
      volumeMm3: sum.volumeMm3 + one.volumeMm3,
      perDepthMm2: sum.perDepthMm2 + one.perDepthMm2,
    }),
    { volumeMm3: 0, perDepthMm2: 0 },
  )
