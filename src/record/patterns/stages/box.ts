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
const BRACE_SIZES = ['braces[].lengthMm', 'braces[].archRiseMm'] as const satisfies readonly NumberKey[]
const CROSSINGS = [
  'braceCrossings[].alongMm',
  'braceCrossings[].otherAlongMm',
  'braceCrossings[].angleRad',
  'braceCrossings[].lapMm',
] as const satisfies readonly NumberKey[]
const STRIP = [
  'jointStrip[].fromMm',
  'jointStrip[].toMm',
  'jointStrip[].lengthMm',
] as const satisfies readonly NumberKey[]

/** Plates and box. */
export const BOX_STAGES = {
  joinTop: stage({ cautions: ['glue', 'blades'] }),
  thicknessTop: stage({ cautions: ['woodDust'] }),
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
    numbers: ['top.radiusMm', ...BRACE_SIZES, ...BRACE_BLANKS, ...BRACE_PLACES, ...CROSSINGS],
    lookUp: ['top.radiusMm', ...BRACE_BLANKS, ...BRACE_PLACES, ...CROSSINGS],
    cautions: ['glue', 'blades'],
    drawings: ['bracingTop'],
  }),
  carveTop: stage({
    numbers: [
      'top.gapAcrossLowerBoutMm',
      'top.gapAcrossWaistMm',
      'top.gapAcrossUpperBoutMm',
      'braces[].heightMm',
      'braces[].fromHeightMm',
      'braces[].toHeightMm',
      'braces[].fromTaperMm',
      'braces[].toTaperMm',
    ],
    lookUp: ['braces[].fromTaperMm', 'braces[].toTaperMm'],
    cautions: ['blades'],
    drawings: ['bracingTop'],
  }),
  joinBack: stage({
    numbers: ['backStrip.cutMm', 'backStrip.leftMm'],
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
    ],
    lookUp: ['back.radiusMm', ...BRACE_BLANKS, ...BRACE_PLACES],
    cautions: ['glue', 'blades'],
    drawings: ['bracingBack'],
  }),
  fitTop: stage({
    numbers: ['body.lengthMm', 'scale.saddleLineMm', 'top.heightAtSaddleMm', 'soundhole.centreMm'],
    lookUp: ['top.heightAtSaddleMm'],
    cautions: ['blades'],
    drawings: ['section'],
  }),
  glueTop: stage({ cautions: ['glue'] }),
  fitBack: stage({ cautions: ['blades'] }),
  closeBox: stage({
    numbers: ['sides.bodyDepthAtTailMm', 'sides.bodyDepthAtNeckMm', 'back.gapAlongMm', 'top.gapAlongMm'],
    cautions: ['glue'],
    drawings: ['section'],
  }),
  trimPlates: stage({ cautions: ['blades', 'woodDust'] }),
  cutLedges: stage({
    numbers: [
      'edges.ledgeMm',
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
