import type { Finding } from './findings.ts'
import { findMisfits } from './misfits.ts'
import { curveAt } from './geometry/curve.ts'
import { plane } from './geometry/surface.ts'
import { type Back, makeBack } from './instrument/back.ts'
import { measureBlock } from './instrument/block.ts'
import { type Bouts, findBouts, halfWidthAtMm, measureBody } from './instrument/body.ts'
import { insideDepth } from './instrument/insideDepth.ts'
import { drawOutline, type Outline } from './instrument/outline.ts'
import { placeRows, type RimSite, rimRowAt, stationStepMm, stationsMm } from './instrument/rim.ts'
import { type BoardEnd, measureRosette, ringsInOrder } from './instrument/rosette.ts'
import { measureScale } from './instrument/scale.ts'
import { measureSide } from './instrument/side.ts'
import { measureSoundhole } from './instrument/soundhole.ts'
import { gapsUnderStraightedge } from './instrument/straightedge.ts'
import { makeTop, type Top } from './instrument/top.ts'
import type { Numbers } from './numbers.ts'
import type { Plan } from './plan.ts'

/** The shapes behind the numbers: what drawings are made from. Lengths mm, frame of the plan. */
export interface Geometry {
  readonly outline: Outline
  readonly lengthMm: number
  readonly bouts: Bouts
  readonly top: Top
  readonly back: Back
  readonly rimSite: RimSite
  readonly boardEnd: BoardEnd
  readonly halfWidthAtMm: (xMm: number) => number
}

export interface Computed {
  readonly numbers: Numbers
  readonly findings: readonly Finding[]
  readonly geometry: Geometry
}

/**
 * Every number of an instrument, in the order of the argument. This page alone knows both the plan's fields and the parts' lengths.
 * Total: a valid plan always gives finite numbers; what cannot be built is among the findings.
 */
export function compute(plan: Plan): Computed {
  // The outline, and where it is widest and narrowest.
  const outline = drawOutline(plan.outline)
  const { half, lengthMm } = outline
  const bouts = findBouts(half)
  const body = measureBody(half, lengthMm, bouts)

  // Scale and board, as far as they lie over the body.
  const scale = measureScale(lengthMm, plan.scale.lengthMm, plan.scale.jointFret, plan.board.overBodyMm)

  // The two domes.
  const widthAtMm = (x: number) => halfWidthAtMm(half, x)
  const top = makeTop(plan.top, { lengthMm, saddleLineMm: scale.saddleLineMm, halfWidthAtMm: widthAtMm })
  const { depthAtTailMm, depthAtNeckMm, sideThicknessMm } = plan.rim
  const back = makeBack(plan.back, lengthMm, depthAtTailMm, depthAtNeckMm)

  // The side, round the rim and laid flat. Its straight edge stands over the highest place of the top edge.
  const stepMm = stationStepMm(half.lengthMm, plan.rim.stationStepMm)
  const stations = stationsMm(half.lengthMm, stepMm)
  const edges = stations.map((s) => {
    const { point } = curveAt(half, s)
    return top.rim.heightMm(point.x, point.y)
  })
  const rimSite: RimSite = {
    half,
    top: top.rim,
    back: back.surface,
    sideThicknessMm,
    referenceMm: Math.max(...edges) + plan.rim.topAllowanceMm,
    backAllowanceMm: plan.rim.backAllowanceMm,
  }
  const rim = stations.map((s) => rimRowAt(rimSite, s))
  const places = placeRows(rimSite, bouts)
  const sides = measureSide({
    rim,
    waist: places.find((row) => row.place === 'waist') ?? null,
    rimPlan: plan.rim,
    plates: plan.plates,
    stepMm,
    referenceMm: rimSite.referenceMm,
    inside: insideDepth(top.plate, back.surface, lengthMm),
  })

  // Blocks, glued to the inner face.
  const site = { half, sideThicknessMm, top: top.rim, back: back.surface }
  const blocks = {
    tail: measureBlock(plan.blocks.tail, { ...site, end: 'tail' }),
    neck: measureBlock(plan.blocks.neck, { ...site, end: 'neck' }),
  }

  // Hole and rosette, with the board over them.
  const innermost = ringsInOrder(plan.rosette).reduce<number | null>(
    (least, { ring }) => (least === null ? ring.innerRadiusMm : Math.min(least, ring.innerRadiusMm)),
    null,
  )
  const soundhole = measureSoundhole(plan.soundhole, scale.boardEndMm, innermost)
  const boardEnd: BoardEnd = {
    fromCentreMm: soundhole.centreToBoardEndMm,
    halfWidthMm: plan.board.widthAtEndMm / 2,
    taper:
      plan.board.overBodyMm > 0 ? (plan.board.widthAtEndMm - plan.board.widthAtJointMm) / 2 / plan.board.overBodyMm : 0,
  }
  const rosette = measureRosette(plan.rosette, boardEnd)

  const acrossAt = (s: number | null) => (s === null ? null : curveAt(half, s).point)
  const across = {
    lowerBout: acrossAt(bouts.lowerBoutMm),
    waist: acrossAt(bouts.waistMm),
    upperBout: acrossAt(bouts.upperBoutMm),
  }
  const neck = rim.at(-1)!
  const lowest = insideDepth(plane(0, 0), back.surface, lengthMm)

  const numbers: Numbers = {
    body,
    pieces: outline.pieces,
    sides,
    rim,
    places,
    top: {
      form: top.form,
      radiusMm: top.radiusMm,
      flatFromMm: top.flatFromMm,
      flatSlopeRad: top.flatSlopeRad,
      neckEdgeMm: neck.topEdgeMm,
      riseAtSaddleMm: top.riseAtSaddleMm,
      heightAtSaddleMm: top.plate.heightMm(scale.saddleLineMm, 0),
      ...gapsUnderStraightedge(top.plate, 'up', across, lengthMm),
    },
    back: {
      form: back.form,
      radiusMm: back.radiusMm,
      axisAtMm: back.axisAtMm,
      lowestAtMm: lowest.atMm,
      lowestUnderRimPlaneMm: lowest.depthMm,
      ...gapsUnderStraightedge(back.surface, 'down', across, lengthMm),
    },
    blocks,
    scale,
    soundhole,
    rosette,
  }
  const geometry: Geometry = { outline, lengthMm, bouts, top, back, rimSite, boardEnd, halfWidthAtMm: widthAtMm }
  return { numbers, geometry, findings: findMisfits(plan, numbers, geometry) }
}
