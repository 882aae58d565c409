import type { NumberKey } from '../numbers.ts'
import { type About, about, onePlace, DEPTH, SIDE_THICKNESS, BLANK_LENGTH, BLANK_WIDTH } from './about.ts'
import { OUTLINE, BOTH, STATIONS, BOTH_STATIONS, BACK, TOP, PLATE, REFERENCE, CUT, THICK } from './hangsOn.ts'

export const SIDE_ABOUT = {
  'sides.thicknessMm': about('thickness', THICK, {
    tolerance: SIDE_THICKNESS,
    measured: onePlace('thicknessCaliper', 'rim.sideThicknessMm'),
  }),
  'sides.depthAtTailMm': about('bodyLength', ['rim.depthAtTailMm'], {
    tolerance: DEPTH,
    measured: onePlace('rule', 'rim.depthAtTailMm'),
  }),
  'sides.depthAtNeckMm': about('bodyLength', ['rim.depthAtNeckMm'], {
    tolerance: DEPTH,
    measured: onePlace('rule', 'rim.depthAtNeckMm'),
  }),
  'sides.depthAtNeckPlanedMm': about('bodyLength', [...OUTLINE, ...TOP, 'rim.depthAtNeckMm'], {
    tolerance: DEPTH,
    measured: onePlace('rule'),
  }),
  'sides.bodyDepthAtTailMm': about('bodyLength', ['rim.depthAtTailMm', 'plates.topMm', 'plates.backMm'], {
    tolerance: DEPTH,
    measured: onePlace('caliper'),
  }),
  'sides.bodyDepthAtNeckMm': about(
    'bodyLength',
    [...OUTLINE, ...TOP, 'rim.depthAtNeckMm', 'plates.topMm', 'plates.backMm'],
    {
      tolerance: DEPTH,
      measured: onePlace('caliper'),
    },
  ),
  'sides.deepestSideMm': about('bodyLength', [...STATIONS, ...TOP, ...BACK], { standing: 'numeric' }),
  'sides.deepestSideAtMm': about('bodyLength', [...STATIONS, ...TOP, ...BACK], { standing: 'numeric' }),
  'sides.deepestInsideMm': about('bodyLength', [...OUTLINE, ...PLATE, ...BACK], { standing: 'numeric' }),
  'sides.deepestInsideAtMm': about('bodyLength', [...OUTLINE, ...PLATE, ...BACK], { standing: 'numeric' }),
  'sides.flatLengthMm': about('bodyLength', [...OUTLINE, ...THICK]),
  'sides.blankLengthMm': about('bodyLength', [...OUTLINE, ...THICK, 'rim.trimEachEndMm'], {
    tolerance: BLANK_LENGTH,
    measured: onePlace('rule'),
  }),
  'sides.blankWidthMm': about('bodyLength', [...STATIONS, ...CUT], {
    standing: 'numeric',
    tolerance: BLANK_WIDTH,
    measured: onePlace('rule'),
  }),
  'sides.referenceMm': about('thickness', [...STATIONS, ...REFERENCE], { standing: 'numeric' }),
  'sides.waistMarkOnBlankMm': about('bodyLength', [...OUTLINE, ...THICK], {
    tolerance: BLANK_LENGTH,
    measured: onePlace('rule'),
  }),
  'sides.waistMarkOnRimMm': about('bodyLength', OUTLINE, { tolerance: BLANK_LENGTH, measured: onePlace('tape') }),
  'sides.stationStepMm': about('bodyLength', STATIONS),
  'blanks[].outerLengthMm': about('bodyLength', BOTH, { measured: onePlace('tape') }),
  'blanks[].flatLengthMm': about('bodyLength', [...BOTH, ...THICK]),
  'blanks[].blankLengthMm': about('bodyLength', [...BOTH, ...THICK, 'rim.trimEachEndMm'], {
    tolerance: BLANK_LENGTH,
    measured: onePlace('rule'),
  }),
  'blanks[].blankWidthMm': about('bodyLength', [...BOTH_STATIONS, ...CUT], {
    standing: 'numeric',
    tolerance: BLANK_WIDTH,
    measured: onePlace('rule'),
  }),
} as const satisfies Partial<Record<NumberKey, About>>
