import { ENTERED, type KeysUnder, type NumberTexts } from './numberWords.ts'

type OwnName<Key> = Key extends `blocks.tail.${infer Name}` ? Name : never
type Name = OwnName<KeysUnder<'blocks'>>

const wordsFor = (end: 'tail' | 'neck'): Record<Name, NumberTexts> => ({
  widthMm: {
    what: `Width of the ${end} block across the body.`,
    how: 'Caliper across the glue face.',
    ...ENTERED,
  },
  thicknessMm: {
    what: `Thickness of the ${end} block along the centreline, at its middle.`,
    how: 'Caliper at the middle, glue face to inside face.',
    ...ENTERED,
  },
  contourRadiusMm: {
    what: `The one arc that fits the inner face of the sides best over the width of the ${end} block. Flat where the face is.`,
    how: 'Contour board held to the glue face.',
    formula:
      'R of the arc, its middle on the centreline, whose largest gap from the face is the least that any arc leaves.',
    from: 'Golden section, begun at the arc through the middle and both ends; derived.',
  },
  contourRiseMm: {
    what: `How far the middle of the ${end} block’s glue face stands beyond its two ends.`,
    how: 'Straightedge across the face, gap at both ends.',
    formula:
      'x − x0, counted toward the middle of the body: x at the block’s end, x0 at its middle, on the outline set in square by the side thickness.',
    from: 'Parallel of the outer face; derived.',
  },
  contourGapMm: {
    what: 'Largest gap between the best arc and the true face when they are pushed together, even on both sides.',
    how: null,
    formula:
      'Greatest less least of f − (R − √(R² − y²)): f fall-back of the face, y out from the middle, R contour radius.',
    from: 'Pythagoras on the arc, compared at 41 places of the face; derived.',
  },
  'contour[].acrossMm': {
    what: 'Place on the glue face, out from the centreline.',
    how: null,
    formula: 'Every 5 mm from the middle, and last the end: half the block’s width, as far as the face reaches.',
    from: 'Entered width; that step is common practice.',
  },
  'contour[].fallsBackMm': {
    what: 'How far the true face falls back from its middle at that place.',
    how: null,
    formula:
      'x − x0, counted toward the middle of the body: x here, x0 at the middle, on the outline set in square by the side thickness.',
    from: 'Parallel of the outer face; derived.',
  },
  trebleReachMm: {
    what: 'How far the glue face reaches to the treble side of the centreline: half the width, or to the inner face of a cutaway.',
    how: end === 'neck' ? 'Rule across the glue face, from the centreline.' : null,
    formula: 'Half the width as far as the face reaches; beside a cutaway no further than its flank at the glue face.',
    from: 'Parallel of the outer face; derived.',
  },
  'flank[].fromFaceMm': {
    what: 'Place on the treble flank, where a cutaway’s side is glued along the block: square to the joint. None without a cutaway.',
    how: null,
    formula: 'Every 5 mm from the glue face, and last where the block or the hollow ends.',
    from: 'Derived; that step is common practice.',
  },
  'flank[].acrossMm': {
    what: 'How far out from the centreline the treble flank lies at that place, beside the inner face of a cutaway’s side.',
    how: end === 'neck' ? 'Rule square out from the centreline to the flank.' : null,
    formula: 'y of the hollow set in square by the side thickness, so far from the glue face.',
    from: 'Parallel of the outer face; derived.',
  },
  heightAtFaceMm: {
    what: `Height of the ${end} block on the centreline, where it meets the sides.`,
    how: 'Caliper over both ends at the middle, close to the side; less the top where it is glued on.',
    formula:
      'z − b: z the top, b the back over the rim plane, on the centreline one side thickness in from the outer face.',
    from: 'Difference of the two surfaces; derived.',
  },
  heightInsideMm: {
    what: `Height of the ${end} block on the centreline, on the face that looks into the box.`,
    how: 'Caliper over both ends at the middle of the inside face; less the top where it is glued on.',
    formula:
      'z − b: z the top, b the back over the rim plane, on the centreline side and block thickness in from the outer face.',
    from: 'Difference of the two surfaces; derived.',
  },
  topSlopeRad: {
    what: 'Slope of the end under the top, glue face to inside face; plus where it rises toward the middle of the body.',
    how: 'Bevel gauge, stock on the inside face.',
    formula:
      'atan((z2 − z1) ÷ b): z1 and z2 the top over the rim plane at glue face and inside face, b the block’s thickness.',
    from: 'Straight line between both faces; derived.',
  },
  backSlopeRad: {
    what: 'Slope of the end under the back, glue face to inside face; plus where the block grows toward the middle of the body.',
    how: 'Bevel gauge, stock on the inside face.',
    formula:
      'atan((z1 − z2) ÷ b): z1 and z2 the back over the rim plane at glue face and inside face, b the block’s thickness.',
    from: 'Straight line between both faces; derived.',
  },
})

type Under<End extends 'tail' | 'neck'> = { [Own in Name as `blocks.${End}.${Own}`]: NumberTexts }
const under = <End extends 'tail' | 'neck'>(end: End): Under<End> =>
  Object.fromEntries(
    Object.entries(wordsFor(end)).map(([name, words]) => [`blocks.${end}.${name}`, words]),
  ) as Under<End>

export const BLOCK_WORDS: Record<KeysUnder<'blocks'>, NumberTexts> = {
  ...under('tail'),
  ...under('neck'),
}
