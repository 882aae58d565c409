/** The part of the plan that makes the neck, the strings and what they stand on. Lengths in mm; x runs along the centreline. */

export const FRET_FANS = ['square', 'fanned'] as const
export interface ScalePlan {
  /** Nut to saddle line along the centreline, uncompensated; of the bass string where the frets are fanned. */
  readonly lengthMm: number
  readonly jointFret: number
  readonly fan: (typeof FRET_FANS)[number]
  /** Of the treble string, where the frets are fanned. */
  readonly trebleLengthMm: number
  /** The fret that stays square to the centreline where they are fanned; 0 is the nut. */
  readonly squareFret: number
  /** How many frets there are. */
  readonly frets: number
}

export const BOARD_SURFACES = ['flat', 'single', 'compound'] as const
/** The fingerboard: straight edges through two widths, a square end. */
export interface BoardPlan {
  readonly nutWidthMm: number
  readonly widthAtTwelfthMm: number
  /** Beyond the last fret, on the centreline. */
  readonly endBeyondLastFretMm: number
  /** At the crest. */
  readonly thicknessMm: number
  readonly surface: (typeof BOARD_SURFACES)[number]
  /** At the nut; everywhere on a single radius. */
  readonly radiusMm: number
  /** At the square end of a compound radius. */
  readonly endRadiusMm: number
  /** How far the board's end lies under the plane of the frets, falling evenly from the joint. */
  readonly fallOffMm: number
  /** Of the binding on either long edge; 0 for none. */
  readonly bindingMm: number
  /** Frets that are marked, just before them; replaced whole. */
  readonly markersAt: readonly number[]
}

/** The fret wire and its slots. */
export interface FretsPlan {
  /** Over the board. */
  readonly crownMm: number
  readonly tangMm: number
  readonly slotWidthMm: number
  /** Under the crest; the bottom of a slot is straight. */
  readonly slotDepthMm: number
  /** Wire left standing at each end until the ends are dressed. */
  readonly overhangMm: number
}

export const STRING_MATERIALS = ['steel', 'nylon', 'fluorocarbon', 'woundOnSteel', 'woundOnNylon'] as const
export type StringMaterial = (typeof STRING_MATERIALS)[number]
export interface StringPlan {
  readonly material: StringMaterial
  readonly diameterMm: number
  /** Core of a wound string; null: not known, or plain. */
  readonly coreMm: number | null
  /** Grams a metre as the string's maker states it; null: by diameter and density, plain strings only. */
  readonly massGPerM: number | null
  /** What it is tuned to, in semitones as MIDI counts them: 69 is the A the pitch is given for. */
  readonly note: number
  /** One course with the next string. */
  readonly pairedWithNext: boolean
}

export interface StringsPlan {
  /** From bass to treble; replaced whole. */
  readonly set: readonly StringPlan[]
  /** Middle to middle of the outer strings. */
  readonly nutSpreadMm: number
  readonly saddleSpreadMm: number
  /** Between the strings of one course, edge to edge. */
  readonly pairGapMm: number
  /** Of the A over middle C. */
  readonly pitchHz: number
  /** Another tuning to compare with, a note for each string; null: the same. Replaced whole. */
  readonly otherNotes: readonly number[] | null
  /** Another scale to compare with; null: the same. */
  readonly otherScaleMm: number | null
}

/** Targets for setting up, strings at pitch. */
export interface SetupPlan {
  /** Under the outer strings, over fret 12, at the relief below. */
  readonly actionBassMm: number
  readonly actionTrebleMm: number
  /** Bottom of the nut's slots over the plane of the frets, at the outer strings. */
  readonly nutBassMm: number
  readonly nutTrebleMm: number
  readonly reliefMm: number
  /** Rise of the top and pull of the neck under strings, at the saddle. */
  readonly riseMm: number
}

export const STRING_HOLDS = ['pins', 'tie'] as const
export const COMPENSATIONS = ['entered', 'estimated'] as const
export const PIN_RUNS = ['square', 'withSaddle'] as const
export interface BridgePlan {
  /** Across the body. */
  readonly lengthMm: number
  readonly widthMm: number
  /** In the middle. */
  readonly thicknessMm: number
  readonly saddleWidthMm: number
  readonly saddleLengthMm: number
  readonly slotDepthMm: number
  /** How far the saddle's crown stands over the bridge, in the middle. */
  readonly saddleShowingMm: number
  /** The saddle's lean toward the tail. */
  readonly saddleTiltDeg: number
  /** From the bridge's front edge to the middle of the saddle's crown, on the centreline. */
  readonly saddleFromFrontMm: number
  readonly holds: (typeof STRING_HOLDS)[number]
  /** From the saddle's crown to the pins' or the tie holes' line, on the centreline. */
  readonly holdsBehindMm: number
  readonly pinRun: (typeof PIN_RUNS)[number]
  readonly pinSpreadMm: number
  /** Where tied strings leave the block, over the top. */
  readonly tieHoleOverTopMm: number
  readonly compensation: (typeof COMPENSATIONS)[number]
  readonly compensationBassMm: number
  readonly compensationTrebleMm: number
  /** The plate glued inside under the bridge; 0 thick for none. From the tail. */
  readonly plateMm: number
  readonly plateFromMm: number
  readonly plateToMm: number
  /** Its whole width at either end, tail side and neck side: straight between. */
  readonly plateTailWidthMm: number
  readonly plateNeckWidthMm: number
}

export const NECK_JOINTS = ['boltedTenon', 'dovetail', 'butt', 'sidesInHeel'] as const
export const RODS = ['none', 'fitted'] as const
export interface NeckPlan {
  readonly joint: (typeof NECK_JOINTS)[number]
  /** Across the heel at the back of the body. */
  readonly heelCapMm: number
  /** Of the tenon or the tail of the joint: across, and how deep it goes into the block. */
  readonly tenonWidthMm: number
  readonly tenonDepthMm: number
  /** Middle of each bolt or dowel under the top plate; replaced whole. */
  readonly boltsAtMm: readonly number[]
  readonly boltMm: number
  /** Both with the board. */
  readonly thicknessAtFirstMm: number
  readonly thicknessAtTenthMm: number
  /** Of the shaft's stock, before board and veneers. */
  readonly stockMm: number
  readonly rod: (typeof RODS)[number]
  readonly rodLengthMm: number
  readonly rodWidthMm: number
  /** Of its channel, from the face under the board. */
  readonly rodDepthMm: number
  /** Where the channel begins, from the nut toward the body; negative: in the head. */
  readonly rodFromNutMm: number
}

export const TUNER_SIDES = ['bothSides', 'bassSide'] as const
export interface HeadPlan {
  readonly angleDeg: number
  readonly lengthMm: number
  /** With its veneers. */
  readonly thicknessMm: number
  readonly faceVeneerMm: number
  readonly backVeneerMm: number
  readonly tuners: (typeof TUNER_SIDES)[number]
  /** From the nut along the head's face to the nearest post, and from post to post. */
  readonly firstPostMm: number
  readonly postSpacingMm: number
  /** From the centreline to the middle of the nearest post, and of the furthest. */
  readonly firstAcrossMm: number
  readonly lastAcrossMm: number
  /** Of the post's winding; 0 for rollers that lie across. */
  readonly postMm: number
  readonly holeMm: number
  /** Where the string meets the post, over the head's face; negative under it, in a slot. */
  readonly stringOverFaceMm: number
}
