import type { Path } from './geometry/path.ts'
import type { AirPlan, BracingPlan, EdgesPlan } from './boxPlan.ts'
import type { CuttingPlan } from './woodPlan.ts'
import type {
  BoardPlan,
  BridgePlan,
  FretsPlan,
  HeadPlan,
  NeckPlan,
  ScalePlan,
  SetupPlan,
  StringsPlan,
} from './neckPlan.ts'

/**
 * The plan: what one instrument is meant to be, in scalars at stable paths. This is all the core ever reads.
 * Lengths in mm; angles as the maker writes them, in degrees; x runs from the tail (0) to the neck joint.
 * null = left open, to be computed. Fields a chosen form does not use keep their value, so that changing one's mind loses nothing.
 */
export interface Plan {
  /** The hand it is played with: 'left' mirrors what is handed, in drawings; numbers speak of bass and treble and stay. */
  readonly handed: (typeof HANDS)[number]
  readonly outline: OutlinePlan
  readonly rim: RimPlan
  readonly back: BackPlan
  readonly top: TopPlan
  readonly plates: { readonly topMm: number; readonly backMm: number }
  readonly blocks: { readonly tail: BlockPlan; readonly neck: BlockPlan }
  readonly linings: LiningsPlan
  readonly binding: BindingPlan
  readonly sideBraces: SideBracesPlan
  readonly bracing: BracingPlan
  readonly air: AirPlan
  readonly edges: EdgesPlan
  readonly cutting: CuttingPlan
  readonly caul: CaulPlan
  readonly scale: ScalePlan
  readonly board: BoardPlan
  readonly frets: FretsPlan
  readonly strings: StringsPlan
  readonly setup: SetupPlan
  readonly bridge: BridgePlan
  readonly neck: NeckPlan
  readonly head: HeadPlan
  readonly soundhole: { readonly centreMm: number; readonly radiusMm: number; readonly cutterMm: number }
  readonly rosette: RosettePlan
}

export const HANDS = ['right', 'left'] as const

export type Radius = number | 'flat'

export interface OutlinePlan {
  /** Body length, tail to neck joint; null only makes sense for compass arcs, whose chain then gives it. */
  readonly lengthMm: number | null
  readonly kind: OutlineKind
  /** The half outline from the tail: replaced whole, since its parts make sense only together. */
  readonly pieces: readonly OutlinePiece[]
  readonly keyWidths: KeyWidthsPlan
  readonly halfWidths: HalfWidthsPlan
  /** Taken from a drawing, replaced whole; null: none was taken. */
  readonly drawnPath: DrawnPathPlan | null
  /** What the treble half leaves away from the mirrored bass half. */
  readonly cutaway: CutawayPlan
}
export type OutlineKind = (typeof OUTLINE_KINDS)[number]
export const OUTLINE_KINDS = ['compassArcs', 'keyWidths', 'halfWidths', 'drawnPath'] as const

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

/** One reading of the outline, in mm: how far from the tail, and the half-width there. */
export type HalfWidthReading = readonly [fromTailMm: number, halfWidthMm: number]

/** A body read with a rule: the curve stays within the reading error of every row and is fair. */
export interface HalfWidthsPlan {
  /** By rising distance from the tail; replaced whole, like the readings of the ends. */
  readonly rows: readonly HalfWidthReading[]
  /** Near an end, where the outline runs along the stations: rows read the other way, still as distance from the tail and half-width. */
  readonly tailRows: readonly HalfWidthReading[]
  readonly neckRows: readonly HalfWidthReading[]
  /** What the table was read to. */
  readonly readToMm: number
  readonly tailRadiusMm: Radius | null
  /** Whole width of the flat at the neck, 0 for none. */
  readonly neckFlatMm: number
  readonly neckRadiusMm: Radius | null
}

/** Halves of a drawn outline in the body's frame, each from tail (0, 0) to the neck on the centreline, both with y upward. */
export interface DrawnPathPlan {
  readonly bass: Path
  /** null: the bass half mirrored. */
  readonly treble: Path | null
  /** How closely runs of traced points are followed. */
  readonly readToMm: number
  /** The file it was taken from: a label. */
  readonly fileName: string
}

export const CUTAWAY_FORMS = ['none', 'rounded', 'pointed'] as const
/** The treble half follows the mirrored bass half to a place on the upper bout, then turns in to the neck. */
export interface CutawayPlan {
  readonly form: (typeof CUTAWAY_FORMS)[number]
  /** Where it leaves: along the centreline, from the tail. */
  readonly leavesAtMm: number
  /** Outer radius of a rounded horn. */
  readonly hornRadiusMm: number
  /** Radius of the hollow from the horn to the neck. */
  readonly hollowRadiusMm: number
  /** Half-width at which the hollow meets the neck joint. */
  readonly meetsNeckAtMm: number
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
  /** Whether the back profile is sawn on the flat blank, or brought to on the bent rim. Stations are printed for the one chosen. */
  readonly method: (typeof RIM_METHODS)[number]
  /** What the first radiusing, on the bare edges, leaves standing for the second, with the linings on. */
  readonly firstLeavesTopMm: number
  readonly firstLeavesBackMm: number
}
export const RIM_METHODS = ['beforeBending', 'onTheRim'] as const

export const BACK_FORMS = ['sphere', 'across', 'flat'] as const
export interface BackPlan {
  readonly form: (typeof BACK_FORMS)[number]
  readonly radiusMm: number
}

export const TOP_FORMS = ['sphere', 'flatUpperBout', 'flatRim', 'flat'] as const
export const FLAT_SLOPES = ['neckSet', 'entered'] as const
export interface TopPlan {
  readonly form: (typeof TOP_FORMS)[number]
  /** Radius of the dish: of the whole rim, or, with a flat rim, of the plate alone. */
  readonly radiusMm: number
  /** Where the flat of the upper bout begins, from the tail. */
  readonly flatFromMm: number
  /** Whether the flat falls as the neck set asks, so that the board lies on it, or as entered. */
  readonly flatSlope: (typeof FLAT_SLOPES)[number]
  /** Fall of that flat toward the neck, where it is entered. */
  readonly flatSlopeDeg: number
  /** With a flat rim: how high the plate's crown stands over the rim, at the saddle line. */
  readonly riseAtSaddleMm: number
}

export interface BlockPlan {
  readonly widthMm: number
  /** Along the centreline. */
  readonly thicknessMm: number
}

export const LINING_KINDS = ['kerfed', 'reversedKerf', 'solidBent', 'singleBlocks'] as const
export interface LiningPlan {
  readonly kind: (typeof LINING_KINDS)[number]
  /** Along the edge of the rim, inward from the side. */
  readonly widthMm: number
  readonly heightMm: number
}
export interface LiningsPlan {
  readonly top: LiningPlan
  readonly back: LiningPlan
  /** Bought beyond what is glued, in percent of it. */
  readonly wastePercent: number
}

/** The binding let into the edge of the closed box, and the purfling inside of it; 0 for none. */
export interface BindingPlan {
  readonly heightMm: number
  readonly thicknessMm: number
  readonly topPurflingMm: number
  readonly backPurflingMm: number
}

export const SIDE_BRACE_FORMS = ['wood', 'cloth', 'none'] as const
export const SIDE_BRACE_ENDS = ['betweenLinings', 'fullDepth'] as const
/** Braces across the inside of the sides, the same on both halves. */
export interface SideBracesPlan {
  readonly form: (typeof SIDE_BRACE_FORMS)[number]
  /** Along the outer face from the tail; null: evenly between the blocks, no further apart than the spacing. */
  readonly atMm: readonly number[] | null
  readonly spacingMm: number
  /** Along the side, and inward from it. */
  readonly widthMm: number
  readonly thicknessMm: number
  /** Stopped at the linings, or from edge to edge with the linings let in over them. */
  readonly ends: (typeof SIDE_BRACE_ENDS)[number]
}

/** A springy caul clamped at its ends: how much of a bump presses the middle of a joint as hard as is wanted. */
export interface CaulPlan {
  /** Between the clamps. */
  readonly spanMm: number
  readonly widthMm: number
  /** In the direction it bends. */
  readonly heightMm: number
  readonly modulusGPa: number
  readonly forceN: number
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
