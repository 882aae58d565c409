import type { NumberKey } from '../numbers.ts'
import type { PlanField } from '../planFields.ts'
import { type About, about, BLANK_LENGTH, DEPTH, LIGHT_GAP, onePlace } from './about.ts'
import { FRONT, PINS } from './bridge.ts'
import { BACK, BOTH, LENGTH, PLATE, THICK } from './hangsOn.ts'

const BRACES = ['bracing.braces'] as const satisfies readonly PlanField[]
/** Where braces stand between the sides. */
const PLACED = [...BRACES, ...BOTH, ...THICK] as const satisfies readonly PlanField[]
/** And where their tips are: in pockets of the linings. */
const TIPS = [...PLACED, 'linings.top.widthMm', 'linings.back.widthMm'] as const satisfies readonly PlanField[]
/** And what they are glued to. */
const GLUED = [...PLACED, ...PLATE, ...BACK] as const satisfies readonly PlanField[]
const PATCH = ['bracing.crossPatchMm'] as const satisfies readonly PlanField[]
const RING = ['bracing.holeRingMm'] as const satisfies readonly PlanField[]
const STRIP = ['bracing.stripWidthMm'] as const satisfies readonly PlanField[]
const STRIP_PIECES = [
  ...PLACED,
  ...STRIP,
  'blocks.tail.thicknessMm',
  'blocks.neck.thicknessMm',
] as const satisfies readonly PlanField[]
const HAS_PLATE = ['bridge.plateMm'] as const satisfies readonly PlanField[]
const PLATE_LENGTH = [...HAS_PLATE, 'bridge.plateFromMm', 'bridge.plateToMm'] as const satisfies readonly PlanField[]
const PLATE_SHAPE = [
  ...PLATE_LENGTH,
  'bridge.plateTailWidthMm',
  'bridge.plateNeckWidthMm',
] as const satisfies readonly PlanField[]

const numeric = { standing: 'numeric' } as const
const byRule = { ...numeric, tolerance: 1, measured: onePlace('rule') } as const
const byCaliper = { tolerance: DEPTH, measured: onePlace('caliper') } as const

export const BRACING_ABOUT = {
  'braces[].number': about('count', BRACES),
  'braces[].lengthMm': about('bodyLength', PLACED, { ...numeric, tolerance: BLANK_LENGTH, measured: onePlace('rule') }),
  'braces[].finishedLengthMm': about('bodyLength', TIPS, {
    ...numeric,
    tolerance: BLANK_LENGTH,
    measured: onePlace('rule'),
  }),
  'braces[].angleRad': about('angle', PLACED, { ...numeric, measured: onePlace('protractor') }),
  'braces[].crossesCentreAtMm': about('bodyLength', PLACED, byRule),
  'braces[].fromXMm': about('bodyLength', PLACED, byRule),
  'braces[].fromAcrossMm': about('across', PLACED, byRule),
  'braces[].toXMm': about('bodyLength', PLACED, byRule),
  'braces[].toAcrossMm': about('across', PLACED, byRule),
  'braces[].fromAlongOuterMm': about('bodyLength', PLACED, { ...byRule, measured: onePlace('tape') }),
  'braces[].toAlongOuterMm': about('bodyLength', PLACED, { ...byRule, measured: onePlace('tape') }),
  'braces[].fromLetInMm': about('thickness', BRACES, byCaliper),
  'braces[].toLetInMm': about('thickness', BRACES, byCaliper),
  'braces[].fromShortMm': about('bodyLength', TIPS, byRule),
  'braces[].toShortMm': about('bodyLength', TIPS, byRule),
  'braces[].fromHeightMm': about('thickness', BRACES, byCaliper),
  'braces[].toHeightMm': about('thickness', BRACES, byCaliper),
  'braces[].fromTaperMm': about('bodyLength', BRACES, { measured: onePlace('rule') }),
  'braces[].toTaperMm': about('bodyLength', BRACES, { measured: onePlace('rule') }),
  'braces[].heightMm': about('thickness', BRACES, byCaliper),
  'braces[].widthMm': about('thickness', BRACES, byCaliper),
  'braces[].undersideRadiusMm': about('domeRadius', GLUED, numeric),
  'braces[].archRiseMm': about('thickness', GLUED, {
    ...numeric,
    tolerance: LIGHT_GAP,
    measured: onePlace('straightedge'),
  }),
  'braces[].springMm': about('thickness', GLUED, { ...numeric, measured: onePlace('feelerGauge') }),
  'braces[].blankLengthMm': about('bodyLength', [...TIPS, 'bracing.blankEndMm'], numeric),
  'braces[].blankHeightMm': about('thickness', [...GLUED, 'bracing.blankHeightMm'], numeric),
  'braces[].blankWidthMm': about('thickness', [...BRACES, 'bracing.blankWidthMm']),
  'braceArch[].number': about('count', BRACES),
  'braceArch[].alongMm': about('bodyLength', PLACED, numeric),
  'braceArch[].riseMm': about('thickness', GLUED, numeric),
  'braceArch[].heightMm': about('thickness', TIPS, numeric),
  'braceCrossings[].number': about('count', PLACED),
  'braceCrossings[].otherNumber': about('count', PLACED),
  'braceCrossings[].xMm': about('bodyLength', PLACED, byRule),
  'braceCrossings[].acrossMm': about('across', PLACED, byRule),
  'braceCrossings[].alongMm': about('bodyLength', PLACED, byRule),
  'braceCrossings[].otherAlongMm': about('bodyLength', PLACED, byRule),
  'braceCrossings[].angleRad': about('angle', PLACED, { ...numeric, measured: onePlace('protractor') }),
  'braceCrossings[].lapMm': about('thickness', TIPS, {
    ...numeric,
    tolerance: 0.2,
    measured: onePlace('depthGauge'),
  }),
  'braceCrossings[].underNumber': about('count', PLACED),
  'braceCrossings[].notchMm': about('thickness', PLACED, { ...numeric, measured: onePlace('caliper') }),
  'braceCrossings[].otherNotchMm': about('thickness', PLACED, { ...numeric, measured: onePlace('caliper') }),
  'patches.holeRing.innerRadiusMm': about(
    'bodyLength',
    [...RING, 'soundhole.radiusMm', 'bracing.holeRingSetBackMm'],
    byCaliper,
  ),
  'patches.holeRing.outerRadiusMm': about(
    'bodyLength',
    [...RING, 'soundhole.radiusMm', 'bracing.holeRingSetBackMm'],
    byCaliper,
  ),
  'patches.holeRing.thicknessMm': about('thickness', [...RING, 'bracing.holeRingThicknessMm'], {
    tolerance: 0.2,
    measured: onePlace('caliper', 'bracing.holeRingThicknessMm'),
  }),
  'patches.cross.count': about('count', [...PLACED, ...PATCH]),
  'patches.cross.sideMm': about('bodyLength', PATCH, {
    tolerance: 1,
    measured: onePlace('rule', 'bracing.crossPatchMm'),
  }),
  'patches.cross.thicknessMm': about('thickness', [...PATCH, 'bracing.crossPatchThicknessMm'], {
    tolerance: 0.2,
    measured: onePlace('caliper', 'bracing.crossPatchThicknessMm'),
  }),
  'patches.strip.widthMm': about('bodyLength', STRIP, {
    tolerance: DEPTH,
    measured: onePlace('caliper', 'bracing.stripWidthMm'),
  }),
  'patches.strip.thicknessMm': about('thickness', [...STRIP, 'bracing.stripThicknessMm'], {
    tolerance: 0.2,
    measured: onePlace('caliper', 'bracing.stripThicknessMm'),
  }),
  'patches.strip.lengthMm': about('bodyLength', STRIP_PIECES, numeric),
  'jointStrip[].fromMm': about('bodyLength', STRIP_PIECES, byRule),
  'jointStrip[].toMm': about('bodyLength', STRIP_PIECES, byRule),
  'jointStrip[].lengthMm': about('bodyLength', STRIP_PIECES, {
    ...numeric,
    tolerance: DEPTH,
    measured: onePlace('caliper'),
  }),
  'bridgePlate.fromTailMm': about('bodyLength', PLATE_LENGTH, { tolerance: 1, measured: onePlace('rule') }),
  'bridgePlate.lengthMm': about('bodyLength', PLATE_LENGTH, { tolerance: DEPTH, measured: onePlace('caliper') }),
  'bridgePlate.tailWidthMm': about('bodyLength', [...HAS_PLATE, 'bridge.plateTailWidthMm'], {
    tolerance: 1,
    measured: onePlace('rule', 'bridge.plateTailWidthMm'),
  }),
  'bridgePlate.neckWidthMm': about('bodyLength', [...HAS_PLATE, 'bridge.plateNeckWidthMm'], {
    tolerance: 1,
    measured: onePlace('rule', 'bridge.plateNeckWidthMm'),
  }),
  'bridgePlate.thicknessMm': about('thickness', HAS_PLATE, {
    tolerance: 0.2,
    measured: onePlace('caliper', 'bridge.plateMm'),
  }),
  'bridgePlate.wingsBeyondMm': about(
    'bodyLength',
    [...PLATE_SHAPE, ...LENGTH, ...FRONT, 'bridge.widthMm', 'bridge.lengthMm'],
    { standing: 'estimate' },
  ),
  'bridgePlate.besidePinsMm': about('bodyLength', [...PLATE_SHAPE, ...PINS], {
    standing: 'estimate',
  }),
  'bridgePlate.toBraceMm': about('bodyLength', [...PLATE_SHAPE, ...PLACED], numeric),
} as const satisfies Partial<Record<NumberKey, About>>
