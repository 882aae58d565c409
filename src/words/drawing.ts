import type { DrawingName, EdgeMark, LabelWord, SeenFrom } from '../drawing/drawing.ts'

/** What a drawing shows: its name, and a sentence for those who hear it. */
export interface DrawingTold {
  readonly name: string
  readonly description: string
}

/** Of the drawing an instrument opens on; those of all others come with their sheets. */
export const PLAN_TOLD: DrawingTold = {
  name: 'Plan of the body',
  description:
    'The outline with the inner face of the sides, blocks, soundhole, rings, the board over the body, the saddle line and numbered stations. Lengths run from the tail.',
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
  face: 'Seen on its face',
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
  grain: 'grain',
  centreline: 'centreline',
  referenceEdge: 'reference edge',
  keepSide: 'keep this side',
  bodyOutline: 'body outline',
  forBlock: 'for the block',
  checksBlock: 'checks the block',
  purfling: 'purfling',
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
