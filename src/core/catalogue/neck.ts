import type { NumberKey } from '../numbers.ts'
import type { PlanField } from '../planFields.ts'
import { type About, about, DEPTH, onePlace } from './about.ts'
import { BOARD_WIDTH, JOINT, OUTLINE, PLATE, TOP } from './hangsOn.ts'

const HEEL_DEPTH = [
  ...OUTLINE,
  ...TOP,
  'rim.depthAtNeckMm',
  'plates.topMm',
  'plates.backMm',
] as const satisfies readonly PlanField[]
const AT_JOINT = [...BOARD_WIDTH, 'scale.jointFret'] as const satisfies readonly PlanField[]
const ROD = ['neck.rod', 'neck.rodFromNutMm', 'neck.rodLengthMm'] as const satisfies readonly PlanField[]
const POST = [
  'head.tuners',
  'head.firstPostMm',
  'head.postSpacingMm',
  'strings.set',
] as const satisfies readonly PlanField[]
const ACROSS = [
  'head.tuners',
  'strings.set',
  'head.firstAcrossMm',
  'head.lastAcrossMm',
] as const satisfies readonly PlanField[]

export const NECK_ABOUT = {
  'neck.heelDepthMm': about('bodyLength', HEEL_DEPTH, { tolerance: DEPTH, measured: onePlace('caliper') }),
  'neck.heelStockMm': about('bodyLength', ['rim.depthAtNeckMm', 'plates.topMm', 'plates.backMm'], {
    measured: onePlace('caliper'),
  }),
  'neck.heelWidthMm': about('bodyLength', AT_JOINT, { tolerance: DEPTH, measured: onePlace('caliper') }),
  'neck.heelCapMm': about('bodyLength', ['neck.heelCapMm'], {
    tolerance: DEPTH,
    measured: onePlace('caliper', 'neck.heelCapMm'),
  }),
  'neck.cheekRad': about('angle', [...OUTLINE, ...PLATE], { measured: onePlace('bevelGauge') }),
  'neck.cheekHollowMm': about('thickness', [...OUTLINE, ...AT_JOINT], {
    standing: 'numeric',
    measured: onePlace('straightedge'),
  }),
  'neck.woodAtFirstMm': about('thickness', ['neck.thicknessAtFirstMm', 'board.thicknessMm'], {
    tolerance: 0.3,
    measured: onePlace('caliper'),
  }),
  'neck.woodAtTenthMm': about('thickness', ['neck.thicknessAtTenthMm', 'board.thicknessMm'], {
    tolerance: 0.3,
    measured: onePlace('caliper'),
  }),
  'neck.stockLengthMm': about('bodyLength', [
    ...JOINT,
    ...BOARD_WIDTH,
    'scale.squareFret',
    'strings.nutSpreadMm',
    'neck.joint',
    'neck.tenonDepthMm',
    'blocks.neck.thicknessMm',
    'head.lengthMm',
  ]),
  'neck.woodBehindRodMm': about('thickness', [
    ...ROD,
    'neck.rodDepthMm',
    'neck.thicknessAtFirstMm',
    'neck.thicknessAtTenthMm',
    'board.thicknessMm',
    'scale.lengthMm',
    'scale.fan',
    'scale.trebleLengthMm',
  ]),
  'neck.rodEndsBeforeJointMm': about('bodyLength', [...ROD, ...JOINT], { measured: onePlace('rule') }),
  'neck.rodToBoltMm': about('thickness', [
    ...ROD,
    ...JOINT,
    'neck.rodDepthMm',
    'neck.boltsAtMm',
    'neck.boltMm',
    'neck.joint',
  ]),
  'neck.besideRodMm': about('thickness', ['neck.rod', 'neck.rodWidthMm', 'board.nutWidthMm']),
  'neck.blockBehindTenonMm': about('thickness', ['neck.joint', 'neck.tenonDepthMm', 'blocks.neck.thicknessMm']),
  'neck.blockBesideTenonMm': about('bodyLength', ['neck.joint', 'neck.tenonWidthMm', 'blocks.neck.widthMm']),
  'neck.boltToHeelEndMm': about('bodyLength', [...HEEL_DEPTH, 'neck.boltsAtMm', 'neck.boltMm', 'neck.joint']),
  'neck.scarfMm': about('bodyLength', ['neck.stockMm', 'head.angleDeg'], { measured: onePlace('rule') }),
  'neck.stockMm': about('thickness', ['neck.stockMm'], {
    tolerance: 0.2,
    measured: onePlace('caliper', 'neck.stockMm'),
  }),
  'neck.thicknessAtFirstMm': about('thickness', ['neck.thicknessAtFirstMm'], {
    tolerance: 0.3,
    measured: onePlace('caliper', 'neck.thicknessAtFirstMm'),
  }),
  'neck.thicknessAtTenthMm': about('thickness', ['neck.thicknessAtTenthMm'], {
    tolerance: 0.3,
    measured: onePlace('caliper', 'neck.thicknessAtTenthMm'),
  }),
  'neck.rodLengthMm': about('bodyLength', ['neck.rod', 'neck.rodLengthMm'], {
    tolerance: 0.5,
    measured: onePlace('rule', 'neck.rodLengthMm'),
  }),
  'neck.rodWidthMm': about('thickness', ['neck.rod', 'neck.rodWidthMm'], {
    tolerance: 0.1,
    measured: onePlace('caliper', 'neck.rodWidthMm'),
  }),
  'neck.rodDepthMm': about('thickness', ['neck.rod', 'neck.rodDepthMm'], {
    tolerance: 0.2,
    measured: onePlace('depthGauge', 'neck.rodDepthMm'),
  }),
  'neck.rodFromNutMm': about('bodyLength', ['neck.rod', 'neck.rodFromNutMm'], {
    tolerance: 0.5,
    measured: onePlace('rule', 'neck.rodFromNutMm'),
  }),
  'neck.tenonWidthMm': about('bodyLength', ['neck.joint', 'neck.tenonWidthMm'], {
    tolerance: 0.1,
    measured: onePlace('caliper', 'neck.tenonWidthMm'),
  }),
  'neck.tenonDepthMm': about('bodyLength', ['neck.joint', 'neck.tenonDepthMm'], {
    tolerance: 0.2,
    measured: onePlace('depthGauge', 'neck.tenonDepthMm'),
  }),
  'neck.boltMm': about('thickness', ['neck.joint', 'neck.boltsAtMm', 'neck.boltMm'], {
    tolerance: 0.1,
    measured: onePlace('caliper', 'neck.boltMm'),
  }),
  'neck.bolts[].underTopMm': about('bodyLength', ['neck.joint', 'neck.boltsAtMm'], {
    tolerance: 0.3,
    measured: onePlace('rule'),
  }),
  'head.angleRad': about('angle', ['head.angleDeg'], {
    tolerance: (0.5 * Math.PI) / 180,
    measured: onePlace('bevelGauge', 'head.angleDeg'),
  }),
  'head.lengthMm': about('bodyLength', ['head.lengthMm'], { measured: onePlace('rule', 'head.lengthMm') }),
  'head.thicknessMm': about('thickness', ['head.thicknessMm'], {
    tolerance: 0.2,
    measured: onePlace('caliper', 'head.thicknessMm'),
  }),
  'head.coreMm': about('thickness', ['head.thicknessMm', 'head.faceVeneerMm', 'head.backVeneerMm']),
  'head.dropMm': about('bodyLength', ['head.lengthMm', 'head.angleDeg']),
  'head.holeMm': about('thickness', ['head.holeMm'], {
    tolerance: 0.1,
    measured: onePlace('caliper', 'head.holeMm'),
  }),
  'tuners[].fromNutMm': about('bodyLength', POST, { source: 'practice', tolerance: 0.3, measured: onePlace('rule') }),
  'tuners[].acrossMm': about('across', ACROSS, { source: 'practice', tolerance: 0.3, measured: onePlace('rule') }),
  'tuners[].sideRad': about('angle', [
    ...POST,
    ...ACROSS,
    'head.postMm',
    'strings.nutSpreadMm',
    'strings.saddleSpreadMm',
    'strings.pairGapMm',
    'scale.lengthMm',
    'scale.fan',
    'scale.trebleLengthMm',
    'scale.squareFret',
  ]),
  'tuners[].overNutRad': about('angle', [
    ...POST,
    'head.angleDeg',
    'head.stringOverFaceMm',
    'head.faceVeneerMm',
    'board.thicknessMm',
    'frets.crownMm',
    'setup.nutBassMm',
    'setup.nutTrebleMm',
    'strings.nutSpreadMm',
    'strings.pairGapMm',
    'board.surface',
    'board.radiusMm',
    'board.endRadiusMm',
    'scale.lengthMm',
    'scale.fan',
    'scale.trebleLengthMm',
    'scale.squareFret',
    'scale.frets',
    'board.endBeyondLastFretMm',
  ]),
} as const satisfies Partial<Record<NumberKey, About>>
