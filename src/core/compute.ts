import { type BracingShape, measureBracing } from './bracingPart.ts'
import { measureAir } from './airPart.ts'
import { shapeBody } from './bodyShape.ts'
import { measureEdges } from './edgesPart.ts'
import type { Finding } from './findings.ts'
import { findMisfits } from './misfits/findMisfits.ts'
import { type Curve, curveAt } from './geometry/curve.ts'
import { plane } from './geometry/surface.ts'
import type { Back } from './instrument/back.ts'
import { measureBlock } from './instrument/block.ts'
import { type Bouts, measureBody, widerHalfAtMm } from './instrument/body.ts'
import { caulBump } from './instrument/caul.ts'
import { measureCutaway } from './instrument/cutNumbers.ts'
import { measureFit } from './instrument/fit.ts'
import { insideDepth } from './instrument/insideDepth.ts'
import type { Fretboard } from './instrument/neck/fretboard.ts'
import type { NeckLine } from './instrument/neck/neckSet.ts'
import { outlineFallMm } from './instrument/neck/outlineFall.ts'
import type { StringLine } from './instrument/neck/strings.ts'
import type { Outline } from './instrument/outline.ts'
import {
  placeRows,
  type RimSite,
  rimRowAt,
  sideWoods,
  stationRows,
  stationStepMm,
  stationsMm,
} from './instrument/rim.ts'
import { type BoardEnd, measureRosette, ringsInOrder } from './instrument/rosette.ts'
import { measureBlank, measureSide } from './instrument/side.ts'
import { measureSoundhole } from './instrument/soundhole.ts'
import { gapsUnderStraightedge } from './instrument/straightedge.ts'
import type { Top } from './instrument/top.ts'
import { measureLinings, measureSideBraces } from './insideRim.ts'
import { measureNeck } from './neckPart.ts'
import type { Numbers } from './numbers.ts'
import type { Plan } from './plan.ts'

/** The shapes behind the numbers: what drawings are made from. Lengths mm, frame of the plan. */
export interface Geometry {
  readonly outline: Outline
  readonly lengthMm: number
  /** Along the bass half, and along the treble one. */
  readonly bouts: Bouts
  readonly trebleBouts: Bouts
  readonly top: Top
  readonly back: Back
  /** The wood of either half, piece by piece from the tail: the same where it is mirrored. */
  readonly rimSite: RimSite
  readonly trebleSites: readonly RimSite[]
  readonly boardEnd: BoardEnd
  /** Board and strings, and the line of the neck: as built, and as the same geometry asks without the rise under strings. */
  readonly neck: {
    readonly shape: Fretboard
    readonly lines: readonly StringLine[]
    readonly built: NeckLine
    readonly strung: NeckLine
  }
  readonly bracing: BracingShape
  /** Of the wider half. */
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
  // Outline, scale and domes.
  const { outline, bouts, trebleBouts, placed, scale, top, back, across } = shapeBody(plan)
  const { bass, treble, isMirrored, lengthMm } = outline
  const body = measureBody(outline, lengthMm, bouts)
  const { shape } = placed
  const widthAtMm = (x: number) => widerHalfAtMm(outline, x)
  const { depthAtNeckMm, sideThicknessMm } = plan.rim

  // The sides, round the rim and laid flat. Their straight edge stands over the highest place of the top edge of either.
  const stepMm = stationStepMm(bass.lengthMm, plan.rim.stationStepMm)
  const woods = isMirrored ? [{ half: bass, startMm: 0 }] : sideWoods(treble, outline.trebleWoodEndMm)
  const highestMm = Math.max(
    ...[{ half: bass, startMm: 0 }, ...(isMirrored ? [] : woods)].flatMap(({ half }) =>
      stationsMm(half.lengthMm, stepMm).map((s) => {
        const { point } = curveAt(half, s)
        return top.rim.heightMm(point.x, point.y)
      }),
    ),
  )
  const siteOf = (wood: { readonly half: Curve; readonly startMm: number }): RimSite => ({
    ...wood,
    top: top.rim,
    back: back.surface,
    sideThicknessMm,
    referenceMm: highestMm + plan.rim.topAllowanceMm,
    backAllowanceMm: plan.rim.backAllowanceMm,
    firstLeavesMm: plan.rim.firstLeavesTopMm + plan.rim.firstLeavesBackMm,
    topLiningMm: plan.linings.top.widthMm,
    backLiningMm: plan.linings.back.widthMm,
  })
  const rimSite = siteOf({ half: bass, startMm: 0 })
  const trebleSites = isMirrored ? [rimSite] : woods.map(siteOf)
  const rim = stationsMm(bass.lengthMm, stepMm).map((s) => rimRowAt(rimSite, s))
  const trebleRim = isMirrored ? [] : stationRows(trebleSites, stepMm)
  const places = placeRows([rimSite], bouts)
  const treblePlaces = isMirrored ? [] : placeRows(trebleSites, trebleBouts, outline.cut?.hornMm ?? null)
  const runsOnMm = outline.cut === null ? 0 : plan.outline.cutaway.meetsNeckAtMm
  const bassBlank = measureBlank(rim, plan.rim.trimEachEndMm, runsOnMm)
  const trebleBlanks = trebleSites.map((_, i) =>
    measureBlank(isMirrored ? rim : trebleRim.filter((row) => row.blank === i + 1), plan.rim.trimEachEndMm, 0),
  )
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
  const site = { half: bass, sideThicknessMm, top: top.rim, back: back.surface }
  const cut =
    outline.cut === null
      ? null
      : { treble, woodEndMm: outline.trebleWoodEndMm, meetsNeckAtMm: plan.outline.cutaway.meetsNeckAtMm }
  const blocks = {
    tail: measureBlock(plan.blocks.tail, { ...site, end: 'tail', cut: null }),
    neck: measureBlock(plan.blocks.neck, { ...site, end: 'neck', cut }),
  }

  // What is glued to the sides inside.
  const linings = measureLinings(plan, outline)
  const sideBraces = measureSideBraces(plan, outline, 'bass', [rimSite])
  const trebleBraces = isMirrored ? [] : measureSideBraces(plan, outline, 'treble', trebleSites)
  const caul = caulBump(plan.caul)

  // Hole and rosette, with the board over them.
  const innermost = ringsInOrder(plan.rosette).reduce<number | null>(
    (least, { ring }) => (least === null ? ring.innerRadiusMm : Math.min(least, ring.innerRadiusMm)),
    null,
  )
  const soundhole = measureSoundhole(plan.soundhole, scale.boardEndMm, innermost)
  const boardEnd: BoardEnd = {
    fromCentreMm: soundhole.centreToBoardEndMm,
    halfWidthMm: shape.halfWidthAtMm(shape.endMm),
    taper: shape.halfWidthAtMm(shape.endMm) - shape.halfWidthAtMm(shape.endMm + 1),
  }
  const rosette = measureRosette(plan.rosette, boardEnd)

  const atNeck = rim.at(-1)!
  const lowest = insideDepth(plane(0, 0), back.surface, lengthMm)

  // How the neck stands to the box, and everything on it.
  const follows = top.flat !== null && plan.top.flatSlope === 'neckSet'
  const neck = measureNeck(plan, placed, {
    plate: top.plate,
    rimEdgeAtNeckMm: atNeck.topEdgeMm,
    flat: follows ? top.flat : null,
    bodyDepthMm: sides.bodyDepthAtNeckMm,
    dishedDepthMm: depthAtNeckMm + plan.plates.topMm + plan.plates.backMm,
    outlineFallsMm: (acrossMm) => outlineFallMm(bass, bouts.upperBoutMm ?? bouts.lowerBoutMm, acrossMm),
  })

  // What stands on the two plates inside.
  const bracing = measureBracing(plan, {
    outline,
    lengthMm,
    top: top.plate,
    back: back.surface,
    bridge: neck.numbers.bridge,
    pins: neck.numbers.pins,
  })

  // What closes the edges.
  const edges = measureEdges(plan, {
    outline,
    places,
    treblePlaces,
    back: back.surface,
    lengthMm,
    bodyDepthAtTailMm: sides.bodyDepthAtTailMm,
    bassRunsOnMm: runsOnMm,
  })

  // The air in the closed box.
  const air = measureAir(plan, {
    outline,
    lengthMm,
    saddleLineMm: scale.saddleLineMm,
    top,
    back,
    boardEnd,
    blocks: [blocks.tail, blocks.neck],
    liningLengthMm: linings.top.lengthMm,
    sideBraces: [...sideBraces, ...(isMirrored ? sideBraces : trebleBraces)],
    braces: bracing.numbers.braces,
  })

  const numbers: Numbers = {
    body,
    pieces: outline.pieces,
    readings: outline.reading?.rows ?? [],
    fit: measureFit(outline),
    cutaway: measureCutaway(outline, runsOnMm),
    sides,
    blanks: [bassBlank, ...trebleBlanks],
    rim,
    trebleRim,
    places,
    treblePlaces,
    linings,
    sideBraces,
    trebleBraces,
    caul,
    top: {
      form: top.form,
      radiusMm: top.radiusMm,
      flatFromMm: top.flatFromMm,
      flatSlopeRad: top.flatSlopeRad,
      neckEdgeMm: atNeck.topEdgeMm,
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
    plates: { topMm: plan.plates.topMm, backMm: plan.plates.backMm },
    blocks,
    scale,
    ...neck.numbers,
    soundhole,
    rosette,
    ...bracing.numbers,
    ...edges,
    air,
  }
  const geometry: Geometry = {
    outline,
    lengthMm,
    bouts,
    trebleBouts,
    top,
    back,
    rimSite,
    trebleSites,
    boardEnd,
    neck: { shape, lines: placed.lines, built: neck.built, strung: neck.strung },
    bracing: bracing.shape,
    halfWidthAtMm: widthAtMm,
  }
  return { numbers, geometry, findings: findMisfits(plan, numbers, geometry) }
}
