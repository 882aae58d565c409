import type { Fretboard } from './fretboard.ts'

/** How the neck stands to the box. Angles rad against the rim plane unless said; heights mm. */
export interface NeckSetNumbers {
  /** To build to, before stringing; and as it comes to stand under strings. */
  readonly angleRad: number
  readonly angleStrungRad: number
  /** The built angle against the top where it meets the neck. */
  readonly angleToTopRad: number
  /** A straightedge on the frets, carried on to the saddle: over the top, and over the bridge; built, and under strings. */
  readonly fretPlaneOverTopMm: number
  readonly fretPlaneOverTopStrungMm: number
  readonly fretPlaneOverBridgeMm: number
  readonly fretPlaneOverBridgeStrungMm: number
  /** The neck's face under the board at the nut, over the rim plane; negative under it. For the board the neck is glued up on, the tilt. */
  readonly faceAtNutMm: number
  /** Strings over the top at the saddle: bridge and what shows of the saddle, in the middle. */
  readonly stringsOverTopMm: number
  /** Off the heel's lower end for each mm the fret plane is to move at the saddle, the box as it is; none where the sides are let into the heel. */
  readonly wedgePerMm: number | 'none'
  /** Under the board's end, or where it reaches over the soundhole at the hole's edge; and the widest place before. */
  readonly gapAtEndMm: number
  readonly widestGapMm: number
  readonly gaps: readonly GapRow[]
  readonly changes: readonly ChangeRow[]
}

/** Room between the underside of the board and the top, on the centreline; negative where the board would stand in the top. */
export interface GapRow {
  readonly fromJointMm: number
  readonly gapMm: number
}

export const CHANGES = ['saddle', 'bridge', 'board', 'rise'] as const
/** What half a millimetre more of one thing does: to the action at fret 12 while the neck stays, or to the neck while the action stays. */
export interface ChangeRow {
  readonly what: (typeof CHANGES)[number]
  readonly actionMm: number
  readonly angleRad: number
  /**
   * Off the lower end of the heel; negative: off its upper end. The box is planned anew as well: a flat that falls as the neck asks
   * turns with it about where it begins. None where the sides are let into the heel.
   */
  readonly wedgeMm: number | 'none'
}
export const CHANGE_MM = 0.5
const HAIR_MM = 1e-6

/** What the set of a neck is worked out from. All in the plane y = 0, on the board's crest. */
export interface NeckSetSite {
  /** Joint to the saddle's crown, compensated. */
  readonly toSaddleMm: number
  /** The top there over the rim plane. */
  readonly topAtSaddleMm: number
  /** What the board rises from: the rim's edge at the neck, or a flat of the upper bout that is planed to the board. */
  readonly seat: Seat
  readonly boardMm: number
  readonly crownMm: number
  readonly bridgeMm: number
  readonly saddleShowingMm: number
  /** Mean of bass and treble. */
  readonly actionMm: number
  readonly nutHeightMm: number
  readonly riseMm: number
}
export type Seat =
  | { readonly kind: 'edge'; readonly edgeMm: number }
  /** The flat passes through the rim at `startMm` over the rim plane, `fromJointMm` before the joint. */
  | { readonly kind: 'flat'; readonly startMm: number; readonly fromJointMm: number }

/** A neck that would have to lean more than this is no neck: it is held there, and a finding says so. tan of about 8.5 degrees. */
export const STEEPEST_SLOPE = 0.15
/** A flat has to begin at least this far before the saddle, or it says nothing about the neck. */
export const LEAST_LEVER_MM = 40

export interface NeckLine {
  /** Fall of the neck's face toward the nut: tan of the neck angle. */
  readonly slope: number
  /** The rim's edge at the neck. */
  readonly edgeMm: number
  /** The plane of the frets over the top at the saddle. */
  readonly fretPlaneOverTopMm: number
}

/**
 * The line of the neck that gives the action asked for.
 *
 *   H = bridge + saddle showing - a,  a = 2 A - n      A action at fret 12, n string over the fret plane at the nut
 *   built before stringing the plane of the frets stands the rise u higher over the top: H + u
 *
 * Lengths are laid off along the neck, board and crown (b together) square to it; D joint to saddle, d from the joint to where a flat begins:
 *
 *   edge:  D sin(angle) + b cos(angle) = z_saddle + H + u - z_n
 *   flat:  z_n = z_f - d tan(angle) as well, so the board's underside runs straight on from where the flat begins
 *
 * For a small angle that is tan(angle) = (z_saddle + H + u - z_n - b) / D, or / (D - d) with z_f on a flat, from which a fixed number of Newton's
 * steps starts. Derived; checked by turning a rigid neck about the joint.
 */
export function setNeck(site: NeckSetSite, riseMm: number): NeckLine {
  const saddleMm = 2 * site.actionMm - site.nutHeightMm
  const fretPlaneOverTopMm = site.bridgeMm + site.saddleShowingMm - saddleMm + riseMm
  const { seat, toSaddleMm } = site
  const [fromMm, flatMm] = seat.kind === 'edge' ? [seat.edgeMm, 0] : [seat.startMm, seat.fromJointMm]
  const thickMm = site.boardMm + site.crownMm
  const overSeatMm = site.topAtSaddleMm + fretPlaneOverTopMm - fromMm
  let angle = Math.atan(clamp((overSeatMm - thickMm) / Math.max(toSaddleMm - flatMm, LEAST_LEVER_MM)))
  if (toSaddleMm - flatMm >= LEAST_LEVER_MM)
    for (let step = 0; step < NEWTON_STEPS; step++) {
      const [sin, cos] = [Math.sin(angle), Math.cos(angle)]
      const missMm = toSaddleMm * sin + thickMm * cos - (flatMm * sin) / cos - overSeatMm
      const gainMm = toSaddleMm * cos - thickMm * sin - flatMm / (cos * cos)
      angle = Math.atan(clamp(Math.tan(angle - missMm / Math.max(gainMm, LEAST_LEVER_MM / 2))))
    }
  const slope = clamp(Math.tan(angle))
  return { slope, edgeMm: fromMm - flatMm * slope, fretPlaneOverTopMm }
}

const NEWTON_STEPS = 6
const clamp = (slope: number): number => Math.min(Math.max(slope, -STEEPEST_SLOPE), STEEPEST_SLOPE)

export interface NeckSetMeasures {
  readonly shape: Fretboard
  /** Depth of the heel that is fitted to the box: side and both plates at the neck; none where the sides are let into the heel. */
  readonly heelDepthMm: number | 'none'
  /** Height of the top on the centreline, and its rise there per mm toward the neck. */
  readonly topAtMm: (xMm: number) => number
  readonly topSlopeAtNeck: number
  /** The edge of the soundhole toward the neck: nearer the tail there is no top under the board. */
  readonly holeEdgeMm: number
}

/** Everything said about the set of a neck; `built` and `strung` are its lines without and with the rise. */
export function measureNeckSet(
  site: NeckSetSite,
  { built, strung }: { readonly built: NeckLine; readonly strung: NeckLine },
  { shape, heelDepthMm, topAtMm, topSlopeAtNeck, holeEdgeMm }: NeckSetMeasures,
): NeckSetNumbers {
  const { jointMm, nutMm, endMm } = shape
  // Where a flat begins at the very place, the flat counts: a hair toward the neck.
  const gapAtMm = (xMm: number) =>
    built.edgeMm + (jointMm - xMm) * built.slope - topAtMm(Math.min(xMm + HAIR_MM, jointMm))
  const lastMm = Math.min(Math.max(endMm, holeEdgeMm), jointMm)
  const frets = Array.from({ length: shape.lastFret }, (_, i) => shape.fretLine(i + 1).xMm)
  const places = [jointMm, ...frets.filter((x) => x < jointMm - 1e-6 && x > lastMm + 1e-6), lastMm]
  const gaps = places.map((xMm) => ({ fromJointMm: jointMm - xMm, gapMm: gapAtMm(xMm) }))
  const saddleMm = 2 * site.actionMm - site.nutHeightMm
  // What the string does over fret 12 when its saddle end rises: half of it.
  const half = CHANGE_MM / 2
  const angleAfter = (change: Partial<NeckSetSite>) =>
    Math.atan(setNeck({ ...site, ...change }, change.riseMm ?? site.riseMm).slope)
  const angleRad = Math.atan(built.slope)
  const changeRow = (what: ChangeRow['what'], actionMm: number, change: Partial<NeckSetSite>): ChangeRow => {
    const turnRad = angleAfter(change) - angleRad
    return {
      what,
      actionMm,
      angleRad: turnRad,
      wedgeMm: heelDepthMm === 'none' ? 'none' : heelDepthMm * Math.tan(turnRad),
    }
  }
  return {
    angleRad,
    angleStrungRad: Math.atan(strung.slope),
    angleToTopRad: angleRad + Math.atan(topSlopeAtNeck),
    fretPlaneOverTopMm: built.fretPlaneOverTopMm,
    fretPlaneOverTopStrungMm: strung.fretPlaneOverTopMm,
    fretPlaneOverBridgeMm: site.saddleShowingMm - saddleMm + site.riseMm,
    fretPlaneOverBridgeStrungMm: site.saddleShowingMm - saddleMm,
    faceAtNutMm: built.edgeMm - (nutMm - jointMm) * built.slope,
    stringsOverTopMm: site.bridgeMm + site.saddleShowingMm,
    wedgePerMm: heelDepthMm === 'none' ? 'none' : heelDepthMm / site.toSaddleMm,
    gapAtEndMm: gaps.at(-1)!.gapMm,
    widestGapMm: Math.max(...gaps.map(({ gapMm }) => gapMm)),
    gaps,
    changes: [
      changeRow('saddle', half, { saddleShowingMm: site.saddleShowingMm + CHANGE_MM }),
      changeRow('bridge', half, { bridgeMm: site.bridgeMm + CHANGE_MM }),
      changeRow('board', -half, { boardMm: site.boardMm + CHANGE_MM }),
      changeRow('rise', half, { riseMm: site.riseMm + CHANGE_MM }),
    ],
  }
}
