import { type Figure, radiusOf } from '../figure.ts'
import { type Curve, headingsAtMm, insetPoint, stretchOfCurve } from '../geometry/curve.ts'
import { findRoot } from '../geometry/root.ts'
import { dropMm } from '../geometry/sagitta.ts'
import type { Surface } from '../geometry/surface.ts'
import type { BlockPlan } from '../plan.ts'

export interface BlockNumbers {
  readonly widthMm: number
  readonly thicknessMm: number
  /** The arc that fits the face best over the block's width, its rise at the middle as the face truly has it, and the gap the arc leaves. */
  readonly contourRadiusMm: Figure
  readonly contourRiseMm: number
  readonly contourGapMm: number
  /** The true face: how far it falls back from its middle, going outward. */
  readonly contour: readonly ContourRow[]
  /** How far the glue face reaches to the treble side of the centreline: half its width, or to the inner face of a cutaway. */
  readonly trebleReachMm: number
  /** The block's treble flank where a cutaway's side is glued along it, from the glue face inward; none without a cutaway. */
  readonly flank: readonly FlankRow[]
  /** Height on the centreline at the glue face and at the face inside the box, and the slopes of its two ends, rising toward the middle of the body. */
  readonly heightAtFaceMm: number
  readonly heightInsideMm: number
  readonly topSlopeRad: number
  readonly backSlopeRad: number
}

export interface ContourRow {
  readonly acrossMm: number
  readonly fallsBackMm: number
}

export interface FlankRow {
  /** Square to the joint, toward the tail. */
  readonly fromFaceMm: number
  /** From the centreline to the inner face of the treble side. */
  readonly acrossMm: number
}

export interface BlockSite {
  /** The bass half; the glue face is symmetric but for a cutaway. */
  readonly half: Curve
  /** The treble half where a cutaway comes in to the neck block, and where its wood ends; else null. */
  readonly cut: { readonly treble: Curve; readonly woodEndMm: number; readonly meetsNeckAtMm: number } | null
  readonly end: 'tail' | 'neck'
  readonly sideThicknessMm: number
  readonly top: Surface
  readonly back: Surface
}

const STEP_MM = 5
const FIT_POINTS = 40

/** Shape and heights of a block glued to the inner face of the side, symmetric about the centreline. Source: derived. */
export function measureBlock(plan: BlockPlan, site: BlockSite): BlockNumbers {
  const face = innerFace(site)
  const halfMm = Math.min(plan.widthMm / 2, face.reachMm)
  const edgeU = face.alongAtMm(halfMm)
  const fits = Array.from({ length: FIT_POINTS + 1 }, (_, i) => face.rowAt((edgeU * i) / FIT_POINTS))
  const { curvaturePerMm, gapMm } = fitArc(fits)
  const contour: ContourRow[] = []
  for (let i = 0; i * STEP_MM < halfMm - 1e-6; i++)
    contour.push({ acrossMm: i * STEP_MM, fallsBackMm: face.rowAt(face.alongAtMm(i * STEP_MM)).fallsBackMm })
  contour.push(fits.at(-1)!)

  const flank = site.cut === null ? [] : flankRows(site.cut, site.sideThicknessMm, face.middleXMm, plan.thicknessMm)
  const toward = site.end === 'tail' ? 1 : -1
  const faceX = face.middleXMm
  const insideX = faceX + toward * plan.thicknessMm
  const top = [site.top.heightMm(faceX, 0), site.top.heightMm(insideX, 0)] as const
  const back = [site.back.heightMm(faceX, 0), site.back.heightMm(insideX, 0)] as const
  return {
    widthMm: plan.widthMm,
    thicknessMm: plan.thicknessMm,
    contourRadiusMm: radiusOf(curvaturePerMm),
    contourRiseMm: fits.at(-1)!.fallsBackMm,
    contourGapMm: gapMm,
    contour,
    trebleReachMm: Math.min(halfMm, flank[0]?.acrossMm ?? halfMm),
    flank,
    heightAtFaceMm: top[0] - back[0],
    heightInsideMm: top[1] - back[1],
    topSlopeRad: Math.atan((top[1] - top[0]) / plan.thicknessMm),
    backSlopeRad: Math.atan((back[0] - back[1]) / plan.thicknessMm),
  }
}

/**
 * The inner face of a cutaway's hollow beside the neck block, read square to the joint: every 5 mm from the glue face to the block's
 * thickness, or as far as the hollow comes toward the tail.
 */
function flankRows(
  { treble, woodEndMm }: NonNullable<BlockSite['cut']>,
  sideThicknessMm: number,
  faceXMm: number,
  thicknessMm: number,
): FlankRow[] {
  const wood = stretchOfCurve(treble, 0, woodEndMm)
  const inner = (s: number) => insetPoint(wood, s, sideThicknessMm)
  // From the joint back toward the tail, as long as the hollow leads there and to the horn at most.
  const hornS = wood.corners.findLast(({ sMm }) => sMm < woodEndMm - 1e-6)?.sMm ?? 0
  const endS = Math.max(hornS, headingsAtMm(wood, Math.PI / 2).findLast((s) => s < woodEndMm - 1e-6) ?? 0)
  const [nearX, farX] = [inner(woodEndMm).x, inner(endS).x]
  const rows: FlankRow[] = []
  const add = (fromFaceMm: number) => {
    const x = Math.min(Math.max(faceXMm - fromFaceMm, farX), nearX)
    const s = findRoot((u) => inner(u).x - x, endS, woodEndMm, 1e-10)
    rows.push({ fromFaceMm: faceXMm - x, acrossMm: inner(s).y })
  }
  const reachMm = Math.min(thicknessMm, faceXMm - farX)
  for (let i = 0; i * STEP_MM < reachMm - 1e-6; i++) add(i * STEP_MM)
  if (reachMm > 0) add(reachMm)
  return rows
}

/** The inner face near one end, followed outward from the centreline by arc length of the outer face. */
interface InnerFace {
  readonly middleXMm: number
  /** How far across it goes while it still runs outward. */
  readonly reachMm: number
  readonly alongAtMm: (acrossMm: number) => number
  readonly rowAt: (alongMm: number) => ContourRow
}

function innerFace(site: Pick<BlockSite, 'half' | 'end' | 'sideThicknessMm'>): InnerFace {
  const { half, end, sideThicknessMm } = site
  const at = (u: number) => insetPoint(half, end === 'tail' ? u : half.lengthMm - u, sideThicknessMm)
  const middleXMm = at(0).x
  // It is followed at most to a third of the half: further out it is no end any more.
  const stepMm = half.lengthMm / 60
  let endU = 0
  let reachMm = 0
  for (let y = at(stepMm).y; endU + stepMm <= half.lengthMm / 3 && y > reachMm; y = at(endU + stepMm).y) {
    endU += stepMm
    reachMm = y
  }
  const away = end === 'tail' ? 1 : -1
  return {
    middleXMm,
    reachMm,
    alongAtMm: (acrossMm) => (acrossMm <= 0 ? 0 : findRoot((u) => at(u).y - acrossMm, 0, endU, 1e-11)),
    rowAt: (alongMm) => {
      const point = at(alongMm)
      return { acrossMm: point.y, fallsBackMm: away * (point.x - middleXMm) }
    },
  }
}

/**
 * The arc whose largest gap from the face is least, when the two are pushed together symmetric about the centreline until they touch.
 * The gap of a given curvature is the spread of the differences; that spread is convex in the curvature, so a bounded golden section finds it.
 */
function fitArc(face: readonly ContourRow[]): { curvaturePerMm: number; gapMm: number } {
  const spread = (k: number) => {
    let low = 0
    let high = 0
    for (const { acrossMm, fallsBackMm } of face) {
      const gap = fallsBackMm - dropMm(k, acrossMm)
      low = Math.min(low, gap)
      high = Math.max(high, gap)
    }
    return high - low
  }
  const { acrossMm: halfMm, fallsBackMm: riseMm } = face.at(-1)!
  if (halfMm <= 0) return { curvaturePerMm: 0, gapMm: 0 }
  const throughEnds = (2 * riseMm) / (halfMm * halfMm + riseMm * riseMm)
  const gapThere = spread(throughEnds)
  if (gapThere < 1e-9) return { curvaturePerMm: throughEnds, gapMm: gapThere }
  const golden = (Math.sqrt(5) - 1) / 2
  const reach = (4 * gapThere) / (halfMm * halfMm)
  let a = throughEnds - reach
  let b = throughEnds + reach
  let c = b - golden * (b - a)
  let d = a + golden * (b - a)
  let atC = spread(c)
  let atD = spread(d)
  for (let count = 0; count < 60; count++) {
    if (atC < atD) {
      ;[b, d, atD] = [d, c, atC]
      c = b - golden * (b - a)
      atC = spread(c)
    } else {
      ;[a, c, atC] = [c, d, atD]
      d = a + golden * (b - a)
      atD = spread(d)
    }
  }
  const k = (a + b) / 2
  return { curvaturePerMm: k, gapMm: spread(k) }
}

/** Whether the block is wider than the end it is meant for. */
export const blockFits = (plan: BlockPlan, site: Pick<BlockSite, 'half' | 'end' | 'sideThicknessMm'>): boolean =>
  plan.widthMm / 2 <= innerFace(site).reachMm + 1e-6
