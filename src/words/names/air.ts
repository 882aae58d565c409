import type { KeysUnder } from '../numbers/numberWords.ts'
import { under } from './under.ts'

const changedNames = (change: string) => ({
  rigidHz: `${change}, rigid walls`,
  lowHz: `${change}, from`,
  highHz: `${change}, up to`,
  cents: `${change}, higher by`,
})

export const AIR_NAMES: Record<KeysUnder<'air'>, string> = {
  'air.grossMm3': 'Air, empty box',
  'air.takenUpMm3': 'Air, taken up by wood',
  'air.netMm3': 'Air, left',
  'air.holeMm2': 'Hole, free area',
  'air.holeRadiusMm': 'Hole, radius of its free area',
  'air.rigidHz': 'Air, rigid walls',
  'air.lowHz': 'Air sounds from',
  'air.highHz': 'Air sounds up to',
  'air.ratio': 'Heard, as part of rigid',
  ...under('air.holeChanged.', changedNames('Other hole')),
  ...under('air.depthChanged.', changedNames('Other depth')),
}
