/** What is bought for an instrument besides its wood, and has to be in the shop before the stage that uses it. */
export const PART_KEYS = [
  'rosetteStrips',
  'bindings',
  'truss',
  'neckBolts',
  'tuners',
  'markers',
  'fretWire',
  'boardBindings',
  'label',
  'filler',
  'finish',
  'bridgePins',
  'nutAndSaddle',
  'endPin',
  'guardPlate',
  'strings',
  'case',
] as const
export type PartKey = (typeof PART_KEYS)[number]
