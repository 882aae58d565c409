/** What one instrument is sawn from, piece by piece. Lengths mm. */

/** One wood each: all that a shop would cut from the same kind of tree on one instrument. `fittings`: small things, each of a material of its own. */
export const WOOD_ROLES = [
  'top',
  'back',
  'sides',
  'neck',
  'board',
  'bridge',
  'braces',
  'linings',
  'blocks',
  'edges',
  'fittings',
] as const
export type WoodRole = (typeof WOOD_ROLES)[number]

/** Every piece an instrument may have, in the order of a cut list, and the wood it is usually cut from. Common practice. */
export const ROLE_OF_PART = {
  topHalf: 'top',
  holeRing: 'top',
  backHalf: 'back',
  side: 'sides',
  neckShaft: 'neck',
  heelLayer: 'neck',
  fingerboard: 'board',
  boardBinding: 'edges',
  bridge: 'bridge',
  topBrace: 'braces',
  backBrace: 'braces',
  crossPatch: 'braces',
  innerBackStrip: 'braces',
  sideBrace: 'braces',
  topLining: 'linings',
  backLining: 'linings',
  tailBlock: 'blocks',
  neckBlock: 'blocks',
  topBinding: 'edges',
  backBinding: 'edges',
  topPurfling: 'edges',
  backPurfling: 'edges',
  outerBackStrip: 'edges',
  endWedge: 'edges',
  wedgePurfling: 'edges',
  bridgePlate: 'fittings',
  headFace: 'fittings',
  headBack: 'fittings',
  nut: 'fittings',
  saddle: 'fittings',
  rosetteStrip: 'fittings',
  rosetteTile: 'fittings',
} as const satisfies Readonly<Record<string, WoodRole>>
export type PartKey = keyof typeof ROLE_OF_PART

/**
 * How the grain lies in a piece: along its length, across it (along its width), or as it comes. A board's grain runs along its length,
 * so this says which way round the piece may lie on one.
 */
export const GRAINS = ['alongLength', 'acrossLength', 'any'] as const
export type Grain = (typeof GRAINS)[number]

export interface Size {
  readonly lengthMm: number
  readonly widthMm: number
  readonly thicknessMm: number
}

/** One row of the cut list: pieces of one size. */
export interface CutPart {
  /** Its own on this instrument, made of the three below. */
  readonly id: string
  readonly key: PartKey
  /** 'either': alike on both halves of the body, or of no half. */
  readonly half: 'either' | 'bass' | 'treble'
  /** Which of several: the brace's number, the piece of a side from the tail, the ring from the inside; 'none' where there is one kind. */
  readonly row: number | 'none'
  readonly role: WoodRole
  readonly quantity: number
  readonly finished: Size
  /** To be sawn: finished, with what is left for planing, trimming and fitting. */
  readonly rough: Size
  readonly grain: Grain
  /** Two and two from neighbouring slices of one billet, opened like a book. */
  readonly isBookmatched: boolean
}

/** What a row is made from; what is left out is the usual: either half, no row, one piece, along the grain, not bookmatched. */
export interface PartDraft {
  readonly key: PartKey
  readonly half?: CutPart['half']
  readonly row?: number
  readonly quantity?: number
  readonly finished: Size
  readonly rough: Size
  readonly grain?: Grain
  readonly isBookmatched?: boolean
}

/** One row. A rough size is never under the finished one. */
export function cutPart(draft: PartDraft): CutPart {
  const { key, half = 'either', row = 'none', quantity = 1, finished, rough, grain = 'alongLength' } = draft
  return {
    id: `${key}.${half}.${row}`,
    key,
    half,
    row,
    role: ROLE_OF_PART[key],
    quantity,
    finished,
    rough: {
      lengthMm: Math.max(rough.lengthMm, finished.lengthMm),
      widthMm: Math.max(rough.widthMm, finished.widthMm),
      thicknessMm: Math.max(rough.thicknessMm, finished.thicknessMm),
    },
    grain,
    isBookmatched: draft.isBookmatched ?? false,
  }
}

export const volumeMm3 = ({ lengthMm, widthMm, thicknessMm }: Size): number => lengthMm * widthMm * thicknessMm
