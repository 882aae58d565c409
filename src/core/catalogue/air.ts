import type { NumberKey } from '../numbers.ts'
import type { PlanField } from '../planFields.ts'
import { type About, about } from './about.ts'
import { BACK, BOARD, BOTH, LENGTH, PLATE, THICK, TOP } from './hangsOn.ts'

const FREE_HOLE = [
  ...LENGTH,
  ...BOARD,
  'soundhole.centreMm',
  'soundhole.radiusMm',
] as const satisfies readonly PlanField[]
const GROSS = [...BOTH, ...THICK, ...PLATE, ...BACK] as const satisfies readonly PlanField[]
/** Blocks and braces of the sides go by the rim, not by a dome that stands on it. */
const WOOD = [
  ...BOTH,
  ...THICK,
  ...TOP,
  ...BACK,
  'blocks.tail.widthMm',
  'blocks.tail.thicknessMm',
  'blocks.neck.widthMm',
  'blocks.neck.thicknessMm',
  'linings.top.kind',
  'linings.top.widthMm',
  'linings.top.heightMm',
  'linings.back.kind',
  'linings.back.widthMm',
  'linings.back.heightMm',
  'sideBraces.form',
  'sideBraces.atMm',
  'sideBraces.spacingMm',
  'sideBraces.widthMm',
  'sideBraces.thicknessMm',
  'sideBraces.ends',
  'bracing.braces',
  'bracing.stripWidthMm',
  'bracing.stripThicknessMm',
  'bracing.holeRingMm',
  'bracing.holeRingSetBackMm',
  'bracing.holeRingThicknessMm',
  'soundhole.radiusMm',
  'bridge.plateMm',
  'bridge.plateFromMm',
  'bridge.plateToMm',
  'bridge.plateTailWidthMm',
  'bridge.plateNeckWidthMm',
] as const satisfies readonly PlanField[]
const LEFT = [...WOOD, 'top.riseAtSaddleMm'] as const satisfies readonly PlanField[]
const SOUND = [...LEFT, ...FREE_HOLE, 'plates.topMm', 'air.temperatureC'] as const satisfies readonly PlanField[]
const RING = ['bracing.holeRingMm', 'bracing.holeRingSetBackMm', 'bracing.holeRingThicknessMm'] as const
const NECK_OF_HOLE = [...FREE_HOLE, 'plates.topMm', ...RING] as const satisfies readonly PlanField[]

const RIGID = { standing: 'estimate', source: 'published' } as const
const PRACTICE = { standing: 'estimate', source: 'practice' } as const

/** How much higher it sounds hangs on what is changed alone: the rest is the same before and after. */
const changed = (field: PlanField, part: readonly PlanField[]) => ({
  rigidHz: about('resonance', [...SOUND, field], RIGID),
  lowHz: about('resonance', [...SOUND, field], PRACTICE),
  highHz: about('resonance', [...SOUND, field], PRACTICE),
  cents: about('interval', [...part, field], RIGID),
})
const under = <Name extends string>(name: Name, rows: ReturnType<typeof changed>) =>
  Object.fromEntries(Object.entries(rows).map(([own, row]) => [`air.${name}.${own}`, row])) as Record<
    `air.${Name}.${keyof ReturnType<typeof changed>}`,
    About
  >

export const AIR_ABOUT = {
  'air.grossMm3': about('volume', GROSS, { standing: 'numeric' }),
  'air.takenUpMm3': about('volume', WOOD, PRACTICE),
  'air.netMm3': about('volume', LEFT, PRACTICE),
  'air.holeMm2': about('area', FREE_HOLE),
  'air.holeRadiusMm': about('bodyLength', FREE_HOLE),
  'air.rigidHz': about('resonance', SOUND, RIGID),
  'air.lowHz': about('resonance', SOUND, PRACTICE),
  'air.highHz': about('resonance', SOUND, PRACTICE),
  'air.ratio': about('ratio', [...SOUND, 'air.heardHz'], RIGID),
  ...under('holeChanged', changed('air.holeChangeMm', NECK_OF_HOLE)),
  ...under('depthChanged', changed('air.depthChangeMm', LEFT)),
} satisfies Partial<Record<NumberKey, About>>
