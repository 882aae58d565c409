import type { KeysUnder } from '../numbers/numberWords.ts'
import { under } from './under.ts'

const liningNames = (lining: string) => ({ ledgeMm: `${lining}, ledge left`, lengthMm: `${lining}, length glued` })
const braceNames = (side: string) => ({
  alongOuterMm: `${side}, round the outside`,
  xMm: `${side}, along the centreline`,
  lengthMm: `${side}, length`,
  faceRadiusMm: `${side}, radius of its face`,
  faceRiseMm: `${side}, rise of its face`,
  spacingMm: `${side}, from the one before`,
})

export const INSIDE_NAMES: Record<KeysUnder<'linings' | 'sideBraces' | 'trebleBraces' | 'caul'>, string> = {
  ...under('linings.top.', liningNames('Top lining')),
  ...under('linings.back.', liningNames('Back lining')),
  'linings.toBuyMm': 'Lining to buy',
  ...under('sideBraces[].', braceNames('Side brace')),
  ...under('trebleBraces[].', braceNames('Treble brace')),
  'caul.bumpMm': 'Caul, bump at its middle',
  'caul.clampForceN': 'Caul, force of each clamp',
  'caul.stressMPa': 'Caul, stress at its middle',
}
