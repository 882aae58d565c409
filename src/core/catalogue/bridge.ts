import type { NumberKey } from '../numbers.ts'
import type { PlanField } from '../planFields.ts'
import { type About, about, onePlace, SADDLE_LINE } from './about.ts'
import { COMPENSATION, JOINT, LENGTH, OUTLINE, PLATE, SCALE } from './hangsOn.ts'

const BASS = [
  'scale.lengthMm',
  'setup.actionBassMm',
  'setup.nutBassMm',
  'strings.set',
  'strings.pitchHz',
  'bridge.compensation',
  'bridge.compensationBassMm',
] as const satisfies readonly PlanField[]
const TREBLE = [
  ...SCALE,
  'setup.actionTrebleMm',
  'setup.nutTrebleMm',
  'strings.set',
  'strings.pitchHz',
  'bridge.compensation',
  'bridge.compensationTrebleMm',
] as const satisfies readonly PlanField[]
const FAN = ['scale.squareFret'] as const satisfies readonly PlanField[]
const SLANT = [...COMPENSATION, ...FAN, 'strings.saddleSpreadMm'] as const satisfies readonly PlanField[]
const MIDDLE = [...JOINT, ...COMPENSATION] as const satisfies readonly PlanField[]
export const FRONT = [...MIDDLE, 'bridge.saddleFromFrontMm'] as const satisfies readonly PlanField[]
/** The top where the bridge stands. */
const UNDER = [...OUTLINE, ...PLATE, ...FRONT, 'bridge.widthMm'] as const satisfies readonly PlanField[]
const HOLDS = [...LENGTH, ...MIDDLE, 'bridge.holdsBehindMm'] as const satisfies readonly PlanField[]
export const PINS = [
  ...HOLDS,
  ...SLANT,
  'bridge.holds',
  'bridge.pinRun',
  'bridge.pinSpreadMm',
] as const satisfies readonly PlanField[]
const BEHIND = [
  ...SLANT,
  'bridge.holds',
  'bridge.holdsBehindMm',
  'bridge.pinRun',
  'bridge.pinSpreadMm',
  'strings.pairGapMm',
] as const satisfies readonly PlanField[]
const SLOT = [
  'bridge.saddleFromFrontMm',
  'bridge.saddleShowingMm',
  'bridge.saddleTiltDeg',
  'bridge.saddleWidthMm',
  'bridge.saddleLengthMm',
] as const satisfies readonly PlanField[]
const estimate = { standing: 'estimate' } as const
const compensated = { ...estimate, source: 'memory' } as const

export const BRIDGE_ABOUT = {
  'bridge.saddleBassAtMm': about('bodyLength', [...LENGTH, ...JOINT, ...BASS, ...FAN], {
    ...estimate,
    tolerance: SADDLE_LINE,
    measured: onePlace('rule'),
  }),
  'bridge.saddleTrebleAtMm': about('bodyLength', [...LENGTH, ...JOINT, ...TREBLE, ...FAN], {
    ...estimate,
    tolerance: SADDLE_LINE,
    measured: onePlace('rule'),
  }),
  'bridge.saddleMiddleAtMm': about('bodyLength', [...LENGTH, ...MIDDLE], estimate),
  'bridge.jointToSaddleMm': about('bodyLength', MIDDLE, {
    ...estimate,
    tolerance: SADDLE_LINE,
    measured: onePlace('rule'),
  }),
  'bridge.twelfthToBassMm': about('fineLength', BASS, {
    ...estimate,
    tolerance: SADDLE_LINE,
    measured: onePlace('rule'),
  }),
  'bridge.twelfthToTrebleMm': about('fineLength', TREBLE, {
    ...estimate,
    tolerance: SADDLE_LINE,
    measured: onePlace('rule'),
  }),
  'bridge.compensationBassMm': about('thickness', BASS, compensated),
  'bridge.compensationTrebleMm': about('thickness', TREBLE, compensated),
  'bridge.slantRad': about('angle', SLANT, { ...estimate, measured: onePlace('protractor') }),
  'bridge.slotEndsDifferMm': about('thickness', [...SLANT, 'bridge.saddleLengthMm'], {
    ...estimate,
    tolerance: 0.2,
    measured: onePlace('rule'),
  }),
  'bridge.slotFromCrownMm': about('thickness', ['bridge.saddleTiltDeg', 'bridge.saddleShowingMm']),
  'bridge.crownMovesMm': about('thickness', ['bridge.saddleTiltDeg']),
  'bridge.slotFrontAtBassMm': about('thickness', [...SLANT, ...SLOT], {
    ...estimate,
    tolerance: 0.2,
    measured: onePlace('caliper'),
  }),
  'bridge.slotFrontAtTrebleMm': about('thickness', [...SLANT, ...SLOT], {
    ...estimate,
    tolerance: 0.2,
    measured: onePlace('caliper'),
  }),
  'bridge.saddleHeightMm': about('thickness', ['bridge.saddleShowingMm', 'bridge.slotDepthMm'], {
    tolerance: 0.2,
    measured: onePlace('caliper'),
  }),
  'bridge.woodUnderSlotMm': about('thickness', ['bridge.thicknessMm', 'bridge.slotDepthMm'], {
    measured: onePlace('depthGauge'),
  }),
  'bridge.frontEdgeAtMm': about('bodyLength', [...LENGTH, ...FRONT], {
    ...estimate,
    tolerance: SADDLE_LINE,
    measured: onePlace('rule'),
  }),
  'bridge.backEdgeAtMm': about('bodyLength', [...LENGTH, ...FRONT, 'bridge.widthMm'], estimate),
  'bridge.jointToFrontMm': about('bodyLength', FRONT, {
    ...estimate,
    tolerance: SADDLE_LINE,
    measured: onePlace('rule'),
  }),
  'bridge.undersideRadiusMm': about('domeRadius', [...UNDER, 'bridge.lengthMm']),
  'bridge.hollowAcrossMm': about('thickness', [...UNDER, 'bridge.lengthMm'], {
    tolerance: 0.1,
    measured: onePlace('straightedge'),
  }),
  'bridge.hollowAlongMm': about('thickness', UNDER, { tolerance: 0.05, measured: onePlace('straightedge') }),
  'bridge.thicknessMm': about('thickness', ['bridge.thicknessMm'], {
    tolerance: 0.1,
    measured: onePlace('caliper', 'bridge.thicknessMm'),
  }),
  'bridge.lengthMm': about('bodyLength', ['bridge.lengthMm'], {
    tolerance: 0.5,
    measured: onePlace('caliper', 'bridge.lengthMm'),
  }),
  'bridge.widthMm': about('bodyLength', ['bridge.widthMm'], {
    tolerance: 0.5,
    measured: onePlace('caliper', 'bridge.widthMm'),
  }),
  'bridge.slotWidthMm': about('thickness', ['bridge.saddleWidthMm'], {
    tolerance: 0.05,
    measured: onePlace('caliper', 'bridge.saddleWidthMm'),
  }),
  'bridge.slotLengthMm': about('bodyLength', ['bridge.saddleLengthMm'], {
    tolerance: 0.3,
    measured: onePlace('caliper', 'bridge.saddleLengthMm'),
  }),
  'bridge.slotDepthMm': about('thickness', ['bridge.slotDepthMm'], {
    tolerance: 0.2,
    measured: onePlace('depthGauge', 'bridge.slotDepthMm'),
  }),
  'bridge.holdsAtMm': about('bodyLength', HOLDS, { ...estimate, tolerance: SADDLE_LINE, measured: onePlace('rule') }),
  'bridge.holdsSlantRad': about('angle', [...SLANT, 'bridge.pinRun']),
  'bridge.plateBehindHoldsMm': about('bodyLength', [...PINS, 'bridge.plateMm', 'bridge.plateFromMm'], estimate),
  'bridge.plateBeforeSaddleMm': about(
    'bodyLength',
    [...LENGTH, ...MIDDLE, ...FAN, 'bridge.plateMm', 'bridge.plateToMm'],
    estimate,
  ),
  'pins[].atMm': about('bodyLength', [...PINS, 'strings.pairGapMm'], {
    ...estimate,
    tolerance: 0.3,
    measured: onePlace('rule'),
  }),
  'pins[].acrossMm': about(
    'across',
    ['strings.set', 'strings.saddleSpreadMm', 'strings.pairGapMm', 'bridge.holds', 'bridge.pinSpreadMm'],
    { source: 'practice', tolerance: 0.3, measured: onePlace('rule') },
  ),
  'pins[].behindSaddleMm': about('bodyLength', BEHIND, estimate),
} as const satisfies Partial<Record<NumberKey, About>>
