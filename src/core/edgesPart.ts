import { measureBackStrip } from './instrument/backStrip.ts'
import { type EdgeCuts, edgeRow, isBound } from './instrument/edgeCut.ts'
import { edgeStripRows, sumOf, tightestBindingBend } from './instrument/edgeStrips.ts'
import { measureEndWedge } from './instrument/endWedge.ts'
import type { Figure } from './figure.ts'
import type { Surface } from './geometry/surface.ts'
import { runsOf } from './insideRim.ts'
import type { Outline } from './instrument/outline.ts'
import type { PlaceRow } from './instrument/rim.ts'
import type { Numbers } from './numbers.ts'
import type { Plan } from './plan.ts'

/** What is the same all round. 'none' where there is no such strip. */
export interface EdgeNumbers {
  /** Down the side from the plate's outer corner, plate and all. */
  readonly ledgeMm: Figure
  /** From the side's outer face in: the binding's thickness. */
  readonly ledgeInMm: Figure
  /** Of the side's thickness behind the binding; negative where it goes on into the lining. */
  readonly sideLeftMm: Figure
  /** Channels for the purflings: how wide beside the binding's ledge, and how deep under the plate's outer face. */
  readonly topPurflingMm: Figure
  readonly backPurflingMm: Figure
  readonly purflingDownMm: Figure
  /** Of the plates under the purfling. */
  readonly topLeftMm: Figure
  readonly backLeftMm: Figure
  /** All pieces, trim in them. */
  readonly bindingToBuyMm: Figure
  readonly purflingToBuyMm: Figure
  /** The binding's tightest bend on the face inside of it, and how far round from the tail, on either half. */
  readonly tightestRadiusMm: Figure
  readonly tightestAtMm: Figure
}

const someMm = (mm: number): Figure => (mm > 0 ? mm : 'none')

export const cutsOf = ({ binding, edges, plates }: Plan): EdgeCuts => ({
  bindingHeightMm: binding.heightMm,
  bindingThicknessMm: binding.thicknessMm,
  purflingDepthMm: edges.purflingDepthMm,
  top: { purflingMm: binding.topPurflingMm, plateMm: plates.topMm },
  back: { purflingMm: binding.backPurflingMm, plateMm: plates.backMm },
})

/** What the edges need of the closed box. */
export interface EdgesBox {
  readonly outline: Outline
  readonly places: readonly PlaceRow[]
  readonly treblePlaces: readonly PlaceRow[]
  readonly back: Surface
  readonly lengthMm: number
  readonly bodyDepthAtTailMm: number
  readonly bassRunsOnMm: number
}

/** Bindings and purflings, the wedge at the tail and the strip on the back. */
export function measureEdges(
  plan: Plan,
  box: EdgesBox,
): Pick<Numbers, 'edges' | 'edgePlaces' | 'trebleEdgePlaces' | 'edgeStrips' | 'endWedge' | 'backStrip'> {
  const { binding, edges, plates } = plan
  const { sideThicknessMm } = plan.rim
  const cuts = cutsOf(plan)
  const bound = isBound(cuts)
  const { bass, treble } = runsOf(box.outline)
  const edgeStrips = edgeStripRows({
    bass,
    treble,
    bassRunsOnMm: box.bassRunsOnMm,
    bindingThicknessMm: binding.thicknessMm,
    purflingMm: { top: binding.topPurflingMm, back: binding.backPurflingMm },
    trimMm: edges.trimMm,
  })
  const tightest = tightestBindingBend(box.outline.isMirrored ? [bass] : [bass, treble], binding.thicknessMm)
  return {
    edges: {
      ledgeMm: bound ? binding.heightMm : 'none',
      ledgeInMm: bound ? binding.thicknessMm : 'none',
      sideLeftMm: bound ? sideThicknessMm - binding.thicknessMm : 'none',
      topPurflingMm: someMm(binding.topPurflingMm),
      backPurflingMm: someMm(binding.backPurflingMm),
      purflingDownMm: binding.topPurflingMm > 0 || binding.backPurflingMm > 0 ? edges.purflingDepthMm : 'none',
      topLeftMm: binding.topPurflingMm > 0 ? plates.topMm - edges.purflingDepthMm : 'none',
      backLeftMm: binding.backPurflingMm > 0 ? plates.backMm - edges.purflingDepthMm : 'none',
      bindingToBuyMm: sumOf(edgeStrips.map((row) => row.bindingCutMm)),
      purflingToBuyMm: sumOf(edgeStrips.map((row) => row.purflingCutMm)),
      tightestRadiusMm: tightest?.radiusMm ?? (bound ? 'flat' : 'none'),
      tightestAtMm: tightest?.atMm ?? 'none',
    },
    edgePlaces: box.places.map((row) => edgeRow(row, cuts)),
    trebleEdgePlaces: box.treblePlaces.map((row) => edgeRow(row, cuts)),
    edgeStrips,
    endWedge: measureEndWedge({
      topMm: edges.wedgeTopMm,
      backMm: edges.wedgeBackMm,
      depthMm: edges.wedgeDepthMm,
      purflingMm: edges.wedgePurflingMm,
      trimMm: edges.trimMm,
      bodyDepthMm: box.bodyDepthAtTailMm,
      bindingHeightMm: bound ? binding.heightMm : 0,
      sideThicknessMm,
      block: plan.blocks.tail,
    }),
    backStrip: measureBackStrip({
      back: box.back,
      lengthMm: box.lengthMm,
      plateMm: plates.backMm,
      bindingThicknessMm: binding.thicknessMm,
      widthMm: edges.backStripMm,
      depthMm: edges.backStripDepthMm,
      trimMm: edges.trimMm,
    }),
  }
}
