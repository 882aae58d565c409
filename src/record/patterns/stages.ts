import { aboutNumber, type NumberKey } from '../../core/catalogue.ts'
import type { CautionKey } from './cautions.ts'

/** Every stage a shop can put into an instrument's building order. A key is stable: records keep it, its texts come with it. */
export const STAGE_KEYS = [
  'chooseWood',
  'settleWood',
  'thicknessSides',
  'markBlanks',
  'profileBlanks',
  'bendSides',
  'settleInMould',
  'makeBlocks',
  'glueBlocks',
  'braceSides',
  'radiusRim',
  'glueLinings',
  'trueRim',
  'joinTop',
  'thicknessTop',
  'inlayRosette',
  'cutSoundhole',
  'braceTop',
  'carveTop',
  'joinBack',
  'braceBack',
  'fitTop',
  'glueTop',
  'fitBack',
  'closeBox',
  'trimPlates',
  'cutLedges',
  'bindBox',
  'makeNeckBlank',
  'shapeHead',
  'cutNeckJoint',
  'slotSides',
  'makeBoard',
  'glueBoard',
  'carveNeck',
  'fitNeck',
  'fretBoard',
  'makeBridge',
  'sandAndFill',
  'finish',
  'polish',
  'glueBridge',
  'makeNutAndSaddle',
  'stringUp',
  'settleSetUp',
  'inspect',
  'deliver',
] as const
export type StageKey = (typeof STAGE_KEYS)[number]

/** Which drawing stands beside a stage, by the name it has in drawing/. */
export const STAGE_DRAWINGS = [
  'plan',
  'side',
  'section',
  'domes',
  'blankTreble',
  'bevels',
  'blockTail',
  'blockNeck',
  'rosette',
] as const
export type StageDrawing = (typeof STAGE_DRAWINGS)[number]

export interface StagePattern {
  /** What the stage is built to, in the order the hand reaches it. */
  readonly numbers: readonly NumberKey[]
  /** Those of them to look up only: no box waits for a reading. */
  readonly lookUp: readonly NumberKey[]
  readonly cautions: readonly CautionKey[]
  readonly drawings: readonly StageDrawing[]
}

const stage = (pattern: Partial<StagePattern>): StagePattern => ({
  numbers: [],
  lookUp: [],
  cautions: [],
  drawings: [],
  ...pattern,
})

export const STAGES: Readonly<Record<StageKey, StagePattern>> = {
  chooseWood: stage({ cautions: ['cites', 'woodDust'] }),
  settleWood: stage({}),
  thicknessSides: stage({ numbers: ['sides.thicknessMm'], cautions: ['woodDust', 'blades'] }),
  markBlanks: stage({
    numbers: [
      'sides.blankLengthMm',
      'sides.blankWidthMm',
      'sides.referenceMm',
      'sides.flatLengthMm',
      'sides.waistMarkOnBlankMm',
    ],
    lookUp: ['sides.referenceMm', 'sides.flatLengthMm'],
    cautions: ['blades'],
    drawings: ['blankTreble'],
  }),
  profileBlanks: stage({
    numbers: ['rim[].alongBlankMm', 'rim[].cutWidthMm'],
    cautions: ['woodDust', 'blades'],
  }),
  bendSides: stage({
    numbers: [
      'body.tightestRadiusMm',
      'body.tightestAtMm',
      'sides.waistMarkOnBlankMm',
      'body.lowerBoutMm',
      'body.waistMm',
      'body.upperBoutMm',
    ],
    lookUp: ['sides.waistMarkOnBlankMm'],
    cautions: ['heat'],
    drawings: ['plan'],
  }),
  settleInMould: stage({
    numbers: ['body.halfLengthMm', 'sides.waistMarkOnRimMm', 'body.lengthMm'],
    cautions: ['blades'],
  }),
  makeBlocks: stage({
    numbers: [
      'blocks.tail.widthMm',
      'blocks.tail.thicknessMm',
      'blocks.tail.contourRadiusMm',
      'blocks.tail.contourRiseMm',
      'blocks.tail.contour[].acrossMm',
      'blocks.tail.contour[].fallsBackMm',
      'blocks.neck.widthMm',
      'blocks.neck.thicknessMm',
      'blocks.neck.contourRadiusMm',
      'blocks.neck.contourRiseMm',
      'blocks.neck.contour[].acrossMm',
      'blocks.neck.contour[].fallsBackMm',
    ],
    cautions: ['woodDust', 'blades'],
    drawings: ['blockTail', 'blockNeck'],
  }),
  glueBlocks: stage({
    numbers: [
      'blocks.tail.heightAtFaceMm',
      'blocks.tail.heightInsideMm',
      'blocks.tail.topSlopeRad',
      'blocks.tail.backSlopeRad',
      'blocks.neck.heightAtFaceMm',
      'blocks.neck.heightInsideMm',
      'blocks.neck.topSlopeRad',
      'blocks.neck.backSlopeRad',
    ],
    cautions: ['glue'],
    drawings: ['side'],
  }),
  braceSides: stage({ cautions: ['glue'] }),
  radiusRim: stage({
    numbers: [
      'back.radiusMm',
      'top.radiusMm',
      'sides.depthAtTailMm',
      'sides.depthAtNeckMm',
      'rim[].alongOuterMm',
      'rim[].depthMm',
    ],
    lookUp: ['back.radiusMm', 'top.radiusMm'],
    cautions: ['woodDust'],
    drawings: ['side'],
  }),
  glueLinings: stage({
    numbers: ['places[].topBevelRad', 'places[].backBevelRad'],
    lookUp: ['places[].topBevelRad', 'places[].backBevelRad'],
    cautions: ['glue'],
    drawings: ['bevels'],
  }),
  trueRim: stage({
    numbers: [
      'top.flatFromMm',
      'top.flatSlopeRad',
      'top.neckEdgeMm',
      'sides.depthAtNeckPlanedMm',
      'places[].depthMm',
      'places[].topBevelRad',
      'places[].backBevelRad',
    ],
    cautions: ['woodDust', 'blades'],
    drawings: ['bevels'],
  }),
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

/** A number of a stage gets a box for its reading where the catalogue knows how it is measured and the stage does not only look it up. */
export function getsBox(pattern: StagePattern, key: NumberKey): boolean {
  return aboutNumber(key).measured !== null && !pattern.lookUp.includes(key)
}

type Family = 'steelString' | 'nylonString' | 'small'

/** Body first, in a mould; the neck is fitted to the closed box. Common practice. */
const NECK_LAST = STAGE_KEYS.filter((key) => key !== 'slotSides')

/** Heel first: the top lies on a hollowed board with the neck, the sides enter slots in the heel. Common practice. */
const HEEL_FIRST: readonly StageKey[] = [
  'chooseWood',
  'settleWood',
  'makeNeckBlank',
  'shapeHead',
  'slotSides',
  'joinTop',
  'thicknessTop',
  'inlayRosette',
  'cutSoundhole',
  'braceTop',
  'carveTop',
  'thicknessSides',
  'markBlanks',
  'profileBlanks',
  'bendSides',
  'makeBlocks',
  'fitTop',
  'glueBlocks',
  'braceSides',
  'glueTop',
  'radiusRim',
  'glueLinings',
  'joinBack',
  'braceBack',
  'trueRim',
  'fitBack',
  'closeBox',
  'trimPlates',
  'cutLedges',
  'bindBox',
  'makeBoard',
  'glueBoard',
  'carveNeck',
  'fretBoard',
  'makeBridge',
  'sandAndFill',
  'finish',
  'polish',
  'glueBridge',
  'makeNutAndSaddle',
  'stringUp',
  'settleSetUp',
  'inspect',
  'deliver',
]

/** On a small body side braces are usually left out. */
const SMALL = NECK_LAST.filter((key) => key !== 'braceSides')

/** The building order an instrument of this family starts with; the maker changes it. */
export function startingStages(family: Family): readonly StageKey[] {
  if (family === 'nylonString') return HEEL_FIRST
  return family === 'small' ? SMALL : NECK_LAST
}
