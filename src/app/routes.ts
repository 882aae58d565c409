import type { Sheet } from '../words/sheets.ts'

export const ROUTE_GROUPS = ['body', 'box', 'neck', 'work', 'paper'] as const
export type RouteGroup = (typeof ROUTE_GROUPS)[number]

/** Every place of the app, as data: the shell shows them, the walks visit them, and fail if one was left out. */
export interface RouteRow {
  /** Behind the hash; `:id` is an instrument. */
  readonly path: string
  readonly view:
    | 'list'
    | 'models'
    | 'shop'
    | 'overview'
    | 'bench'
    | 'brief'
    | 'model'
    | 'sheet'
    | 'stages'
    | 'fit'
    | 'readings'
    | 'typeIn'
    | 'paper'
    | 'fullSize'
    | 'pack'
  /** The question sheet, where the view is one of several. */
  readonly sheet?: Sheet
  /** Sheets of one part of the instrument share a row of the register, which shows while one of them is open. */
  readonly group?: RouteGroup
  /** As the register at the foot calls it. */
  readonly name: string
  /** The question of the bench it answers. */
  readonly title: string
  /** From where the instrument is seen on it. */
  readonly seenFrom: string
}

export const ROUTES = [
  { path: '/', view: 'list', name: 'Bench', title: 'What is on the bench?', seenFrom: '' },
  { path: '/models', view: 'models', name: 'Models', title: 'What does this house build?', seenFrom: '' },
  { path: '/shop', view: 'shop', name: 'Shop', title: 'How does this shop measure?', seenFrom: '' },
  { path: '/i/:id', view: 'overview', name: 'Next', title: 'What is next?', seenFrom: 'outside, top up' },
  { path: '/i/:id/bench', view: 'bench', name: 'At hand', title: 'What is in hand?', seenFrom: '' },
  { path: '/i/:id/brief', view: 'brief', name: 'Brief', title: 'Who is it for?', seenFrom: '' },
  {
    path: '/i/:id/model',
    view: 'model',
    name: 'Model',
    title: 'How does it differ from its model?',
    seenFrom: '',
  },
  {
    path: '/i/:id/outline',
    view: 'sheet',
    sheet: 'outline',
    group: 'body',
    name: 'Outline',
    title: 'What shape is the body?',
    seenFrom: 'outside, top up',
  },
  {
    path: '/i/:id/sides',
    view: 'sheet',
    sheet: 'sides',
    group: 'body',
    name: 'Sides',
    title: 'How deep is the side here?',
    seenFrom: 'the bass side',
  },
  {
    path: '/i/:id/domes',
    view: 'sheet',
    sheet: 'domes',
    group: 'body',
    name: 'Domes',
    title: 'How much dish do back and top have?',
    seenFrom: 'sections',
  },
  {
    path: '/i/:id/blocks',
    view: 'sheet',
    sheet: 'blocks',
    group: 'body',
    name: 'Blocks',
    title: 'What curve goes on the blocks?',
    seenFrom: 'outside, top up',
  },
  {
    path: '/i/:id/linings',
    view: 'sheet',
    sheet: 'linings',
    group: 'body',
    name: 'Linings',
    title: 'What goes inside the rim?',
    seenFrom: 'inside',
  },
  {
    path: '/i/:id/rosette',
    view: 'sheet',
    sheet: 'rosette',
    group: 'body',
    name: 'Rosette',
    title: 'Where do I cut for the rosette?',
    seenFrom: 'outside, top up',
  },
  {
    path: '/i/:id/bracing',
    view: 'sheet',
    sheet: 'bracing',
    group: 'box',
    name: 'Bracing',
    title: 'Where do the braces go?',
    seenFrom: 'inside',
  },
  {
    path: '/i/:id/edges',
    view: 'sheet',
    sheet: 'edges',
    group: 'box',
    name: 'Edges',
    title: 'How are the edges cut?',
    seenFrom: 'section',
  },
  {
    path: '/i/:id/air',
    view: 'sheet',
    sheet: 'air',
    group: 'box',
    name: 'Air',
    title: 'Where will the air sound?',
    seenFrom: '',
  },
  {
    path: '/i/:id/cutting',
    view: 'sheet',
    sheet: 'cutting',
    group: 'box',
    name: 'Cutting',
    title: 'What do I cut and buy?',
    seenFrom: '',
  },
  {
    path: '/i/:id/frets',
    view: 'sheet',
    sheet: 'frets',
    group: 'neck',
    name: 'Frets',
    title: 'Where do the frets go?',
    seenFrom: 'outside, top up',
  },
  {
    path: '/i/:id/strings',
    view: 'sheet',
    sheet: 'strings',
    group: 'neck',
    name: 'Strings',
    title: 'How hard do the strings pull?',
    seenFrom: 'the tail',
  },
  {
    path: '/i/:id/neckSet',
    view: 'sheet',
    sheet: 'neckSet',
    group: 'neck',
    name: 'Neck set',
    title: 'How is the neck set?',
    seenFrom: 'section',
  },
  {
    path: '/i/:id/bridge',
    view: 'sheet',
    sheet: 'bridge',
    group: 'neck',
    name: 'Bridge',
    title: 'Where does the saddle go?',
    seenFrom: 'outside, top up',
  },
  {
    path: '/i/:id/neck',
    view: 'sheet',
    sheet: 'neck',
    group: 'neck',
    name: 'Neck cut',
    title: 'How is the neck cut?',
    seenFrom: 'the treble side',
  },
  {
    path: '/i/:id/numbers',
    view: 'sheet',
    sheet: 'numbers',
    name: 'Numbers',
    title: 'What are all the numbers?',
    seenFrom: '',
  },
  {
    path: '/i/:id/stages',
    view: 'stages',
    group: 'work',
    name: 'Stages',
    title: 'What has been done?',
    seenFrom: '',
  },
  {
    path: '/i/:id/fit',
    view: 'fit',
    group: 'work',
    name: 'Already built',
    title: 'What is already built and no longer fits?',
    seenFrom: '',
  },
  {
    path: '/i/:id/readings',
    view: 'readings',
    group: 'work',
    name: 'Readings',
    title: 'What was measured?',
    seenFrom: '',
  },
  {
    path: '/i/:id/typeIn',
    view: 'typeIn',
    group: 'work',
    name: 'Type in',
    title: 'What is pencilled on the sheet?',
    seenFrom: '',
  },
  {
    path: '/i/:id/paper',
    view: 'paper',
    group: 'paper',
    name: 'Stage sheets',
    title: 'What goes on paper?',
    seenFrom: '',
  },
  {
    path: '/i/:id/full-size',
    view: 'fullSize',
    group: 'paper',
    name: 'Full size',
    title: 'What is cut at full size?',
    seenFrom: '',
  },
  {
    path: '/i/:id/pack',
    view: 'pack',
    group: 'paper',
    name: 'Pack',
    title: 'What leaves the shop on paper?',
    seenFrom: '',
  },
] as const satisfies readonly RouteRow[]

/** The rows that lie under one instrument, in the order of the register. */
export const INSTRUMENT_ROUTES: readonly RouteRow[] = ROUTES.filter((row) => row.path.startsWith('/i/:id'))

/** The rows of one group, in the order of the register. */
export const rowsOfGroup = (group: RouteGroup): readonly RouteRow[] =>
  INSTRUMENT_ROUTES.filter((row) => row.group === group)

/** The address of a row for one instrument. */
export const addressOf = (row: RouteRow, id: string): string => row.path.replace(':id', id)

/** The row an address stands for, and the instrument in it; `match` gives the parameters of a pattern, or null. */
export function findRoute(
  match: (path: string) => { readonly id?: string } | null,
): { readonly row: RouteRow; readonly id: string } | null {
  for (const row of ROUTES) {
    const params = match(row.path)
    if (params !== null) return { row, id: params.id ?? '' }
  }
  return null
}
