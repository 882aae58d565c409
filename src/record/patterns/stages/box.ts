import { stage } from './stagePattern.ts'

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
  braceTop: stage({ numbers: ['top.radiusMm'], lookUp: ['top.radiusMm'], cautions: ['glue'] }),
  carveTop: stage({
    numbers: ['top.gapAcrossLowerBoutMm', 'top.gapAcrossWaistMm', 'top.gapAcrossUpperBoutMm'],
    cautions: ['blades'],
    drawings: ['domes'],
  }),
  joinBack: stage({ cautions: ['glue', 'woodDust'] }),
  braceBack: stage({
    numbers: ['back.radiusMm', 'back.gapAcrossLowerBoutMm', 'back.gapAcrossWaistMm', 'back.gapAcrossUpperBoutMm'],
    lookUp: ['back.radiusMm'],
    cautions: ['glue', 'blades'],
    drawings: ['domes'],
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
  cutLedges: stage({ cautions: ['blades', 'woodDust'] }),
  bindBox: stage({ cautions: ['heat', 'glue', 'solvents'] }),
}
