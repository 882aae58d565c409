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
  // Work the house has no pattern for: all of it is the maker's own.
  'ownWork',
] as const
export type StageKey = (typeof STAGE_KEYS)[number]

export { STAGE_DRAWINGS, type StageDrawing } from './stages/stagePattern.ts'

type Family = 'steelString' | 'nylonString' | 'small'

/** Body first, in a mould; the neck is fitted to the closed box. Common practice. */
const NECK_LAST = STAGE_KEYS.filter((key) => key !== 'slotSides' && key !== 'ownWork')

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
