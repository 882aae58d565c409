import type { NumberKey } from '../numbers.ts'
import { HALF_WIDTH_FIELDS, type PlanField } from '../planFields.ts'
import { type About, about, onePlace, BLANK_LENGTH, BEVEL_RAD } from './about.ts'
import { OUTLINE, BOTH, LENGTH } from './hangsOn.ts'

/** What a chain of compass pieces is solved from. */
const CHAIN = ['outline.lengthMm', 'outline.kind', 'outline.pieces'] as const satisfies readonly PlanField[]
/** What a body was read to. */
const READ = ['outline.lengthMm', 'outline.kind', ...HALF_WIDTH_FIELDS] as const satisfies readonly PlanField[]

export const BODY_ABOUT = {
  'body.lengthMm': about('bodyLength', LENGTH, { tolerance: 0.5, measured: onePlace('rule', 'outline.lengthMm') }),
  'body.halfLengthMm': about('bodyLength', OUTLINE, { tolerance: BLANK_LENGTH, measured: onePlace('tape') }),
  'body.areaMm2': about('area', BOTH),
  'body.lowerBoutMm': about('bodyLength', OUTLINE, { tolerance: 1, measured: onePlace('rule') }),
  'body.lowerBoutAtMm': about('bodyLength', OUTLINE, { measured: onePlace('rule') }),
  'body.waistMm': about('bodyLength', OUTLINE, { tolerance: 1, measured: onePlace('rule') }),
  'body.waistAtMm': about('bodyLength', OUTLINE, { measured: onePlace('rule') }),
  'body.upperBoutMm': about('bodyLength', BOTH, { tolerance: 1, measured: onePlace('rule') }),
  'body.upperBoutAtMm': about('bodyLength', OUTLINE, { measured: onePlace('rule') }),
  'body.tightestRadiusMm': about('bodyLength', BOTH),
  'body.tightestAtMm': about('bodyLength', BOTH),
  'pieces[].radiusMm': about('bodyLength', CHAIN, { standing: 'numeric' }),
  'pieces[].sweepRad': about('angle', CHAIN, { standing: 'numeric' }),
  'pieces[].lengthMm': about('bodyLength', CHAIN, { standing: 'numeric' }),
  'readings[].fromTailMm': about('bodyLength', READ),
  'readings[].halfWidthMm': about('bodyLength', READ),
  'readings[].departureMm': about('thickness', READ, { standing: 'numeric' }),
  'fit.largestDepartureMm': about('thickness', [...READ, 'outline.drawnPath'], { standing: 'numeric' }),
  'fit.inflections': about('count', OUTLINE),
  'cutaway.trebleLengthMm': about('bodyLength', BOTH, { tolerance: BLANK_LENGTH, measured: onePlace('tape') }),
  'cutaway.hornAtMm': about('bodyLength', BOTH, { measured: onePlace('rule') }),
  'cutaway.hornHalfWidthMm': about('bodyLength', BOTH, { tolerance: 1, measured: onePlace('rule') }),
  'cutaway.hornOnRimMm': about('bodyLength', BOTH, { measured: onePlace('tape') }),
  'cutaway.hornAngleRad': about('angle', BOTH, { tolerance: BEVEL_RAD, measured: onePlace('bevelGauge') }),
  'cutaway.angleAtNeckRad': about('angle', BOTH, { measured: onePlace('bevelGauge') }),
  'cutaway.runsOnMm': about('bodyLength', ['outline.cutaway.form', 'outline.cutaway.meetsNeckAtMm'], {
    measured: onePlace('rule'),
  }),
} as const satisfies Partial<Record<NumberKey, About>>
