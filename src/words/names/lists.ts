import type { NumberKey } from '../../core/numbers.ts'

type ListOf<Key> = Key extends `${infer List}[].${string}` ? List : never
/** Every list among the numbers, by its path. */
export type NumberListName = ListOf<NumberKey>

interface ListWords {
  /** What stands in it, over its table. */
  readonly title: string
  /** Over the names of its rows. */
  readonly head: string
}

/** What lists of numbers are called; a list that has no name does not compile. */
export const LIST_WORDS: Readonly<Record<NumberListName, ListWords>> = {
  pieces: { title: 'Compass pieces, from the tail', head: 'Piece' },
  readings: { title: 'Half-widths as read', head: 'Reading' },
  blanks: { title: 'Blanks of the sides', head: 'Blank' },
  rim: { title: 'Stations round the rim', head: 'Station' },
  trebleRim: { title: 'Stations round the treble side', head: 'Station' },
  places: { title: 'Named places of the rim', head: 'Place' },
  treblePlaces: { title: 'Named places of the treble side', head: 'Place' },
  sideBraces: { title: 'Side braces, from the tail', head: 'Brace' },
  trebleBraces: { title: 'Side braces of the treble side', head: 'Brace' },
  'blocks.tail.contour': { title: 'Tail block, glue face', head: 'Point' },
  'blocks.tail.flank': { title: 'Tail block, flank', head: 'Point' },
  'blocks.neck.contour': { title: 'Neck block, glue face', head: 'Point' },
  'blocks.neck.flank': { title: 'Neck block, flank beside the cutaway', head: 'Point' },
  braces: { title: 'Braces of top and back', head: 'Brace' },
  braceArch: { title: 'Arches of the braces, by eighths', head: 'Brace' },
  braceCrossings: { title: 'Crossings of the braces', head: 'Braces' },
  jointStrip: { title: 'Strip on the back’s joint', head: 'Piece' },
  edgePlaces: { title: 'Edges by place', head: 'Place' },
  trebleEdgePlaces: { title: 'Edges by place, treble side', head: 'Place' },
  edgeStrips: { title: 'Bindings and purflings', head: 'Strip' },
  frets: { title: 'Frets, from the nut', head: 'Fret' },
  markers: { title: 'Markers, from the nut', head: 'Fret' },
  strings: { title: 'Strings, bass to treble', head: 'String' },
  'neckSet.gaps': { title: 'Room under the board', head: 'Place' },
  'neckSet.changes': { title: 'What half a millimetre does', head: 'More by 0.5 mm of' },
  pins: { title: 'Pins or tie holes, bass to treble', head: 'String' },
  'neck.bolts': { title: 'Bolts or dowels, from the top', head: 'Bolt' },
  tuners: { title: 'Tuners, string by string', head: 'String' },
  'rosette.rings': { title: 'Rings of the rosette', head: 'Ring' },
}
