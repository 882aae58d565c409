import { curvatureOf } from '../figure.ts'
import { dropMm } from '../geometry/sagitta.ts'
import type { Radius } from '../plan.ts'
import type { ContourRow } from './block.ts'

export interface BoardGap {
  readonly gapMm: number
  readonly opens: 'middle' | 'ends' | 'between' | 'nowhere'
}

/** Less than this is no gap at all, mm. */
const CLOSED_MM = 1e-6

/**
 * The largest gap between a block's face and a contour board, pushed together symmetric about the centreline until they touch without
 * crossing, and where it opens.
 *
 * `face` runs outward from the middle, both sides alike; the board's radius is positive where it is round the way the face falls back,
 * negative where it is hollow. The gap at a place is what the face falls back more than the board does, over the least such difference.
 * A board too tight to reach as far out as the face is held at its own edge. An empty face has no gap. Source: derived.
 */
export function boardGap(face: readonly ContourRow[], boardRadiusMm: Radius): BoardGap {
  const curvaturePerMm = curvatureOf(boardRadiusMm)
  const differences = face.map(({ acrossMm, fallsBackMm }) => fallsBackMm - dropMm(curvaturePerMm, acrossMm))
  if (differences.length === 0) return { gapMm: 0, opens: 'nowhere' }
  let least = 0
  let most = 0
  differences.forEach((difference, i) => {
    if (difference < differences[least]!) least = i
    if (difference > differences[most]!) most = i
  })
  const gapMm = differences[most]! - differences[least]!
  if (gapMm < CLOSED_MM) return { gapMm, opens: 'nowhere' }
  return { gapMm, opens: most === 0 ? 'middle' : most === face.length - 1 ? 'ends' : 'between' }
}
