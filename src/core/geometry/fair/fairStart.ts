import type { ChainSpace } from './chainSpace.ts'
import type { Point } from '../point.ts'
import { distanceMm } from '../point.ts'

/**
 * A first guess for a fair curve through `stops` (tail first, neck end last): headings from the circles through each point
 * and its neighbours, spans as long as arcs that turn so, curvature as the turning asks. Near the points, not through them.
 */
export function guessChain(
  space: ChainSpace,
  stops: readonly Point[],
  tailCurvature: number | null,
  neckCurvature: number | null,
): Float64Array {
  const z = new Float64Array(space.unknownCount)
  const { counts, pieceCount } = space
  const chords = counts.map((_, j) => distanceMm(stops[j]!, stops[j + 1]!))
  const bearings = counts.map((_, j) => Math.atan2(stops[j + 1]!.y - stops[j]!.y, stops[j + 1]!.x - stops[j]!.x))
  const headings = stops.map((_, j) => {
    if (j === 0) return Math.PI / 2
    if (j === counts.length) return -Math.PI / 2
    const before = chords[j - 1]!
    const after = chords[j]!
    return (bearings[j - 1]! * after + bearings[j]! * before) / (before + after)
  })
  const bends = counts.map((_, j) => {
    const half = Math.min(Math.abs(headings[j]! - headings[j + 1]!) / 2, 1.5)
    z[1 + pieceCount + j] = chords[j]! * (half > 1e-6 ? half / Math.sin(half) : 1)
    return (headings[j]! - headings[j + 1]!) / z[1 + pieceCount + j]!
  })
  // Curvature at the stops, straight lines between them.
  const at = stops.map((_, j) => ((bends[j - 1] ?? bends[j]!) + (bends[j] ?? bends[j - 1]!)) / 2)
  if (tailCurvature !== null) at[0] = tailCurvature
  if (neckCurvature !== null) at[at.length - 1] = neckCurvature
  z[0] = at[0]!
  for (let i = 0; i < pieceCount; i++) {
    const j = space.spanOf[i]!
    z[1 + i] = (at[j + 1]! - at[j]!) * space.shareOf[i]!
  }
  return z
}
