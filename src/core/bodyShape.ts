import { type Curve, curveAt } from './geometry/curve.ts'
import { type Back, makeBack } from './instrument/back.ts'
import { type Bouts, findBouts, halfWidthAtMm } from './instrument/body.ts'
import { drawOutline, type Outline } from './instrument/outline.ts'
import { measureScale, type ScaleNumbers } from './instrument/scale.ts'
import type { Across } from './instrument/straightedge.ts'
import { makeTop, type Top } from './instrument/top.ts'
import { flatSlopeRad, type PlacedNeck, placeNeck } from './neckPart.ts'
import type { Plan } from './plan.ts'

/** Outline, scale and the two domes of a body: what everything else is measured from. Lengths mm, frame of the plan. */
export interface BodyShape {
  readonly outline: Outline
  /** Along the bass half, and along the treble one. */
  readonly bouts: Bouts
  readonly trebleBouts: Bouts
  readonly placed: PlacedNeck
  readonly scale: ScaleNumbers
  readonly top: Top
  readonly back: Back
  /** Where a straightedge is laid across. */
  readonly across: {
    readonly lowerBout: Across | null
    readonly waist: Across | null
    readonly upperBout: Across | null
  }
}

/** The body of a plan, before a single row of it is measured. */
export function shapeBody(plan: Plan): BodyShape {
  // The outline, and where it is widest and narrowest.
  const outline = drawOutline(plan.outline)
  const { bass, treble, isMirrored, lengthMm } = outline
  const bouts = findBouts(bass)
  const waistAtMm = bouts.waistMm === null ? null : curveAt(bass, bouts.waistMm).point.x
  const trebleBouts = isMirrored ? bouts : findBouts(treble, waistAtMm)

  // Board and strings over the body, and where the saddle stands.
  const placed = placeNeck(plan, lengthMm)
  const scale = measureScale(placed.shape)

  // The two domes.
  const top = makeTop(plan.top, {
    lengthMm,
    saddleLineMm: scale.saddleLineMm,
    halfWidthAtMm: (x) => halfWidthAtMm(bass, x),
    flatSlopeRad: (flat) => flatSlopeRad(plan, placed, flat),
  })
  const back = makeBack(plan.back, lengthMm, plan.rim.depthAtTailMm, plan.rim.depthAtNeckMm)

  const acrossAt = (s: number | null): Across | null =>
    s === null ? null : acrossAlong(bass, isMirrored ? null : treble, s)
  const across = {
    lowerBout: acrossAt(bouts.lowerBoutMm),
    waist: acrossAt(bouts.waistMm),
    upperBout: acrossAt(bouts.upperBoutMm),
  }
  return { outline, bouts, trebleBouts, placed, scale, top, back, across }
}

function acrossAlong(bass: Curve, ownTreble: Curve | null, sMm: number): Across {
  const { x, y } = curveAt(bass, sMm).point
  return { x, bassY: y, trebleY: ownTreble === null ? y : halfWidthAtMm(ownTreble, x) }
}
