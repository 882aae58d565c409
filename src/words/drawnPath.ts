import type { OutlineProblem } from '../core/instrument/outlineFromPath.ts'
import type { DrawnFileProblem, DrawnUnit, LeftOutKind } from '../record/drawnFile.ts'
import { DRAWN_FILE_PROBLEM, LEFT_OUT, OUTLINE_PROBLEM } from './drawnFile.ts'

const UNIT_NAMES: Readonly<Record<DrawnUnit, string>> = {
  mm: 'millimetres',
  cm: 'centimetres',
  m: 'metres',
  inch: 'inches',
  foot: 'feet',
  point: 'points, 72 to the inch',
}

/** Why nothing came of a file. */
export const OPEN_PROBLEM: Readonly<Record<DrawnFileProblem | 'unreadable' | 'notLoaded', string>> = {
  ...DRAWN_FILE_PROBLEM,
  unreadable: 'This file could not be read from the device: look whether it is still there, and open it again.',
  notLoaded: 'The part that reads drawings could not be fetched: look whether you are connected, and open it again.',
}

/** Why a line gives no outline. */
export const TAKE_PROBLEM: Readonly<Record<OutlineProblem | 'tooFine', string>> = {
  ...OUTLINE_PROBLEM,
  tooFine: 'This line has more than 4,000 strokes to a half, or reaches too far: simplify it, and save it again.',
}

const counted = (count: number, one: string, more: string): string => `${count} ${count === 1 ? one : more}`

export const DRAWN_PATH_WORDS = {
  none: 'No outline was taken yet. Draw half the body from tail to neck, or all of it, and save it as SVG or DXF.',
  open: 'Open a drawing',
  openAnother: 'Open another',
  reading: 'Reading the drawing.',
  from: 'Taken from',
  notInUse: 'The outline is drawn another way now; what was taken is kept.',
  title: (fileName: string) => (fileName === '' ? 'A drawing' : fileName),

  unit: 'Unit of the drawing',
  unitAsked: 'The file does not say its unit. Choose it; nothing is taken before.',
  unitSaid: (unit: DrawnUnit) => `The file says: ${UNIT_NAMES[unit]}`,
  units: {
    mm: 'Millimetres',
    cm: 'Centimetres',
    inch: 'Inches',
    px: 'Pixels, 96 to the inch',
    byLength: 'I know how long the body is',
  },
  howLong: 'The body is this long',

  line: 'Which line is the outline',
  lineName: (place: number, name: string) => (name === '' ? `Line ${place}` : `Line ${place}: ${name}`),
  closed: 'closed',
  openEnds: 'open',
  notListed: (count: number) => `${counted(count, 'shorter line is', 'shorter lines are')} not listed.`,

  end: 'Tail',
  ends: { asFound: 'The end nearer to the widest place', turned: 'The other end: turn it round' },
  treble: 'Treble side, tail to the left',
  trebles: { swapped: 'The lower one, as seen from the front', asDrawn: 'The upper one' },
  axis: 'Centreline',
  axes: {
    found: 'Found between two like sides',
    horizontal: 'Along the drawing (x)',
    vertical: 'Up the drawing (y)',
  },
  axisAt: 'Centreline lies at',
  axisAtHint:
    'From the left or upper edge of an SVG page (downward counts minus), or from the origin of a DXF drawing. Left open: midway between the outermost places.',
  symmetry: 'Sides',
  symmetries: {
    mirrorBass: 'Bass side, mirrored',
    mirrorTreble: 'Treble side, mirrored',
    asDrawn: 'Each as drawn',
  },
  readTo: 'Follow traced points to within',
  readToHint: 'Counts where the line is a row of short straights. Straights, arcs and curves are followed as drawn.',

  preview: 'The outline as it would be taken, seen from the front with the neck to the right',
  tail: 'Tail',
  neck: 'Neck',
  bass: 'Bass side',
  trebleSide: 'Treble side',
  length: 'Length',
  width: 'Width',
  half: 'Half a body was drawn: the treble side is the bass side mirrored.',
  whole: 'The whole body was drawn, both sides alike.',
  differ: (most: string) => `The whole body was drawn. Mirrored, its sides lie up to ${most} apart.`,

  done: 'What was done to the drawing',
  gaps: (count: number, largest: string) =>
    `${counted(count, 'gap between loose ends was', 'gaps between loose ends were')} closed, the largest ${largest}.`,
  tiny: (count: number) => `${counted(count, 'stroke', 'strokes')} shorter than a hundredth of a millimetre left out.`,
  duplicates: (count: number) => `${counted(count, 'line that was', 'lines that were')} drawn twice taken once.`,
  closedUp: (gap: string) => `The outline was left open by ${gap}, and was closed.`,
  centrelineDropped: 'The centreline drawn with the half was left out.',
  leftOut: (kind: LeftOutKind, count: number) => `Not read: ${count} ${LEFT_OUT[kind]}.`,
  nothingDone: 'Nothing was mended, and nothing was left out.',

  take: 'Take this outline',
  readOnly: 'This instrument cannot be changed here now, so that nothing can be taken.',
} as const
