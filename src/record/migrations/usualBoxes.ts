/** What an instrument of version 3 gets of a box, as it usually is in a family. Common practice, no published source. Never touched again. */
interface UsualBox {
  readonly blankEndMm: number
  readonly blankHeightMm: number
  readonly blankWidthMm: number
  readonly crossPatchMm: number
  readonly crossPatchThicknessMm: number
  readonly holeRingMm: number
  readonly holeRingSetBackMm: number
  readonly holeRingThicknessMm: number
  readonly stripWidthMm: number
  readonly stripThicknessMm: number
}

export const BRACING = {
  steelString: {
    blankEndMm: 10,
    blankHeightMm: 2,
    blankWidthMm: 0.5,
    crossPatchMm: 0,
    crossPatchThicknessMm: 1.5,
    holeRingMm: 0,
    holeRingSetBackMm: 0,
    holeRingThicknessMm: 2,
    stripWidthMm: 0,
    stripThicknessMm: 2.5,
  },
  nylonString: {
    blankEndMm: 10,
    blankHeightMm: 2,
    blankWidthMm: 0.5,
    crossPatchMm: 0,
    crossPatchThicknessMm: 1.5,
    holeRingMm: 0,
    holeRingSetBackMm: 0,
    holeRingThicknessMm: 1.8,
    stripWidthMm: 0,
    stripThicknessMm: 2.5,
  },
  small: {
    blankEndMm: 6,
    blankHeightMm: 1.5,
    blankWidthMm: 0.4,
    crossPatchMm: 0,
    crossPatchThicknessMm: 1,
    holeRingMm: 0,
    holeRingSetBackMm: 0,
    holeRingThicknessMm: 1.5,
    stripWidthMm: 0,
    stripThicknessMm: 1.8,
  },
} as const satisfies Readonly<Record<string, UsualBox>>

export const EDGES = {
  steelString: {
    purflingDepthMm: 1.8,
    trimMm: 15,
    wedgeTopMm: 18,
    wedgeBackMm: 12,
    wedgeDepthMm: 2.2,
    wedgePurflingMm: 0.6,
    backStripMm: 0,
    backStripDepthMm: 1.5,
  },
  nylonString: {
    purflingDepthMm: 1.6,
    trimMm: 15,
    wedgeTopMm: 16,
    wedgeBackMm: 12,
    wedgeDepthMm: 2,
    wedgePurflingMm: 0.6,
    backStripMm: 0,
    backStripDepthMm: 1.5,
  },
  small: {
    purflingDepthMm: 1.2,
    trimMm: 12,
    wedgeTopMm: 10,
    wedgeBackMm: 7,
    wedgeDepthMm: 1.7,
    wedgePurflingMm: 0.5,
    backStripMm: 0,
    backStripDepthMm: 1,
  },
} as const

export const BRIDGE_PLATES = {
  steelString: { plateTailWidthMm: 180, plateNeckWidthMm: 76 },
  nylonString: { plateTailWidthMm: 190, plateNeckWidthMm: 190 },
  small: { plateTailWidthMm: 95, plateNeckWidthMm: 85 },
} as const

export const CUTTING = { plateMarginMm: 6, lengthMm: 10, widthMm: 3, thicknessMm: 1, kerfMm: 1.2, trimMm: 10 } as const
export const WOODS = {
  top: '',
  back: '',
  sides: '',
  neck: '',
  board: '',
  bridge: '',
  braces: '',
  linings: '',
  blocks: '',
  edges: '',
  fittings: '',
} as const
