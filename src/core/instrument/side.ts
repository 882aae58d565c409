import type { Figure } from '../figure.ts'
import type { RimPlan } from '../plan.ts'
import type { RimRow } from './rim.ts'

export interface SideNumbers {
  readonly thicknessMm: number
  /** Rim depths as dished, before the upper bout is planed; without plates. */
  readonly depthAtTailMm: number
  readonly depthAtNeckMm: number
  /** Rim depth at the neck once the top edge is planed. */
  readonly depthAtNeckPlanedMm: number
  /** With both plates on: what a client calls the depth of the body. */
  readonly bodyDepthAtTailMm: number
  readonly bodyDepthAtNeckMm: number
  readonly deepestSideMm: number
  readonly deepestSideAtMm: number
  /** Between the domes on the centreline, where they stand furthest apart. */
  readonly deepestInsideMm: number
  readonly deepestInsideAtMm: number
  /** One side laid flat, tail centre to neck centre, at mid-thickness. */
  readonly flatLengthMm: number
  readonly blankLengthMm: number
  readonly blankWidthMm: number
  /** Height of the blank's straight edge over the rim plane. */
  readonly referenceMm: number
  /** The station every bender looks up: along the blank from its trimmed tail end, and along the outer face. */
  readonly waistMarkOnBlankMm: Figure
  readonly waistMarkOnRimMm: Figure
  readonly stationStepMm: number
}

/** One blank to cut: bass side, then the treble side, in two pieces where its horn is pointed. */
export interface BlankRow {
  /** Along the outer face, from where this piece begins to where it ends. */
  readonly outerLengthMm: number
  /** The same laid flat, at mid-thickness; on the bass side of a cutaway with what runs on over the neck block to the cut. */
  readonly flatLengthMm: number
  readonly blankLengthMm: number
  readonly blankWidthMm: number
}

/** The blank of one piece of side. */
export function measureBlank(rows: readonly RimRow[], trimEachEndMm: number, runsOnMm: number): BlankRow {
  const [first, last] = [rows[0]!, rows.at(-1)!]
  const flatLengthMm = last.alongBlankMm + runsOnMm
  return {
    outerLengthMm: last.alongOuterMm - first.alongOuterMm,
    flatLengthMm,
    blankLengthMm: flatLengthMm + 2 * trimEachEndMm,
    blankWidthMm: Math.max(...rows.map((row) => row.cutWidthMm)),
  }
}

/** What the side's own numbers are taken from. */
export interface SideSite {
  readonly rim: readonly RimRow[]
  readonly waist: RimRow | null
  readonly rimPlan: RimPlan
  readonly plates: { readonly topMm: number; readonly backMm: number }
  readonly stepMm: number
  readonly referenceMm: number
  readonly inside: { readonly depthMm: number; readonly atMm: number }
}

/** One side bent and laid flat. The blank to buy takes the widest CUT width, which can lie elsewhere than the deepest side. */
export function measureSide(site: SideSite): SideNumbers {
  const { rim, rimPlan, plates } = site
  const neck = rim.at(-1)!
  const deepest = rim.reduce((a, b) => (b.depthMm > a.depthMm ? b : a))
  const flatLengthMm = neck.alongBlankMm
  return {
    thicknessMm: rimPlan.sideThicknessMm,
    depthAtTailMm: rimPlan.depthAtTailMm,
    depthAtNeckMm: rimPlan.depthAtNeckMm,
    depthAtNeckPlanedMm: neck.depthMm,
    bodyDepthAtTailMm: rim[0]!.depthMm + plates.topMm + plates.backMm,
    bodyDepthAtNeckMm: neck.depthMm + plates.topMm + plates.backMm,
    deepestSideMm: deepest.depthMm,
    deepestSideAtMm: deepest.alongOuterMm,
    deepestInsideMm: site.inside.depthMm,
    deepestInsideAtMm: site.inside.atMm,
    flatLengthMm,
    blankLengthMm: flatLengthMm + 2 * rimPlan.trimEachEndMm,
    blankWidthMm: Math.max(...rim.map((row) => row.cutWidthMm)),
    referenceMm: site.referenceMm,
    waistMarkOnBlankMm: site.waist?.alongBlankMm ?? 'none',
    waistMarkOnRimMm: site.waist?.alongOuterMm ?? 'none',
    stationStepMm: site.stepMm,
  }
}
