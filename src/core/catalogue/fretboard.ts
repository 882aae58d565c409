import type { NumberKey } from '../numbers.ts'
import type { PlanField } from '../planFields.ts'
import { type About, about, BOARD_THICKNESS, DEPTH, FRET_SLOT, onePlace } from './about.ts'
import { BOARD_END, BOARD_WIDTH, JOINT, LENGTH, SCALE, SETUP } from './hangsOn.ts'

const SPAN = [...SCALE, 'scale.frets', 'board.endBeyondLastFretMm'] as const satisfies readonly PlanField[]
const THICK = ['board.thicknessMm'] as const satisfies readonly PlanField[]
/** A compound radius changes evenly from nut to end. */
const RADIUS = ['board.surface', 'board.radiusMm', 'board.endRadiusMm', ...SPAN] as const satisfies readonly PlanField[]
const FAN = [
  'scale.squareFret',
  'strings.nutSpreadMm',
  'strings.saddleSpreadMm',
] as const satisfies readonly PlanField[]
const FRETS = [...SCALE, 'scale.frets'] as const satisfies readonly PlanField[]
/** A fanned fret crosses the tapering board aslant. */
const CROSSING = [...FRETS, ...FAN, ...BOARD_WIDTH] as const satisfies readonly PlanField[]
/** Where the nut's line leaves the board's edges. */
const NUT_ENDS = [
  ...SCALE,
  'scale.squareFret',
  'strings.nutSpreadMm',
  ...BOARD_WIDTH,
] as const satisfies readonly PlanField[]
const STRINGS_OVER = [
  ...FRETS,
  ...FAN,
  ...RADIUS,
  ...SETUP,
  'scale.jointFret',
  'board.fallOffMm',
] as const satisfies readonly PlanField[]
const equalTemperament = { source: 'published' } as const

export const FRETBOARD_ABOUT = {
  'scale.lengthMm': about('fineLength', SCALE, { tolerance: FRET_SLOT, measured: onePlace('rule') }),
  'scale.bassMm': about('fineLength', ['scale.lengthMm']),
  'scale.trebleMm': about('fineLength', SCALE),
  'scale.jointToSaddleMm': about('bodyLength', JOINT, {
    ...equalTemperament,
    tolerance: 0.3,
    measured: onePlace('rule'),
  }),
  'scale.saddleLineMm': about('bodyLength', [...LENGTH, ...JOINT], equalTemperament),
  'scale.boardEndMm': about('bodyLength', [...LENGTH, ...BOARD_END], { measured: onePlace('rule') }),
  'board.nutWidthMm': about('bodyLength', ['board.nutWidthMm'], {
    tolerance: 0.3,
    measured: onePlace('caliper', 'board.nutWidthMm'),
  }),
  'board.widthAtTwelfthMm': about('bodyLength', ['board.widthAtTwelfthMm'], {
    tolerance: 0.3,
    measured: onePlace('caliper', 'board.widthAtTwelfthMm'),
  }),
  'board.widthAtJointMm': about('bodyLength', [...BOARD_WIDTH, 'scale.jointFret'], {
    tolerance: 0.3,
    measured: onePlace('caliper'),
  }),
  'board.widthAtEndMm': about('bodyLength', [...BOARD_WIDTH, ...SPAN], {
    tolerance: 0.3,
    measured: onePlace('caliper'),
  }),
  'board.lengthMm': about('bodyLength', [...SPAN, ...NUT_ENDS], {
    ...equalTemperament,
    tolerance: DEPTH,
    measured: onePlace('rule'),
  }),
  'board.nutBassAheadMm': about('fineLength', NUT_ENDS, { tolerance: FRET_SLOT, measured: onePlace('rule') }),
  'board.nutTrebleAheadMm': about('fineLength', NUT_ENDS, { tolerance: FRET_SLOT, measured: onePlace('rule') }),
  'board.nutToJointMm': about('fineLength', JOINT, {
    ...equalTemperament,
    tolerance: FRET_SLOT,
    measured: onePlace('rule'),
  }),
  'board.overBodyMm': about('bodyLength', BOARD_END, { tolerance: DEPTH, measured: onePlace('rule') }),
  'board.thicknessMm': about('thickness', THICK, {
    tolerance: BOARD_THICKNESS,
    measured: onePlace('thicknessCaliper', 'board.thicknessMm'),
  }),
  'board.edgeAtNutMm': about('thickness', [...THICK, 'board.surface', 'board.radiusMm', 'board.nutWidthMm'], {
    tolerance: BOARD_THICKNESS,
    measured: onePlace('caliper'),
  }),
  'board.edgeAtJointMm': about('thickness', [...THICK, ...RADIUS, ...BOARD_WIDTH, 'scale.jointFret'], {
    tolerance: BOARD_THICKNESS,
    measured: onePlace('caliper'),
  }),
  'board.edgeAtEndMm': about('thickness', [...THICK, ...RADIUS, ...BOARD_WIDTH], {
    tolerance: BOARD_THICKNESS,
    measured: onePlace('caliper'),
  }),
  'board.slotDepthMm': about('thickness', ['frets.slotDepthMm'], {
    tolerance: BOARD_THICKNESS,
    measured: onePlace('depthGauge', 'frets.slotDepthMm'),
  }),
  'board.slotWidthMm': about('thickness', ['frets.slotWidthMm'], {
    tolerance: 0.02,
    measured: onePlace('feelerGauge', 'frets.slotWidthMm'),
  }),
  'board.slotAtEdgeMm': about('thickness', ['frets.slotDepthMm', ...RADIUS, ...FAN, ...BOARD_WIDTH, 'board.bindingMm']),
  'board.underTangMm': about('thickness', [
    'frets.slotDepthMm',
    'frets.tangMm',
    ...RADIUS,
    ...FAN,
    ...BOARD_WIDTH,
    'board.bindingMm',
  ]),
  'board.leftUnderSlotMm': about('thickness', [...THICK, 'frets.slotDepthMm']),
  'board.fallOffMm': about('thickness', ['board.fallOffMm'], {
    tolerance: 0.05,
    measured: onePlace('feelerGauge', 'board.fallOffMm'),
  }),
  'frets[].number': about('count', ['scale.frets']),
  'frets[].fromNutMm': about('fineLength', FRETS, {
    ...equalTemperament,
    tolerance: FRET_SLOT,
    measured: onePlace('rule'),
  }),
  'frets[].fromLastMm': about('fineLength', FRETS, equalTemperament),
  'frets[].toSaddleMm': about('fineLength', FRETS, equalTemperament),
  'frets[].bassEdgeMm': about('fineLength', CROSSING, { tolerance: FRET_SLOT, measured: onePlace('rule') }),
  'frets[].trebleEdgeMm': about('fineLength', CROSSING, { tolerance: FRET_SLOT, measured: onePlace('rule') }),
  'frets[].slantRad': about('angle', [...FRETS, ...FAN]),
  'frets[].widthMm': about('bodyLength', [...BOARD_WIDTH, 'scale.frets']),
  'frets[].slotMm': about('bodyLength', [...CROSSING, 'board.bindingMm']),
  'frets[].wireMm': about('bodyLength', [...CROSSING, 'frets.overhangMm']),
  'frets[].radiusMm': about('bodyLength', RADIUS, { measured: onePlace('radiusGauge') }),
  'frets[].edgeDropMm': about('thickness', [...RADIUS, ...BOARD_WIDTH]),
  'frets[].fallOffMm': about('thickness', [...BOARD_END, 'board.fallOffMm']),
  'frets[].bassOverMm': about('thickness', STRINGS_OVER),
  'frets[].trebleOverMm': about('thickness', STRINGS_OVER),
  'markers[].fret': about('count', ['board.markersAt', 'scale.frets']),
  'markers[].fromNutMm': about('bodyLength', [...FRETS, 'board.markersAt'], {
    ...equalTemperament,
    tolerance: 0.3,
    measured: onePlace('rule'),
  }),
  'markers[].acrossMm': about('bodyLength', [...BOARD_WIDTH, 'board.markersAt', 'scale.frets'], { source: 'practice' }),
} as const satisfies Partial<Record<NumberKey, About>>
