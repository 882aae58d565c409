/** Where the work of a stage can hurt: the words say how, and defer to the label, the safety data sheet and local codes. */
export const CAUTION_KEYS = [
  'woodDust',
  'heat',
  'blades',
  'glue',
  'solvents',
  'oilyRags',
  'cites',
  'shellDust',
  'strings',
] as const
export type CautionKey = (typeof CAUTION_KEYS)[number]
