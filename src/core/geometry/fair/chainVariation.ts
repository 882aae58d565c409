import type { ChainSpace, ChainSums } from './chainSpace.ts'

/**
 * Sets the variation of a chain, the integral of (dk/ds)^2 ds of the smooth curve it stands for; with `withSlopes` its first and
 * second derivatives are added to those in `sums` too.
 *
 *   sum of d^2 / h  -  sum over neighbours in a span of (h + h') / 24 * (d'/h' - d/h)^2      d rise, h length of a piece
 *
 * The first sum alone is the integral for the chain itself; its least lies h^2 away from the least among smooth curves. A chain
 * follows a smooth curve best in the mean, not at its joints, and its own slopes then vary by that much more: taking the second
 * sum off leaves an error of the fourth order inside each span (derived, by Taylor's series of the mean-square fit).
 */
export function addVariation(space: ChainSpace, z: Float64Array, sums: ChainSums, withSlopes: boolean): void {
  const { pieceCount, spanOf, shareOf } = space
  sums.variation = 0
  for (let i = 0; i < pieceCount; i++) {
    const span = 1 + pieceCount + spanOf[i]!
    const share = shareOf[i]!
    addSquare(sums, z, span, 1 / share, [1 + i, 1, 1 + i, 0], withSlopes)
    if (i + 1 === pieceCount || spanOf[i + 1] !== spanOf[i]) continue
    const next = shareOf[i + 1]!
    addSquare(sums, z, span, -(share + next) / 24, [1 + i, -1 / share, 2 + i, 1 / next], withSlopes)
  }
}

/** Adds weight * (a z_p + b z_q)^2 / l, where l is the unknown at `span`, and p <= q < span. */
function addSquare(
  sums: ChainSums,
  z: Float64Array,
  span: number,
  weight: number,
  [p, a, q, b]: readonly [number, number, number, number],
  withSlopes: boolean,
): void {
  const { variationSlope, bend } = sums
  const n = variationSlope.length
  const l = z[span]!
  const e = (a * z[p]! + b * z[q]!) / l
  sums.variation += weight * e * e * l
  if (!withSlopes) return
  variationSlope[p]! += 2 * weight * e * a
  variationSlope[q]! += 2 * weight * e * b
  variationSlope[span]! -= weight * e * e
  const w = (2 * weight) / l
  bend[p * n + p]! += w * a * a
  bend[q * n + q]! += w * b * b
  bend[q * n + p]! += w * a * b
  bend[span * n + p]! -= w * e * a
  bend[span * n + q]! -= w * e * b
  bend[span * n + span]! += w * e * e
}
