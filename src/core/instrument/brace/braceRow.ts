import type { Figure } from '../../figure.ts'
import type { BraceEndPlan, BracingPlan, BRACE_KINDS, BRACE_TAPERS, PlateSide } from '../../boxPlan.ts'
import { type BraceFace, greatestRise } from './braceArch.ts'
import { endHeightMm } from './braceHeight.ts'
import { finishedLengthMm } from './letIn.ts'
import type { BraceHalf, PlacedBrace, PlacedEnd } from './placedBrace.ts'

export interface BraceRow {
  readonly id: string
  readonly plate: PlateSide
  readonly half: BraceHalf
  readonly kind: (typeof BRACE_KINDS)[number]
  /** Counted over all braces of the instrument, twins one after the other. */
  readonly number: number
  /** Between its ends, in plan: between the inner faces where both are at the rim, from flank to flank where it stops at braces. */
  readonly lengthMm: number
  /** To cut, from tip to tip: an end at the rim stops in its pocket of the lining. */
  readonly finishedLengthMm: number
  /** To the centreline: 0 along it, a right angle square to it. */
  readonly angleRad: number
  /** Where it crosses the centreline, from the tail; none where it does not, or lies on it. */
  readonly crossesCentreAtMm: Figure
  readonly fromXMm: number
  readonly fromAcrossMm: number
  readonly toXMm: number
  readonly toAcrossMm: number
  /** Along the outer face of its side from the tail, of ends at the rim. */
  readonly fromAlongOuterMm: Figure
  readonly toAlongOuterMm: Figure
  /** Of those ends, along the brace: into the lining from its inner edge, and from the tip on to the side. */
  readonly fromLetInMm: number
  readonly toLetInMm: number
  readonly fromShortMm: number
  readonly toShortMm: number
  /** At its tips, as the tapers there leave it, and how long those tapers are: none where there is none. */
  readonly fromHeightMm: number
  readonly toHeightMm: number
  readonly fromTaper: (typeof BRACE_TAPERS)[number]
  readonly toTaper: (typeof BRACE_TAPERS)[number]
  readonly fromTaperMm: number
  readonly toTaperMm: number
  readonly heightMm: number
  readonly widthMm: number
  readonly undersideRadiusMm: Figure
  /** Of its gluing face over the line between its ends, the greatest of all eighths. */
  readonly archRiseMm: number
  /** How much more an arch of its own rises than the dome: what its ends stand off the plate before it is pulled down. */
  readonly springMm: Figure
  readonly blankLengthMm: number
  readonly blankHeightMm: number
  readonly blankWidthMm: number
}

/** Only an end that is to be at the rim runs on into the lining. */
const isForRim = ({ stops }: BraceEndPlan): boolean => stops === 'rimAt' || stops === 'rimBeyond'

const alongOuter = ({ rim }: PlacedEnd): Figure => (rim === null ? 'none' : rim.alongOuterMm)

/** Ends this near the centreline lie on it. */
const ON_LINE_MM = 1e-9

function crossesCentre({ from, to }: PlacedBrace): Figure {
  const [a, b] = [from.point, to.point]
  if (a.y * b.y > 0 || Math.abs(a.y - b.y) < ON_LINE_MM) return 'none'
  return a.x + ((b.x - a.x) * a.y) / (a.y - b.y)
}

/** One brace with what to cut for it, mm and rad. Source: derived. */
export function braceRow(
  brace: PlacedBrace,
  face: BraceFace,
  number: number,
  blanks: Pick<BracingPlan, 'blankEndMm' | 'blankHeightMm' | 'blankWidthMm'>,
): BraceRow {
  const { plan, from, to, lengthMm, way } = brace
  const letInMm = (which: 'from' | 'to') => (isForRim(plan[which]) ? plan[which].letInMm : 0)
  const taperMm = (which: 'from' | 'to') => (plan[which].taper === 'none' ? 0 : plan[which].taperMm)
  const { riseMm: archRiseMm, rangeMm } = greatestRise(face, lengthMm)
  const finishedMm = finishedLengthMm(brace)
  return {
    id: brace.id,
    plate: plan.plate,
    half: brace.half,
    kind: plan.kind,
    number,
    lengthMm,
    finishedLengthMm: finishedMm,
    angleRad: Math.atan2(Math.abs(way.y), Math.abs(way.x)),
    crossesCentreAtMm: crossesCentre(brace),
    fromXMm: from.point.x,
    fromAcrossMm: from.point.y,
    toXMm: to.point.x,
    toAcrossMm: to.point.y,
    fromAlongOuterMm: alongOuter(from),
    toAlongOuterMm: alongOuter(to),
    fromLetInMm: letInMm('from'),
    toLetInMm: letInMm('to'),
    fromShortMm: from.shortMm,
    toShortMm: to.shortMm,
    fromHeightMm: endHeightMm(plan.from, plan.heightMm),
    toHeightMm: endHeightMm(plan.to, plan.heightMm),
    fromTaper: plan.from.taper,
    toTaper: plan.to.taper,
    fromTaperMm: taperMm('from'),
    toTaperMm: taperMm('to'),
    heightMm: plan.heightMm,
    widthMm: plan.widthMm,
    undersideRadiusMm: face.radiusMm,
    archRiseMm,
    springMm: plan.underside === 'own' ? archRiseMm - face.domeRiseMm : 'none',
    blankLengthMm: finishedMm + 2 * blanks.blankEndMm,
    blankHeightMm: plan.heightMm + rangeMm + blanks.blankHeightMm,
    blankWidthMm: plan.widthMm + blanks.blankWidthMm,
  }
}
