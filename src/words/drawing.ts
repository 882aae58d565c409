import type { DrawingName, EdgeMark, LabelWord, SeenFrom } from '../drawing/drawing.ts'

/** What each drawing shows: its name, and a sentence for those who hear it. */
export const DRAWING_WORDS: Record<DrawingName, { readonly name: string; readonly description: string }> = {
  plan: {
    name: 'Plan of the body',
    description:
      'The outline with the inner face of the sides, blocks, soundhole, rings, the board over the body, the saddle line and numbered stations. Lengths run from the tail.',
  },
  side: {
    name: 'Side elevation',
    description:
      'Top edge and back edge of the rim over the length of the body, with rim depths at tail, bouts, waist and neck.',
  },
  section: {
    name: 'Long section',
    description: 'The body cut open along the centreline: both plates, both blocks and the gap of the soundhole.',
  },
  domes: {
    name: 'Sections across',
    description:
      'Top and back cut across at lower bout, waist and upper bout, each with a straightedge from rim to rim and the gap under it.',
  },
  inside: {
    name: 'Side from the inside',
    description:
      'The inner face of one side laid along its length, seen from inside the body: linings, side braces with their places and lengths, and where the blocks are glued.',
  },
  blankTreble: {
    name: 'Treble side, flat blank',
    description:
      'The treble side laid flat with its straight edge, the line to saw, trim, stations with cut widths, and the waist mark.',
  },
  blankHorn: {
    name: 'Treble side from the horn on, flat blank',
    description:
      'The piece of the treble side from the horn to the neck laid flat, with its straight edge, the line to saw, trim, and stations with cut widths.',
  },
  blankBass: {
    name: 'Bass side, flat blank',
    description:
      'The bass side laid flat, the other way round than the treble one, with its straight edge, the line to saw, trim, stations with cut widths, and the waist mark.',
  },
  bevels: {
    name: 'Bevels round the rim',
    description:
      'The outline with a ray at each station, as long as the bevel there is wide: the back edge on one half, the top edge on the other; where the two sides differ, both edges on both halves, side by side.',
  },
  blockTail: {
    name: 'Tail block',
    description:
      'The tail block from above with the curve of its glue face, and from the side with its heights and the slopes of its ends.',
  },
  blockNeck: {
    name: 'Neck block',
    description:
      'The neck block from above with the curve of its glue face, and from the side with its heights and the slopes of its ends.',
  },
  fretboard: {
    name: 'Fingerboard',
    description:
      'The fingerboard from above, nut to the right: every fret with its number and its place from the nut, strings, markers, and where it lies over the joint.',
  },
  strings: {
    name: 'Nut and saddle',
    description:
      'Nut and saddle cut across, seen from the tail: every string at its place and thickness, the board under the nut, the bridge under the saddle.',
  },
  neckSet: {
    name: 'Neck set',
    description:
      'Top, bridge and board in the plane of the centreline, before stringing, with the plane of the frets carried on to the saddle and the room under the board.',
  },
  bridge: {
    name: 'Bridge from above',
    description:
      'The bridge with its slanted saddle slot behind the uncompensated line, pins or tie holes, strings, and the plate under it.',
  },
  bridgeSection: {
    name: 'Bridge cut along',
    description: 'Bridge, saddle and string in the plane of the centreline, with the top and the plate under them.',
  },
  neckSide: {
    name: 'Neck from the side',
    description:
      'Shaft, heel and head with the board on: thicknesses at two frets, the cheek at the neck angle, what enters the block, bolts and the rod’s channel.',
  },
  head: {
    name: 'Head from above',
    description: 'Tuner holes and the way of every string from its slot in the nut to its post.',
  },
  rosette: {
    name: 'Soundhole and rosette',
    description:
      'The hole and the rings with their radii, the circles the cutter runs on, and the angle of each ring that the board hides.',
  },
}

export const SEEN_FROM_WORDS: Record<SeenFrom, string> = {
  front: 'Seen from the front',
  back: 'Seen from the back',
  inside: 'Seen from the inside',
  bassSide: 'Seen from the bass side',
  trebleSide: 'Seen from the treble side',
  section: 'Section',
  glueFace: 'Seen on the glue face',
  tail: 'Seen from the tail',
}

export const SHAPE_WORDS: Record<EdgeMark | LabelWord, string> = {
  bass: 'BASS',
  treble: 'TREBLE',
  tail: 'TAIL',
  neck: 'NECK',
  horn: 'HORN',
  lowerBout: 'lower bout',
  waist: 'waist',
  upperBout: 'upper bout',
  hornTip: 'horn',
  neckCentre: 'neck centre',
  bassFromInside: 'BASS SIDE, inside',
  trebleFromInside: 'TREBLE SIDE, inside',
  rimPlane: 'rim plane',
  straightTaper: 'taper',
  saddleLine: 'saddle line',
  flatFrom: 'flat from',
  waistMark: 'WAIST MARK',
  showFace: 'SHOW FACE',
  straightEdge: 'straight edge',
  cutLine: 'saw here',
  topPlate: 'TOP',
  backPlate: 'BACK',
  topBevelBothSides: 'TOP edge, both sides',
  backBevelBothSides: 'BACK edge, both sides',
  topBevel: 'TOP edge',
  backBevel: 'BACK edge',
  contourFromAbove: 'from above',
  blockFromSide: 'from the side',
  glueFace: 'glue face',
  joint: 'joint',
  nut: 'nut',
  saddle: 'saddle',
  fretPlane: 'plane of the frets',
}

export const DRAWING_FRAME_WORDS = {
  heightsLess: 'Lower',
  heightsMore: 'Higher',
  heightsName: 'How much larger heights are drawn',
  scale: (ratio: string) => `1 : ${ratio}`,
  enlarge: 'Larger',
  reduce: 'Smaller',
  fit: 'Fit',
  moveHint: 'Drag or pinch to move and enlarge. Keys: plus, minus, arrows, 0 to fit.',
} as const

/** What a drawing shows larger than it is: heights, or on a block the curve of its glue face. */
export const enlargedWords = (name: DrawingName, times: number): string =>
  name === 'blockTail' || name === 'blockNeck' ? `curve × ${times}` : `heights × ${times}`
