import type { Figure } from '../figure.ts'
import { areaUnderMm2, type Curve, crossingsOfXMm, curveAt, headingsAtMm } from '../geometry/curve.ts'

export interface BodyNumbers {
  readonly lengthMm: number
  /** The way round the outer face of the bass half, tail to neck. */
  readonly halfLengthMm: number
  readonly areaMm2: number
  /** Widest and narrowest places as found on the curve, whole widths and places from the tail. */
  readonly lowerBoutMm: number
  readonly lowerBoutAtMm: number
  readonly waistMm: Figure
  readonly waistAtMm: Figure
  readonly upperBoutMm: Figure
  readonly upperBoutAtMm: Figure
  /** Smallest radius round the outer face, and how far along it from the tail. */
  readonly tightestRadiusMm: Figure
  readonly tightestAtMm: Figure
}

/** Arc lengths of the places a maker names, as far as the body has them. */
export interface Bouts {
  readonly lowerBoutMm: number
  readonly waistMm: number | null
  readonly upperBoutMm: number | null
}

/**
 * Where the half outline is widest and narrowest: the waist is the least half-width between two bouts; without one there is a lower bout alone.
 * Exact: these are the arc lengths at which the curve runs along the centreline. `waistNearMm`: of several narrow places the one nearest
 * to this x is the waist, since the hollow of a cutaway is narrow too.
 */
export function findBouts(half: Curve, waistNearMm: number | null = null): Bouts {
  const widest: number[] = []
  const narrowest: number[] = []
  for (const s of headingsAtMm(half, 0)) {
    const here = curveAt(half, s).point.y
    const nearby = Math.max(curveAt(half, s - 0.5).point.y, curveAt(half, s + 0.5).point.y)
    ;(nearby > here + 1e-9 ? narrowest : widest).push(s)
  }
  const width = (s: number) => curveAt(half, s).point.y
  const wider = (a: number, b: number) => (width(b) > width(a) + 1e-9 ? b : a)
  const between = narrowest.filter((s) => widest.some((w) => w < s) && widest.some((w) => w > s))
  const first = widest[0]
  if (first === undefined) return { lowerBoutMm: half.lengthMm / 2, waistMm: null, upperBoutMm: null }
  if (between.length === 0) return { lowerBoutMm: widest.reduce(wider), waistMm: null, upperBoutMm: null }
  const awayMm = (s: number) => Math.abs(curveAt(half, s).point.x - (waistNearMm ?? 0))
  const waistMm = between.reduce((a, b) =>
    waistNearMm === null ? (width(b) < width(a) ? b : a) : awayMm(b) < awayMm(a) ? b : a,
  )
  return {
    lowerBoutMm: widest.filter((s) => s < waistMm).reduce(wider),
    waistMm,
    upperBoutMm: widest.filter((s) => s > waistMm).reduce(wider),
  }
}

/** The smallest radius anywhere on the curve and where; nothing where it is straight all along. */
export function findTightest(half: Curve): { radiusMm: number; atMm: number } | null {
  let tightest: { radiusMm: number; atMm: number } | null = null
  half.pieces.forEach((piece, i) => {
    if (piece.lengthMm < 1e-6) return
    const start = Math.abs(piece.startCurvaturePerMm)
    const end = Math.abs(piece.endCurvaturePerMm)
    const radiusMm = 1 / Math.max(start, end)
    const atMm = half.startsMm[i]! + (start === end ? piece.lengthMm / 2 : start > end ? 0 : piece.lengthMm)
    if (Number.isFinite(radiusMm) && (tightest === null || radiusMm < tightest.radiusMm - 1e-9))
      tightest = { radiusMm, atMm }
  })
  return tightest
}

/** Half-width of the body at a place along the centreline, the outermost where the curve passes it more than once; 0 outside it. */
export function halfWidthAtMm(half: Curve, xMm: number): number {
  return Math.max(0, ...crossingsOfXMm(half, xMm).map((s) => curveAt(half, s).point.y))
}

/** Both halves of a body: one and the same curve where it is mirrored. */
export interface BodyHalves {
  readonly bass: Curve
  readonly treble: Curve
}

/** Half-width of the wider half at a place along the centreline. */
export const widerHalfAtMm = ({ bass, treble }: BodyHalves, xMm: number): number =>
  bass === treble ? halfWidthAtMm(bass, xMm) : Math.max(halfWidthAtMm(bass, xMm), halfWidthAtMm(treble, xMm))

/** Widths are whole widths, across at the place where the bass half is widest or narrowest; the tightest bend is of either half. */
export function measureBody({ bass, treble }: BodyHalves, lengthMm: number, bouts: Bouts): BodyNumbers {
  const place = (s: number | null): { widthMm: Figure; atMm: Figure } => {
    if (s === null) return { widthMm: 'none', atMm: 'none' }
    const { x, y } = curveAt(bass, s).point
    return { widthMm: y + (treble === bass ? y : halfWidthAtMm(treble, x)), atMm: x }
  }
  const lower = place(bouts.lowerBoutMm)
  const waist = place(bouts.waistMm)
  const upper = place(bouts.upperBoutMm)
  const tightest = [findTightest(bass), treble === bass ? null : findTightest(treble)].reduce((a, b) =>
    a === null || (b !== null && b.radiusMm < a.radiusMm - 1e-9) ? b : a,
  )
  return {
    lengthMm,
    halfLengthMm: bass.lengthMm,
    areaMm2: areaUnderMm2(bass) + areaUnderMm2(treble),
    lowerBoutMm: lower.widthMm as number,
    lowerBoutAtMm: lower.atMm as number,
    waistMm: waist.widthMm,
    waistAtMm: waist.atMm,
    upperBoutMm: upper.widthMm,
    upperBoutAtMm: upper.atMm,
    tightestRadiusMm: tightest?.radiusMm ?? 'flat',
    tightestAtMm: tightest?.atMm ?? 'none',
  }
}
