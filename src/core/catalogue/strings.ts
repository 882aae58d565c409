import type { NumberKey } from '../numbers.ts'
import type { PlanField } from '../planFields.ts'
import { ACTION, type About, about, NUT_SLOT, onePlace, RELIEF } from './about.ts'
import { BOARD_WIDTH, COMPENSATION, OUTLINE, STRUNG_PLATE, SCALE, SETUP } from './hangsOn.ts'

const SET = ['strings.set'] as const satisfies readonly PlanField[]
const SPACED = [...SET, 'strings.pairGapMm'] as const satisfies readonly PlanField[]
const AT_NUT = [...SPACED, 'strings.nutSpreadMm'] as const satisfies readonly PlanField[]
const AT_SADDLE = [...SPACED, 'strings.saddleSpreadMm'] as const satisfies readonly PlanField[]
const IN_PLAN = [...AT_NUT, 'strings.saddleSpreadMm'] as const satisfies readonly PlanField[]
/** Where fret and saddle lines lie under a string that is not the middle one. */
const OWN_SCALE = [...IN_PLAN, ...SCALE, 'scale.squareFret'] as const satisfies readonly PlanField[]
const RADIUS = [
  'board.surface',
  'board.radiusMm',
  'board.endRadiusMm',
  'scale.frets',
  'board.endBeyondLastFretMm',
] as const satisfies readonly PlanField[]
const HEIGHTS = [...OWN_SCALE, ...RADIUS, ...SETUP] as const satisfies readonly PlanField[]
const PULL = [...OWN_SCALE, 'strings.pitchHz'] as const satisfies readonly PlanField[]
const OTHER = [...PULL, 'strings.otherNotes', 'strings.otherScaleMm'] as const satisfies readonly PlanField[]
const ARM = ['bridge.thicknessMm', 'bridge.saddleShowingMm'] as const satisfies readonly PlanField[]
const HOLDS = [
  'bridge.holds',
  'bridge.holdsBehindMm',
  'bridge.pinRun',
  'bridge.pinSpreadMm',
  'bridge.tieHoleOverTopMm',
] as const satisfies readonly PlanField[]
const law = { source: 'published' } as const
const estimate = { standing: 'estimate', source: 'memory' } as const

export const STRING_ABOUT = {
  'strings[].nutAcrossMm': about('fineLength', AT_NUT, { tolerance: 0.1, measured: onePlace('rule') }),
  'strings[].nutFromBassEdgeMm': about('fineLength', [...AT_NUT, 'board.nutWidthMm'], {
    tolerance: 0.1,
    measured: onePlace('rule'),
  }),
  'strings[].saddleAcrossMm': about('fineLength', AT_SADDLE, { tolerance: 0.3, measured: onePlace('rule') }),
  'strings[].scaleMm': about('fineLength', OWN_SCALE),
  'strings[].diameterMm': about('thickness', SET),
  'strings[].massGPerM': about('linearMass', SET),
  'strings[].frequencyHz': about('frequency', [...SET, 'strings.pitchHz'], law),
  'strings[].tensionN': about('force', PULL, law),
  'strings[].stressMPa': about('stress', PULL),
  'strings[].otherFrequencyHz': about('frequency', [...SET, 'strings.pitchHz', 'strings.otherNotes'], law),
  'strings[].otherTensionN': about('force', OTHER, law),
  'strings[].slotOverBoardMm': about(
    'thickness',
    [...AT_NUT, 'setup.nutBassMm', 'setup.nutTrebleMm', 'frets.crownMm'],
    {
      tolerance: NUT_SLOT,
      measured: onePlace('feelerGauge'),
    },
  ),
  'strings[].overFirstMm': about('thickness', HEIGHTS, {
    tolerance: NUT_SLOT,
    measured: onePlace('feelerGauge'),
  }),
  'strings[].overTwelfthMm': about('thickness', [...HEIGHTS, 'board.fallOffMm', 'scale.jointFret'], {
    tolerance: ACTION,
    measured: onePlace('feelerGauge'),
  }),
  'strings[].saddleShowingMm': about('thickness', [...HEIGHTS, 'bridge.saddleShowingMm'], {
    tolerance: ACTION,
    measured: onePlace('caliper'),
  }),
  'strings[].breakRad': about('angle', [...OUTLINE, ...HEIGHTS, ...STRUNG_PLATE, ...HOLDS]),
  'strings[].compensationMm': about('thickness', [...OWN_SCALE, ...SETUP, 'strings.pitchHz'], estimate),
  'strings[].crownBehindLineMm': about('thickness', [...OWN_SCALE, ...COMPENSATION], estimate),
  'stringSet.count': about('count', SET),
  'stringSet.tensionN': about('force', PULL, law),
  'stringSet.torqueNm': about('torque', [...PULL, ...ARM]),
  'stringSet.otherTensionN': about('force', OTHER, law),
  'stringSet.otherTorqueNm': about('torque', [...OTHER, ...ARM]),
  'stringSet.gapAtNutMm': about('thickness', AT_NUT, { tolerance: 0.1, measured: onePlace('caliper') }),
  'stringSet.gapAtSaddleMm': about('thickness', AT_SADDLE),
  'stringSet.bassEdgeAtNutMm': about('thickness', [...SET, 'strings.nutSpreadMm', 'board.nutWidthMm'], {
    tolerance: 0.1,
    measured: onePlace('caliper'),
  }),
  'stringSet.trebleEdgeAtNutMm': about('thickness', [...SET, 'strings.nutSpreadMm', 'board.nutWidthMm'], {
    tolerance: 0.1,
    measured: onePlace('caliper'),
  }),
  'stringSet.leastEdgeMm': about('thickness', [
    ...SET,
    'strings.nutSpreadMm',
    'strings.saddleSpreadMm',
    ...BOARD_WIDTH,
    ...SCALE,
    'scale.frets',
    'board.endBeyondLastFretMm',
  ]),
  'setup.actionBassMm': about('thickness', ['setup.actionBassMm'], {
    tolerance: ACTION,
    measured: onePlace('feelerGauge', 'setup.actionBassMm'),
  }),
  'setup.actionTrebleMm': about('thickness', ['setup.actionTrebleMm'], {
    tolerance: ACTION,
    measured: onePlace('feelerGauge', 'setup.actionTrebleMm'),
  }),
  'setup.nutBassMm': about('thickness', ['setup.nutBassMm'], { tolerance: NUT_SLOT }),
  'setup.nutTrebleMm': about('thickness', ['setup.nutTrebleMm'], { tolerance: NUT_SLOT }),
  'setup.reliefMm': about('thickness', ['setup.reliefMm'], {
    tolerance: RELIEF,
    measured: onePlace('feelerGauge', 'setup.reliefMm'),
  }),
} as const satisfies Partial<Record<NumberKey, About>>
