import type { ChainSpace, ChainSums } from './chainSpace.ts'
import { addVariation } from './chainVariation.ts'

// Gauss-Legendre rule of four points on [0, 1]. Source: Abramowitz & Stegun, table 25.4 (from memory).
const NODES = [-0.8611363115940526, -0.3399810435848563, 0.3399810435848563, 0.8611363115940526].map((t) => (1 + t) / 2)
const WEIGHTS = [0.3478548451374538, 0.6521451548625461, 0.6521451548625461, 0.3478548451374538].map((w) => w / 2)

/**
 * Variation and rows of the chain z, into `sums`.
 *
 *   k_i+1 = k_i + d_i     theta_i+1 = theta_i - h (k_i + d_i / 2)     chord = h * integral of (cos, sin) theta(u) du, u in 0..1
 */
export function sumChain(space: ChainSpace, z: Float64Array, sums: ChainSums): void {
  const { pieceCount, shareOf, spanOf, rowCount } = space
  let k = z[0]!
  let theta = Math.PI / 2
  let x = 0
  let y = 0
  for (let i = 0; i < pieceCount; i++) {
    const span = spanOf[i]!
    const h = z[1 + pieceCount + span]! * shareOf[i]!
    const d = z[1 + i]!
    for (let q = 0; q < 4; q++) {
      const u = NODES[q]!
      const angle = theta - h * u * (k + (d * u) / 2)
      x += h * WEIGHTS[q]! * Math.cos(angle)
      y += h * WEIGHTS[q]! * Math.sin(angle)
    }
    theta -= h * (k + d / 2)
    k += d
    sums.rows[2 * span] = x
    sums.rows[2 * span + 1] = y
  }
  sums.rows[rowCount - 2] = theta
  sums.rows[rowCount - 1] = k
  addVariation(space, z, sums, false)
}

/** What each piece adds to the sums, by its own heading, curvature, rise and length (in this order, 0 to 3). */
interface PieceTerms {
  readonly lengths: Float64Array
  /** Curvature at each piece's middle. */
  readonly bends: Float64Array
  /** Slopes of its chord: 4 for each piece. */
  readonly chordX: Float64Array
  readonly chordY: Float64Array
  /** Second slopes of forces . chord: 4 x 4 for each piece. */
  readonly second: Float64Array
  /** What the forces do to the heading where each piece starts, and at the end. */
  readonly pull: Float64Array
}

/**
 * Variation, rows and all derivatives at z, into `sums`. `forces` is one multiplier for each row.
 * One sweep forward for each unknown gives the rows' slopes, one back from the end the second derivatives.
 */
export function differentiateChain(space: ChainSpace, z: Float64Array, forces: Float64Array, sums: ChainSums): void {
  sumChain(space, z, sums)
  sums.variationSlope.fill(0)
  sums.rowSlope.fill(0)
  sums.bend.fill(0)
  const terms = expandPieces(space, z, forces)
  const headings = new Float64Array(space.pieceCount)
  const bends = new Float64Array(space.pieceCount)
  for (let p = 0; p < space.unknownCount; p++) {
    sweepForward(space, terms, p, headings, bends, sums.rowSlope)
    sweepBack(space, terms, p, headings, bends, sums.bend)
  }
  addVariation(space, z, sums, true)
}

function expandPieces(space: ChainSpace, z: Float64Array, forces: Float64Array): PieceTerms {
  const { pieceCount: count, rowCount, spanOf, shareOf } = space
  const spans = space.counts.length
  const lengths = new Float64Array(count)
  const bends = new Float64Array(count)
  const chordX = new Float64Array(4 * count)
  const chordY = new Float64Array(4 * count)
  const second = new Float64Array(16 * count)
  const pull = new Float64Array(count + 1)
  // A chord moves every later place: it feels the forces of its own span's end and of all after it.
  const forceX = new Float64Array(spans + 1)
  const forceY = new Float64Array(spans + 1)
  for (let j = spans - 1; j >= 0; j--) {
    forceX[j] = forces[2 * j]! + forceX[j + 1]!
    forceY[j] = forces[2 * j + 1]! + forceY[j + 1]!
  }
  let k = z[0]!
  let theta = Math.PI / 2
  const t = new Float64Array(4) // slopes of the heading at u
  t[0] = 1
  for (let i = 0; i < count; i++) {
    const span = spanOf[i]!
    const h = z[1 + count + span]! * shareOf[i]!
    const d = z[1 + i]!
    const fx = forceX[span]!
    const fy = forceY[span]!
    const at = 4 * i
    const m = 16 * i
    lengths[i] = h
    bends[i] = k + d / 2
    for (let q = 0; q < 4; q++) {
      const u = NODES[q]!
      const w = WEIGHTS[q]!
      t[1] = -h * u
      t[2] = (-h * u * u) / 2
      t[3] = -u * (k + (d * u) / 2)
      const angle = theta - h * u * (k + (d * u) / 2)
      const cos = Math.cos(angle)
      const sin = Math.sin(angle)
      const along = fx * cos + fy * sin
      const across = fy * cos - fx * sin
      for (let a = 0; a < 4; a++) {
        chordX[at + a]! -= w * h * sin * t[a]!
        chordY[at + a]! += w * h * cos * t[a]!
        for (let b = 0; b <= a; b++) second[m + 4 * a + b]! -= w * h * along * t[a]! * t[b]!
        second[m + 12 + a]! += w * across * t[a]! * (a === 3 ? 2 : 1)
      }
      chordX[at + 3]! += w * cos
      chordY[at + 3]! += w * sin
      second[m + 13]! -= w * h * across * u
      second[m + 14]! -= (w * h * across * u * u) / 2
    }
    for (let a = 0; a < 4; a++) for (let b = 0; b < a; b++) second[m + 4 * b + a] = second[m + 4 * a + b]!
    theta -= h * (k + d / 2)
    k += d
  }
  pull[count] = forces[rowCount - 2]!
  for (let i = count - 1; i >= 0; i--) {
    pull[i] = pull[i + 1]! + forceX[spanOf[i]!]! * chordX[4 * i]! + forceY[spanOf[i]!]! * chordY[4 * i]!
  }
  return { lengths, bends, chordX, chordY, second, pull }
}

/** Which piece's rise, or which span's length, unknown p is; -1 where it is not one. */
const risenBy = (space: ChainSpace, p: number): number => (p <= space.pieceCount ? p - 1 : -1)
const stretchedBy = (space: ChainSpace, p: number): number => (p <= space.pieceCount ? -1 : p - 1 - space.pieceCount)

/** How unknown p moves heading and curvature at the start of each piece, and every row. */
function sweepForward(
  space: ChainSpace,
  terms: PieceTerms,
  p: number,
  headings: Float64Array,
  bends: Float64Array,
  rowSlope: Float64Array,
): void {
  const { pieceCount: count, unknownCount: n, rowCount, spanOf, shareOf } = space
  const { lengths, chordX, chordY } = terms
  const risen = risenBy(space, p)
  const stretched = stretchedBy(space, p)
  let heading = 0
  let bend = p === 0 ? 1 : 0
  let x = 0
  let y = 0
  for (let i = Math.max(risen, 0); i < count; i++) {
    const span = spanOf[i]!
    const rise = i === risen ? 1 : 0
    const stretch = span === stretched ? shareOf[i]! : 0
    const at = 4 * i
    headings[i] = heading
    bends[i] = bend
    x += chordX[at]! * heading + chordX[at + 1]! * bend + chordX[at + 2]! * rise + chordX[at + 3]! * stretch
    y += chordY[at]! * heading + chordY[at + 1]! * bend + chordY[at + 2]! * rise + chordY[at + 3]! * stretch
    rowSlope[2 * span * n + p] = x
    rowSlope[(2 * span + 1) * n + p] = y
    heading -= lengths[i]! * (bend + rise / 2) + stretch * terms.bends[i]!
    bend += rise
  }
  rowSlope[(rowCount - 2) * n + p] = heading
  rowSlope[(rowCount - 1) * n + p] = bend
}

/** Row and column p of the second derivative, from what `sweepForward` left; each entry once, in the lower triangle. */
function sweepBack(
  space: ChainSpace,
  terms: PieceTerms,
  p: number,
  headings: Float64Array,
  bends: Float64Array,
  bend: Float64Array,
): void {
  const { pieceCount: count, unknownCount: n, spanOf, shareOf } = space
  const { lengths, second, pull } = terms
  const risen = risenBy(space, p)
  const stretched = stretchedBy(space, p)
  let byHeading = 0
  let byBend = 0
  for (let i = count - 1; i >= Math.max(risen, 0); i--) {
    const span = spanOf[i]!
    const rise = i === risen ? 1 : 0
    const stretch = span === stretched ? shareOf[i]! : 0
    const m = 16 * i
    const a = headings[i]!
    const b = bends[i]!
    const h = lengths[i]!
    const late = h * byHeading + stretch * pull[i + 1]!
    const own = second[m + 8]! * a + second[m + 9]! * b + second[m + 10]! * rise + second[m + 11]! * stretch
    const byRise = own + byBend - late / 2
    if (stretched < 0) bend[(1 + i) * n + p] = byRise
    else {
      bend[p * n + 1 + i] = byRise
      if (span <= stretched) {
        const local = second[m + 12]! * a + second[m + 13]! * b + second[m + 14]! * rise + second[m + 15]! * stretch
        bend[p * n + 1 + count + span]! += (local - b * pull[i + 1]! - terms.bends[i]! * byHeading) * shareOf[i]!
      }
    }
    byBend += second[m + 4]! * a + second[m + 5]! * b + second[m + 6]! * rise + second[m + 7]! * stretch - late
    byHeading += second[m]! * a + second[m + 1]! * b + second[m + 2]! * rise + second[m + 3]! * stretch
  }
  if (risen < 0) bend[p * n] = byBend
}
