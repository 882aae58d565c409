/** The list of instruments, and what is done to one there. */
export const BENCH_WORDS = {
  title: 'What is on the bench?',
  forStock: 'for stock',
  columns: { number: 'Number', what: 'Instrument', stands: 'Where it stands', promised: 'Promised' },
  search: 'Find by number, client or title',
  new: 'New instrument',
  open: 'Open a file',
  archived: 'Put away',
  showArchived: (count: number) => (count === 1 ? 'Show the one put away' : `Show the ${count} put away`),
  hideArchived: 'Hide what is put away',
  next: 'next',
  allDone: 'every stage done',
  notPromised: 'no date given',
  more: (label: string) => `More for ${label}`,
  moreShort: 'More',
  duplicate: 'Duplicate',
  duplicateBuilt: 'Duplicate as built',
  archive: 'Put away',
  unarchive: 'Take out again',
  remove: 'Delete',
  saveFile: 'Save to a file',
  undo: 'Undo',
  nothingFound: 'No instrument answers to that.',
  unreadable: 'cannot be read and was left as it is',
  demo: 'demo',
  removeDemo: 'Remove the demo',
  demoOffer:
    'A small shop’s bench can be laid out to look round in: two instruments on compass arcs, one by key widths. It can be removed in one step.',
  takeDemo: 'Lay out the demo',
  declineDemo: 'Start empty',
  empty: 'The bench is clear',
  emptyLead: 'An instrument begins with four sizes. Everything else follows from them and can be changed at any time.',
  emptyBouts: 'bouts',
  emptyWaist: 'waist',
  emptyLength: 'length',
  emptyDepth: 'depth',
  shop: 'The shop',
} as const

/** How far off a promised day is. */
export function daysLeft(days: number): string {
  if (days === 0) return 'today'
  if (days === 1) return 'tomorrow'
  if (days < 0) return days === -1 ? 'one day late' : `${-days} days late`
  return `in ${days} days`
}

/** Where an instrument stands, in words. */
export function standsAt(done: number, total: number): string {
  return `${done} of ${total} stages done`
}

export const ACTION_SENTENCES = {
  created: (label: string) => `${label} is on the bench.`,
  duplicated: (label: string) => `${label} was copied onto the bench.`,
  opened: (label: string) => `${label} was opened from its file.`,
  archived: (label: string) => `${label} is put away.`,
  unarchived: (label: string) => `${label} is back on the bench.`,
  deleted: (label: string) => `${label} is deleted.`,
  restored: (label: string) => `${label} is back.`,
  replaced: (label: string) => `${label} was replaced by the one in the file.`,
  demoRemoved: () => 'The demo is removed.',
} as const

/** What became of the demo where some of its instruments had been written to. */
export function demoStays(staying: number): string {
  return staying === 1
    ? 'The demo is removed, but for the one instrument you changed: it stays, as your own.'
    : `The demo is removed, but for the ${staying} instruments you changed: they stay, as your own.`
}

export const NEW_WORDS = {
  title: 'What is to be built?',
  number: 'Number',
  what: 'What it is',
  client: 'Client, empty for stock',
  startFrom: 'Start from',
  models: 'a model of the house',
  instruments: 'an instrument already here',
  order: 'Order of stages',
  houseOrder: 'the house’s',
  begin: 'Put it on the bench',
  numberTaken: (number: string) => `${number} is taken: give it another number.`,
  numberMissing: 'Give it a number: it stands on every sheet.',
  loading: 'Fetching the models.',
  noModels: 'There is no model to begin from. One that was removed can be brought back on the sheet Models.',
} as const

export const IMPORT_WORDS = {
  reading: 'Reading the file.',
  clashTitle: 'It is here already',
  clash: (label: string) =>
    `The file holds ${label}, which is on this device already. Keep both, or put the file’s in the place of the one here? Either can be undone.`,
  keepBoth: 'Keep both',
  replace: 'Replace the one here',
  refusedTitle: 'The file was not taken',
} as const
