import type { NumberKey } from '../numbers.ts'
import { type About, about, onePlace, DEPTH, BEVEL_RAD, LIGHT_GAP } from './about.ts'
import { BOTH, THICK, block } from './hangsOn.ts'

const TAIL = block('tail')
const NECK = block('neck')

export const BLOCK_ABOUT = {
  'blocks.tail.widthMm': about('bodyLength', TAIL.width, {
    tolerance: 0.5,
    measured: onePlace('caliper', 'blocks.tail.widthMm'),
  }),
  'blocks.tail.thicknessMm': about('bodyLength', ['blocks.tail.thicknessMm'], {
    tolerance: 0.5,
    measured: onePlace('caliper', 'blocks.tail.thicknessMm'),
  }),
  'blocks.tail.contourRadiusMm': about('bodyLength', TAIL.shape, {
    standing: 'numeric',
    measured: onePlace('contourBoard'),
  }),
  'blocks.tail.contourRiseMm': about('thickness', TAIL.shape, {
    standing: 'numeric',
    tolerance: LIGHT_GAP,
    measured: onePlace('straightedge'),
  }),
  'blocks.tail.contourGapMm': about('thickness', TAIL.shape, { standing: 'numeric' }),
  'blocks.tail.contour[].acrossMm': about('bodyLength', TAIL.shape),
  'blocks.tail.contour[].fallsBackMm': about('thickness', TAIL.shape, { standing: 'numeric' }),
  'blocks.tail.heightAtFaceMm': about('bodyLength', TAIL.faceHeight, {
    tolerance: DEPTH,
    measured: onePlace('caliper'),
  }),
  'blocks.tail.heightInsideMm': about('bodyLength', TAIL.insideHeight, {
    tolerance: DEPTH,
    measured: onePlace('caliper'),
  }),
  'blocks.tail.topSlopeRad': about('angle', TAIL.topSlope, {
    tolerance: BEVEL_RAD,
    measured: onePlace('bevelGauge'),
  }),
  'blocks.tail.backSlopeRad': about('angle', TAIL.backSlope, {
    tolerance: BEVEL_RAD,
    measured: onePlace('bevelGauge'),
  }),
  'blocks.neck.widthMm': about('bodyLength', NECK.width, {
    tolerance: 0.5,
    measured: onePlace('caliper', 'blocks.neck.widthMm'),
  }),
  'blocks.neck.thicknessMm': about('bodyLength', ['blocks.neck.thicknessMm'], {
    tolerance: 0.5,
    measured: onePlace('caliper', 'blocks.neck.thicknessMm'),
  }),
  'blocks.neck.contourRadiusMm': about('bodyLength', NECK.shape, {
    standing: 'numeric',
    measured: onePlace('contourBoard'),
  }),
  'blocks.neck.contourRiseMm': about('thickness', NECK.shape, {
    standing: 'numeric',
    tolerance: LIGHT_GAP,
    measured: onePlace('straightedge'),
  }),
  'blocks.neck.contourGapMm': about('thickness', NECK.shape, { standing: 'numeric' }),
  'blocks.neck.contour[].acrossMm': about('bodyLength', NECK.shape),
  'blocks.neck.contour[].fallsBackMm': about('thickness', NECK.shape, { standing: 'numeric' }),
  'blocks.neck.heightAtFaceMm': about('bodyLength', NECK.faceHeight, {
    tolerance: DEPTH,
    measured: onePlace('caliper'),
  }),
  'blocks.neck.heightInsideMm': about('bodyLength', NECK.insideHeight, {
    tolerance: DEPTH,
    measured: onePlace('caliper'),
  }),
  'blocks.neck.topSlopeRad': about('angle', NECK.topSlope, {
    tolerance: BEVEL_RAD,
    measured: onePlace('bevelGauge'),
  }),
  'blocks.neck.backSlopeRad': about('angle', NECK.backSlope, {
    tolerance: BEVEL_RAD,
    measured: onePlace('bevelGauge'),
  }),
  'blocks.tail.trebleReachMm': about('bodyLength', TAIL.shape),
  'blocks.tail.flank[].fromFaceMm': about('bodyLength', []),
  'blocks.tail.flank[].acrossMm': about('bodyLength', []),
  'blocks.neck.trebleReachMm': about('bodyLength', [...BOTH, ...THICK, ...NECK.width], { measured: onePlace('rule') }),
  'blocks.neck.flank[].fromFaceMm': about('bodyLength', [...BOTH, 'blocks.neck.thicknessMm']),
  'blocks.neck.flank[].acrossMm': about('bodyLength', [...BOTH, ...THICK, 'blocks.neck.thicknessMm'], {
    standing: 'numeric',
    tolerance: LIGHT_GAP,
    measured: onePlace('rule'),
  }),
} as const satisfies Partial<Record<NumberKey, About>>
