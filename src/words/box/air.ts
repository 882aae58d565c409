/** The sheet that says where the air of the box will sound. */
export const AIR_WORDS = {
  band: (low: string, high: string) => `from ${low} to ${high}`,
  bandName: 'Where a finished box of this kind is heard',
  why: 'The formula gives the air alone in a box whose walls do not move. Real walls give way, and the air then sounds 12 to 30 % lower (common practice). It says nothing of tone.',
  noBand: 'No sounding hole: the board covers it, or there is no air.',
  shopName: 'By the boxes of this shop',
  shopNone:
    'No box of this shop has been tapped yet. Once one is closed, tap it, type what you heard, and keep it: later boxes are then told by your own.',
  shopSays: (count: number, mean: string, low: string, high: string) =>
    `${count === 1 ? 'One box tapped' : `${count} boxes tapped`}: this one is to be expected at ${mean}${
      count === 1 ? '' : `, between ${low} and ${high}`
    }.`,
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
  shopLead: 'What part of the rigid box each was heard at. They tell where the next one is to be expected.',
  drop: 'Forget it',
  noTaps: 'None yet: they are kept from the Air sheet of an instrument.',
} as const
