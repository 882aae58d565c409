import type { KeysUnder, NumberWords } from './numberWords.ts'

type OwnName<Key> = Key extends `blocks.tail.${infer Name}` ? Name : never
type Name = OwnName<KeysUnder<'blocks'>>

const wordsFor = (block: 'Tail block' | 'Neck block', end: 'tail' | 'neck'): Record<Name, NumberWords> => ({
  widthMm: {
    name: `${block}, width`,
    what: `Width of the ${end} block across the body.`,
    how: 'Caliper across the glue face.',
  },
  thicknessMm: {
    name: `${block}, thickness`,
    what: `Thickness of the ${end} block along the centreline, at its middle.`,
    how: 'Caliper at the middle, glue face to inside face.',
  },
  contourRadiusMm: {
    name: `${block}, contour radius`,
    what: `The one arc that fits the inner face of the sides best over the width of the ${end} block. Flat where the face is.`,
    how: 'Contour board held to the glue face.',
  },
  contourRiseMm: {
    name: `${block}, rise at the middle`,
    what: `How far the middle of the ${end} block’s glue face stands beyond its two ends.`,
    how: 'Straightedge across the face, gap at both ends.',
  },
  contourGapMm: {
    name: `${block}, gap left by the arc`,
    what: 'Largest gap between the best arc and the true face when they are pushed together, even on both sides.',
    how: null,
  },
  'contour[].acrossMm': {
    name: `${block}, out from the middle`,
    what: 'Place on the glue face, out from the centreline.',
    how: null,
  },
  'contour[].fallsBackMm': {
    name: `${block}, falls back`,
    what: 'How far the true face falls back from its middle at that place.',
    how: null,
  },
  heightAtFaceMm: {
    name: `${block}, height at the glue face`,
    what: `Height of the ${end} block on the centreline, where it meets the sides.`,
    how: 'Caliper on the glue face at the middle.',
  },
  heightInsideMm: {
    name: `${block}, height inside`,
    what: `Height of the ${end} block on the centreline, on the face that looks into the box.`,
    how: 'Caliper on the inside face at the middle.',
  },
  topSlopeRad: {
    name: `${block}, slope of the top end`,
    what: 'Slope of the end under the top, glue face to inside face; plus where it rises toward the middle of the body.',
    how: 'Bevel gauge, stock on the glue face.',
  },
  backSlopeRad: {
    name: `${block}, slope of the back end`,
    what: 'Slope of the end under the back, glue face to inside face; plus where the block grows toward the middle of the body.',
    how: 'Bevel gauge, stock on the glue face.',
  },
})

type Under<End extends 'tail' | 'neck'> = { [Own in Name as `blocks.${End}.${Own}`]: NumberWords }
const under = <End extends 'tail' | 'neck'>(end: End, block: 'Tail block' | 'Neck block'): Under<End> =>
  Object.fromEntries(
    Object.entries(wordsFor(block, end)).map(([name, words]) => [`blocks.${end}.${name}`, words]),
  ) as Under<End>

export const BLOCK_WORDS: Record<KeysUnder<'blocks'>, NumberWords> = {
  ...under('tail', 'Tail block'),
  ...under('neck', 'Neck block'),
}
