import type { NumberKey } from '../../../core/catalogue.ts'
import { stage } from './stagePattern.ts'

/** Where braces go, and what to cut for them. */
const BRACE_PLACES = [
  'braces[].fromXMm',
  'braces[].fromAcrossMm',
  'braces[].toXMm',
  'braces[].toAcrossMm',
] as const satisfies readonly NumberKey[]
const BRACE_BLANKS = [
  'braces[].blankLengthMm',
  'braces[].blankHeightMm',
  'braces[].blankWidthMm',
  'braces[].undersideRadiusMm',
] as const satisfies readonly NumberKey[]
const BRACE_SIZES = [
  'braces[].finishedLengthMm',
  'braces[].widthMm',
  'braces[].heightMm',
  'braces[].archRiseMm',
] as const satisfies readonly NumberKey[]
/** Where the tips of those that end at the rim stand, and their pockets. */
const TIPS = ['braces[].fromShortMm', 'braces[].toShortMm'] as const satisfies readonly NumberKey[]
const LET_IN = ['braces[].fromLetInMm', 'braces[].toLetInMm'] as const satisfies readonly NumberKey[]
const POCKETS = [
  'braces[].finishedLengthMm',
  ...LET_IN,
  'braces[].fromHeightMm',
  'braces[].toHeightMm',
] as const satisfies readonly NumberKey[]
/** Printed for those that no one radius fits. */
const ORDINATES = ['braceArch[].alongMm', 'braceArch[].riseMm'] as const satisfies readonly NumberKey[]
const PATCHES = [
  'patches.cross.count',
  'patches.cross.sideMm',
  'patches.cross.thicknessMm',
  'patches.holeRing.innerRadiusMm',
  'patches.holeRing.outerRadiusMm',
  'patches.holeRing.thicknessMm',
] as const satisfies readonly NumberKey[]
const BRIDGE_PLATE = [
  'bridgePlate.fromTailMm',
  'bridgePlate.lengthMm',
  'bridgePlate.tailWidthMm',
  'bridgePlate.neckWidthMm',
  'bridgePlate.thicknessMm',
] as const satisfies readonly NumberKey[]
const TAPERS = [
  'braces[].heightMm',
  'braces[].fromHeightMm',
  'braces[].toHeightMm',
  'braces[].fromTaperMm',
  'braces[].toTaperMm',
] as const satisfies readonly NumberKey[]
const CROSSINGS = [
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
const STRIP = [
  'patches.strip.widthMm',
  'patches.strip.thicknessMm',
  'jointStrip[].fromMm',
  'jointStrip[].toMm',
  'jointStrip[].lengthMm',
] as const satisfies readonly NumberKey[]

/** Plates and box. */
export const BOX_STAGES = {
  joinTop: stage({ cautions: ['glue', 'blades'] }),
  thicknessTop: stage({ numbers: ['plates.topMm'], cautions: ['woodDust'] }),
  inlayRosette: stage({
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
    cautions: ['blades', 'shellDust', 'glue'],
    drawings: ['rosette'],
  }),
  cutSoundhole: stage({
    numbers: ['soundhole.radiusMm', 'soundhole.cutterCircleMm', 'soundhole.discMm', 'soundhole.toFirstRingMm'],
    lookUp: ['soundhole.cutterCircleMm'],
    cautions: ['blades'],
    drawings: ['rosette'],
  }),
  braceTop: stage({
    numbers: [
      'top.radiusMm',
      ...BRACE_SIZES,
      ...BRACE_BLANKS,
      ...BRACE_PLACES,
      ...TIPS,
      ...ORDINATES,
      ...CROSSINGS,
      ...PATCHES,
      ...BRIDGE_PLATE,
    ],
    lookUp: [
      'top.radiusMm',
      ...BRACE_BLANKS,
      ...BRACE_PLACES,
      ...TIPS,
      ...ORDINATES,
      ...CROSSINGS,
      'patches.cross.count',
      'bridgePlate.fromTailMm',
    ],
    cautions: ['glue', 'blades'],
    drawings: ['bracingTop'],
  }),
  carveTop: stage({
    numbers: ['top.gapAcrossLowerBoutMm', 'top.gapAcrossWaistMm', 'top.gapAcrossUpperBoutMm', ...TAPERS, ...LET_IN],
    lookUp: ['braces[].fromTaperMm', 'braces[].toTaperMm', ...LET_IN],
    cautions: ['blades'],
    drawings: ['bracingTop'],
  }),
  joinBack: stage({
    numbers: ['plates.backMm', 'backStrip.widthMm', 'backStrip.downMm', 'backStrip.cutMm', 'backStrip.leftMm'],
    lookUp: ['backStrip.leftMm'],
    cautions: ['glue', 'woodDust'],
  }),
  braceBack: stage({
    numbers: [
      'back.radiusMm',
      'back.gapAcrossLowerBoutMm',
      'back.gapAcrossWaistMm',
      'back.gapAcrossUpperBoutMm',
      ...STRIP,
      ...BRACE_SIZES,
      ...BRACE_BLANKS,
      ...BRACE_PLACES,
      ...TIPS,
      ...ORDINATES,
      ...CROSSINGS,
      ...TAPERS.filter((key) => key !== 'braces[].heightMm'),
    ],
    lookUp: [
      'back.radiusMm',
      ...BRACE_BLANKS,
      ...BRACE_PLACES,
      ...TIPS,
      ...ORDINATES,
      ...CROSSINGS,
      'braces[].fromTaperMm',
      'braces[].toTaperMm',
    ],
    cautions: ['glue', 'blades'],
    drawings: ['bracingBack'],
  }),
  fitTop: stage({
    numbers: [...POCKETS, 'body.lengthMm', 'scale.saddleLineMm', 'top.heightAtSaddleMm', 'soundhole.centreMm'],
    lookUp: ['top.heightAtSaddleMm'],
    cautions: ['blades'],
    drawings: ['section'],
  }),
  glueTop: stage({ cautions: ['glue'] }),
  fitBack: stage({ numbers: POCKETS, cautions: ['blades'] }),
  closeBox: stage({
    numbers: ['sides.bodyDepthAtTailMm', 'sides.bodyDepthAtNeckMm', 'back.gapAlongMm', 'top.gapAlongMm'],
    cautions: ['glue'],
    drawings: ['section'],
  }),
  trimPlates: stage({ cautions: ['blades', 'woodDust'] }),
  cutLedges: stage({
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
      'endWedge.intoSideMm',
      'endWedge.edgeMm',
      'endWedge.fullMm',
      'endWedge.topMm',
      'endWedge.backMm',
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
    cautions: ['blades', 'woodDust'],
    drawings: ['edgeSection'],
  }),
  bindBox: stage({
    numbers: [
      'edges.tightestRadiusMm',
      'endWedge.betweenMm',
      'endWedge.mitreTopRad',
      'endWedge.mitreBackRad',
      'edgeStrips[].bindingCutMm',
      'edgeStrips[].purflingCutMm',
      'edgeStrips[].mitreRad',
    ],
    lookUp: ['edges.tightestRadiusMm', 'edgeStrips[].mitreRad'],
    cautions: ['heat', 'glue', 'solvents'],
  }),
}
