import { stage } from './stagePattern.ts'

/** Neck, finish and set-up. */
export const NECK_STAGES = {
  makeNeckBlank: stage({ cautions: ['blades', 'woodDust'] }),
  shapeHead: stage({ cautions: ['shellDust', 'blades'] }),
  cutNeckJoint: stage({ cautions: ['blades'] }),
  slotSides: stage({
    numbers: ['sides.thicknessMm', 'sides.depthAtNeckPlanedMm'],
    lookUp: ['sides.depthAtNeckPlanedMm'],
    cautions: ['blades'],
  }),
  makeBoard: stage({ cautions: ['woodDust', 'cites', 'blades'] }),
  glueBoard: stage({ cautions: ['glue'] }),
  carveNeck: stage({ cautions: ['blades', 'woodDust'] }),
  fitNeck: stage({
    numbers: ['scale.jointToSaddleMm', 'scale.boardEndMm', 'top.flatSlopeRad'],
    lookUp: ['top.flatSlopeRad'],
    cautions: ['blades'],
    drawings: ['section'],
  }),
  fretBoard: stage({ cautions: ['blades', 'glue'] }),
  makeBridge: stage({ cautions: ['woodDust', 'blades', 'cites'] }),
  sandAndFill: stage({ cautions: ['woodDust', 'solvents'] }),
  finish: stage({ cautions: ['solvents', 'oilyRags'] }),
  polish: stage({ cautions: ['woodDust', 'oilyRags'] }),
  glueBridge: stage({
    numbers: ['scale.saddleLineMm', 'scale.jointToSaddleMm'],
    cautions: ['glue', 'heat'],
    drawings: ['plan'],
  }),
  makeNutAndSaddle: stage({ cautions: ['shellDust'] }),
  stringUp: stage({}),
  settleSetUp: stage({}),
  inspect: stage({
    numbers: [
      'body.lengthMm',
      'body.lowerBoutMm',
      'body.waistMm',
      'body.upperBoutMm',
      'sides.bodyDepthAtTailMm',
      'sides.bodyDepthAtNeckMm',
    ],
  }),
  deliver: stage({ cautions: ['cites'] }),
}
