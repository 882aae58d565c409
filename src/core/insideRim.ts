import { coveredByBlock, ledgeLeftMm, liningLengths, type SideRun } from './instrument/lining.ts'
import type { Outline } from './instrument/outline.ts'
import type { RimSite } from './instrument/rim.ts'
import { placeSideBraces, type SideBraceRow, sideBraceRow } from './instrument/sideBraces.ts'
import type { Plan } from './plan.ts'

export interface LiningNumbers {
  readonly top: EdgeLining
  readonly back: EdgeLining
  /** Both edges of both sides, with waste. */
  readonly toBuyMm: number
}
export interface EdgeLining {
  /** Left to glue the plate to, once binding and purfling are let in. */
  readonly ledgeMm: number
  /** Both sides, along the inner face, without what the blocks cover. */
  readonly lengthMm: number
}

/** The halves as far as their wood goes. */
export const runsOf = ({
  bass,
  treble,
  trebleWoodEndMm,
}: Outline): { readonly bass: SideRun; readonly treble: SideRun } => ({
  bass: { curve: bass, woodEndMm: bass.lengthMm },
  treble: { curve: treble, woodEndMm: trebleWoodEndMm },
})

export function measureLinings(plan: Plan, outline: Outline): LiningNumbers {
  const { sideThicknessMm } = plan.rim
  const { edgeMm, edgeWithWasteMm } = liningLengths({
    ...runsOf(outline),
    sideThicknessMm,
    tail: plan.blocks.tail,
    neck: plan.blocks.neck,
    wastePercent: plan.linings.wastePercent,
  })
  const edge = (plate: 'top' | 'back'): EdgeLining => ({
    ledgeMm: ledgeLeftMm({
      sideThicknessMm,
      liningWidthMm: plan.linings[plate].widthMm,
      bindingThicknessMm: plan.binding.thicknessMm,
      purflingMm: plate === 'top' ? plan.binding.topPurflingMm : plan.binding.backPurflingMm,
    }),
    lengthMm: edgeMm,
  })
  return { top: edge('top'), back: edge('back'), toBuyMm: 2 * edgeWithWasteMm }
}

/** The braces of one half, on the pieces of wood that hold them. */
export function measureSideBraces(
  plan: Plan,
  outline: Outline,
  half: 'bass' | 'treble',
  sites: readonly RimSite[],
): SideBraceRow[] {
  const run = runsOf(outline)[half]
  const { sideThicknessMm } = plan.rim
  const tailMm = coveredByBlock(run, 'tail', plan.blocks.tail, sideThicknessMm).outerMm
  const neckMm = coveredByBlock(run, 'neck', plan.blocks.neck, sideThicknessMm).outerMm
  const places = placeSideBraces(plan.sideBraces, run.woodEndMm, tailMm, run.woodEndMm - neckMm)
  return places.map((s, i) => {
    const site = sites.find(({ startMm, half: wood }) => s <= startMm + wood.lengthMm + 1e-9) ?? sites.at(-1)!
    const row = sideBraceRow({
      curve: site.half,
      sMm: s - site.startMm,
      previousMm: i === 0 ? null : places[i - 1]! - site.startMm,
      sideThicknessMm,
      widthMm: plan.sideBraces.widthMm,
      ends: plan.sideBraces.ends,
      topLiningHeightMm: plan.linings.top.heightMm,
      backLiningHeightMm: plan.linings.back.heightMm,
      top: site.top,
      back: site.back,
    })
    return { ...row, alongOuterMm: s }
  })
}
