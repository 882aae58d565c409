/**
 * A chain of pieces of equal kind, curvature linear in arc length, as a point z in a space of unknowns:
 *
 *   z = (L, c, e_0 .. e_N-1)      L length, c L times the curvature at the start, e_i L times its rise over piece i
 *
 * With t = s/L the heading is then linear in the unknowns, theta(t) = theta_0 - c t - sum of e_i phi_i(t), and a place is
 * L times the integral of (cos, sin) theta. Each piece is a fixed share of the length. All lengths are in one unit.
 */
export interface Grid {
  readonly pieceCount: number
  /** L, c and the rises. */
  readonly unknownCount: number
  /** Share of each piece; where each piece starts and ends (one more); its middle. All parts of the length. */
  readonly shares: Float64Array
  readonly knots: Float64Array
  readonly middles: Float64Array
}

/** Size of the pieces at the chain's ends beside that further in; they grow evenly over this part of the length. */
const END_SIZE = 0.5
const END_PART = 0.15

export function makeGrid(pieceCount: number): Grid {
  const shares = new Float64Array(pieceCount)
  let sum = 0
  for (let i = 0; i < pieceCount; i++) {
    const place = (i + 0.5) / pieceCount
    shares[i] = Math.min(1, END_SIZE + ((1 - END_SIZE) * Math.min(place, 1 - place)) / END_PART)
    sum += shares[i]!
  }
  const knots = new Float64Array(pieceCount + 1)
  const middles = new Float64Array(pieceCount)
  for (let i = 0; i < pieceCount; i++) {
    shares[i]! /= sum
    knots[i + 1] = i + 1 === pieceCount ? 1 : knots[i]! + shares[i]!
    middles[i] = (knots[i]! + knots[i + 1]!) / 2
  }
  return { pieceCount, unknownCount: pieceCount + 2, shares, knots, middles }
}

/** What a chain is at its knots, and the integrals over its pieces that its slopes are made of; N is (-sin, cos) theta. */
export interface Chain {
  readonly grid: Grid
  readonly startHeadingRad: number
  z: Float64Array
  /** At each knot: heading, L times curvature, integral of (cos, sin) and of t N up to it. */
  readonly headings: Float64Array
  readonly bends: Float64Array
  readonly x: Float64Array
  readonly y: Float64Array
  readonly turnX: Float64Array
  readonly turnY: Float64Array
  /** For each piece: the integral over it of its own share of heading, v^2 / (2 share), times N. */
  readonly ownX: Float64Array
  readonly ownY: Float64Array
}

export function makeChain(grid: Grid, startHeadingRad: number, z: Float64Array): Chain {
  const knots = () => new Float64Array(grid.pieceCount + 1)
  const pieces = () => new Float64Array(grid.pieceCount)
  const chain: Chain = {
    grid,
    startHeadingRad,
    z,
    headings: knots(),
    bends: knots(),
    x: knots(),
    y: knots(),
    turnX: knots(),
    turnY: knots(),
    ownX: pieces(),
    ownY: pieces(),
  }
  sumChain(chain)
  return chain
}

// Gauss-Legendre rule of four points on [0, 1]. Source: Abramowitz & Stegun, table 25.4 (from memory).
export const NODES = [-0.8611363115940526, -0.3399810435848563, 0.3399810435848563, 0.8611363115940526].map(
  (t) => (1 + t) / 2,
)
export const WEIGHTS = [0.3478548451374538, 0.6521451548625461, 0.6521451548625461, 0.3478548451374538].map(
  (w) => w / 2,
)

/** Brings the chain's sums up to its z. */
export function sumChain(chain: Chain): void {
  const { grid, z, headings, bends, x, y, turnX, turnY, ownX, ownY } = chain
  headings[0] = chain.startHeadingRad
  bends[0] = z[1]!
  for (let i = 0; i < grid.pieceCount; i++) {
    const sums = sumPart(chain, i, grid.shares[i]!)
    x[i + 1] = x[i]! + sums.x
    y[i + 1] = y[i]! + sums.y
    turnX[i + 1] = turnX[i]! + sums.turnX
    turnY[i + 1] = turnY[i]! + sums.turnY
    ownX[i] = sums.ownX
    ownY[i] = sums.ownY
    const share = grid.shares[i]!
    const rise = z[2 + i]!
    headings[i + 1] = headings[i]! - share * (bends[i]! + rise / 2)
    bends[i + 1] = bends[i]! + rise
  }
}

const PART = { x: 0, y: 0, turnX: 0, turnY: 0, ownX: 0, ownY: 0 }

/** Integrals over the first `part` (of the whole length) of piece i, which must have its heading and bend. Good until the next call. */
export function sumPart(chain: Chain, i: number, part: number): Readonly<typeof PART> {
  const { grid, z, headings, bends } = chain
  const share = grid.shares[i]!
  PART.x = PART.y = PART.turnX = PART.turnY = PART.ownX = PART.ownY = 0
  for (let q = 0; q < 4; q++) {
    const v = NODES[q]! * part
    const w = WEIGHTS[q]! * part
    const own = (v * v) / (2 * share)
    const angle = headings[i]! - bends[i]! * v - z[2 + i]! * own
    const cos = w * Math.cos(angle)
    const sin = w * Math.sin(angle)
    const t = grid.knots[i]! + v
    PART.x += cos
    PART.y += sin
    PART.turnX -= t * sin
    PART.turnY += t * cos
    PART.ownX -= own * sin
    PART.ownY += own * cos
  }
  return PART
}

/** The integral of (dk/ds)^2 ds of the chain z. */
export function variationOf(grid: Grid, z: Float64Array): number {
  let sum = 0
  for (let i = 0; i < grid.pieceCount; i++) sum += (z[2 + i]! * z[2 + i]!) / grid.shares[i]!
  return sum / z[0]! ** 3
}
