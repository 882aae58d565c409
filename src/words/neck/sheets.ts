import type { ChangeRow } from '../../core/instrument/neck/neckSet.ts'

/** What stands on the sheets of the neck besides fields and numbers. */
export const FRETS_WORDS = {
  scale: 'Scale',
  board: 'Fingerboard',
  wire: 'Frets and slots',
  markers: 'Markers',
  fret: 'Fret',
  fretHere: (fret: number): string => `Fret ${fret}`,
  nut: 'Nut',
  earlier: 'Toward the nut',
  later: 'Toward the body',
  table: 'Frets, from the nut',
  fanned: 'Fanned frets, laid off at both edges, parallel to the centreline',
  heights: 'Strings over the frets, neck straight',
  mark: (fret: number): string => `Mark fret ${fret}`,
  sawNote: 'Blades: guard on, board held in its jig, fingers behind the stop. Fine dust of hard woods: mask.',
} as const

export const STRINGS_WORDS = {
  together: 'All strings',
  oneString: 'String',
  string: (place: number): string => `String ${place}`,
  outermost: { bass: 'bass', treble: 'treble' },
  table: 'Strings, bass to treble',
  heights: 'Slots, saddle and intonation',
  set: 'The set',
  takeSet: 'Take a usual set',
  addBass: 'Add a string at the bass side',
  addTreble: 'Add a string at the treble side',
  remove: 'Take away',
  pair: 'One course with the next string',
  full: 'That is as many strings as one instrument takes.',
  spacing: 'Spacing',
  other: 'What would another tuning do?',
  otherNote: 'To compare with. Nothing that is built changes.',
  tunings: 'Another tuning',
  asTuned: 'As tuned',
  unknownMass: 'not known',
  byDiameter: 'by its diameter',
  unknownCore: 'not known',
  sameScale: 'the same',
  ownTuning: 'Own notes',
  caution: 'A string that breaks hits eyes: glasses on when bringing strings up.',
} as const

export const NECK_SET_WORDS = {
  heights: 'Heights on the way',
  targets: 'Setting up, strings at pitch',
  joint: 'How neck and body meet',
  gaps: 'Room under the board',
  changes: 'What half a millimetre does',
  changed: 'More by 0.5 mm of',
  what: {
    saddle: 'Saddle',
    bridge: 'Bridge',
    board: 'Board',
    rise: 'Rise',
  } satisfies Record<ChangeRow['what'], string>,
  end: 'board’s end',
  place: 'Place',
  heelFirst: 'Heel first: the workboard is hollowed and tilted so that the neck’s face stands here at the nut.',
  onFlat: 'The flat of the upper bout falls with the neck: the board lies on it.',
} as const

export const BRIDGE_WORDS = {
  saddle: 'Saddle',
  bridge: 'Bridge',
  holds: 'Pins or tie block',
  plate: 'Plate',
  compensation: 'Compensation',
  section: 'Cut along the centreline',
  holes: 'Holes, bass to treble',
  estimates: 'By estimate, string by string',
  estimateNote:
    'From how far a string is stretched when pressed, and how stiff it is. Set the intonation from the real fret 12.',
  all: 'All figures of the bridge',
} as const

export const NECK_WORDS = {
  joint: 'Heel and joint',
  shaft: 'Shaft and rod',
  head: 'Head',
  tuners: 'Tuners, string by string',
  headDrawing: 'Head from above',
  bolts: 'Bolts or dowels at',
  bolt: (place: number): string => `Bolt ${place}`,
  addBolt: 'Add a bolt',
  noBolts: 'None yet.',
  removeBolt: 'Take away',
  all: 'All figures of the neck blank',
} as const
