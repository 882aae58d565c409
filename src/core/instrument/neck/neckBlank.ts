import type { BoardPlan, HeadPlan, NeckPlan } from '../../neckPlan.ts'
import { radFromDeg } from '../../units/angle.ts'
import type { Fretboard } from './fretboard.ts'

/** Middle of a bolt or dowel under the top's face. */
export interface BoltRow {
  readonly underTopMm: number
}

export interface NeckBlankNumbers {
  /** Of the heel over the finished side with both plates, and before the upper bout is planed. */
  readonly heelDepthMm: number
  readonly heelStockMm: number
  /** Of the heel at the board. */
  readonly heelWidthMm: number
  readonly heelCapMm: number
  /** The cheeks against square to the neck's face: the neck angle, cut on them. */
  readonly cheekRad: number
  /** How far the outline falls away under the heel's edges: what the cheeks are hollowed by. */
  readonly cheekHollowMm: number
  /** Under the board. */
  readonly woodAtFirstMm: number
  readonly woodAtTenthMm: number
  readonly stockLengthMm: number
  readonly stockMm: number
  /** With the board. */
  readonly thicknessAtFirstMm: number
  readonly thicknessAtTenthMm: number
  /** The rod's channel as entered; none without a rod. */
  readonly rodLengthMm: number | 'none'
  readonly rodWidthMm: number | 'none'
  readonly rodDepthMm: number | 'none'
  readonly rodFromNutMm: number | 'none'
  /** The tenon as entered; none where the joint has none. */
  readonly tenonWidthMm: number | 'none'
  readonly tenonDepthMm: number | 'none'
  readonly boltMm: number | 'none'
  readonly bolts: readonly BoltRow[]
  /** The least wood behind the rod's channel between its beginning and fret 10; none without a rod. */
  readonly woodBehindRodMm: number | 'none'
  /** Where the channel ends: before the joint, negative beyond it. */
  readonly rodEndsBeforeJointMm: number | 'none'
  /** Between the channel's bottom and the first bolt; none where either is missing, or the channel ends before it comes over the bolt. */
  readonly rodToBoltMm: number | 'none'
  /** Wood beside the channel at the nut, each side. */
  readonly besideRodMm: number | 'none'
  /** The block's wood behind and beside the tenon; none where there is no tenon. */
  readonly blockBehindTenonMm: number | 'none'
  readonly blockBesideTenonMm: number | 'none'
  /** From the lowest bolt's edge to the heel's lower end. */
  readonly boltToHeelEndMm: number | 'none'
  /** Along the scarf's face; none where the head lies level. */
  readonly scarfMm: number | 'none'
}

export interface NeckBlankSite {
  readonly shape: Fretboard
  /** Side with both plates at the neck, as planed and as dished. */
  readonly bodyDepthMm: number
  readonly dishedDepthMm: number
  /** The neck set, as built, against the rim plane. */
  readonly angleRad: number
  /** How far the outline lies before the neck joint's plane at a distance from the centreline. */
  readonly outlineFallsMm: (acrossMm: number) => number
  readonly blockWidthMm: number
  readonly blockThicknessMm: number
}

/** How far a bolt or dowel of a butted joint reaches into the heel; one of a tenon meets its nut beyond the joint. Common practice. */
const INTO_HEEL_MM = 40

/**
 * The neck's wood, mm and rad. The shaft under the board runs straight from fret 1 to fret 10 and on either way.
 *
 *   scarf = stock / sin(head angle);   stock length = the nut's farthest corner to the joint + what enters the block + head,
 *   without saw kerf and trim
 *
 * Source: plain differences, derived; how much wood is enough is common practice and said by findings.
 */
export function measureNeckBlank(
  neck: NeckPlan,
  board: BoardPlan,
  head: HeadPlan,
  site: NeckBlankSite,
): NeckBlankNumbers {
  const { shape } = site
  const fromNutMm = (xMm: number) => shape.nutMm - xMm
  const firstMm = fromNutMm(shape.fretLine(1).xMm)
  const tenthMm = fromNutMm(shape.fretLine(10).xMm)
  const woodAtFirstMm = neck.thicknessAtFirstMm - board.thicknessMm
  const woodAtTenthMm = neck.thicknessAtTenthMm - board.thicknessMm
  const woodAtMm = (mm: number) =>
    woodAtFirstMm + ((woodAtTenthMm - woodAtFirstMm) * (mm - firstMm)) / Math.max(tenthMm - firstMm, 1)
  const toJointMm = fromNutMm(shape.jointMm)
  const nut = shape.fretLine(0)
  const nutEnds = shape.endsOf(nut)
  const nutAheadMm = Math.max(-nut.slant * nutEnds.bassMm, nut.slant * nutEnds.trebleMm, 0)
  const heelWidthMm = 2 * shape.halfWidthAtMm(shape.jointMm)

  const hasRod = neck.rod === 'fitted'
  const rodBeginsMm = Math.max(neck.rodFromNutMm, 0)
  const rodEndsMm = neck.rodFromNutMm + neck.rodLengthMm
  const underRod = [rodBeginsMm, Math.max(Math.min(rodEndsMm, tenthMm), rodBeginsMm)].map(woodAtMm)
  const inBlock = neck.joint === 'boltedTenon' || neck.joint === 'dovetail'
  const bolts = neck.joint === 'boltedTenon' || neck.joint === 'butt' ? neck.boltsAtMm : []
  const sinHead = Math.sin(radFromDeg(head.angleDeg))
  return {
    heelDepthMm: site.bodyDepthMm,
    heelStockMm: site.dishedDepthMm,
    heelWidthMm,
    heelCapMm: neck.heelCapMm,
    cheekRad: site.angleRad,
    cheekHollowMm: site.outlineFallsMm(heelWidthMm / 2),
    woodAtFirstMm,
    woodAtTenthMm,
    stockLengthMm:
      nutAheadMm +
      toJointMm +
      (inBlock ? neck.tenonDepthMm : neck.joint === 'sidesInHeel' ? site.blockThicknessMm : 0) +
      head.lengthMm,
    woodBehindRodMm: hasRod ? Math.min(...underRod) - neck.rodDepthMm : 'none',
    rodEndsBeforeJointMm: hasRod ? toJointMm - rodEndsMm : 'none',
    rodToBoltMm:
      hasRod && bolts.length > 0 && toJointMm - rodEndsMm < (neck.joint === 'butt' ? INTO_HEEL_MM : 0)
        ? Math.min(...bolts) - neck.boltMm / 2 - neck.rodDepthMm
        : 'none',
    besideRodMm: hasRod ? (board.nutWidthMm - neck.rodWidthMm) / 2 : 'none',
    blockBehindTenonMm: inBlock ? site.blockThicknessMm - neck.tenonDepthMm : 'none',
    blockBesideTenonMm: inBlock ? (site.blockWidthMm - neck.tenonWidthMm) / 2 : 'none',
    boltToHeelEndMm: bolts.length > 0 ? site.bodyDepthMm - Math.max(...bolts) - neck.boltMm / 2 : 'none',
    stockMm: neck.stockMm,
    thicknessAtFirstMm: neck.thicknessAtFirstMm,
    thicknessAtTenthMm: neck.thicknessAtTenthMm,
    rodLengthMm: hasRod ? neck.rodLengthMm : 'none',
    rodWidthMm: hasRod ? neck.rodWidthMm : 'none',
    rodDepthMm: hasRod ? neck.rodDepthMm : 'none',
    rodFromNutMm: hasRod ? neck.rodFromNutMm : 'none',
    tenonWidthMm: inBlock ? neck.tenonWidthMm : 'none',
    tenonDepthMm: inBlock ? neck.tenonDepthMm : 'none',
    boltMm: bolts.length > 0 ? neck.boltMm : 'none',
    bolts: bolts.map((underTopMm) => ({ underTopMm })),
    scarfMm: sinHead > 1e-6 ? neck.stockMm / sinHead : 'none',
  }
}
