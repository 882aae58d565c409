/** The part of the plan that stands inside the box and closes it: braces, patches, air, edges. Lengths in mm; x from the tail, y to the treble side. */

export const PLATES = ['top', 'back'] as const
export type PlateSide = (typeof PLATES)[number]

export const BRACE_KINDS = ['cross', 'transverse', 'tone', 'fan', 'ladder', 'finger', 'patch', 'other'] as const
export const BRACE_STOPS = ['rimAt', 'rimBeyond', 'brace', 'here'] as const
export const BRACE_TAPERS = ['none', 'straight', 'scoop'] as const

/** One end of a brace, and how its height runs out there. */
export interface BraceEndPlan {
  /**
   * rimAt      on the inner face of the side, on the side and at the distance from the tail that are entered
   * rimBeyond  through the entered point, on to the inner face
   * brace      through the entered point, on or back to where another brace is met
   * here       at the entered point
   */
  readonly stops: (typeof BRACE_STOPS)[number]
  readonly side: (typeof BRACE_SIDES)[number]
  readonly xMm: number
  /** Bass side negative. */
  readonly yMm: number
  /** The brace it stops at, by id; null: none was chosen. */
  readonly braceId: string | null
  /** How far an end at the rim runs into a pocket of the lining, along the brace from the lining's inner edge toward the side. */
  readonly letInMm: number
  readonly taper: (typeof BRACE_TAPERS)[number]
  readonly taperMm: number
  /** What is left of the height at the tip, where it is tapered. */
  readonly endHeightMm: number
}
export const BRACE_SIDES = ['bass', 'treble'] as const

export const BRACE_UNDERSIDES = ['dome', 'own', 'flat'] as const
/** A straight piece of wood glued to the inside of a plate: a line in plan between its two ends. */
export interface BracePlan {
  readonly order: string
  readonly plate: PlateSide
  readonly kind: (typeof BRACE_KINDS)[number]
  /** The same once more, mirrored about the centreline. */
  readonly twin: boolean
  readonly from: BraceEndPlan
  readonly to: BraceEndPlan
  readonly widthMm: number
  /** Over the plate, where it is not tapered. */
  readonly heightMm: number
  /** Its gluing face: as the plate's dome asks, an arch of its own, or flat. */
  readonly underside: (typeof BRACE_UNDERSIDES)[number]
  readonly archRadiusMm: number
  /** Lapped by half where it crosses another that is lapped too; else two that cross are a misfit. */
  readonly lapped: boolean
}

export interface BracingPlan {
  readonly braces: { readonly [id: string]: BracePlan }
  /** Blanks are cut longer by this at each end, and higher and wider by these. */
  readonly blankEndMm: number
  readonly blankHeightMm: number
  readonly blankWidthMm: number
  /** A square patch over every lapped crossing of the top; 0 for none. */
  readonly crossPatchMm: number
  readonly crossPatchThicknessMm: number
  /** Wood left around the hole's edge on the inside: a ring, set back from the edge; 0 wide for none. */
  readonly holeRingMm: number
  readonly holeRingSetBackMm: number
  readonly holeRingThicknessMm: number
  /** The strip over the back's joint on the inside, from block to block between the braces; 0 wide for none. */
  readonly stripWidthMm: number
  readonly stripThicknessMm: number
}

/** The air in the closed box. */
export interface AirPlan {
  readonly temperatureC: number
  /** What if: the hole's radius greater, and the rim deeper, by these. */
  readonly holeChangeMm: number
  readonly depthChangeMm: number
  /** What the finished box was heard to sound when tapped; null: not yet. */
  readonly heardHz: number | null
}

/** What closes the edges besides the binding itself. */
export interface EdgesPlan {
  /** From the plate's outer face down. */
  readonly purflingDepthMm: number
  /** Bindings and purflings are cut longer by this at each end. */
  readonly trimMm: number
  /** The wedge at the tail: whole widths at the top and at the back, its depth into the side, and the purfling along each long edge. */
  readonly wedgeTopMm: number
  readonly wedgeBackMm: number
  readonly wedgeDepthMm: number
  readonly wedgePurflingMm: number
  /** The strip let into the back's joint on the outside; 0 wide for none. */
  readonly backStripMm: number
  readonly backStripDepthMm: number
}
