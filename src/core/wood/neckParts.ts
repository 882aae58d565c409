import type { Plan } from '../plan.ts'
import { type CuttingAllowances, withAllowances } from './cutting.ts'
import { type CutPart, cutPart, type Size } from './part.ts'
import type { WoodNumbers } from './woodNumbers.ts'

/** Wood of the head outside the posts' middles; how long a heel is along the neck, before the joint; how thick a nut. Mm, common practice. */
const BESIDE_POSTS_MM = 13
const HEEL_ALONG_MM = 60
const NUT_MM = 6

/**
 * Neck, board and head, mm.
 *
 *   shaft: the stock length, and for a scarf what its cut takes, kerf / sin(head angle); as wide as the heel, the board at its end or the
 *   head with its posts asks, whichever is widest; as thick as its stock
 *   heel: the heel's stock less the shaft, in equal layers no thicker than the shaft's stock
 *
 * Derived, but for the three lengths above, which no number has.
 */
export function neckParts(plan: Plan, numbers: WoodNumbers, cutting: CuttingAllowances): readonly CutPart[] {
  const { neck, board, head } = numbers
  const postsMm = Math.max(0, ...numbers.tuners.map(({ acrossMm }) => Math.abs(acrossMm)))
  const headWidthMm = Math.max(2 * (postsMm + BESIDE_POSTS_MM), board.nutWidthMm)
  const kerfMm =
    neck.scarfMm === 'none' ? 0 : (Math.max(cutting.sawKerfMm, 0) * neck.scarfMm) / Math.max(neck.stockMm, 1)
  const shaft: Size = {
    lengthMm: neck.stockLengthMm,
    widthMm: Math.max(neck.heelWidthMm, neck.heelCapMm, headWidthMm),
    thicknessMm: neck.stockMm,
  }
  const roughShaft = withAllowances(shaft, cutting)
  const veneer = (thicknessMm: number): Size => ({ lengthMm: head.lengthMm, widthMm: headWidthMm, thicknessMm })
  const [face, back] = [veneer(plan.head.faceVeneerMm), veneer(plan.head.backVeneerMm)]
  return [
    cutPart({ key: 'neckShaft', finished: shaft, rough: { ...roughShaft, lengthMm: roughShaft.lengthMm + kerfMm } }),
    ...heelLayers(plan, numbers, cutting),
    ...boardParts(plan, numbers, cutting),
    cutPart({ key: 'headFace', finished: face, rough: withAllowances(face, cutting) }),
    cutPart({ key: 'headBack', finished: back, rough: withAllowances(back, cutting) }),
  ]
}

/** What is stacked under the shaft for the heel: it reaches into the block as far as the joint does. None where the stock is thick enough. */
function heelLayers(plan: Plan, { neck }: WoodNumbers, cutting: CuttingAllowances): CutPart[] {
  const underMm = neck.heelStockMm - neck.stockMm
  if (underMm <= 0 || neck.stockMm <= 0) return []
  const layers = Math.ceil(underMm / neck.stockMm - 1e-9)
  const inBodyMm =
    plan.neck.joint === 'sidesInHeel'
      ? plan.blocks.neck.thicknessMm
      : neck.tenonDepthMm === 'none'
        ? 0
        : neck.tenonDepthMm
  const finished = {
    lengthMm: HEEL_ALONG_MM + inBodyMm,
    widthMm: Math.max(neck.heelWidthMm, neck.heelCapMm),
    thicknessMm: underMm / layers,
  }
  return [cutPart({ key: 'heelLayer', quantity: layers, finished, rough: withAllowances(finished, cutting) })]
}

/** The board between its bindings, at its widest, and the bindings. */
function boardParts(plan: Plan, { board }: WoodNumbers, cutting: CuttingAllowances): CutPart[] {
  const { bindingMm } = plan.board
  const widestMm = Math.max(board.nutWidthMm, board.widthAtTwelfthMm, board.widthAtJointMm, board.widthAtEndMm)
  const finished = {
    lengthMm: board.lengthMm,
    widthMm: widestMm - 2 * bindingMm,
    thicknessMm: board.thicknessMm,
  }
  const strip = { lengthMm: board.lengthMm, widthMm: board.thicknessMm, thicknessMm: bindingMm }
  return [
    cutPart({ key: 'fingerboard', finished, rough: withAllowances(finished, cutting) }),
    cutPart({ key: 'boardBinding', quantity: 2, finished: strip, rough: withAllowances(strip, cutting) }),
  ]
}

/**
 * Bridge, its plate, saddle and nut, mm. Under an arched top the bridge's ends and edges hang under its middle, so its blank is thicker than
 * its middle by the hollows of its underside. The nut is as high as the board, a fret, the deepest string's slot and half the thickest string.
 */
export function bridgeParts(plan: Plan, numbers: WoodNumbers, cutting: CuttingAllowances): readonly CutPart[] {
  const { bridge, setup, strings, board } = numbers
  const saw = (finished: Size) => ({ finished, rough: withAllowances(finished, cutting) })
  const hollowMm = Math.max(bridge.hollowAcrossMm, 0) + Math.max(bridge.hollowAlongMm, 0)
  const thickestMm = Math.max(0, ...strings.map(({ diameterMm }) => diameterMm))
  return [
    cutPart({
      key: 'bridge',
      ...saw({ lengthMm: bridge.lengthMm, widthMm: bridge.widthMm, thicknessMm: bridge.thicknessMm + hollowMm }),
    }),
    cutPart({
      key: 'bridgePlate',
      ...saw({
        lengthMm: Math.max(plan.bridge.plateTailWidthMm, plan.bridge.plateNeckWidthMm),
        widthMm: plan.bridge.plateToMm - plan.bridge.plateFromMm,
        thicknessMm: plan.bridge.plateMm,
      }),
    }),
    cutPart({
      key: 'nut',
      grain: 'any',
      ...saw({
        lengthMm: board.nutWidthMm,
        widthMm: board.thicknessMm + plan.frets.crownMm + Math.max(setup.nutBassMm, setup.nutTrebleMm) + thickestMm / 2,
        thicknessMm: NUT_MM,
      }),
    }),
    cutPart({
      key: 'saddle',
      grain: 'any',
      ...saw({
        lengthMm: bridge.slotLengthMm,
        widthMm: bridge.saddleHeightMm,
        thicknessMm: bridge.slotWidthMm,
      }),
    }),
  ]
}
