/** What a stage needs of the shop while it is worked at, sets or dries: a mould is in one instrument at a time. */
export const FIXTURE_KEYS = [
  'dryingShelf',
  'bendingForm',
  'bendingIron',
  'mould',
  'workboard',
  'topDish',
  'backDish',
  'joiningBoard',
  'deck',
  'blockClamps',
  'smallClamps',
  'clips',
  'caul',
  'straps',
  'clamps',
  'sprayRoom',
  'dryingRack',
  'bridgeClamps',
  'hangingPlace',
] as const
export type FixtureKey = (typeof FIXTURE_KEYS)[number]
