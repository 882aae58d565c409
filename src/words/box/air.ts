/** The sheet that says where the air of the box will sound. */
export const AIR_WORDS = {
  band: (low: string, high: string) => `from ${low} to ${high}`,
  bandName: 'Where a finished box of this kind is heard',
  why: 'The formula gives the air alone in a box whose walls do not move. Real walls give way, and the air then sounds 12 to 30 % lower (common practice). It says nothing of tone.',
  noBand: 'No sounding hole: the board covers it, or there is no air.',
  shopName: 'By the boxes of this shop',
  shopNone: 'No other box of this family has been tapped by this shop yet.',
  howToKeep:
    'Once this one is closed, tap it, type what you heard, and keep it: later boxes are then told by your own.',
  /** Before there are enough to go by. */
  shopFew: (count: number, enough: number) =>
    `${count === 1 ? 'One other box' : `${count} other boxes`} of this family ${count === 1 ? 'has' : 'have'} been tapped. With ${enough} the shop’s own boxes tell where this one is to be expected; until then the band above stands.`,
  shopSays: (count: number, notes: string, low: string, high: string, mean: string) =>
    `By the ${count} other boxes of this family that were tapped, it is to be expected between ${low} and ${high} (${notes}), at ${mean} on the mean.`,
  /** One box of the shop: its number and name, and what part of its rigid box it sounded. */
  box: (number: string, title: string) => (title === '' ? number : `${number} ${title}`),
  heardAt: (ratio: string) => `heard at ${ratio} of its rigid box`,
  otherFamilies: (boxes: string) => `Of other families, and not counted: ${boxes}.`,
  heardName: 'What was heard',
  heardSays: (hertz: string, note: string) => `${hertz}: ${note}.`,
  heardRatio: (ratio: string) => `That is ${ratio} of the rigid box.`,
  keep: 'Keep it among the shop’s boxes',
  keptAgain: 'Keep it anew',
  kept: 'Kept among the shop’s boxes.',
  heard: 'Heard',
  howToHear:
    'Damp the strings, hold the box lightly at the rim, tap beside the bridge, and find the note with a tuner at the hole.',
  whatIf: 'What a change does',
  hole: 'Hole’s radius',
  depth: 'Depth of the rim',
  change: 'Change',
  numbers: 'The box',
  shopList: 'Boxes this shop has tapped',
  shopLead: 'Three of one family tell where the next one of that family is to be expected.',
  drop: 'Forget it',
  noTaps: 'None yet: they are kept from the Air sheet of an instrument.',
} as const
