import { type Curve, type CurvePoint, curveAt, insetLengthMm, stretchOfCurve } from '../geometry/curve.ts'
import { type Surface, slopeToward } from '../geometry/surface.ts'
import type { Bouts } from './body.ts'
import { sidePieces } from './cutaway.ts'
import { liningProud } from './lining.ts'

/** One station of the rim. Heights over the rim plane: the plane through the top edge at tail and neck as dished, before anything is planed. */
export interface RimRow {
  /** Along the outer face of the bent side, from the tail. */
  readonly alongOuterMm: number
  /** Along the flat blank, from its tail end without trim. */
  readonly alongBlankMm: number
  readonly xMm: number
  readonly yMm: number
  readonly topEdgeMm: number
  readonly backEdgeMm: number
  readonly depthMm: number
  /** Slope across the edge, positive where the inner arris stands prouder. */
  readonly topBevelRad: number
  readonly backBevelRad: number
  /** From the blank's straight reference edge to the line to saw, back allowance included. */
  readonly cutWidthMm: number
  /** Depth the bare edges are brought to first: what the second radiusing takes off is still on. */
  readonly firstDepthMm: number
  /** How much a lining's inner corner stands prouder than the side's outer arris, and than its inner one; negative where it lies lower. */
  readonly topProudOuterMm: number
  readonly topProudInnerMm: number
  readonly backProudOuterMm: number
  readonly backProudInnerMm: number
}

/** A station of a treble side of its own: in which of its blanks, counted from the tail. */
export interface TrebleRow extends RimRow {
  readonly blank: number
}

export type RimPlace = 'tail' | 'lowerBout' | 'waist' | 'upperBout' | 'horn' | 'neck'
export interface PlaceRow extends RimRow {
  readonly place: RimPlace
}

/** What one row is worked out from: one piece of side wood, and what it stands between. */
export interface RimSite {
  readonly half: Curve
  /** Arc length of the whole half at which this piece begins. */
  readonly startMm: number
  readonly top: Surface
  readonly back: Surface
  readonly sideThicknessMm: number
  /** Height of the blank's straight edge over the rim plane. */
  readonly referenceMm: number
  readonly backAllowanceMm: number
  readonly firstLeavesMm: number
  readonly topLiningMm: number
  readonly backLiningMm: number
}

const ROUND_STEPS_MM = [5000, 1000, 500, 200, 100, 50, 20, 15, 12, 10, 8, 6, 5, 4, 3, 2]
const LEAST_STATIONS = 40
const MOST_STATIONS = 400

/** The widest round step that gives at least 40 stations, both ends included; an entered one is taken unless it gives fewer, or over 400. */
export function stationStepMm(halfLengthMm: number, enteredMm: number | null): number {
  const count = (step: number) => Math.ceil(halfLengthMm / step - 1e-9) + 1
  const enough = (step: number) => count(step) >= LEAST_STATIONS
  if (enteredMm !== null && enough(enteredMm) && count(enteredMm) <= MOST_STATIONS) return enteredMm
  return ROUND_STEPS_MM.find(enough) ?? halfLengthMm / (LEAST_STATIONS - 1)
}

/** Arc lengths of the stations: 0, one step after another, and the end. */
export function stationsMm(halfLengthMm: number, stepMm: number): number[] {
  const stations: number[] = []
  for (let i = 0; i * stepMm < halfLengthMm - 1e-6; i++) stations.push(i * stepMm)
  return [...stations, halfLengthMm]
}

/**
 * The side at arc length s: depth, bevels and blank.
 * Bevel = atan of the surface's slope along the outline's outward unit normal, counted positive where the inner arris is prouder.
 * The flat blank is measured at mid-thickness: s - t/2 x turning. Source: derived.
 */
export function rimRowAt(site: RimSite, sMm: number): RimRow {
  const at: CurvePoint = curveAt(site.half, sMm)
  const { x, y } = at.point
  const topEdgeMm = site.top.heightMm(x, y)
  const backEdgeMm = site.back.heightMm(x, y)
  const proud = liningProud(
    {
      curve: site.half,
      top: site.top,
      back: site.back,
      sideThicknessMm: site.sideThicknessMm,
      topWidthMm: site.topLiningMm,
      backWidthMm: site.backLiningMm,
    },
    at.sMm,
  )
  return {
    alongOuterMm: site.startMm + at.sMm,
    alongBlankMm: insetLengthMm(site.half, at.sMm, site.sideThicknessMm / 2),
    xMm: x,
    yMm: y,
    topEdgeMm,
    backEdgeMm,
    depthMm: topEdgeMm - backEdgeMm,
    topBevelRad: Math.atan(-slopeToward(site.top, at.point, at.normal)),
    backBevelRad: Math.atan(slopeToward(site.back, at.point, at.normal)),
    cutWidthMm: site.referenceMm - backEdgeMm + site.backAllowanceMm,
    firstDepthMm: topEdgeMm - backEdgeMm + site.firstLeavesMm,
    topProudOuterMm: proud.topOverOuterMm,
    topProudInnerMm: proud.topOverInnerMm,
    backProudOuterMm: proud.backOverOuterMm,
    backProudInnerMm: proud.backOverInnerMm,
  }
}

/** The wood of a half: its stretches between sharp corners, up to where it ends. */
export const sideWoods = (half: Curve, woodEndMm: number): { readonly half: Curve; readonly startMm: number }[] =>
  sidePieces(half, woodEndMm).map(({ fromMm, toMm }) => ({ half: stretchOfCurve(half, fromMm, toMm), startMm: fromMm }))

/** The side at arc length s of the whole half, on the piece of wood that holds it; where two meet, on the one nearer the tail. */
export function rowOnPieces(sites: readonly RimSite[], sMm: number): RimRow {
  const site = sites.find(({ startMm, half }) => sMm <= startMm + half.lengthMm + 1e-9) ?? sites.at(-1)!
  return rimRowAt(site, sMm - site.startMm)
}

/** Every station of a half in pieces: both ends of each piece are among them. */
export const stationRows = (sites: readonly RimSite[], stepMm: number): TrebleRow[] =>
  sites.flatMap((site, i) =>
    stationsMm(site.half.lengthMm, stepMm).map((s) => ({ ...rimRowAt(site, s), blank: i + 1 })),
  )

/** The named places of a half, in order; `hornMm`: arc length of the tip of a cutaway's horn. */
export function placeRows(sites: readonly RimSite[], bouts: Bouts, hornMm: number | null = null): PlaceRow[] {
  const last = sites.at(-1)!
  const endMm = last.startMm + last.half.lengthMm
  const stops: [RimPlace, number | null][] = [
    ['tail', 0],
    ['lowerBout', bouts.lowerBoutMm],
    ['waist', bouts.waistMm],
    ['upperBout', bouts.upperBoutMm],
    ['horn', hornMm],
    ['neck', endMm],
  ]
  return stops.flatMap(([place, s]) => (s === null || s > endMm ? [] : [{ place, ...rowOnPieces(sites, s) }]))
}
