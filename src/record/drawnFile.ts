import type { Path } from '../core/geometry/path.ts'

/** What a drawing from another program holds, read as data. */
export interface DrawnFile {
  readonly paths: readonly DrawnPath[]
  /** The unit the file says it was drawn in: paths are then in mm. null: it says none, paths are in its own units, and the maker is asked. */
  readonly unit: DrawnUnit | null
  /** What the file also shows and was not read, each kind with its count. */
  readonly leftOut: readonly { readonly kind: LeftOutKind; readonly count: number }[]
}

export interface DrawnPath {
  /** What the file calls it or the layer it lies on; may be empty, and comes from a stranger: show it as text only. */
  readonly name: string
  /** y up. */
  readonly path: Path
  readonly isClosed: boolean
}

export type DrawnUnit = 'mm' | 'cm' | 'm' | 'inch' | 'foot' | 'point'

/**
 * text       words and dimensions
 * picture    an image, or a drawing set into the drawing
 * reference  a block or symbol drawn elsewhere in the file
 * fitSpline  a spline that only names the points it goes through
 * tilted     does not lie flat in the plane of the drawing
 * hidden     not shown
 * other      of a kind that outlines are not drawn with
 */
export type LeftOutKind = 'text' | 'picture' | 'reference' | 'fitSpline' | 'tilted' | 'hidden' | 'other'

/**
 * tooLarge     more bytes than are read
 * tooMany      more strokes than are read
 * notSvg       reads as XML but is no SVG
 * notXml       damaged, cut short, or no XML at all
 * doctype      begins with a document type that defines things of its own
 * badPath      path data, points or a length that cannot be read
 * badTransform a transform that cannot be read
 * outOfRange   a place that is no number or lies beyond 100 m
 * notDxf       damaged, cut short, or no DXF at all
 * binaryDxf    DXF in its binary form
 * badEntity    a line, arc or curve that says too little or contradicts itself
 * onlyBlocks   nothing is drawn but references to blocks
 * onlyFit      nothing is drawn but splines by fit points
 * nothingDrawn no line that could be an outline
 */
export type DrawnFileProblem =
  | 'tooLarge'
  | 'tooMany'
  | 'notSvg'
  | 'notXml'
  | 'doctype'
  | 'badPath'
  | 'badTransform'
  | 'outOfRange'
  | 'notDxf'
  | 'binaryDxf'
  | 'badEntity'
  | 'onlyBlocks'
  | 'onlyFit'
  | 'nothingDrawn'
