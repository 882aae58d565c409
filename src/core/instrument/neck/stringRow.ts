import type { Figure } from '../../figure.ts'

/** What is known about one string in place, bass to treble. Lengths mm. */
export interface StringRow {
  /** Across at the nut, bass negative, from the board's bass edge, and at the saddle. */
  readonly nutAcrossMm: number
  readonly nutFromBassEdgeMm: number
  readonly saddleAcrossMm: number
  readonly scaleMm: number
  readonly diameterMm: number
  readonly massGPerM: Figure
  readonly frequencyHz: number
  readonly tensionN: Figure
  /** In what carries the pull: the plain string, or the core. */
  readonly stressMPa: Figure
  readonly otherFrequencyHz: number
  readonly otherTensionN: Figure
  /** Bottom of the nut's slot over the board, the string over the crown of fret 1 and of fret 12. */
  readonly slotOverBoardMm: number
  readonly overFirstMm: number
  readonly overTwelfthMm: number
  /** Of the saddle over the bridge under this string. */
  readonly saddleShowingMm: number
  readonly breakRad: number
  /** Estimated for this string alone, and how far its crown would stand behind the saddle's straight line; negative before it. */
  readonly compensationMm: Figure
  readonly crownBehindLineMm: Figure
}

export interface StringSetNumbers {
  readonly count: number
  /** Of the strings whose mass is known. */
  readonly tensionN: number
  readonly torqueNm: number
  readonly otherTensionN: number
  readonly otherTorqueNm: number
  /** Between neighbouring courses, edge to edge. */
  readonly gapAtNutMm: number
  readonly gapAtSaddleMm: number
  /** From the board's edge to the near edge of the outer strings, at the nut; and the least anywhere over the board. */
  readonly bassEdgeAtNutMm: number
  readonly trebleEdgeAtNutMm: number
  readonly leastEdgeMm: number
}

/** What the instrument is set up to, strings at pitch: as entered. */
export interface SetupNumbers {
  readonly actionBassMm: number
  readonly actionTrebleMm: number
  readonly nutBassMm: number
  readonly nutTrebleMm: number
  readonly reliefMm: number
}
