import { ENTERED, type KeysUnder, type NumberTexts } from './numberWords.ts'

const HELD = 'Length of a parallel curve; derived. That a strip keeps its length in its middle is common practice.'
const TRIMMED = {
  formula: 'f + 2 × e: f the fitted length, e what strips are longer by.',
  from: 'Plain sum; derived.',
} as const

const plateLeft = (plate: 'top' | 'back'): NumberTexts => ({
  what: `What is left of the ${plate} under its purfling.`,
  how: `Depth gauge from the ${plate} to the floor of the channel; the rest of the plate is left.`,
  formula: 't − p: t thickness of the plate, p purfling depth.',
  from: 'Plain difference; derived.',
})

const purflingWidth = (plate: 'top' | 'back'): NumberTexts => ({
  what: `How much further in than the binding ledge the channel of the ${plate}’s purfling goes; none without one.`,
  how: 'Caliper from the wall of the ledge to the wall of the channel.',
  ...ENTERED,
})

export const EDGE_WORDS: Record<KeysUnder<'edges' | 'edgeStrips'>, NumberTexts> = {
  'edges.ledgeMm': {
    what: 'How far the binding ledge goes down the side, from the plate’s outer corner; the same at both edges, all round.',
    how: 'Depth gauge beside the side, from the height of the outer corner to the ledge.',
    ...ENTERED,
  },
  'edges.ledgeInMm': {
    what: 'How far the binding ledge goes into the side, from its outer face; the same at both edges, all round.',
    how: 'Depth gauge on the side’s outer face, to the wall of the ledge.',
    ...ENTERED,
  },
  'edges.sideLeftMm': {
    what: 'What is left of the side’s thickness behind the binding; minus where the ledge goes on into the lining.',
    how: null,
    formula: 's − t: s side thickness, t binding thickness.',
    from: 'Plain difference; derived.',
  },
  'edges.topPurflingMm': purflingWidth('top'),
  'edges.backPurflingMm': purflingWidth('back'),
  'edges.purflingDownMm': {
    what: 'How deep the channels of the purflings are cut, from the plate’s outer face down; none where no plate has a purfling.',
    how: 'Depth gauge on the plate, to the floor of the channel.',
    ...ENTERED,
  },
  'edges.topLeftMm': plateLeft('top'),
  'edges.backLeftMm': plateLeft('back'),
  'edges.bindingToBuyMm': {
    what: 'Binding for both edges of both halves, trim in it.',
    how: null,
    formula: 'Sum of all pieces to cut.',
    from: 'Plain sum; derived.',
  },
  'edges.purflingToBuyMm': {
    what: 'Purfling for top and back, as far as they have one, trim in it; without that of the end wedge.',
    how: null,
    formula: 'Sum of all pieces to cut.',
    from: 'Plain sum; derived.',
  },
  'edges.tightestRadiusMm': {
    what: 'Smallest radius the binding is bent to, on the face inside of the bend, on either half; mitred corners left out.',
    how: null,
    formula: 'Round: R − t. Hollow: R. R the outline’s radius, t binding thickness; the smallest anywhere.',
    from: 'Curvature runs evenly along each piece of the outline, so it is found at an end of one; derived.',
  },
  'edges.tightestAtMm': {
    what: 'How far round the outer face from the tail the binding’s tightest bend lies, on the half that has it.',
    how: null,
    formula: 'Length of the outer face to the end of the piece whose radius is smallest; on an arc, to its middle.',
    from: 'Arc length; derived.',
  },
  'edgeStrips[].bindingMm': {
    what: 'Length of one piece of binding, tail to neck joint or to its mitres, in the middle of its thickness. Bass half first, the top’s pieces before the back’s.',
    how: null,
    formula:
      's − t/2 × turn: s round the outside of the piece, t binding thickness, turn of the piece in radians; t/2 × tan m less at a mitre, m its angle.',
    from: HELD,
  },
  'edgeStrips[].bindingCutMm': {
    what: 'The same piece of binding with trim at both ends.',
    how: 'Tape along the strip before bending.',
    ...TRIMMED,
  },
  'edgeStrips[].purflingMm': {
    what: 'Length of one piece of purfling, tail to neck joint or to its mitres, in the middle of its width.',
    how: null,
    formula:
      's − u × turn: s round the outside of the piece, u binding thickness and half the purfling, turn of the piece in radians; u × tan m less at a mitre, m its angle.',
    from: HELD,
  },
  'edgeStrips[].purflingCutMm': {
    what: 'The same piece of purfling with trim at both ends.',
    how: 'Tape along the strip before it is glued in.',
    ...TRIMMED,
  },
  'edgeStrips[].mitreRad': {
    what: 'Mitre at a sharp corner, from square: this piece’s end toward the neck and the next one’s start are cut to it.',
    how: 'Bevel gauge, stock along the strip.',
    formula: 'c ÷ 2: c the turn of the outline at the corner.',
    from: 'Both strips take half of the turn; derived.',
  },
}
