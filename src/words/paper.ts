import type { PlateSide } from '../core/boxPlan.ts'
import { BRACE_TAPER_WORDS, braceName, BRACING_WORDS, PLATE_WORDS } from './box/bracing.ts'
import { PLACE_WORDS } from './measuring.ts'
import { ESTIMATE_MARK, FIGURE_WORDS } from './sheets.ts'
import { STAGE_WORK_WORDS } from './stageWork.ts'

type TaperKind = keyof typeof BRACE_TAPER_WORDS

/** What stands on every paper besides stages, numbers and cautions. */
export const PAPER_WORDS = {
  stageSheet: 'Stage sheet',
  forStock: 'for stock',
  columns: {
    what: 'What',
    target: 'Target',
    tolerance: 'Within',
    measured: 'Measured',
    bass: 'Bass',
    treble: 'Treble',
    place: 'Place',
    station: 'Station',
    blank: 'Blank',
    brace: 'Brace',
    fret: 'Fret',
    string: 'String',
    bolt: 'Bolt',
    piece: 'Piece',
  },
  work: STAGE_WORK_WORDS,
  /** Stands after a target that follows a reading; a note under the heading of the stage says so. */
  readingSign: '†',
  readingLegend: '† From your reading: the plan has another figure here.',
  done: 'Done, date',
  alreadyDone: 'signed off',
  signedOff: (day: string) => `Signed off on ${day}: numbers as they were then.`,
  continued: 'continued',
  estimate: ESTIMATE_MARK,
  ...FIGURE_WORDS,
  places: PLACE_WORDS,
  ring: (place: number) => `Ring ${place}`,
  fret: (fret: number) => `Fret ${fret}`,
  boardEnd: 'Board’s end',
  brace: braceName,
  crossing: BRACING_WORDS.crossing,
  /** A place of a brace's arch, counted from its first end. */
  eighth: (brace: number, eighth: number) => `${brace}, at ${eighth}/8`,
  /** How the ends of braces run out: those of each kind together, in their order. */
  tapers: (braces: readonly { readonly number: number; readonly from: TaperKind; readonly to: TaperKind }[]) => {
    const said = (Object.keys(BRACE_TAPER_WORDS) as TaperKind[]).flatMap((kind) => {
      const which = braces.flatMap(({ number, from, to }) =>
        from === kind && to === kind
          ? [`${number}`]
          : from === kind
            ? [`${number} at its first end`]
            : to === kind
              ? [`${number} at its second end`]
              : [],
      )
      return which.length === 0 ? [] : [`${BRACE_TAPER_WORDS[kind].toLowerCase()} ${which.join(', ')}`]
    })
    return `How the ends run out, by brace: ${said.join('; ')}. A scoop is hollow: level at the tip, a quarter of the rise half-way up.`
  },
  strip: (side: string, plate: PlateSide) => `${side}, ${PLATE_WORDS[plate].toLowerCase()}`,
  sides: { bass: 'Bass side', treble: 'Treble side' },
  /** A piece of a side that is made of more than one, counted from the tail. */
  pieceOfSide: (side: string, piece: number) => `${side}, piece ${piece}`,
  stationsFrom: (along: string, from: 'tail' | 'tailLine' | 'ownTailLine') =>
    `Stations: ${along.charAt(0).toLowerCase()}${along.slice(1)}, from the ${{ tail: 'tail', tailLine: 'tail line', ownTailLine: 'piece’s own tail line' }[from]}.`,
  /** Where the plan leaves the blanks as wide as they are. */
  profileOnRim:
    'On this instrument the back profile is brought to on the bent rim: nothing is sawn on the flat blanks, and no widths are printed. The stations stand with the depths of the bare rim.',
  cautionsInFull: 'Cautions in full',
  cautionsNote:
    'Usual in the trade, and no more than that: the label, the safety data sheet and your local codes go before anything said here.',
  /** At the head of every page while something cannot be built. */
  misfits: (count: number) => ({
    title: 'Cannot be built as planned',
    short: `${count === 1 ? 'One thing does' : `${count} things do`} not fit: do not cut to these numbers. The app says what, under Next.`,
  }),
  legend:
    'Targets are this instrument’s, in the shop’s units. “Within” is what the stage allows either way; where none stands, none was set. Write what you measure in the boxes. Hours and waits are usual ones, without a source: the label of what sets or dries goes before them.',
  titleBlock: {
    instrument: 'Instrument',
    client: (name: string) => `For ${name}`,
    forStock: 'For stock',
    sheet: 'This sheet',
    unit: 'Units',
    notToScale: 'drawings not to scale',
    revision: 'Revision',
    revisionNote: ['type it into the app', 'to see what changed'],
    date: 'Printed',
    page: 'Page',
    pageOf: (page: number, count: number) => `${page} of ${count}`,
    /** `places`: the stages' places in the building order, rising: 4 to 6, or 6, 9. */
    stages: (places: readonly number[], of: number) => {
      const [first] = places
      const last = places.at(-1)
      const isRun = first !== undefined && last !== undefined && last - first === places.length - 1
      const which = places.length > 1 && isRun ? `${first} to ${last}` : places.join(', ')
      return `${places.length === 1 ? 'stage' : 'stages'} ${which} of ${of}`
    },
  },
  units: {
    mm: 'mm',
    decimalInch: 'decimal inches',
    fractionalInch: 'inches, 64ths',
    feetInches: 'ft and in',
    metres: 'metres',
    thousandths: 'thou',
  },
  /** null: no length of that kind stands on the paper. */
  unitLine: (body: string, thickness: string | null, dome: string | null) =>
    [
      thickness === null || thickness === body ? body : `body ${body}; thickness ${thickness}`,
      ...(dome === null ? [] : [`domes ${dome}`]),
    ].join('; '),
} as const
export type PaperWords = typeof PAPER_WORDS
