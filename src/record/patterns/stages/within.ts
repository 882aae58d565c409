import type { StageKey } from '../stages.ts'

/** Finer stages, and the coarser one whose work includes each where it is not in the building order. A stage that is not named stands alone. */
export const WITHIN: Readonly<Partial<Record<StageKey, StageKey>>> = {
  weighWood: 'settleWood',
  makeLinings: 'glueLinings',
  cutBlockJoint: 'cutNeckJoint',
  levelRosette: 'thicknessTop',
  archTopBraces: 'braceTop',
  patchTop: 'braceTop',
  braceTopFine: 'braceTop',
  thicknessBack: 'joinBack',
  stripBack: 'braceBack',
  archBackBraces: 'braceBack',
  carveBack: 'braceBack',
  inlayEndWedge: 'cutLedges',
  bendBindings: 'bindBox',
  scrapeBox: 'bindBox',
  cutRodChannel: 'makeNeckBlank',
  veneerHead: 'shapeHead',
  bindBoard: 'makeBoard',
  cure: 'finish',
  setNeck: 'fitNeck',
  levelFrets: 'makeNutAndSaddle',
  fitHardware: 'stringUp',
}
