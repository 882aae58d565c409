/** What is usual in a family where version 2 knew nothing. Common practice, no published source. */

/** From the string's middle to the board's edge, both sides together, and how wide strings usually lie at the saddle. */
export const SPREADS = {
  steelString: { besideMm: 7, saddleMm: 55 },
  nylonString: { besideMm: 9, saddleMm: 58 },
  small: { besideMm: 7, saddleMm: 42 },
} as const

const string = (
  material: string,
  diameterMm: number,
  note: number,
  coreMm: number | null = null,
  massGPerM: number | null = null,
) => ({ material, diameterMm, coreMm, massGPerM, note, pairedWithNext: false })

/** Masses of wound strings are examples. */
export const SETS = {
  steelString: [
    string('woundOnSteel', 1.35, 40, 0.41, 9.98),
    string('woundOnSteel', 1.07, 45, 0.39, 6.28),
    string('woundOnSteel', 0.81, 50, 0.36, 3.66),
    string('woundOnSteel', 0.61, 55, 0.33, 2.07),
    string('steel', 0.4064, 59),
    string('steel', 0.3048, 64),
  ],
  nylonString: [
    string('woundOnNylon', 1.09, 40, 0.75, 5.9),
    string('woundOnNylon', 0.89, 45, 0.65, 3.5),
    string('woundOnNylon', 0.74, 50, 0.55, 1.95),
    string('nylon', 1.02, 55),
    string('nylon', 0.82, 59),
    string('nylon', 0.72, 64),
  ],
  small: [string('nylon', 0.62, 67), string('nylon', 0.92, 60), string('nylon', 0.72, 64), string('nylon', 0.58, 69)],
} as const

export const MARKERS: Readonly<Record<keyof typeof SETS, readonly number[]>> = {
  steelString: [3, 5, 7, 9, 12, 15, 17],
  nylonString: [],
  small: [5, 7, 10, 12, 15],
}

export const BOARDS = {
  steelString: {
    thicknessMm: 6.2,
    surface: 'single',
    radiusMm: 400,
    endRadiusMm: 500,
    fallOffMm: 0.3,
    bindingMm: 0,
  },
  nylonString: { thicknessMm: 6.5, surface: 'flat', radiusMm: 500, endRadiusMm: 500, fallOffMm: 0, bindingMm: 0 },
  small: { thicknessMm: 4.5, surface: 'flat', radiusMm: 300, endRadiusMm: 300, fallOffMm: 0, bindingMm: 0 },
} as const

export const FRETS = {
  steelString: { crownMm: 1.1, tangMm: 1.6, slotWidthMm: 0.6, slotDepthMm: 3, overhangMm: 1.5 },
  nylonString: { crownMm: 1.1, tangMm: 1.5, slotWidthMm: 0.55, slotDepthMm: 2.8, overhangMm: 1.5 },
  small: { crownMm: 0.9, tangMm: 1.4, slotWidthMm: 0.55, slotDepthMm: 2.2, overhangMm: 1.2 },
} as const

export const SETUPS = {
  steelString: {
    actionBassMm: 2.4,
    actionTrebleMm: 1.8,
    nutBassMm: 0.5,
    nutTrebleMm: 0.5,
    reliefMm: 0.15,
    riseMm: 0.8,
  },
  nylonString: { actionBassMm: 3.8, actionTrebleMm: 3, nutBassMm: 0.8, nutTrebleMm: 0.8, reliefMm: 0.1, riseMm: 0.3 },
  small: { actionBassMm: 2.6, actionTrebleMm: 2.4, nutBassMm: 0.5, nutTrebleMm: 0.5, reliefMm: 0.05, riseMm: 0.1 },
} as const

export const BRIDGES = {
  steelString: {
    lengthMm: 155,
    widthMm: 32,
    thicknessMm: 9,
    saddleWidthMm: 3,
    saddleBeyondMm: 19,
    slotDepthMm: 6.5,
    saddleShowingMm: 3.2,
    saddleTiltDeg: 0,
    saddleFromFrontMm: 8,
    holds: 'pins',
    holdsBehindMm: 18,
    pinRun: 'square',
    tieHoleOverTopMm: 4,
    compensationBassMm: 4.6,
    compensationTrebleMm: 2.2,
    plateMm: 2.4,
    plateBehindMm: 40,
    plateBeforeMm: 20,
  },
  nylonString: {
    lengthMm: 185,
    widthMm: 28,
    thicknessMm: 7.5,
    saddleWidthMm: 2.5,
    saddleBeyondMm: 22,
    slotDepthMm: 4.5,
    saddleShowingMm: 3.4,
    saddleTiltDeg: 0,
    saddleFromFrontMm: 6,
    holds: 'tie',
    holdsBehindMm: 12,
    pinRun: 'square',
    tieHoleOverTopMm: 4,
    compensationBassMm: 2,
    compensationTrebleMm: 1.5,
    plateMm: 0,
    plateBehindMm: 30,
    plateBeforeMm: 30,
  },
  small: {
    lengthMm: 90,
    widthMm: 22,
    thicknessMm: 6,
    saddleWidthMm: 3,
    saddleBeyondMm: 10,
    slotDepthMm: 3.5,
    saddleShowingMm: 2.5,
    saddleTiltDeg: 0,
    saddleFromFrontMm: 5,
    holds: 'tie',
    holdsBehindMm: 10,
    pinRun: 'square',
    tieHoleOverTopMm: 3.5,
    compensationBassMm: 1.5,
    compensationTrebleMm: 1.5,
    plateMm: 1.8,
    plateBehindMm: 14,
    plateBeforeMm: 14,
  },
} as const

export const NECKS = {
  steelString: {
    joint: 'boltedTenon',
    heelCapMm: 22,
    boltMm: 6,
    thicknessAtFirstMm: 21,
    thicknessAtTenthMm: 23,
    stockMm: 20,
    rod: 'fitted',
    rodWidthMm: 6.35,
    rodDepthMm: 9.5,
    rodFromNutMm: 5,
  },
  nylonString: {
    joint: 'sidesInHeel',
    heelCapMm: 26,
    boltMm: 6,
    thicknessAtFirstMm: 21.5,
    thicknessAtTenthMm: 24,
    stockMm: 20,
    rod: 'none',
    rodWidthMm: 6,
    rodDepthMm: 9,
    rodFromNutMm: 5,
  },
  small: {
    joint: 'butt',
    heelCapMm: 16,
    boltMm: 6,
    thicknessAtFirstMm: 17,
    thicknessAtTenthMm: 19,
    stockMm: 16,
    rod: 'none',
    rodWidthMm: 5,
    rodDepthMm: 6,
    rodFromNutMm: 5,
  },
} as const

export const HEADS = {
  steelString: {
    angleDeg: 15,
    lengthMm: 175,
    thicknessMm: 14.5,
    faceVeneerMm: 1.5,
    backVeneerMm: 0,
    tuners: 'bothSides',
    firstPostMm: 32,
    postSpacingMm: 40,
    firstAcrossMm: 20,
    lastAcrossMm: 25,
    postMm: 6,
    holeMm: 10,
    stringOverFaceMm: 7,
  },
  nylonString: {
    angleDeg: 15,
    lengthMm: 200,
    thicknessMm: 20,
    faceVeneerMm: 2,
    backVeneerMm: 0,
    tuners: 'bothSides',
    firstPostMm: 45,
    postSpacingMm: 40,
    firstAcrossMm: 20,
    lastAcrossMm: 15,
    postMm: 0,
    holeMm: 10,
    stringOverFaceMm: 0,
  },
  small: {
    angleDeg: 13,
    lengthMm: 130,
    thicknessMm: 12.5,
    faceVeneerMm: 1,
    backVeneerMm: 0,
    tuners: 'bothSides',
    firstPostMm: 26,
    postSpacingMm: 34,
    firstAcrossMm: 16,
    lastAcrossMm: 19,
    postMm: 5,
    holeMm: 8,
    stringOverFaceMm: 5.5,
  },
} as const
