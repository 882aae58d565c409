import type { NumberKey } from '../numbers.ts'
import type { PlanField } from '../planFields.ts'
import { type About, about, FRET_PLANE, onePlace } from './about.ts'
import { BOARD_END, LENGTH, OUTLINE, PLATE, STRUNG_PLATE, TOP } from './hangsOn.ts'

const BUILT = [...OUTLINE, ...PLATE] as const satisfies readonly PlanField[]
const HEEL = [
  'neck.joint',
  'rim.depthAtNeckMm',
  'plates.topMm',
  'plates.backMm',
] as const satisfies readonly PlanField[]
const STRUNG_AT_SADDLE = [
  'bridge.saddleShowingMm',
  'setup.actionBassMm',
  'setup.actionTrebleMm',
  'setup.nutBassMm',
  'setup.nutTrebleMm',
] as const satisfies readonly PlanField[]
const AT_SADDLE = [...STRUNG_AT_SADDLE, 'setup.riseMm'] as const satisfies readonly PlanField[]
const HOLE = ['soundhole.centreMm', 'soundhole.radiusMm'] as const satisfies readonly PlanField[]
const GAPS = [...BUILT, ...BOARD_END, ...HOLE] as const satisfies readonly PlanField[]

export const NECK_SET_ABOUT = {
  'neckSet.angleRad': about('angle', BUILT, { measured: onePlace('bevelGauge') }),
  'neckSet.angleStrungRad': about('angle', [...OUTLINE, ...STRUNG_PLATE]),
  'neckSet.angleToTopRad': about('angle', BUILT, { measured: onePlace('bevelGauge') }),
  'neckSet.fretPlaneOverTopMm': about('thickness', [...AT_SADDLE, 'bridge.thicknessMm'], {
    tolerance: FRET_PLANE,
    measured: onePlace('straightedge'),
  }),
  'neckSet.fretPlaneOverTopStrungMm': about('thickness', [...STRUNG_AT_SADDLE, 'bridge.thicknessMm'], {
    tolerance: FRET_PLANE,
    measured: onePlace('straightedge'),
  }),
  'neckSet.fretPlaneOverBridgeMm': about('thickness', AT_SADDLE, {
    tolerance: FRET_PLANE,
    measured: onePlace('straightedge'),
  }),
  'neckSet.fretPlaneOverBridgeStrungMm': about('thickness', STRUNG_AT_SADDLE, {
    tolerance: FRET_PLANE,
    measured: onePlace('straightedge'),
  }),
  'neckSet.faceAtNutMm': about('bodyLength', BUILT, { tolerance: 0.5, measured: onePlace('straightedge') }),
  'neckSet.stringsOverTopMm': about('thickness', ['bridge.thicknessMm', 'bridge.saddleShowingMm'], {
    tolerance: 0.3,
    measured: onePlace('caliper'),
  }),
  'neckSet.wedgePerMm': about('thickness', [...OUTLINE, ...TOP, ...HEEL]),
  'neckSet.gapAtEndMm': about('thickness', GAPS, { measured: onePlace('feelerGauge') }),
  'neckSet.widestGapMm': about('thickness', GAPS),
  'neckSet.gaps[].fromJointMm': about('bodyLength', [...LENGTH, ...BOARD_END, ...HOLE]),
  'neckSet.gaps[].gapMm': about('thickness', GAPS, { measured: onePlace('feelerGauge') }),
  'neckSet.changes[].actionMm': about('thickness', []),
  'neckSet.changes[].angleRad': about('angle', BUILT),
  'neckSet.changes[].wedgeMm': about('thickness', [...BUILT, ...HEEL]),
} as const satisfies Partial<Record<NumberKey, About>>
