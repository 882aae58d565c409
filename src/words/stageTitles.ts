import type { StageKey } from '../record/patterns/stages.ts'

/** What stages are called: all that a list of them needs. Parted as their lines are, which are fetched part by part. */
export const WOOD_TITLES = {
  chooseWood: 'Choose the wood',
  settleWood: 'Rough out and let it settle',
  weighWood: 'Weigh and tap the plates and braces',
  thicknessSides: 'Thickness the sides',
  markBlanks: 'Mark the side blanks',
  profileBlanks: 'Saw the back profile on the blanks',
  bendSides: 'Bend both sides',
  settleInMould: 'Trim the ends and settle in the mould',
} as const satisfies Partial<Record<StageKey, string>>

export const RIM_TITLES = {
  makeBlocks: 'Make the blocks',
  glueBlocks: 'Glue the blocks',
  braceSides: 'Brace or tape the sides',
  radiusRim: 'Bring the bare rim to its depths',
  makeLinings: 'Make the linings',
  glueLinings: 'Glue the linings',
  trueRim: 'True the rim with its linings',
  cutBlockJoint: 'Cut the joint in the neck block',
} as const satisfies Partial<Record<StageKey, string>>

export const TOP_TITLES = {
  joinTop: 'Join the top',
  thicknessTop: 'Thickness the top',
  inlayRosette: 'Cut the channel and lay the rosette',
  levelRosette: 'Level the rosette, finish the top',
  cutSoundhole: 'Saw the plate, cut the soundhole',
  archTopBraces: 'Split and arch the top braces',
  patchTop: 'Glue hole ring and bridge plate',
  braceTop: 'Brace the top',
  braceTopFine: 'Glue bars and fingers of the top',
  carveTop: 'Carve the top braces',
} as const satisfies Partial<Record<StageKey, string>>

export const BACK_TITLES = {
  joinBack: 'Join the back',
  thicknessBack: 'Thickness the back, saw it oversize',
  stripBack: 'Glue the strip over the back’s joint',
  archBackBraces: 'Split and arch the back braces',
  braceBack: 'Brace the back',
  carveBack: 'Carve the back braces',
} as const satisfies Partial<Record<StageKey, string>>

export const BOX_TITLES = {
  fitTop: 'Fit the top to the rim',
  glueTop: 'Glue the top to the rim',
  fitBack: 'Fit the back, sign and label',
  closeBox: 'Close the box and check its depths',
  trimPlates: 'Trim the plates flush',
  inlayEndWedge: 'Inlay the end wedge',
  cutLedges: 'Cut the binding ledges',
  bendBindings: 'Bend bindings and purflings',
  bindBox: 'Bind the box',
  scrapeBox: 'Scrape the bindings, sand the box',
} as const satisfies Partial<Record<StageKey, string>>

export const NECK_TITLES = {
  makeNeckBlank: 'Make the neck blank',
  cutRodChannel: 'Cut the rod channel, true the face',
  veneerHead: 'Glue the head veneers',
  shapeHead: 'Shape the head',
  cutNeckJoint: 'Cut the neck joint',
  slotSides: 'Slot the heel for the sides',
  carveNeck: 'Carve neck and heel',
  fitNeck: 'Fit the neck to the box',
} as const satisfies Partial<Record<StageKey, string>>

export const BOARD_TITLES = {
  makeBoard: 'Make the fingerboard',
  bindBoard: 'Bind the board',
  glueBoard: 'Glue the board to the neck',
  fretBoard: 'True the board and fret it',
  makeBridge: 'Make the bridge',
} as const satisfies Partial<Record<StageKey, string>>

export const FINISH_TITLES = {
  sandAndFill: 'Sand, mask and fill',
  finish: 'Build the finish',
  cure: 'Let the finish cure',
  polish: 'Level and polish',
  setNeck: 'Set the neck for good',
  glueBridge: 'Place and glue the bridge',
} as const satisfies Partial<Record<StageKey, string>>

export const SET_UP_TITLES = {
  levelFrets: 'Level, crown and polish the frets',
  makeNutAndSaddle: 'Make nut and saddle',
  fitHardware: 'Fit tuners and hardware',
  stringUp: 'String to pitch',
  settleSetUp: 'Set up again when it has settled',
  inspect: 'Inspect and write down as built',
  deliver: 'Pack and hand over',
  ownWork: 'Work of your own',
} as const satisfies Partial<Record<StageKey, string>>

/** A stage without a title does not compile. */
export const STAGE_TITLES: Readonly<Record<StageKey, string>> = {
  ...WOOD_TITLES,
  ...RIM_TITLES,
  ...TOP_TITLES,
  ...BACK_TITLES,
  ...BOX_TITLES,
  ...NECK_TITLES,
  ...BOARD_TITLES,
  ...FINISH_TITLES,
  ...SET_UP_TITLES,
}
