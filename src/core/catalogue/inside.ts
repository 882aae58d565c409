import type { NumberKey } from '../numbers.ts'
import type { PlanField } from '../planFields.ts'
import { type About, about, DEPTH, LIGHT_GAP, onePlace } from './about.ts'
import { BACK, BOTH, OUTLINE, THICK, TOP } from './hangsOn.ts'

const BLOCKS = [
  'blocks.tail.widthMm',
  'blocks.tail.thicknessMm',
  'blocks.neck.widthMm',
  'blocks.neck.thicknessMm',
] as const satisfies readonly PlanField[]
const LINING_LENGTH = [...BOTH, ...THICK, ...BLOCKS] as const satisfies readonly PlanField[]
const ledge = (plate: 'top' | 'back') =>
  [...THICK, `linings.${plate}.widthMm`, 'binding.thicknessMm', `binding.${plate}PurflingMm`] as const

const PLACED = [
  'sideBraces.form',
  'sideBraces.atMm',
  'sideBraces.spacingMm',
  ...BLOCKS,
] as const satisfies readonly PlanField[]
const HEIGHTS = [
  'sideBraces.ends',
  'linings.top.heightMm',
  'linings.back.heightMm',
] as const satisfies readonly PlanField[]

const bracesOf = (outline: readonly PlanField[]) => {
  const at = [...outline, ...THICK, ...PLACED]
  return {
    alongOuterMm: about('bodyLength', at, { tolerance: 1, measured: onePlace('tape') }),
    xMm: about('bodyLength', at),
    spacingMm: about('bodyLength', at),
    lengthMm: about('bodyLength', [...at, ...TOP, ...BACK, ...HEIGHTS], {
      tolerance: DEPTH,
      measured: onePlace('caliper'),
    }),
    faceRadiusMm: about('bodyLength', [...at, 'sideBraces.widthMm'], { measured: onePlace('contourBoard') }),
    faceRiseMm: about('thickness', [...at, 'sideBraces.widthMm'], {
      tolerance: LIGHT_GAP,
      measured: onePlace('straightedge'),
    }),
  }
}
type Braces = ReturnType<typeof bracesOf>
const under = <L extends 'sideBraces' | 'trebleBraces'>(list: L, rows: Braces) =>
  Object.fromEntries(Object.entries(rows).map(([name, row]) => [`${list}[].${name}`, row])) as Record<
    `${L}[].${keyof Braces}`,
    About
  >

const CAUL = ['caul.spanMm', 'caul.widthMm', 'caul.heightMm'] as const satisfies readonly PlanField[]
const beam = { standing: 'estimate', source: 'memory' } as const

export const INSIDE_ABOUT = {
  'linings.top.ledgeMm': about('thickness', ledge('top'), { measured: onePlace('caliper') }),
  'linings.top.lengthMm': about('bodyLength', LINING_LENGTH, { standing: 'numeric' }),
  'linings.back.ledgeMm': about('thickness', ledge('back'), { measured: onePlace('caliper') }),
  'linings.back.lengthMm': about('bodyLength', LINING_LENGTH, { standing: 'numeric' }),
  'linings.toBuyMm': about('bodyLength', [...LINING_LENGTH, 'linings.wastePercent'], { standing: 'numeric' }),
  ...under('sideBraces', bracesOf(OUTLINE)),
  ...under('trebleBraces', bracesOf(BOTH)),
  'caul.bumpMm': about('thickness', [...CAUL, 'caul.modulusGPa', 'caul.forceN'], {
    ...beam,
    measured: onePlace('straightedge'),
  }),
  'caul.clampForceN': about('force', ['caul.forceN'], beam),
  'caul.stressMPa': about('stress', [...CAUL, 'caul.forceN'], beam),
} satisfies Partial<Record<NumberKey, About>>
