/** The sheets of an instrument that answer a question of the bench, in the order a body is thought out. */
export const SHEETS = [
  'outline',
  'sides',
  'domes',
  'blocks',
  'linings',
  'rosette',
  'bracing',
  'edges',
  'air',
  'cutting',
  'frets',
  'strings',
  'neckSet',
  'bridge',
  'neck',
  'numbers',
] as const
export type Sheet = (typeof SHEETS)[number]

/** Every sheet as the question it answers. */
export const SHEET_TITLES: Record<Sheet, string> = {
  outline: 'What shape is the body?',
  sides: 'How deep is the side here?',
  domes: 'How much dish do back and top have?',
  blocks: 'What curve goes on the blocks?',
  linings: 'What goes inside the rim?',
  rosette: 'Where do I cut for the rosette?',
  bracing: 'Where do the braces go?',
  edges: 'How are the edges cut?',
  air: 'Where will the air sound?',
  cutting: 'What do I cut and buy?',
  frets: 'Where do the frets go?',
  strings: 'How hard do the strings pull?',
  neckSet: 'How is the neck set?',
  bridge: 'Where does the saddle go?',
  neck: 'How is the neck cut?',
  numbers: 'What are all the numbers?',
}

/** What stands in place of a number. */
export const FIGURE_WORDS = { flat: 'flat', none: 'none' } as const

export const ESTIMATE_MARK = 'estimate'
