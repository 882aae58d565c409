import { type Figure, radiusOf } from '../figure.ts'
import { type Curve, curveAt, insetPoint } from '../geometry/curve.ts'
import type { Point } from '../geometry/point.ts'
import { findRoot } from '../geometry/root.ts'
import type { Surface } from '../geometry/surface.ts'
import type { SideBracesPlan } from '../plan.ts'

export interface SideBraceRow {
  /** Of its middle, along the outer face from the tail. */
  readonly alongOuterMm: number
  readonly xMm: number
  /** From edge to edge of the rim at the inner face, or what the linings leave of it. */
  readonly lengthMm: number
  /** Of the arc its gluing face is shaped to: through middle and both edges, positive where that face is convex, negative where hollow. */
  readonly faceRadiusMm: Figure
  /** How far the edges of that face fall back from its middle, negative where they stand before it. */
  readonly faceRiseMm: number
  /** From the brace before, along the outer face. */
  readonly spacingMm: Figure
}

/** What one row is worked out from. */
export interface SideBraceSite {
  readonly curve: Curve
  readonly sMm: number
  /** Arc length of the brace before; null for the first. */
  readonly previousMm: number | null
  readonly sideThicknessMm: number
  readonly widthMm: number
  readonly ends: SideBracesPlan['ends']
  readonly topLiningHeightMm: number
  readonly backLiningHeightMm: number
  readonly top: Surface
  readonly back: Surface
}

const MOST_BRACES = 200

/**
 * Arc lengths of the side braces along the outer face, by rising s: as entered, sorted, held between the blocks and each place once;
 * else evenly from block to block, no further apart than the spacing, the blocks themselves bearing the ends. None where the form is none.
 */
export function placeSideBraces(plan: SideBracesPlan, halfLengthMm: number, fromMm: number, toMm: number): number[] {
  if (plan.form === 'none') return []
  const first = Math.min(Math.max(fromMm, 0), halfLengthMm)
  const last = Math.min(Math.max(toMm, first), halfLengthMm)
  if (plan.atMm !== null) {
    const held = plan.atMm.map((s) => Math.min(Math.max(s, first), last)).sort((a, b) => a - b)
    return held.filter((s, i) => i === 0 || s - held[i - 1]! > 1e-6)
  }
  if (plan.spacingMm <= 0) return []
  const spaces = Math.min(Math.ceil((last - first) / plan.spacingMm - 1e-9), MOST_BRACES + 1)
  return Array.from({ length: Math.max(spaces - 1, 0) }, (_, i) => first + ((last - first) * (i + 1)) / spaces)
}

/** One side brace. Its length is taken at its middle, at the inner face. Source: derived. */
export function sideBraceRow(site: SideBraceSite): SideBraceRow {
  const { curve, sideThicknessMm, previousMm } = site
  const at = curveAt(curve, site.sMm)
  const middle = insetPoint(curve, at.sMm, sideThicknessMm)
  const depthMm = site.top.heightMm(middle.x, middle.y) - site.back.heightMm(middle.x, middle.y)
  const coveredMm = site.ends === 'betweenLinings' ? site.topLiningHeightMm + site.backLiningHeightMm : 0
  const face = faceOver(site, at.sMm, middle)
  return {
    alongOuterMm: at.sMm,
    xMm: at.point.x,
    lengthMm: Math.max(depthMm - coveredMm, 0),
    faceRadiusMm: radiusOf(face.curvaturePerMm),
    faceRiseMm: face.riseMm,
    spacingMm: previousMm === null ? 'none' : at.sMm - previousMm,
  }
}

/**
 * The side's inner face over a brace's width, measured square to its middle: the curvature of the circle through middle and both edges
 * (4 x area of the triangle / product of its sides), and the height of the middle over the edges. Near an end of the curve, as far as it goes.
 */
function faceOver(
  site: SideBraceSite,
  sMm: number,
  middle: Point,
): { readonly curvaturePerMm: number; readonly riseMm: number } {
  const { curve, sideThicknessMm, widthMm } = site
  const { normal } = curveAt(curve, sMm)
  const edge = (way: 1 | -1): Point => {
    const farMm = Math.min(Math.max(sMm + way * 2 * widthMm, 0), curve.lengthMm)
    const shortMm = (s: number) => {
      const point = insetPoint(curve, s, sideThicknessMm)
      return way * ((point.x - middle.x) * normal.y - (point.y - middle.y) * normal.x) - widthMm / 2
    }
    return insetPoint(curve, findRoot(shortMm, sMm, farMm, 1e-11), sideThicknessMm)
  }
  const [before, after] = [edge(-1), edge(1)]
  const chordMm = Math.hypot(after.x - before.x, after.y - before.y)
  const sidesMm =
    chordMm * Math.hypot(middle.x - before.x, middle.y - before.y) * Math.hypot(after.x - middle.x, after.y - middle.y)
  if (sidesMm < 1e-9) return { curvaturePerMm: 0, riseMm: 0 }
  // Twice the triangle's area, positive where the middle stands to the left of the way from edge to edge: outward.
  const twiceMm2 = (after.x - before.x) * (middle.y - before.y) - (after.y - before.y) * (middle.x - before.x)
  return { curvaturePerMm: (2 * twiceMm2) / sidesMm, riseMm: twiceMm2 / chordMm }
}
