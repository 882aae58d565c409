/**
 * A chain of clothoid pieces as a point z in a space of unknowns:
 *
 *   z = (k0, d_0 .. d_N-1, l_0 .. l_m)     curvature at the start, its rise over each piece, the length of each span
 *
 * Span j runs between two given points and holds counts[j] pieces, each a fixed share of its length. The chain starts at (0, 0)
 * heading along +y. All lengths are in one unit, with curvature its reciprocal.
 */
export interface ChainSpace {
  readonly counts: readonly number[]
  /** Span of each piece. */
  readonly spanOf: readonly number[]
  /** Part of its span's length that each piece has. */
  readonly shareOf: readonly number[]
  readonly pieceCount: number
  readonly unknownCount: number
  /** Rows: x and y at the end of each span, then the heading and the curvature at the end of the chain. */
  readonly rowCount: number
}

/** Sums of a chain, each with its derivatives. */
export interface ChainSums {
  variation: number
  /** Derivative of the variation by each unknown. */
  readonly variationSlope: Float64Array
  /** Value of each row. */
  readonly rows: Float64Array
  /** Derivative of each row by each unknown: rowCount x unknownCount. */
  readonly rowSlope: Float64Array
  /** Second derivative of variation + forces . rows: unknownCount x unknownCount, lower triangle. */
  readonly bend: Float64Array
}

/** Size of the pieces right at the chain's ends beside that in its middle; they grow evenly over half a span. */
const END_SIZE = 0.35

export function makeChainSpace(counts: readonly number[]): ChainSpace {
  const spanOf = counts.flatMap((count, span) => Array.from({ length: count }, () => span))
  return {
    counts,
    spanOf,
    shareOf: counts.flatMap((count, span) => shareSpan(count, span === 0, span === counts.length - 1)),
    pieceCount: spanOf.length,
    unknownCount: 1 + spanOf.length + counts.length,
    rowCount: 2 * counts.length + 2,
  }
}

/** Shares of a span's pieces: smaller towards an end of the chain, where curvature often stays level for a while before it moves. */
function shareSpan(count: number, first: boolean, last: boolean): number[] {
  const size = (place: number) => Math.min(1, END_SIZE + (1 - END_SIZE) * 2 * place)
  const sizes = Array.from({ length: count }, (_, i) => {
    const place = (i + 0.5) / count
    return (first ? size(place) : 1) * (last ? size(1 - place) : 1)
  })
  const whole = sizes.reduce((sum, part) => sum + part, 0)
  return sizes.map((part) => part / whole)
}

export function makeChainSums(space: ChainSpace): ChainSums {
  const n = space.unknownCount
  return {
    variation: 0,
    variationSlope: new Float64Array(n),
    rows: new Float64Array(space.rowCount),
    rowSlope: new Float64Array(space.rowCount * n),
    bend: new Float64Array(n * n),
  }
}
