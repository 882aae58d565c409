/**
 * Every stage a shop can put into an instrument's building order, in the order of a steel-string. A key is stable: records keep it, its
 * texts come with it.
 */
export const STAGE_KEYS = [
  'chooseWood',
  'settleWood',
  'weighWood',
  'thicknessSides',
  'markBlanks',
  'profileBlanks',
  'bendSides',
  'settleInMould',
  'makeBlocks',
  'glueBlocks',
  'braceSides',
  'radiusRim',
  'makeLinings',
  'glueLinings',
  'trueRim',
  'cutBlockJoint',
  'joinTop',
  'thicknessTop',
  'inlayRosette',
  'levelRosette',
  'cutSoundhole',
  'archTopBraces',
  'patchTop',
  'braceTop',
  'braceTopFine',
  'carveTop',
  'joinBack',
  'thicknessBack',
  'stripBack',
  'archBackBraces',
  'braceBack',
  'carveBack',
  'fitTop',
  'glueTop',
  'fitBack',
  'closeBox',
  'trimPlates',
  'inlayEndWedge',
  'cutLedges',
  'bendBindings',
  'bindBox',
  'scrapeBox',
  'makeNeckBlank',
  'cutRodChannel',
  'veneerHead',
  'shapeHead',
  'cutNeckJoint',
  'slotSides',
  'makeBoard',
  'bindBoard',
  'glueBoard',
  'carveNeck',
  'fitNeck',
  'fretBoard',
  'makeBridge',
  'sandAndFill',
  'finish',
  'cure',
  'polish',
  'setNeck',
  'glueBridge',
  'levelFrets',
  'makeNutAndSaddle',
  'fitHardware',
  'stringUp',
  'settleSetUp',
  'inspect',
  'deliver',
  // Work the house has no pattern for: all of it is the maker's own.
  'ownWork',
] as const
export type StageKey = (typeof STAGE_KEYS)[number]

export { STAGE_DRAWINGS, type StageDrawing } from './stages/stagePattern.ts'

export type Family = 'steelString' | 'nylonString' | 'small'

/** Body first, in a mould; the neck is fitted to the closed box. Common practice. A board is bound only where it is ordered. */
const NECK_LAST = without(STAGE_KEYS, ['slotSides', 'bindBoard', 'ownWork'])

/**
 * Heel first: the top lies on a hollowed board with the neck, the sides enter slots in the heel, so that no joint is cut, fitted or closed;
 * harmonic bars are glued before the fan, and nothing stiffens the neck. Common practice.
 */
const HEEL_FIRST: readonly StageKey[] = [
  'chooseWood',
  'settleWood',
  'weighWood',
  'makeNeckBlank',
  'veneerHead',
  'shapeHead',
  'slotSides',
  'joinTop',
  'thicknessTop',
  'inlayRosette',
  'levelRosette',
  'cutSoundhole',
  'archTopBraces',
  'patchTop',
  'braceTopFine',
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
  'makeLinings',
  'glueLinings',
  'joinBack',
  'thicknessBack',
  'stripBack',
  'archBackBraces',
  'braceBack',
  'carveBack',
  'trueRim',
  'fitBack',
  'closeBox',
  'trimPlates',
  'inlayEndWedge',
  'cutLedges',
  'bendBindings',
  'bindBox',
  'scrapeBox',
  'makeBoard',
  'glueBoard',
  'carveNeck',
  'fretBoard',
  'makeBridge',
  'sandAndFill',
  'finish',
  'cure',
  'polish',
  'glueBridge',
  'levelFrets',
  'makeNutAndSaddle',
  'fitHardware',
  'stringUp',
  'settleSetUp',
  'inspect',
  'deliver',
]

/** A small body is judged by hand, and usually goes without side braces, strip, end wedge and rod. Common practice. */
const SMALL = without(NECK_LAST, ['weighWood', 'braceSides', 'stripBack', 'inlayEndWedge', 'cutRodChannel'])

/** The building order an instrument of this family starts with; the maker changes it. */
export function startingStages(family: Family): readonly StageKey[] {
  if (family === 'nylonString') return HEEL_FIRST
  return family === 'small' ? SMALL : NECK_LAST
}

function without(keys: readonly StageKey[], left: readonly StageKey[]): readonly StageKey[] {
  return keys.filter((key) => !left.includes(key))
}
