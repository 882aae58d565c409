import type { NumberKey } from '../numbers.ts'
import { type About, about, onePlace, LIGHT_GAP, PLATE_THICKNESS } from './about.ts'
import { OUTLINE, BOTH, LENGTH, BACK, TOP, PLATE } from './hangsOn.ts'

export const DOME_ABOUT = {
  'plates.topMm': about('thickness', ['plates.topMm'], {
    tolerance: PLATE_THICKNESS,
    measured: onePlace('thicknessCaliper', 'plates.topMm'),
  }),
  'plates.backMm': about('thickness', ['plates.backMm'], {
    tolerance: PLATE_THICKNESS,
    measured: onePlace('thicknessCaliper', 'plates.backMm'),
  }),
  'top.radiusMm': about('domeRadius', ['top.form', 'top.radiusMm'], {
    measured: onePlace('straightedge', 'top.radiusMm'),
  }),
  'top.flatFromMm': about('bodyLength', [...LENGTH, 'top.form', 'top.flatFromMm'], {
    measured: onePlace('rule', 'top.flatFromMm'),
  }),
  'top.flatSlopeRad': about('angle', [...OUTLINE, ...TOP], {
    measured: onePlace('bevelGauge', 'top.flatSlopeDeg'),
  }),
  'top.neckEdgeMm': about('thickness', [...OUTLINE, ...TOP], { tolerance: 0.2, measured: onePlace('straightedge') }),
  'top.riseAtSaddleMm': about('thickness', ['top.form', 'top.riseAtSaddleMm'], {
    tolerance: 0.3,
    measured: onePlace('straightedge', 'top.riseAtSaddleMm'),
  }),
  'top.heightAtSaddleMm': about('thickness', [...OUTLINE, ...PLATE]),
  'top.gapAcrossLowerBoutMm': about('thickness', [...OUTLINE, ...PLATE], {
    tolerance: LIGHT_GAP,
    measured: onePlace('straightedge'),
  }),
  'top.gapAcrossWaistMm': about('thickness', [...OUTLINE, ...PLATE], {
    tolerance: LIGHT_GAP,
    measured: onePlace('straightedge'),
  }),
  'top.gapAcrossUpperBoutMm': about('thickness', [...BOTH, ...PLATE], {
    tolerance: LIGHT_GAP,
    measured: onePlace('straightedge'),
  }),
  'top.gapAlongMm': about('thickness', [...OUTLINE, ...PLATE], { measured: onePlace('straightedge') }),
  'back.radiusMm': about('domeRadius', ['back.form', 'back.radiusMm'], {
    measured: onePlace('straightedge', 'back.radiusMm'),
  }),
  'back.axisAtMm': about('bodyLength', [...LENGTH, ...BACK]),
  'back.lowestAtMm': about('bodyLength', [...LENGTH, ...BACK]),
  'back.lowestUnderRimPlaneMm': about('bodyLength', [...LENGTH, ...BACK]),
  'back.gapAcrossLowerBoutMm': about('thickness', [...OUTLINE, ...BACK], {
    tolerance: LIGHT_GAP,
    measured: onePlace('straightedge'),
  }),
  'back.gapAcrossWaistMm': about('thickness', [...OUTLINE, ...BACK], {
    tolerance: LIGHT_GAP,
    measured: onePlace('straightedge'),
  }),
  'back.gapAcrossUpperBoutMm': about('thickness', [...BOTH, ...BACK], {
    tolerance: LIGHT_GAP,
    measured: onePlace('straightedge'),
  }),
  'back.gapAlongMm': about('thickness', [...LENGTH, ...BACK], { measured: onePlace('straightedge') }),
} as const satisfies Partial<Record<NumberKey, About>>
