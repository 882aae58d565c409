import type { NumberKey } from '../../../core/catalogue.ts'
import { figures } from './stagePattern.ts'

/** Where braces go, and what to cut for them. */
export const BRACE_PLACES = [
  'braces[].fromXMm',
  'braces[].fromAcrossMm',
  'braces[].toXMm',
  'braces[].toAcrossMm',
] as const satisfies readonly NumberKey[]
export const BRACE_BLANKS = [
  'braces[].blankLengthMm',
  'braces[].blankHeightMm',
  'braces[].blankWidthMm',
  'braces[].undersideRadiusMm',
] as const satisfies readonly NumberKey[]
export const BRACE_SIZES = [
  'braces[].finishedLengthMm',
  'braces[].widthMm',
  'braces[].heightMm',
  'braces[].archRiseMm',
] as const satisfies readonly NumberKey[]
/** Where the tips of those that end at the rim stand, and their pockets. */
export const TIPS = ['braces[].fromShortMm', 'braces[].toShortMm'] as const satisfies readonly NumberKey[]
const LET_IN = ['braces[].fromLetInMm', 'braces[].toLetInMm'] as const satisfies readonly NumberKey[]
const POCKETS = [
  'braces[].finishedLengthMm',
  ...LET_IN,
  'braces[].fromHeightMm',
  'braces[].toHeightMm',
] as const satisfies readonly NumberKey[]
/** Printed for those that no one radius fits. */
export const ORDINATES = ['braceArch[].alongMm', 'braceArch[].riseMm'] as const satisfies readonly NumberKey[]
export const CROSS_PATCHES = [
  'patches.cross.count',
  'patches.cross.sideMm',
  'patches.cross.thicknessMm',
] as const satisfies readonly NumberKey[]
export const HOLE_RING = [
  'patches.holeRing.innerRadiusMm',
  'patches.holeRing.outerRadiusMm',
  'patches.holeRing.thicknessMm',
] as const satisfies readonly NumberKey[]
export const BRIDGE_PLATE = [
  'bridgePlate.fromTailMm',
  'bridgePlate.lengthMm',
  'bridgePlate.tailWidthMm',
  'bridgePlate.neckWidthMm',
  'bridgePlate.thicknessMm',
] as const satisfies readonly NumberKey[]
export const TAPERS = [
  'braces[].heightMm',
  'braces[].fromHeightMm',
  'braces[].toHeightMm',
  'braces[].fromTaperMm',
  'braces[].toTaperMm',
] as const satisfies readonly NumberKey[]
export const CROSSINGS = [
  'braceCrossings[].xMm',
  'braceCrossings[].acrossMm',
  'braceCrossings[].alongMm',
  'braceCrossings[].otherAlongMm',
  'braceCrossings[].angleRad',
  'braceCrossings[].lapMm',
  'braceCrossings[].underNumber',
  'braceCrossings[].notchMm',
  'braceCrossings[].otherNotchMm',
] as const satisfies readonly NumberKey[]
export const STRIP = [
  'patches.strip.widthMm',
  'patches.strip.thicknessMm',
  'jointStrip[].fromMm',
  'jointStrip[].toMm',
  'jointStrip[].lengthMm',
] as const satisfies readonly NumberKey[]

export const BACK_GAPS = [
  'back.gapAcrossLowerBoutMm',
  'back.gapAcrossWaistMm',
  'back.gapAcrossUpperBoutMm',
] as const satisfies readonly NumberKey[]

/** Plates and box. */
export const BOX_STAGES = {
  joinTop: figures({}),
  thicknessTop: figures({ numbers: ['plates.topMm'], lookUp: ['plates.topMm'] }),
  inlayRosette: figures({
    numbers: [
      'soundhole.centreMm',
      'soundhole.centreToBoardEndMm',
      'rosette.channelDepthMm',
      'rosette.rings[].innerRadiusMm',
      'rosette.rings[].outerRadiusMm',
      'rosette.rings[].widthMm',
      'rosette.rings[].innerCutterCircleMm',
      'rosette.rings[].outerCutterCircleMm',
      'rosette.rings[].passes',
      'rosette.rings[].stripLengthMm',
      'rosette.rings[].gapMm',
      'rosette.rings[].tileLengthMm',
    ],
    lookUp: [
      'soundhole.centreToBoardEndMm',
      'rosette.rings[].innerCutterCircleMm',
      'rosette.rings[].outerCutterCircleMm',
    ],
  }),
  levelRosette: figures({ numbers: ['plates.topMm'] }),
  cutSoundhole: figures({
    numbers: ['soundhole.radiusMm', 'soundhole.cutterCircleMm', 'soundhole.discMm', 'soundhole.toFirstRingMm'],
    lookUp: ['soundhole.cutterCircleMm'],
  }),
  archTopBraces: figures({
    numbers: ['top.radiusMm', ...BRACE_SIZES, ...BRACE_BLANKS, ...ORDINATES],
    lookUp: ['top.radiusMm', ...BRACE_BLANKS, ...ORDINATES],
  }),
  patchTop: figures({
    numbers: [...HOLE_RING, ...BRIDGE_PLATE],
    lookUp: ['bridgePlate.fromTailMm'],
  }),
  braceTop: figures({
    numbers: [...BRACE_PLACES, ...TIPS, ...CROSSINGS],
    lookUp: [...BRACE_PLACES, ...TIPS, ...CROSSINGS],
  }),
  braceTopFine: figures({
    numbers: [...BRACE_PLACES, ...TIPS, ...CROSS_PATCHES],
    lookUp: [...BRACE_PLACES, ...TIPS, 'patches.cross.count'],
  }),
  carveTop: figures({
    numbers: ['top.gapAcrossLowerBoutMm', 'top.gapAcrossWaistMm', 'top.gapAcrossUpperBoutMm', ...TAPERS, ...LET_IN],
    lookUp: ['braces[].fromTaperMm', 'braces[].toTaperMm', ...LET_IN],
  }),
  joinBack: figures({
    numbers: ['backStrip.widthMm', 'backStrip.downMm', 'backStrip.cutMm', 'backStrip.leftMm'],
    lookUp: ['backStrip.leftMm'],
  }),
  thicknessBack: figures({ numbers: ['plates.backMm'] }),
  stripBack: figures({ numbers: STRIP }),
  archBackBraces: figures({
    numbers: ['back.radiusMm', ...BRACE_SIZES, ...BRACE_BLANKS, ...ORDINATES],
    lookUp: ['back.radiusMm', ...BRACE_BLANKS, ...ORDINATES],
  }),
  braceBack: figures({
    numbers: [...BRACE_PLACES, ...TIPS, ...CROSSINGS],
    lookUp: [...BRACE_PLACES, ...TIPS, ...CROSSINGS],
  }),
  carveBack: figures({
    numbers: [...BACK_GAPS, ...TAPERS, ...LET_IN],
    lookUp: ['braces[].fromTaperMm', 'braces[].toTaperMm', ...LET_IN],
  }),
  fitTop: figures({
    numbers: [...POCKETS, 'body.lengthMm', 'scale.saddleLineMm', 'top.heightAtSaddleMm', 'soundhole.centreMm'],
    lookUp: ['top.heightAtSaddleMm'],
  }),
  glueTop: figures({}),
  fitBack: figures({ numbers: POCKETS }),
  closeBox: figures({
    numbers: ['sides.bodyDepthAtTailMm', 'sides.bodyDepthAtNeckMm', 'back.gapAlongMm', 'top.gapAlongMm'],
  }),
  trimPlates: figures({}),
  inlayEndWedge: figures({
    numbers: ['endWedge.intoSideMm', 'endWedge.edgeMm', 'endWedge.fullMm', 'endWedge.topMm', 'endWedge.backMm'],
  }),
  cutLedges: figures({
    numbers: [
      'edges.ledgeMm',
      'edges.ledgeInMm',
      'edges.topPurflingMm',
      'edges.backPurflingMm',
      'edges.purflingDownMm',
      'edges.sideLeftMm',
      'edges.topLeftMm',
      'edges.backLeftMm',
      'edgePlaces[].betweenMm',
      'edgePlaces[].topBindingSetMm',
      'edgePlaces[].backBindingSetMm',
      'edgePlaces[].topPurflingSetMm',
      'edgePlaces[].backPurflingSetMm',
      'trebleEdgePlaces[].betweenMm',
      'trebleEdgePlaces[].topBindingSetMm',
      'trebleEdgePlaces[].backBindingSetMm',
    ],
    lookUp: [
      'edges.sideLeftMm',
      'edgePlaces[].topBindingSetMm',
      'edgePlaces[].backBindingSetMm',
      'edgePlaces[].topPurflingSetMm',
      'edgePlaces[].backPurflingSetMm',
      'trebleEdgePlaces[].topBindingSetMm',
      'trebleEdgePlaces[].backBindingSetMm',
    ],
  }),
  bendBindings: figures({
    numbers: ['edges.tightestRadiusMm', 'edgeStrips[].bindingCutMm', 'edgeStrips[].purflingCutMm'],
    lookUp: ['edges.tightestRadiusMm'],
  }),
  bindBox: figures({
    numbers: ['endWedge.betweenMm', 'endWedge.mitreTopRad', 'endWedge.mitreBackRad', 'edgeStrips[].mitreRad'],
    lookUp: ['edgeStrips[].mitreRad'],
  }),
  scrapeBox: figures({
    numbers: ['edges.topLeftMm', 'edges.backLeftMm', 'edges.sideLeftMm'],
    lookUp: ['edges.topLeftMm', 'edges.backLeftMm', 'edges.sideLeftMm'],
  }),
}
