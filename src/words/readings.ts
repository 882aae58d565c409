import type { ShopUnits } from '../core/quantity.ts'
import type { ReadingList } from '../record/readings.ts'

interface ListWords {
  readonly heading: string
  readonly lead: string
  /** Names of the two lengths of a row. */
  readonly distance: string
  readonly halfWidth: string
}

export const READING_LIST_WORDS: Readonly<Record<ReadingList, ListWords>> = {
  rows: {
    heading: 'Along the body',
    lead: 'At a distance from the tail, the half-width. Closer together where it bends more.',
    distance: 'From the tail',
    halfWidth: 'Half-width',
  },
  tailRows: {
    heading: 'Tail end, read the other way',
    lead: 'Where the outline runs across the body: out from the centreline, how far it lies from the line across the tail.',
    distance: 'From the tail line',
    halfWidth: 'Out, tail end',
  },
  neckRows: {
    heading: 'Neck end, read the other way',
    lead: 'The same at the neck: how far the outline lies from the line of the neck joint. It is kept as a distance from the tail, the body length less what is typed.',
    distance: 'From the neck line',
    halfWidth: 'Out, neck end',
  },
}

export const READINGS_WORDS = {
  heading: 'Half-widths as read',
  ends: 'Tail and neck',
  lead: 'Lay the body, or its half template, on a drawn centreline and the rule square across it: every 20 mm or so from the tail read how far out the edge lies.',
  drawing: 'Half a body over its centreline, with a rule square across at even steps.',
  needsLength: (kept: number) =>
    `Type the body length first: the neck end is read from the neck joint.${kept > 0 ? ` ${kept} ${kept === 1 ? 'reading is' : 'readings are'} kept until then.` : ''}`,
  offCurve: 'Off the curve',
  offNote:
    'Plus: the reading lies outside the curve. Minus: inside. “Over” marks what lies further off than it was read to.',
  over: 'over',
  add: 'Add this reading',
  next: 'Next reading',
  remove: 'Remove',
  reading: 'reading',
  full: 'No more readings fit in.',
} as const

export const PASTE_WORDS = {
  open: 'Paste a table',
  title: (heading: string) => `Paste a table: ${heading.toLowerCase()}`,
  lead: (first: string, second: string, unit: string) =>
    `A line for each reading, two numbers in a line: “${first}”, then “${second}”. Between them a tab, a semicolon, a comma or a space. Without a unit they are in ${unit}.`,
  text: 'Lines',
  line: (line: number) => `Line ${line}:`,
  count: (found: number) => `${found === 1 ? 'one number stands' : `${found} numbers stand`} here; it takes two.`,
  unclear: 'this can be one number or two. Put a semicolon or a tab between the two numbers.',
  ready: (count: number) => (count === 1 ? 'One reading can be taken.' : `${count} readings can be taken.`),
  heading: (line: number) => `Line ${line} holds no number and is passed over.`,
  tooMany: (most: number) => `That makes more than ${most} readings: leave some out.`,
  nothing: 'Nothing is taken until every line can be read.',
  more: (count: number) => `And ${count} more.`,
  take: 'Take them',
  replace: 'Put them in place of the table',
  addTo: 'Add them to the table',
} as const

/** The shop's unit for lengths on the body, as it is said. */
export const BODY_UNIT_WORDS: Readonly<Record<ShopUnits['bodyLength'], string>> = {
  mm: 'millimetres',
  decimalInch: 'inches',
  fractionalInch: 'inches',
}
