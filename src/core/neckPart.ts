import type { Figure } from './figure.ts'
import { measureBoard, markerRows } from './instrument/neck/boardNumbers.ts'
import { measureBridge } from './instrument/neck/bridge.ts'
import { compensationMm } from './instrument/neck/compensation.ts'
import { type Fretboard, makeFretboard } from './instrument/neck/fretboard.ts'
import { fretRows } from './instrument/neck/frets.ts'
import { measureHead, tunerRows } from './instrument/neck/head.ts'
import { measureNeckBlank } from './instrument/neck/neckBlank.ts'
import { measureNeckSet, type NeckLine, type NeckSetSite, type Seat, setNeck } from './instrument/neck/neckSet.ts'
import { measureStringSet, stringRows } from './instrument/neck/stringRows.ts'
import { betweenOuter, placeStrings, spaceStrings, type StringLine } from './instrument/neck/strings.ts'
import { coreOf, MATERIALS, massGPerM, noteHz, tensionN } from './instrument/neck/tension.ts'
import type { FlatStart } from './instrument/top.ts'
import type { Surface } from './geometry/surface.ts'
import type { Numbers } from './numbers.ts'
import type { Plan } from './plan.ts'
import { radFromDeg } from './units/angle.ts'

/** Board and strings in place over a body of some length, before it is known how the neck stands to it. */
export interface PlacedNeck {
  readonly shape: Fretboard
  readonly lines: readonly StringLine[]
  readonly gapAtNutMm: number
  readonly gapAtSaddleMm: number
  readonly estimatesMm: readonly Figure[]
  /** As used at the outer strings. */
  readonly compensation: { readonly bassMm: number; readonly trebleMm: number }
}

export function placeNeck(plan: Plan, bodyLengthMm: number): PlacedNeck {
  const { strings, bridge } = plan
  const { nutSpreadMm, saddleSpreadMm } = strings
  const shape = makeFretboard(plan.scale, plan.board, { bodyLengthMm, nutSpreadMm, saddleSpreadMm })
  const lines = placeStrings(strings, plan.setup, shape)
  const estimatesMm = strings.set.map((string, i): Figure => {
    const line = lines[i]
    const mass = massGPerM(string)
    const coreMm = coreOf(string)
    if (line === undefined || mass === 'none' || coreMm === 'none') return 'none'
    return compensationMm({
      scaleMm: line.scaleMm,
      tensionN: tensionN(mass, line.scaleMm, noteHz(string.note, strings.pitchHz)),
      coreMm,
      modulusGPa: MATERIALS[string.material].modulusGPa,
      isSolid: MATERIALS[string.material].isSolid,
      actionMm: betweenOuter(plan.setup.actionBassMm, plan.setup.actionTrebleMm, line.nutAcrossMm, nutSpreadMm),
      nutHeightMm: betweenOuter(plan.setup.nutBassMm, plan.setup.nutTrebleMm, line.nutAcrossMm, nutSpreadMm),
    })
  })
  const used = (entered: number, estimate: Figure | undefined) =>
    bridge.compensation === 'estimated' && typeof estimate === 'number' ? estimate : entered
  return {
    shape,
    lines,
    gapAtNutMm: spaceStrings(strings, nutSpreadMm).gapMm,
    gapAtSaddleMm: spaceStrings(strings, saddleSpreadMm).gapMm,
    estimatesMm,
    compensation: {
      bassMm: used(bridge.compensationBassMm, estimatesMm[0]),
      trebleMm: used(bridge.compensationTrebleMm, estimatesMm.at(-1)),
    },
  }
}

/** Joint to the saddle's crown in the middle. */
export const toCrownMm = ({ shape, compensation }: PlacedNeck): number =>
  shape.jointMm - shape.saddleLine.xMm + (compensation.bassMm + compensation.trebleMm) / 2

function neckSetSite(plan: Plan, placed: PlacedNeck, topAtSaddleMm: number, seat: Seat): NeckSetSite {
  const { setup, bridge } = plan
  return {
    toSaddleMm: toCrownMm(placed),
    topAtSaddleMm,
    seat,
    boardMm: plan.board.thicknessMm,
    crownMm: plan.frets.crownMm,
    bridgeMm: bridge.thicknessMm,
    saddleShowingMm: bridge.saddleShowingMm,
    actionMm: (setup.actionBassMm + setup.actionTrebleMm) / 2,
    nutHeightMm: (setup.nutBassMm + setup.nutTrebleMm) / 2,
    riseMm: setup.riseMm,
  }
}

/** How steeply the flat of an upper bout falls toward the neck, so that the board lies on it, or as entered. */
export function flatSlopeRad(plan: Plan, placed: PlacedNeck, flat: FlatStart): number {
  if (plan.top.flatSlope === 'entered') return radFromDeg(plan.top.flatSlopeDeg)
  const topAtSaddleMm = flat.dish.heightMm(placed.shape.jointMm - toCrownMm(placed), 0)
  const site = neckSetSite(plan, placed, topAtSaddleMm, seatOn(placed, flat))
  return Math.atan(setNeck(site, plan.setup.riseMm).slope)
}

const seatOn = ({ shape }: PlacedNeck, { fromMm, startMm }: FlatStart): Seat => ({
  kind: 'flat',
  startMm,
  fromJointMm: shape.jointMm - fromMm,
})

/** What the neck needs of the closed box. */
export interface NeckBox {
  readonly plate: Surface
  readonly rimEdgeAtNeckMm: number
  /** Where a flat of the upper bout begins that falls as the neck asks; null: none does. */
  readonly flat: FlatStart | null
  readonly bodyDepthMm: number
  readonly dishedDepthMm: number
  readonly outlineFallsMm: (acrossMm: number) => number
}

type NeckParts = Pick<
  Numbers,
  | 'board'
  | 'frets'
  | 'markers'
  | 'strings'
  | 'stringSet'
  | 'neckSet'
  | 'setup'
  | 'bridge'
  | 'pins'
  | 'neck'
  | 'head'
  | 'tuners'
>
export interface MeasuredNeck {
  readonly numbers: NeckParts
  readonly built: NeckLine
  readonly strung: NeckLine
}

/** Every number of neck, strings and bridge, in the order of the argument. */
export function measureNeck(plan: Plan, placed: PlacedNeck, box: NeckBox): MeasuredNeck {
  const { shape, lines, compensation } = placed
  const { setup } = plan

  // How the neck stands: to build to, and as the same geometry asks without the rise.
  const saddleMm = shape.jointMm - toCrownMm(placed)
  const seat: Seat = box.flat === null ? { kind: 'edge', edgeMm: box.rimEdgeAtNeckMm } : seatOn(placed, box.flat)
  const site = neckSetSite(plan, placed, box.plate.heightMm(saddleMm, 0), seat)
  const built = setNeck(site, setup.riseMm)
  const strung = setNeck(site, 0)
  const neckSet = measureNeckSet(
    site,
    { built, strung },
    {
      shape,
      heelDepthMm: plan.neck.joint === 'sidesInHeel' ? 'none' : box.bodyDepthMm,
      topAtMm: (xMm) => box.plate.heightMm(xMm, 0),
      holeEdgeMm: plan.soundhole.centreMm + plan.soundhole.radiusMm,
      topSlopeAtNeck: box.plate.slope(shape.jointMm, 0).x,
    },
  )

  const { bridge, pins } = measureBridge(plan.bridge, {
    shape,
    lines,
    topPlate: box.plate,
    compensationBassMm: compensation.bassMm,
    compensationTrebleMm: compensation.trebleMm,
  })
  const strings = stringRows(plan.strings, plan.bridge, {
    shape,
    lines,
    pins,
    crownMm: plan.frets.crownMm,
    estimatesMm: placed.estimatesMm,
    compensationBassMm: compensation.bassMm,
    compensationTrebleMm: compensation.trebleMm,
    middleAtSaddleMm: 2 * site.actionMm - site.nutHeightMm,
    strungSlope: strung.slope,
    topSlopeAtSaddle: box.plate.slope(saddleMm, 0).x,
  })
  const middle: StringLine = {
    nutAcrossMm: 0,
    saddleAcrossMm: 0,
    scaleMm: shape.scaleMm,
    nutMm: shape.nutMm,
    saddleMm: shape.saddleLine.xMm,
    nutHeightMm: site.nutHeightMm,
    saddleHeightMm: 2 * site.actionMm - site.nutHeightMm,
  }
  const headSite = {
    lines,
    nutOverFaceMm: lines.map(
      (line) => line.nutHeightMm + plan.frets.crownMm + plan.board.thicknessMm - plan.head.faceVeneerMm,
    ),
  }
  return {
    built,
    strung,
    numbers: {
      board: measureBoard(plan.board, plan.frets, shape),
      frets: fretRows(plan.board, plan.frets, shape, { bass: lines[0] ?? middle, treble: lines.at(-1) ?? middle }),
      markers: markerRows(plan.board, shape),
      strings,
      stringSet: measureStringSet(plan.strings, strings, {
        shape,
        lines,
        gapAtNutMm: placed.gapAtNutMm,
        gapAtSaddleMm: placed.gapAtSaddleMm,
        armMm: neckSet.stringsOverTopMm,
      }),
      neckSet,
      setup: {
        actionBassMm: setup.actionBassMm,
        actionTrebleMm: setup.actionTrebleMm,
        nutBassMm: setup.nutBassMm,
        nutTrebleMm: setup.nutTrebleMm,
        reliefMm: setup.reliefMm,
      },
      bridge,
      pins,
      neck: measureNeckBlank(plan.neck, plan.board, plan.head, {
        shape,
        bodyDepthMm: box.bodyDepthMm,
        dishedDepthMm: box.dishedDepthMm,
        angleRad: neckSet.angleRad,
        outlineFallsMm: box.outlineFallsMm,
        blockWidthMm: plan.blocks.neck.widthMm,
        blockThicknessMm: plan.blocks.neck.thicknessMm,
      }),
      head: measureHead(plan.head),
      tuners: tunerRows(plan.head, headSite),
    },
  }
}
