import { type Figure, radiusOf } from '../../figure.ts'
import type { Point } from '../../geometry/point.ts'
import { sagittaMm } from '../../geometry/sagitta.ts'
import type { Surface } from '../../geometry/surface.ts'
import { braceHeightMm } from './braceHeight.ts'
import type { PlacedBrace } from './placedBrace.ts'

/** The inside of the plate a brace is glued to; `outward` is the way that plate looks. */
export interface BracedPlate {
  readonly surface: Surface
  readonly outward: 'up' | 'down'
}

/** The face a brace is glued with, seen from its side. */
export interface BraceFace {
  /** Of its arc, minus where it is hollow. */
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

/**
 * The gluing face of a brace, mm. Distances along it are in plan, rises upright over the line between its ends.
 *
 *   dome   the plate's own section; its radius is that of the circle through both ends and the middle: 4 x triangle / product of its
 *          sides. On a sphere of radius R that is the circle every upright plane at distance d from its axis cuts: sqrt(R^2 - d^2).
 *          Over a flat that only part of it reaches, or an arched back, it is a circle close to the true line; the rises follow the line.
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
  return { radiusMm: radiusOf((2 * domeRiseMm * lengthMm) / sidesMm), riseMm: domeMm, domeRiseMm }
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

const PARTS = 8

/** A brace at every eighth of its length, both ends included. */
export const braceArchRows = (brace: PlacedBrace, face: BraceFace, number: number): BraceArchRow[] =>
  Array.from({ length: PARTS + 1 }, (_, i) => {
    const alongMm = (brace.lengthMm * i) / PARTS
    return {
      number,
      alongMm,
      riseMm: face.riseMm(alongMm),
      heightMm: braceHeightMm(brace.plan, brace.lengthMm, alongMm),
    }
  })

/** Where a brace lacks room in the box: its height against what lies between the two plates there, at the worst of every eighth. */
export function leastRoomMm(
  brace: PlacedBrace,
  top: Surface,
  back: Surface,
): { readonly heightMm: number; readonly insideMm: number } {
  let worst = { heightMm: 0, insideMm: Infinity }
  for (let i = 0; i <= PARTS; i++) {
    const alongMm = (brace.lengthMm * i) / PARTS
    const { x, y } = pointAlong(brace, alongMm)
    const heightMm = braceHeightMm(brace.plan, brace.lengthMm, alongMm)
    const insideMm = top.heightMm(x, y) - back.heightMm(x, y)
    if (insideMm - heightMm < worst.insideMm - worst.heightMm) worst = { heightMm, insideMm }
  }
  return worst
}
