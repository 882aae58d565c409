import type { NumberKey } from '../numbers.ts'
import { type About, about, onePlace, CHANNEL_DEPTH, HOLE_RADIUS } from './about.ts'
import { BOARD_END, GAP, HIDDEN, LENGTH, RING } from './hangsOn.ts'

export const ROSETTE_ABOUT = {
  'soundhole.centreMm': about('bodyLength', ['soundhole.centreMm'], {
    tolerance: 0.5,
    measured: onePlace('rule', 'soundhole.centreMm'),
  }),
  'soundhole.radiusMm': about('bodyLength', ['soundhole.radiusMm'], {
    tolerance: HOLE_RADIUS,
    measured: onePlace('dividers', 'soundhole.radiusMm'),
  }),
  'soundhole.cutterCircleMm': about('bodyLength', ['soundhole.radiusMm', 'soundhole.cutterMm'], {
    tolerance: HOLE_RADIUS,
    measured: onePlace('caliper'),
  }),
  'soundhole.discMm': about('bodyLength', ['soundhole.radiusMm', 'soundhole.cutterMm']),
  'soundhole.toFirstRingMm': about('thickness', ['soundhole.radiusMm', ...RING]),
  'soundhole.centreToBoardEndMm': about('bodyLength', [...LENGTH, ...BOARD_END, 'soundhole.centreMm'], {
    measured: onePlace('rule'),
  }),
  'rosette.channelDepthMm': about('thickness', ['rosette.inlayMm', 'rosette.standsProudMm'], {
    tolerance: CHANNEL_DEPTH,
    measured: onePlace('depthGauge'),
  }),
  'rosette.rings[].innerRadiusMm': about('fineLength', RING, { tolerance: 0.1, measured: onePlace('dividers') }),
  'rosette.rings[].outerRadiusMm': about('fineLength', RING, { tolerance: 0.1, measured: onePlace('dividers') }),
  'rosette.rings[].widthMm': about('thickness', RING, { tolerance: 0.05, measured: onePlace('caliper') }),
  'rosette.rings[].hiddenRad': about('angle', HIDDEN),
  'rosette.rings[].hiddenMm': about('bodyLength', HIDDEN),
  'rosette.rings[].gapRad': about('angle', GAP),
  'rosette.rings[].gapMm': about('bodyLength', GAP, { measured: onePlace('rule') }),
  'rosette.rings[].stripLengthMm': about('bodyLength', GAP, { measured: onePlace('tape') }),
  'rosette.rings[].visibleRad': about('angle', HIDDEN),
  'rosette.rings[].innerCutterCircleMm': about('fineLength', [...RING, 'rosette.cutterMm'], {
    tolerance: 0.1,
    measured: onePlace('caliper'),
  }),
  'rosette.rings[].outerCutterCircleMm': about('fineLength', [...RING, 'rosette.cutterMm'], {
    tolerance: 0.1,
    measured: onePlace('caliper'),
  }),
  'rosette.rings[].passes': about('count', [...RING, 'rosette.cutterMm', 'rosette.passOverlapMm']),
  'rosette.rings[].tileRad': about('angle', GAP),
  'rosette.rings[].tileLengthMm': about('bodyLength', GAP),
} as const satisfies Partial<Record<NumberKey, About>>
