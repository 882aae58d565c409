import type { Figure } from '../figure.ts'
import type { PlaceRow, RimPlace } from './rim.ts'

/**
 * The cuts for binding and purfling at one place of the rim, heights square to the rim plane. Two guides are told apart: one held square to
 * the side and set from the plate's outer corner, and one that lies on the dome. 'none' where the edge has no such strip.
 */
export interface EdgeRow {
  readonly place: RimPlace
  readonly alongOuterMm: number
  /** Slope of the plate across its edge, positive where it stands prouder inside. */
  readonly topBevelRad: number
  readonly backBevelRad: number
  /** How much higher a guide's foot stands for every 10 mm inside the outer corner: so much too shallow does it cut. */
  readonly topFootMm: number
  readonly backFootMm: number
  /** How much higher than square the floor of a guide on the dome comes out at the wall of the cut: positive, too shallow; negative, too deep. */
  readonly topBindingOffMm: Figure
  readonly backBindingOffMm: Figure
  readonly topPurflingOffMm: Figure
  readonly backPurflingOffMm: Figure
  /** Binding by a guide on the dome: set to this, the inner corner of the ledge reaches the binding's height. */
  readonly topBindingSetMm: Figure
  readonly backBindingSetMm: Figure
  /** Purfling by a guide square to the side: so far under the outer corner lies a floor as deep as entered under the plate at its wall. */
  readonly topPurflingSetMm: Figure
  readonly backPurflingSetMm: Figure
  /** Left on the side between the bindings of top and back. */
  readonly betweenMm: Figure
}

/** Binding and purfling of one instrument. Lengths in mm, 0 for none; the plates as they stand on the rim. */
export interface EdgeCuts {
  readonly bindingHeightMm: number
  readonly bindingThicknessMm: number
  readonly purflingDepthMm: number
  readonly top: { readonly purflingMm: number; readonly plateMm: number }
  readonly back: { readonly purflingMm: number; readonly plateMm: number }
}

const FOOT_MM = 10

/**
 * The base of a guide on the dome touches it at the outer corner and leans by the bevel. Where it cuts as deep as a square one at the outer
 * face, its floor has climbed by u tan(bevel) at the inset u: the binding's thickness for its ledge, that and the purfling's width for the
 * channel. The same is what the plate itself climbs there, so a channel of one depth under the plate lies so much less under the corner.
 * Bevels under a right angle; all is finite. Source: derived.
 */
export function edgeRow(at: PlaceRow, cuts: EdgeCuts): EdgeRow {
  const top = cutsAt(at.topBevelRad, cuts, cuts.top.purflingMm)
  const back = cutsAt(at.backBevelRad, cuts, cuts.back.purflingMm)
  return {
    place: at.place,
    alongOuterMm: at.alongOuterMm,
    topBevelRad: at.topBevelRad,
    backBevelRad: at.backBevelRad,
    topFootMm: top.footMm,
    backFootMm: back.footMm,
    topBindingOffMm: top.bindingOffMm,
    backBindingOffMm: back.bindingOffMm,
    topPurflingOffMm: top.purflingOffMm,
    backPurflingOffMm: back.purflingOffMm,
    topBindingSetMm: top.bindingSetMm,
    backBindingSetMm: back.bindingSetMm,
    topPurflingSetMm: top.purflingSetMm,
    backPurflingSetMm: back.purflingSetMm,
    betweenMm: isBound(cuts) ? betweenBindingsMm(at.depthMm, cuts) : 'none',
  }
}

export const isBound = ({ bindingThicknessMm }: Pick<EdgeCuts, 'bindingThicknessMm'>): boolean => bindingThicknessMm > 0

/** Rim depth and both plates, less both ledges; negative where they run into each other. */
export const betweenBindingsMm = (rimDepthMm: number, { top, back, bindingHeightMm }: EdgeCuts): number =>
  rimDepthMm + top.plateMm + back.plateMm - 2 * bindingHeightMm

function cutsAt(bevelRad: number, cuts: EdgeCuts, purflingMm: number) {
  const climb = Math.tan(bevelRad)
  const bindingOffMm = cuts.bindingThicknessMm * climb
  const purflingOffMm = (cuts.bindingThicknessMm + purflingMm) * climb
  const ofBinding = (mm: number): Figure => (isBound(cuts) ? mm : 'none')
  const ofPurfling = (mm: number): Figure => (purflingMm > 0 ? mm : 'none')
  return {
    footMm: FOOT_MM * climb,
    bindingOffMm: ofBinding(bindingOffMm),
    purflingOffMm: ofPurfling(purflingOffMm),
    bindingSetMm: ofBinding(cuts.bindingHeightMm + bindingOffMm),
    purflingSetMm: ofPurfling(cuts.purflingDepthMm - purflingOffMm),
  }
}
