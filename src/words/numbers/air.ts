import type { KeysUnder, NumberTexts } from './numberWords.ts'

const RESONATOR =
  'Air in a rigid vessel, both ends of the hole flanged (Helmholtz 1863; Kinsler et al. 2000, 10.8; from memory). Estimate.'
const BAND =
  'Common practice, no published source: no wall is rigid, and a finished box is heard 12 to 30 % lower. Estimate.'
const SHARES = 'Shares of the linings and braces are common practice; the rest plain products. Estimate.'

const changed = (change: string): Record<'rigidHz' | 'lowHz' | 'highHz' | 'cents', NumberTexts> => ({
  rigidHz: {
    what: `Where the air of a box with rigid walls would sound ${change}.`,
    how: null,
    formula: 'As for the rigid box, with the area of that hole or the air of that depth.',
    from: RESONATOR,
  },
  lowHz: {
    what: `Lower end of the band ${change}.`,
    how: null,
    formula: '0.70 × the rigid box.',
    from: BAND,
  },
  highHz: {
    what: `Upper end of the band ${change}.`,
    how: null,
    formula: '0.88 × the rigid box.',
    from: BAND,
  },
  cents: {
    what: `How much higher the air would sound ${change}; minus: lower. A semitone is 100 cents.`,
    how: null,
    formula: '1200 × log₂(after ÷ before).',
    from: 'Equal temperament (ISO 16); of an estimate.',
  },
})
const OTHER_HOLE = changed('if the hole were changed as asked')
const OTHER_DEPTH = changed('if the bare sides were deeper as asked')

export const AIR_WORDS: Record<KeysUnder<'air'>, NumberTexts> = {
  'air.grossMm3': {
    what: 'What the empty box holds: between the inner faces of top and back, within the inner face of the sides.',
    how: null,
    formula: 'Depth between the plates, added up over the inside of the outline.',
    from: 'Strips across, three places in each (Gauss), within a hundredth of a percent; derived.',
  },
  'air.takenUpMm3': {
    what: 'What blocks, linings, braces, the plate under the bridge, the ring round the hole and the strip on the back take of it.',
    how: null,
    formula:
      'Length × width × height × share: linings 0.55 kerfed, 0.75 kerfs to the side, 0.65 solid, 0.45 single blocks; braces of the plates 0.75; blocks less the hollow of their face.',
    from: SHARES,
  },
  'air.netMm3': {
    what: 'The air that is left in the box.',
    how: null,
    formula: 'Empty box − what wood takes up.',
    from: SHARES,
  },
  'air.holeMm2': {
    what: 'Area of the hole that the board leaves open.',
    how: null,
    formula:
      'π × r² − what lies under the board, r radius of the hole: a segment, and less where the board is narrower than its chord.',
    from: 'Circle and straight edges; derived.',
  },
  'air.holeRadiusMm': {
    what: 'Radius of a round hole with that free area.',
    how: null,
    formula: '√(A ÷ π): A free area of the hole.',
    from: 'Area of a circle; derived.',
  },
  'air.rigidHz': {
    what: 'Where the air would sound if no wall gave way. A real box is always lower.',
    how: null,
    formula:
      'c ÷ 2π × √(A ÷ (V × (t + 16r/3π))): A free area, r its radius, V air left, t wood at the hole’s edge, c speed of sound, 331.3 × √(1 + T/273.15), T temperature.',
    from: RESONATOR,
  },
  'air.lowHz': {
    what: 'Lower end of the band in which the air of a finished box is usually heard.',
    how: null,
    formula: '0.70 × the rigid box.',
    from: BAND,
  },
  'air.highHz': {
    what: 'Upper end of that band.',
    how: null,
    formula: '0.88 × the rigid box.',
    from: BAND,
  },
  'air.ratio': {
    what: 'What was heard, as a part of the rigid box: the shop’s own measure, once it has tapped a few.',
    how: null,
    formula: 'h ÷ f: h heard when tapped, f the rigid box.',
    from: 'What was heard, over an estimate (Kinsler et al. 2000, 10.8; from memory).',
  },
  'air.holeChanged.rigidHz': OTHER_HOLE.rigidHz,
  'air.holeChanged.lowHz': OTHER_HOLE.lowHz,
  'air.holeChanged.highHz': OTHER_HOLE.highHz,
  'air.holeChanged.cents': OTHER_HOLE.cents,
  'air.depthChanged.rigidHz': OTHER_DEPTH.rigidHz,
  'air.depthChanged.lowHz': OTHER_DEPTH.lowHz,
  'air.depthChanged.highHz': OTHER_DEPTH.highHz,
  'air.depthChanged.cents': OTHER_DEPTH.cents,
}
