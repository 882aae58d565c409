import { type Curve, curveAt, insetPoint, turningToRad } from '../geometry/curve.ts'
import { findRoot } from '../geometry/root.ts'
import type { Surface } from '../geometry/surface.ts'
import type { BlockPlan } from '../plan.ts'
import { sidePieces, upToMm } from './cutaway.ts'

/** How far a lining's inner corner stands prouder than the side's arrises, at one place: what is left to plane. */
export interface LiningProud {
  readonly topOverOuterMm: number
  readonly topOverInnerMm: number
  readonly backOverOuterMm: number
  readonly backOverInnerMm: number
}

/**
 * How much further the surface stands away from the body at one inset from the outline than at another, along the inward normal at
 * arc length s, mm; negative where it falls. `outward` is the way the surface looks: up for the top, down for the back. Source: derived.
 */
export function proudMm(
  surface: Surface,
  outward: 'up' | 'down',
  curve: Curve,
  sMm: number,
  fromInsetMm: number,
  toInsetMm: number,
): number {
  const from = insetPoint(curve, sMm, fromInsetMm)
  const to = insetPoint(curve, sMm, toInsetMm)
  return (outward === 'up' ? 1 : -1) * (surface.heightMm(to.x, to.y) - surface.heightMm(from.x, from.y))
}

/** What the two linings stand proud at arc length s: over the outer arris h(t + w) - h(0), over the bevelled side's inner one h(t + w) - h(t). */
export function liningProud(
  site: {
    readonly curve: Curve
    readonly top: Surface
    readonly back: Surface
    readonly sideThicknessMm: number
    readonly topWidthMm: number
    readonly backWidthMm: number
  },
  sMm: number,
): LiningProud {
  const { curve, top, back, sideThicknessMm: t } = site
  return {
    topOverOuterMm: proudMm(top, 'up', curve, sMm, 0, t + site.topWidthMm),
    topOverInnerMm: proudMm(top, 'up', curve, sMm, t, t + site.topWidthMm),
    backOverOuterMm: proudMm(back, 'down', curve, sMm, 0, t + site.backWidthMm),
    backOverInnerMm: proudMm(back, 'down', curve, sMm, t, t + site.backWidthMm),
  }
}

/** What is left of the edge to glue the plate to, once binding and purfling are let in; negative where they cut through. */
export const ledgeLeftMm = (measures: {
  readonly sideThicknessMm: number
  readonly liningWidthMm: number
  readonly bindingThicknessMm: number
  readonly purflingMm: number
}): number => measures.sideThicknessMm + measures.liningWidthMm - measures.bindingThicknessMm - measures.purflingMm

/** One half of the outline and how far its wood goes. */
export interface SideRun {
  readonly curve: Curve
  readonly woodEndMm: number
}

export interface LiningLengths {
  /** Glued along the inner face of each half, from block to block. */
  readonly bassMm: number
  readonly trebleMm: number
  /** Both halves: one edge of the rim, top or back, which are alike. */
  readonly edgeMm: number
  readonly edgeWithWasteMm: number
}

/** Lengths of lining along the inner face of the side, between the blocks, for one edge of the rim. Source: derived. */
export function liningLengths(site: {
  readonly bass: SideRun
  readonly treble: SideRun
  readonly sideThicknessMm: number
  readonly tail: BlockPlan
  readonly neck: BlockPlan
  readonly wastePercent: number
}): LiningLengths {
  const run = (half: SideRun) =>
    Math.max(
      innerLengthMm(half, site.sideThicknessMm) -
        coveredByBlock(half, 'tail', site.tail, site.sideThicknessMm).innerMm -
        coveredByBlock(half, 'neck', site.neck, site.sideThicknessMm).innerMm,
      0,
    )
  const bassMm = run(site.bass)
  const isMirrored = site.treble.curve === site.bass.curve && site.treble.woodEndMm === site.bass.woodEndMm
  const trebleMm = isMirrored ? bassMm : run(site.treble)
  const edgeMm = bassMm + trebleMm
  return { bassMm, trebleMm, edgeMm, edgeWithWasteMm: edgeMm * (1 + Math.max(site.wastePercent, 0) / 100) }
}

/**
 * The way along a line so far inside the outer face of one half, for each stretch between sharp corners: s - t x turning, less
 * t tan(turn / 2) on both sides of such a corner, where the lines meet in a mitre (more, where the corner looks inward).
 */
export function insidePiecesMm(half: SideRun, insetMm: number): number[] {
  const wood = upToMm(half.curve, half.woodEndMm)
  const pieces = sidePieces(wood, wood.lengthMm)
  const mitreMm = (sMm: number) =>
    wood.corners.reduce((sum, corner) => sum + (corner.sMm === sMm ? tanHalf(corner.turnRad) : 0), 0) * insetMm
  return pieces.map(({ fromMm, toMm }, i) => {
    const cutMm = (i > 0 ? mitreMm(fromMm) : 0) + (i + 1 < pieces.length ? mitreMm(toMm) : 0)
    return Math.max(innerBetweenMm(wood, fromMm, toMm, insetMm) - cutMm, 0)
  })
}

/** The whole way along the inner face of one half. */
export const innerLengthMm = (half: SideRun, sideThicknessMm: number): number =>
  insidePiecesMm(half, sideThicknessMm).reduce((sum, pieceMm) => sum + pieceMm, 0)

/** A mitre is followed to corners of 150 degrees. */
const tanHalf = (turnRad: number): number => Math.tan(Math.min(Math.max(turnRad / 2, -MITRE_RAD), MITRE_RAD))
const MITRE_RAD = (75 * Math.PI) / 180

/** Along the inner face between two places with no sharp corner between them; a corner right at `toMm` does not count. */
function innerBetweenMm(wood: Curve, fromMm: number, toMm: number, sideThicknessMm: number): number {
  const atEndRad = wood.corners.reduce((sum, { sMm, turnRad }) => sum + (sMm === toMm ? turnRad : 0), 0)
  const turningRad = turningToRad(wood, toMm) - atEndRad - turningToRad(wood, fromMm)
  return Math.max(toMm - fromMm - sideThicknessMm * turningRad, 0)
}

const WALK_STEPS = 400

/**
 * How much of one half a block covers, from that end on: while the inner face lies within the block's width and thickness. Beside a
 * cutaway the side meets the block's cheek, and is covered over the block's thickness. Along the outer and along the inner face.
 */
export function coveredByBlock(
  half: SideRun,
  end: 'tail' | 'neck',
  block: BlockPlan,
  sideThicknessMm: number,
): { readonly outerMm: number; readonly innerMm: number } {
  const wood = upToMm(half.curve, half.woodEndMm)
  const pieces = sidePieces(wood, wood.lengthMm)
  const piece = end === 'tail' ? pieces[0]! : pieces.at(-1)!
  const lengthMm = piece.toMm - piece.fromMm
  const faceMm = end === 'tail' ? sideThicknessMm : curveAt(half.curve, half.curve.lengthMm).point.x - sideThicknessMm
  const away = end === 'tail' ? 1 : -1
  const placeMm = (u: number) => (end === 'tail' ? u : wood.lengthMm - u)
  const outsideMm = (u: number) => {
    const { x, y } = insetPoint(wood, placeMm(u), sideThicknessMm)
    return Math.max(y - block.widthMm / 2, away * (x - faceMm) - block.thicknessMm)
  }
  let outerMm = lengthMm
  for (let i = 1; i <= WALK_STEPS; i++) {
    const [before, here] = [(lengthMm * (i - 1)) / WALK_STEPS, (lengthMm * i) / WALK_STEPS]
    if (outsideMm(here) <= 0) continue
    outerMm = outsideMm(before) > 0 ? before : findRoot(outsideMm, before, here, 1e-11)
    break
  }
  const [a, b] = end === 'tail' ? [0, outerMm] : [wood.lengthMm - outerMm, wood.lengthMm]
  return { outerMm, innerMm: innerBetweenMm(wood, a, b, sideThicknessMm) }
}
