import type { Figure } from '../figure.ts'

/** The wedge let into the joint of the sides at the tail; all 'none' where there is none. Lengths in mm. */
export interface EndWedgeNumbers {
  /** From the outer face of the top to that of the back, and what shows of it between the bindings. */
  readonly fullMm: Figure
  readonly betweenMm: Figure
  /** Each long edge to the middle: positive where the wedge is wider at the top. */
  readonly taperRad: Figure
  /** Whole widths where it meets the bindings. */
  readonly topMm: Figure
  readonly backMm: Figure
  /** Widths of its wood at the two ends of the full length, without the purflings. */
  readonly woodTopMm: Figure
  readonly woodBackMm: Figure
  /** Its channel into the side, and the width of the purfling along each long edge. */
  readonly intoSideMm: Figure
  readonly edgeMm: Figure
  /** Along each long edge, from binding to binding, and with trim. */
  readonly purflingMm: Figure
  readonly purflingCutMm: Figure
  /** Where the purfling of a long edge meets one that runs along the binding: half the angle between them. */
  readonly mitreTopRad: Figure
  readonly mitreBackRad: Figure
  /** How far it goes into the tail block, negative where it leaves some of the side; and what is left of the block behind it and on each side of it. */
  readonly intoBlockMm: Figure
  readonly blockLeftMm: Figure
  readonly besideMm: Figure
}

export interface EndWedgeSite {
  readonly topMm: number
  readonly backMm: number
  readonly depthMm: number
  readonly purflingMm: number
  readonly trimMm: number
  /** Outer face of the top to that of the back. */
  readonly bodyDepthMm: number
  /** Of the ledges that cut it off; 0 without a binding. */
  readonly bindingHeightMm: number
  readonly sideThicknessMm: number
  readonly block: { readonly widthMm: number; readonly thicknessMm: number }
}

const NO_WEDGE: EndWedgeNumbers = {
  fullMm: 'none',
  betweenMm: 'none',
  taperRad: 'none',
  topMm: 'none',
  backMm: 'none',
  woodTopMm: 'none',
  woodBackMm: 'none',
  intoSideMm: 'none',
  edgeMm: 'none',
  purflingMm: 'none',
  purflingCutMm: 'none',
  mitreTopRad: 'none',
  mitreBackRad: 'none',
  intoBlockMm: 'none',
  blockLeftMm: 'none',
  besideMm: 'none',
}

/**
 * A wedge symmetric about the centreline; its widths are entered at the outer faces of the plates, purflings in them. The binding runs square
 * to the centreline there, so its line and the wedge's edge stand at 90 degrees + taper at the top, - taper at the back; a mitre halves that.
 * A wedge with no width at either end is none; bindings that meet leave nothing between. Source: derived.
 */
export function measureEndWedge(site: EndWedgeSite): EndWedgeNumbers {
  const { topMm, backMm, bodyDepthMm: fullMm, purflingMm: widthMm, depthMm } = site
  const widestMm = Math.max(topMm, backMm)
  if (widestMm <= 0) return NO_WEDGE
  const ledgeMm = Math.min(site.bindingHeightMm, Math.max(fullMm, 0) / 2)
  const betweenMm = fullMm - 2 * ledgeMm
  const perMm = fullMm > 0 ? (topMm - backMm) / fullMm : 0
  const taperRad = Math.atan(perMm / 2)
  const acrossMm = widthMm / Math.cos(taperRad)
  const woodMm = (wholeMm: number) => Math.max(wholeMm - 2 * acrossMm, 0)
  const edgeMm = betweenMm / Math.cos(taperRad)
  const ofPurfling = (value: number): Figure => (widthMm > 0 ? value : 'none')
  const intoBlockMm = depthMm - site.sideThicknessMm
  return {
    fullMm,
    betweenMm,
    taperRad,
    topMm: topMm - perMm * ledgeMm,
    backMm: backMm + perMm * ledgeMm,
    woodTopMm: woodMm(topMm),
    woodBackMm: woodMm(backMm),
    intoSideMm: depthMm,
    edgeMm: ofPurfling(widthMm),
    purflingMm: ofPurfling(edgeMm),
    purflingCutMm: ofPurfling(edgeMm + 2 * site.trimMm),
    mitreTopRad: ofPurfling((Math.PI / 2 + taperRad) / 2),
    mitreBackRad: ofPurfling((Math.PI / 2 - taperRad) / 2),
    intoBlockMm,
    blockLeftMm: site.block.thicknessMm - Math.max(intoBlockMm, 0),
    besideMm: (site.block.widthMm - widestMm) / 2,
  }
}
