import { type Figure, radiusOf } from '../../figure.ts'
import type { Point } from '../../geometry/point.ts'
import { sagittaMm } from '../../geometry/sagitta.ts'
import type { Surface } from '../../geometry/surface.ts'
import { placedHeightMm } from './braceHeight.ts'
import type { PlacedBrace } from './placedBrace.ts'

/** The inside of the plate a brace is glued to; `outward` is the way that plate looks. */
export interface BracedPlate {
  readonly surface: Surface
  readonly outward: 'up' | 'down'
}

/** The face a brace is glued with, seen from its side. */
export interface BraceFace {
  /** Of its arc, minus where it is hollow; none where no one arc follows the plate. */
  readonly radiusMm: Figure
  /** How far it stands over the straight line between its ends, at a distance from the `from` end; upright. */
  readonly riseMm: (alongMm: number) => number
  /** What the plate itself rises over that line in the middle. */
  readonly domeRiseMm: number
}

const pointAlong = ({ from, way }: PlacedBrace, alongMm: number): Point => ({
  x: from.point.x + alongMm * way.x,
  y: from.point.y + alongMm * way.y,
})

const PARTS = 8
/** A template of one radius may miss the plate by this much: what a scraper takes off. Common practice, no published source. */
const ONE_ARC_MM = 0.05

const eighthsOf = (lengthMm: number): number[] => Array.from({ length: PARTS + 1 }, (_, i) => (lengthMm * i) / PARTS)

/**
 * Whether every eighth of a line lies on the circle through its ends and its middle. With the chord as axis that circle is
 * m (u (u - c) + v^2) + v = 0, and what its left side leaves over sqrt(1 + m^2 c^2) is how far off a place lies.
 */
function isOneArc(lengthMm: number, fallMm: number, riseMm: (alongMm: number) => number): boolean {
  const chordMm = Math.hypot(lengthMm, fallMm)
  const [cos, sin] = [lengthMm / chordMm, fallMm / chordMm]
  const onChord = (alongMm: number) => {
    const heightMm = riseMm(alongMm) + (fallMm * alongMm) / lengthMm
    return { u: alongMm * cos + heightMm * sin, v: heightMm * cos - alongMm * sin }
  }
  const middle = onChord(lengthMm / 2)
  const m = middle.v / (middle.u * (chordMm - middle.u) - middle.v * middle.v)
  return eighthsOf(lengthMm).every((alongMm) => {
    const { u, v } = onChord(alongMm)
    return Math.abs(m * (u * (u - chordMm) + v * v) + v) <= ONE_ARC_MM * Math.hypot(1, m * chordMm)
  })
}

/**
 * The gluing face of a brace, mm. Distances along it are in plan, rises upright over the line between its ends.
 *
 *   dome   the plate's own section; its radius is that of the circle through both ends and the middle: 4 x triangle / product of its
 *          sides. On a sphere of radius R that is the circle every upright plane at distance d from its axis cuts: sqrt(R^2 - d^2).
 *          Where the plate lies further than `ONE_ARC_MM` off that circle at any eighth (over a kink), there is no radius; the rises
 *          follow the plate.
 *   own    an arc of the entered radius over its length; a radius under half the length is taken as half the length
 *   flat   none
 *
 * Source: derived.
 */
export function braceFace(brace: PlacedBrace, { surface, outward }: BracedPlate): BraceFace {
  const { lengthMm, plan } = brace
  const sign = outward === 'up' ? 1 : -1
  const standsMm = (alongMm: number) => {
    const { x, y } = pointAlong(brace, alongMm)
    return sign * surface.heightMm(x, y)
  }
  const [atFrom, atTo] = [standsMm(0), standsMm(lengthMm)]
  const domeMm = (alongMm: number) =>
    lengthMm > 0 ? standsMm(alongMm) - atFrom - ((atTo - atFrom) * alongMm) / lengthMm : 0
  const domeRiseMm = domeMm(lengthMm / 2)
  if (plan.underside === 'flat' || lengthMm <= 0) return { radiusMm: 'flat', riseMm: () => 0, domeRiseMm }
  if (plan.underside === 'own') {
    const radiusMm = Math.max(plan.archRadiusMm, lengthMm / 2)
    const wholeMm = sagittaMm(radiusMm, lengthMm)
    return { radiusMm, domeRiseMm, riseMm: (along) => wholeMm - sagittaMm(radiusMm, 2 * along - lengthMm) }
  }
  // The three places in the brace's own upright plane.
  const fallMm = atTo - atFrom
  const halfMm = lengthMm / 2
  const sidesMm =
    Math.hypot(lengthMm, fallMm) *
    Math.hypot(halfMm, fallMm / 2 + domeRiseMm) *
    Math.hypot(halfMm, fallMm / 2 - domeRiseMm)
  const radiusMm = isOneArc(lengthMm, fallMm, domeMm) ? radiusOf((2 * domeRiseMm * lengthMm) / sidesMm) : 'none'
  return { radiusMm, riseMm: domeMm, domeRiseMm }
}

export interface BraceArchRow {
  /** Of the brace. */
  readonly number: number
  /** From its `from` end, in plan. */
  readonly alongMm: number
  /** Of its gluing face over the line between its ends. */
  readonly riseMm: number
  /** Of its wood over that face. */
  readonly heightMm: number
}

/** The ordinate of a face that is greatest of all eighths, minus where it is hollow, and from the lowest of them to the highest. */
export function greatestRise(face: BraceFace, lengthMm: number): { readonly riseMm: number; readonly rangeMm: number } {
  const rises = eighthsOf(lengthMm).map(face.riseMm)
  const [most, least] = [Math.max(...rises), Math.min(...rises)]
  return { riseMm: most >= -least ? most : least, rangeMm: most - least }
}

/** A brace at every eighth of its length, both ends included. */
export const braceArchRows = (brace: PlacedBrace, face: BraceFace, number: number): BraceArchRow[] =>
  eighthsOf(brace.lengthMm).map((alongMm) => ({
    number,
    alongMm,
    riseMm: face.riseMm(alongMm),
    heightMm: placedHeightMm(brace, alongMm),
  }))

/** Where a brace lacks room in the box: its height against what lies between the two plates there, at the worst of every eighth. */
export function leastRoomMm(
  brace: PlacedBrace,
  top: Surface,
  back: Surface,
): { readonly heightMm: number; readonly insideMm: number } {
  let worst = { heightMm: 0, insideMm: Infinity }
  for (const alongMm of eighthsOf(brace.lengthMm)) {
    const { x, y } = pointAlong(brace, alongMm)
    const heightMm = placedHeightMm(brace, alongMm)
    const insideMm = top.heightMm(x, y) - back.heightMm(x, y)
    if (insideMm - heightMm < worst.insideMm - worst.heightMm) worst = { heightMm, insideMm }
  }
  return worst
}
