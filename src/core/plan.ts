/**
 * The plan: what one instrument is meant to be, in scalars at stable paths. This is all the core ever reads.
 * Lengths in mm; angles as the maker writes them, in degrees; x runs from the tail (0) to the neck joint.
 * null = left open, to be computed. Fields a chosen form does not use keep their value, so that changing one's mind loses nothing.
 */
export interface Plan {
  readonly outline: OutlinePlan
  readonly rim: RimPlan
  readonly back: BackPlan
  readonly top: TopPlan
  readonly plates: { readonly topMm: number; readonly backMm: number }
  readonly blocks: { readonly tail: BlockPlan; readonly neck: BlockPlan }
  readonly scale: { readonly lengthMm: number; readonly jointFret: number }
  readonly board: BoardPlan
  readonly soundhole: { readonly centreMm: number; readonly radiusMm: number; readonly cutterMm: number }
  readonly rosette: RosettePlan
}

export type Radius = number | 'flat'

export interface OutlinePlan {
  /** Body length, tail to neck joint; null only makes sense for compass arcs, whose chain then gives it. */
  readonly lengthMm: number | null
  readonly kind: OutlineKind
  /** The half outline from the tail: replaced whole, since its parts make sense only together. */
  readonly pieces: readonly OutlinePiece[]
  readonly keyWidths: KeyWidthsPlan
  /** The other half: here always the bass half mirrored. */
  readonly treble: 'mirror'
}
export type OutlineKind = (typeof OUTLINE_KINDS)[number]
export const OUTLINE_KINDS = ['compassArcs', 'keyWidths'] as const

export type OutlinePiece =
  | {
      readonly kind: 'arc'
      readonly bend: 'convex' | 'concave'
      readonly radiusMm: number | null
      readonly sweepDeg: number | null
    }
  | { readonly kind: 'straight'; readonly lengthMm: number | null }

/** Whole widths and their places from the tail: the fair curve passes through them; where it is widest is found, not given. */
export interface KeyWidthsPlan {
  readonly lowerBoutMm: number
  readonly lowerBoutAtMm: number
  readonly waistMm: number
  readonly waistAtMm: number
  readonly upperBoutMm: number
  readonly upperBoutAtMm: number
  /** Outer radius at the tail; null: as fair as it comes. */
  readonly tailRadiusMm: Radius | null
  /** Whole width of the flat at the neck, 0 for none. */
  readonly neckFlatMm: number
  /** Outer radius at the neck where there is no flat; null: as fair as it comes. */
  readonly neckRadiusMm: Radius | null
}

export interface RimPlan {
  /** Rim depths without plates, at the tail and at the neck, as dished, before the upper bout is planed flat. */
  readonly depthAtTailMm: number
  readonly depthAtNeckMm: number
  readonly sideThicknessMm: number
  readonly topAllowanceMm: number
  readonly backAllowanceMm: number
  readonly trimEachEndMm: number
  /** Distance between stations along the outer face; null: the widest round step that gives at least 40 of them. */
  readonly stationStepMm: number | null
}

export const BACK_FORMS = ['sphere', 'across', 'flat'] as const
export interface BackPlan {
  readonly form: (typeof BACK_FORMS)[number]
  readonly radiusMm: number
}

export const TOP_FORMS = ['sphere', 'flatUpperBout', 'flatRim', 'flat'] as const
export interface TopPlan {
  readonly form: (typeof TOP_FORMS)[number]
  /** Radius of the dish: of the whole rim, or, with a flat rim, of the plate alone. */
  readonly radiusMm: number
  /** Where the flat of the upper bout begins, from the tail. */
  readonly flatFromMm: number
  /** Fall of that flat toward the neck. */
  readonly flatSlopeDeg: number
  /** With a flat rim: how high the plate's crown stands over the rim, at the saddle line. */
  readonly riseAtSaddleMm: number
}

export interface BlockPlan {
  readonly widthMm: number
  /** Along the centreline. */
  readonly thicknessMm: number
}

/** The fingerboard where it lies over the body; its end is square. */
export interface BoardPlan {
  readonly overBodyMm: number
  readonly widthAtJointMm: number
  readonly widthAtEndMm: number
}

export interface RosettePlan {
  readonly rings: { readonly [id: string]: RingPlan }
  readonly inlayMm: number
  readonly standsProudMm: number
  readonly cutterMm: number
  readonly passOverlapMm: number
  /** Hidden margin kept under the board on each side of a ring's gap. */
  readonly gapMarginMm: number
}

export interface RingPlan {
  readonly order: string
  readonly innerRadiusMm: number
  readonly outerRadiusMm: number
  readonly join: 'closed' | 'openUnderBoard'
  /** The gap as wanted, at mid radius; null: as wide as the board hides, less the margins. */
  readonly gapMm: number | null
  /** Tiles or wedges laid round the visible ring; null: a plain strip. */
  readonly tileCount: number | null
}

/** The fields of an outline by key widths, from tail to neck. */
export const KEY_WIDTH_FIELDS = [
  'outline.keyWidths.lowerBoutMm',
  'outline.keyWidths.lowerBoutAtMm',
  'outline.keyWidths.waistMm',
  'outline.keyWidths.waistAtMm',
  'outline.keyWidths.upperBoutMm',
  'outline.keyWidths.upperBoutAtMm',
  'outline.keyWidths.tailRadiusMm',
  'outline.keyWidths.neckFlatMm',
  'outline.keyWidths.neckRadiusMm',
] as const

/** The path of every field of a plan that a number can hang on; what makes sense only whole is one field. */
export const PLAN_FIELDS = [
  'outline.lengthMm',
  'outline.kind',
  'outline.pieces',
  ...KEY_WIDTH_FIELDS,
  'rim.depthAtTailMm',
  'rim.depthAtNeckMm',
  'rim.sideThicknessMm',
  'rim.topAllowanceMm',
  'rim.backAllowanceMm',
  'rim.trimEachEndMm',
  'rim.stationStepMm',
  'back.form',
  'back.radiusMm',
  'top.form',
  'top.radiusMm',
  'top.flatFromMm',
  'top.flatSlopeDeg',
  'top.riseAtSaddleMm',
  'plates.topMm',
  'plates.backMm',
  'blocks.tail.widthMm',
  'blocks.tail.thicknessMm',
  'blocks.neck.widthMm',
  'blocks.neck.thicknessMm',
  'scale.lengthMm',
  'scale.jointFret',
  'board.overBodyMm',
  'board.widthAtJointMm',
  'board.widthAtEndMm',
  'soundhole.centreMm',
  'soundhole.radiusMm',
  'soundhole.cutterMm',
  'rosette.rings',
  'rosette.inlayMm',
  'rosette.standsProudMm',
  'rosette.cutterMm',
  'rosette.passOverlapMm',
  'rosette.gapMarginMm',
] as const
export type PlanField = (typeof PLAN_FIELDS)[number]
