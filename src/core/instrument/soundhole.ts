import type { Figure } from '../figure.ts'

export interface SoundholeNumbers {
  readonly centreMm: number
  readonly radiusMm: number
  /** Radius on which the cutter's centre runs, and of the disc that drops out. */
  readonly cutterCircleMm: number
  readonly discMm: number
  /** Wood left between the hole and the innermost ring. */
  readonly toFirstRingMm: Figure
  /** From the centre of hole and rings to the square end of the board; less than the radius where the board reaches over the hole. */
  readonly centreToBoardEndMm: number
}

/** A hole of radius r cut with a cutter of diameter d: its centre runs at r - d/2 and the disc keeps r - d. A cutter wider than the hole leaves no disc. */
export function measureSoundhole(
  hole: { readonly centreMm: number; readonly radiusMm: number; readonly cutterMm: number },
  boardEndMm: number,
  innermostRingMm: number | null,
): SoundholeNumbers {
  return {
    centreMm: hole.centreMm,
    radiusMm: hole.radiusMm,
    cutterCircleMm: Math.max(hole.radiusMm - hole.cutterMm / 2, 0),
    discMm: Math.max(hole.radiusMm - hole.cutterMm, 0),
    toFirstRingMm: innermostRingMm === null ? 'none' : innermostRingMm - hole.radiusMm,
    centreToBoardEndMm: boardEndMm - hole.centreMm,
  }
}
