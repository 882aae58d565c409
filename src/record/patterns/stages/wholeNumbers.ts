import type { NumberKey } from '../../../core/catalogue.ts'
import type { StageKey } from '../stages.ts'
import {
  BACK_GAPS,
  BOX_STAGES,
  BRACE_BLANKS,
  BRACE_PLACES,
  BRACE_SIZES,
  BRIDGE_PLATE,
  CROSS_PATCHES,
  CROSSINGS,
  HOLE_RING,
  ORDINATES,
  STRIP,
  TAPERS,
  TIPS,
} from './box.ts'
import { NECK_STAGES } from './neck.ts'

/**
 * What a stage prints at most, in the order the hand reaches it, where stages within it are not in the building order. Of a stage that is
 * not named here the numbers follow each other as the stages do.
 */
export const WHOLE_NUMBERS: Readonly<Partial<Record<StageKey, readonly NumberKey[]>>> = {
  settleWood: [],
  braceTop: [
    'top.radiusMm',
    ...BRACE_SIZES,
    ...BRACE_BLANKS,
    ...BRACE_PLACES,
    ...TIPS,
    ...ORDINATES,
    ...CROSSINGS,
    ...CROSS_PATCHES,
    ...HOLE_RING,
    ...BRIDGE_PLATE,
  ],
  joinBack: ['plates.backMm', ...BOX_STAGES.joinBack.numbers],
  braceBack: [
    'back.radiusMm',
    ...BACK_GAPS,
    ...STRIP,
    ...BRACE_SIZES,
    ...BRACE_BLANKS,
    ...BRACE_PLACES,
    ...TIPS,
    ...ORDINATES,
    ...CROSSINGS,
    ...TAPERS.filter((key) => key !== 'braces[].heightMm'),
  ],
  cutLedges: [...BOX_STAGES.cutLedges.numbers, ...BOX_STAGES.inlayEndWedge.numbers],
  bindBox: [
    'edges.tightestRadiusMm',
    'endWedge.betweenMm',
    'endWedge.mitreTopRad',
    'endWedge.mitreBackRad',
    'edgeStrips[].bindingCutMm',
    'edgeStrips[].purflingCutMm',
    'edgeStrips[].mitreRad',
  ],
  cutNeckJoint: [
    'neckSet.angleRad',
    'neck.cheekRad',
    'neck.cheekHollowMm',
    'neck.heelDepthMm',
    'neck.heelWidthMm',
    'neck.tenonWidthMm',
    'neck.tenonDepthMm',
    'neck.boltMm',
    'neck.bolts[].underTopMm',
    'neck.blockBehindTenonMm',
    'neck.blockBesideTenonMm',
    'neck.rodToBoltMm',
    'neck.boltToHeelEndMm',
  ],
  makeNutAndSaddle: NECK_STAGES.makeNutAndSaddle.numbers,
  stringUp: NECK_STAGES.stringUp.numbers,
}
