import { type Curve, crossingsOfXMm, curveAt, headingsAtMm, makeCurve, stretchOfCurve } from '../geometry/curve.ts'
import { arc, type Piece, type Place, straight } from '../geometry/piece.ts'
import type { Point } from '../geometry/point.ts'
import type { CutawayPlan } from '../plan.ts'
import { findBouts } from './body.ts'
import { crossesItself } from './crossing.ts'

/** Why a cutaway cannot be drawn as entered; 'none' where it can. */
export const CUTAWAY_MISFITS = [
  'none',
  'leavesBeforeWaist', // or, on a body without one, before its widest place
  'leavesPastShoulder', // where the side already stands no wider than the hollow is to meet the neck
  'hollowTooTight', // too small a circle to reach from the horn to the neck
  'hornTooWide', // the hollow would end inside the circle of the horn
  'noHorn', // the side would have to turn outward into the hollow, or more than half round the horn
  'beyondNeck', // horn or hollow stand out past the neck joint
  'intoSide', // the hollow runs under the centreline or over the line of the side
] as const
export type CutawayMisfit = (typeof CUTAWAY_MISFITS)[number]

export interface CutTreble {
  /** The treble half from the tail to (L, 0); its wood ends at `woodEndMm`, and a line square to the centreline closes it. */
  readonly treble: Curve
  readonly woodEndMm: number
  /** Arc length of the horn's tip: the corner of a pointed one, the place nearest the neck on a rounded one; null without a cutaway. */
  readonly hornMm: number | null
  readonly fits: boolean
  readonly reason: CutawayMisfit
  /** The wood's angle at the corner of a pointed horn. */
  readonly hornAngleRad: number | null
  /** Between the hollow's end and the centreline: positive where it still closes in, negative where it already opens outward. */
  readonly angleAtNeckRad: number | null
}

/** A radius is never taken smaller. */
const LEAST_RADIUS_MM = 0.001

/**
 * The treble half of an outline with a cutaway: the bass half up to the last place past the waist at x = leavesAtMm, then
 *   pointed   a corner, and one arc bulging into the body to (L, meetsNeckAtMm)
 *   rounded   the horn's arc, tangent to the side, and the hollow's arc, tangent to the horn, to the same place
 * and there a corner and a straight down to (L, 0). Lengths in mm, both halves with y upward.
 *
 * Rounded: the hollow's centre stands where the circle of radius rh + rc about the horn's centre meets the circle of radius rc about the
 * end, to the left of the way from the horn to the end: on the other side the hollow would go the long way round.
 * What does not fit is drawn with a straight in place of horn and hollow, or without a cutaway where there is no place to leave from.
 * Source: derived.
 */
export function cutTreble(bassHalf: Curve, cutaway: CutawayPlan, lengthMm: number): CutTreble {
  if (cutaway.form === 'none') return uncut(bassHalf, 'none')
  const end: Point = { x: lengthMm, y: Math.max(cutaway.meetsNeckAtMm, 0) }
  const leavesMm = leavingPlace(bassHalf, cutaway.leavesAtMm, end)
  if (typeof leavesMm === 'string') return uncut(bassHalf, leavesMm)

  const kept = upToMm(bassHalf, leavesMm)
  const from = kept.places.at(-1)!
  const hollowMm = Math.max(cutaway.hollowRadiusMm, LEAST_RADIUS_MM)
  const hornMm = Math.max(cutaway.hornRadiusMm, LEAST_RADIUS_MM)
  const way = cutaway.form === 'pointed' ? pointedWay(from, hollowMm, end) : roundedWay(from, hornMm, hollowMm, end)
  if (typeof way === 'string') return cutStraight(kept, end, way)

  const { curve, woodEndMm } = join(kept, way, end)
  const beyond = headingsAtMm(curve, Math.PI / 2).some(
    (s) => s > kept.lengthMm && s < woodEndMm && curveAt(curve, s).point.x > lengthMm + 1e-6,
  )
  if (beyond) return cutStraight(kept, end, 'beyondNeck')
  if (crossesItself(curve)) return cutStraight(kept, end, 'intoSide')
  return {
    treble: curve,
    woodEndMm,
    hornMm: kept.lengthMm + way.hornAlongMm,
    fits: true,
    reason: 'none',
    hornAngleRad: cutaway.form === 'pointed' ? Math.PI - way.cornerRad : null,
    angleAtNeckRad: -wrapRad(way.endHeadingRad),
  }
}

/** The stretches of wood between sharp corners (over 5 degrees) up to where the wood ends: one for a plain half, two with a pointed horn. */
export function sidePieces(curve: Curve, woodEndMm: number): { readonly fromMm: number; readonly toMm: number }[] {
  const endMm = Math.min(Math.max(woodEndMm, 0), curve.lengthMm)
  const cuts = curve.corners.filter(({ turnRad }) => Math.abs(turnRad) > SHARP_RAD).map(({ sMm }) => sMm)
  const stops = [0, ...cuts.filter((s) => s > 1e-6 && s < endMm - 1e-6), endMm]
  return stops.slice(1).map((toMm, i) => ({ fromMm: stops[i]!, toMm }))
}

export const SHARP_RAD = (5 * Math.PI) / 180

/** A curve from its start to arc length s, held within its length; a corner right at its end is left away. */
export const upToMm = (curve: Curve, sMm: number): Curve =>
  sMm >= curve.lengthMm ? curve : stretchOfCurve(curve, 0, sMm)

const turnBeforeRad = (curve: Curve, i: number): number =>
  i === 0 ? 0 : curve.corners.reduce((sum, { sMm, turnRad }) => sum + (sMm === curve.startsMm[i] ? turnRad : 0), 0)

/** From where the treble leaves the bass half to where its wood ends. */
interface Way {
  readonly cornerRad: number
  readonly pieces: readonly Piece[]
  readonly hornAlongMm: number
  readonly endHeadingRad: number
}

function leavingPlace(bassHalf: Curve, xMm: number, end: Point): number | CutawayMisfit {
  const { waistMm, lowerBoutMm } = findBouts(bassHalf)
  const pastMm = waistMm ?? lowerBoutMm
  if (xMm <= curveAt(bassHalf, pastMm).point.x) return 'leavesBeforeWaist'
  const leavesMm = crossingsOfXMm(bassHalf, xMm).findLast((s) => s > pastMm)
  if (leavesMm === undefined || xMm >= end.x - 1e-6) return 'leavesPastShoulder'
  return curveAt(bassHalf, leavesMm).point.y <= end.y + 1e-6 ? 'leavesPastShoulder' : leavesMm
}

function pointedWay(from: Place, hollowMm: number, end: Point): Way | CutawayMisfit {
  const { chordMm, headingRad } = chordOf(from.point, end)
  if (chordMm > 2 * hollowMm) return 'hollowTooTight'
  const halfRad = Math.asin(chordMm / (2 * hollowMm))
  const cornerRad = wrapRad(from.headingRad - (headingRad - halfRad))
  if (cornerRad <= 0) return 'noHorn'
  return {
    cornerRad,
    pieces: [arc(-hollowMm, 2 * halfRad)],
    hornAlongMm: 0,
    endHeadingRad: headingRad + halfRad,
  }
}

function roundedWay(from: Place, hornMm: number, hollowMm: number, end: Point): Way | CutawayMisfit {
  const { point, headingRad } = from
  const hornCentre = { x: point.x + hornMm * Math.sin(headingRad), y: point.y - hornMm * Math.cos(headingRad) }
  const { chordMm: apartMm, headingRad: towardRad } = chordOf(hornCentre, end)
  if (apartMm > hornMm + 2 * hollowMm) return 'hollowTooTight'
  if (apartMm <= hornMm) return 'hornTooWide'
  const reachMm = hornMm + hollowMm
  const alongMm = (reachMm * reachMm - hollowMm * hollowMm + apartMm * apartMm) / (2 * apartMm)
  const asideMm = Math.sqrt(Math.max(reachMm * reachMm - alongMm * alongMm, 0))
  const spokeRad = towardRad + Math.atan2(asideMm, alongMm)
  const hollowCentre = {
    x: hornCentre.x + reachMm * Math.cos(spokeRad),
    y: hornCentre.y + reachMm * Math.sin(spokeRad),
  }
  const hornSweepRad = aroundRad(headingRad + Math.PI / 2 - spokeRad)
  if (hornSweepRad > Math.PI) return 'noHorn'
  const endHeadingRad = Math.atan2(end.y - hollowCentre.y, end.x - hollowCentre.x) + Math.PI / 2
  const hollowSweepRad = aroundRad(endHeadingRad - (headingRad - hornSweepRad))
  const tipRad = Math.min(Math.max(wrapRad(headingRad) + Math.PI / 2, 0), hornSweepRad)
  return {
    cornerRad: 0,
    pieces: [arc(hornMm, hornSweepRad), arc(-hollowMm, hollowSweepRad)],
    hornAlongMm: hornMm * tipRad,
    endHeadingRad,
  }
}

function join(kept: Curve, way: Way, end: Point): { curve: Curve; woodEndMm: number } {
  const turnsRad = kept.pieces.map((_, i) => turnBeforeRad(kept, i))
  const rest = way.pieces.map((_, i) => (i === 0 ? way.cornerRad : 0))
  const curve = makeCurve(
    kept.places[0]!,
    [...kept.pieces, ...way.pieces, straight(end.y)],
    [...turnsRad, ...rest, wrapRad(way.endHeadingRad + Math.PI / 2)],
  )
  return { curve, woodEndMm: curve.startsMm.at(-2)! }
}

function cutStraight(kept: Curve, end: Point, reason: CutawayMisfit): CutTreble {
  const from = kept.places.at(-1)!
  const { chordMm, headingRad } = chordOf(from.point, end)
  const { curve, woodEndMm } = join(
    kept,
    {
      cornerRad: wrapRad(from.headingRad - headingRad),
      pieces: [straight(chordMm)],
      hornAlongMm: 0,
      endHeadingRad: headingRad,
    },
    end,
  )
  return {
    treble: curve,
    woodEndMm,
    hornMm: kept.lengthMm,
    fits: false,
    reason,
    hornAngleRad: null,
    angleAtNeckRad: null,
  }
}

const uncut = (bassHalf: Curve, reason: CutawayMisfit): CutTreble => ({
  treble: bassHalf,
  woodEndMm: bassHalf.lengthMm,
  hornMm: null,
  fits: reason === 'none',
  reason,
  hornAngleRad: null,
  angleAtNeckRad: null,
})

const chordOf = (from: Point, to: Point) => ({
  chordMm: Math.hypot(to.x - from.x, to.y - from.y),
  headingRad: Math.atan2(to.y - from.y, to.x - from.x),
})

/** The same angle in (-pi, pi]. */
const wrapRad = (rad: number): number => rad - 2 * Math.PI * Math.ceil((rad - Math.PI) / (2 * Math.PI))

/** The same angle in [0, 2 pi). */
const aroundRad = (rad: number): number => rad - 2 * Math.PI * Math.floor(rad / (2 * Math.PI))
