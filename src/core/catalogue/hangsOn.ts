import { CUTAWAY_FIELDS, HALF_WIDTH_FIELDS, KEY_WIDTH_FIELDS, type PlanField } from '../planFields.ts'

// Fields that go together: what numbers hang on.

export const OUTLINE = [
  'outline.lengthMm',
  'outline.kind',
  'outline.pieces',
  ...KEY_WIDTH_FIELDS,
  ...HALF_WIDTH_FIELDS,
  'outline.drawnPath',
] as const satisfies readonly PlanField[]
/** The treble half besides. */
export const BOTH = [...OUTLINE, ...CUTAWAY_FIELDS] as const satisfies readonly PlanField[]
/** The length of the body hangs on the chain or the path where those give it, else on its own field. */
export const LENGTH = [
  'outline.lengthMm',
  'outline.kind',
  'outline.pieces',
  'outline.drawnPath',
] as const satisfies readonly PlanField[]
export const STEP = ['rim.stationStepMm'] as const satisfies readonly PlanField[]
export const STATIONS = [...OUTLINE, ...STEP] as const
/** Where the treble side joins in: the highest place of either edge. */
export const BOTH_STATIONS = [...BOTH, ...STEP] as const
export const DEPTHS = ['rim.depthAtTailMm', 'rim.depthAtNeckMm'] as const satisfies readonly PlanField[]
export const BACK = [...DEPTHS, 'back.form', 'back.radiusMm'] as const satisfies readonly PlanField[]
/** The scale on the centreline; where the joint's fret lies on it. */
export const SCALE = ['scale.lengthMm', 'scale.fan', 'scale.trebleLengthMm'] as const satisfies readonly PlanField[]
export const JOINT = [...SCALE, 'scale.jointFret'] as const satisfies readonly PlanField[]
export const SETUP = [
  'setup.actionBassMm',
  'setup.actionTrebleMm',
  'setup.nutBassMm',
  'setup.nutTrebleMm',
] as const satisfies readonly PlanField[]
/** How far behind its line the saddle stands: entered, or estimated from the strings. */
export const COMPENSATION = [
  ...SCALE,
  ...SETUP,
  'bridge.compensation',
  'bridge.compensationBassMm',
  'bridge.compensationTrebleMm',
  'strings.set',
  'strings.pitchHz',
] as const satisfies readonly PlanField[]
/** What the neck has to clear: heights at the saddle, on the board, and the saddle's place. */
export const NECK_ASKS = [
  ...COMPENSATION,
  'scale.jointFret',
  'board.thicknessMm',
  'frets.crownMm',
  'bridge.thicknessMm',
  'bridge.saddleShowingMm',
] as const satisfies readonly PlanField[]
/** A flat of the upper bout falls as the neck asks, before stringing, so everything on it hangs on the neck as well. */
export const TOP = [
  'top.form',
  'top.radiusMm',
  'top.flatFromMm',
  'top.flatSlope',
  'top.flatSlopeDeg',
  ...NECK_ASKS,
  'setup.riseMm',
] as const satisfies readonly PlanField[]
export const PLATE = [...TOP, 'top.riseAtSaddleMm'] as const satisfies readonly PlanField[]
/** Without the rise under strings. */
export const STRUNG_PLATE: readonly PlanField[] = PLATE.filter((field) => field !== 'setup.riseMm')
export const REFERENCE = [...TOP, 'rim.topAllowanceMm'] as const satisfies readonly PlanField[]
export const CUT = [...BACK, ...REFERENCE, 'rim.backAllowanceMm'] as const satisfies readonly PlanField[]
export const THICK = ['rim.sideThicknessMm'] as const satisfies readonly PlanField[]
export const BOARD_END = [...JOINT, 'scale.frets', 'board.endBeyondLastFretMm'] as const satisfies readonly PlanField[]
export const BOARD_WIDTH = ['board.nutWidthMm', 'board.widthAtTwelfthMm'] as const satisfies readonly PlanField[]
export const BOARD = [...BOARD_END, ...BOARD_WIDTH] as const satisfies readonly PlanField[]
export const RING = ['rosette.rings'] as const satisfies readonly PlanField[]
export const HIDDEN = [...LENGTH, ...BOARD, 'soundhole.centreMm', ...RING] as const satisfies readonly PlanField[]
export const GAP = [...HIDDEN, 'rosette.gapMarginMm'] as const satisfies readonly PlanField[]
export const block = (end: 'tail' | 'neck') => {
  const width = [`blocks.${end}.widthMm`] as const
  const shape = [...OUTLINE, ...THICK, ...width] as const
  const thickness = `blocks.${end}.thicknessMm` as const
  // The tail block's face never reaches the flat of the upper bout; the faces inside can.
  const faceTop = end === 'tail' ? [...LENGTH, 'top.form' as const, 'top.radiusMm' as const] : [...OUTLINE, ...TOP]
  const faceHeight = [...faceTop, ...THICK, ...BACK]
  const insideHeight = [...OUTLINE, ...THICK, ...TOP, ...BACK, thickness] as const
  const topSlope = [...OUTLINE, ...THICK, ...TOP, thickness] as const
  const backSlope = [...LENGTH, ...THICK, ...BACK, thickness] as const
  return { width, shape, faceHeight, insideHeight, topSlope, backSlope }
}
