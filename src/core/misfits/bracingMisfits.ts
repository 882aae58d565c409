import type { Geometry } from '../compute.ts'
import type { FindingCode } from '../findings.ts'
import { type ConvexPolygon, overlapMm, toPolygonMm } from '../geometry/convexPolygon.ts'
import { leastRoomMm } from '../instrument/brace/braceArch.ts'
import { finishedLengthMm } from '../instrument/brace/letIn.ts'
import type { Numbers } from '../numbers.ts'
import type { Plan } from '../plan.ts'
import type { Report } from './report.ts'

type Placed = Geometry['bracing']['placed'][number]

// Limits are common practice, no published source.
/** What overlaps by less only touches. */
const TOUCH_MM = 0.05
/** Room for a spanner before the block, and to either side. */
const SPANNER_MM = { before: 15, aside: 10 }
const PLATE_BESIDE_PIN_MM = 8

const box = (fromMm: number, toMm: number, halfMm: number): ConvexPolygon => [
  { x: fromMm, y: -halfMm },
  { x: toMm, y: -halfMm },
  { x: toMm, y: halfMm },
  { x: fromMm, y: halfMm },
]

/** Braces on both plates, and the plate under the bridge. Every value `brace` is a brace's number. */
export function bracingMisfits(plan: Plan, numbers: Numbers, geometry: Geometry, report: Report) {
  const { placed, collisions } = geometry.bracing
  const { centreMm, radiusMm } = plan.soundhole
  const { lengthMm } = geometry
  const { sideThicknessMm } = plan.rim
  const { tail, neck } = plan.blocks
  const tailInsideMm = sideThicknessMm + tail.thicknessMm
  const neckInsideMm = lengthMm - sideThicknessMm - neck.thicknessMm
  const blocks = [
    { end: 0, field: 'blocks.tail.thicknessMm', corners: box(sideThicknessMm, tailInsideMm, tail.widthMm / 2) },
    {
      end: 1,
      field: 'blocks.neck.thicknessMm',
      corners: box(neckInsideMm, lengthMm - sideThicknessMm, neck.widthMm / 2),
    },
  ] as const
  placed.forEach((brace, i) => {
    const number = i + 1
    if (brace.lengthMm <= 0) return report('braceHasNoLength', 'cannot', ['bracing.braces'], { brace: number })
    // Of one that never leaves the lining its pockets leave nothing.
    if (finishedLengthMm(brace) <= 0 && !brace.faults.outsideRim)
      report('braceHasNoLength', 'cannot', ['bracing.braces'], { brace: number })
    if (brace.faults.outsideRim) report('braceOutsideRim', 'cannot', ['bracing.braces'], { brace: number })
    if (brace.faults.meetsNothing) report('braceMeetsNothing', 'cannot', ['bracing.braces'], { brace: number })
    // Of all it runs into, the one it runs into furthest, and each pair once.
    const worst = collisions
      .filter((collision) => collision.number === number)
      .reduce<(typeof collisions)[number] | null>((a, b) => (a === null || b.byMm > a.byMm ? b : a), null)
    if (worst !== null)
      report('bracesCollide', 'cannot', ['bracing.braces'], {
        brace: number,
        other: worst.otherNumber,
        byMm: worst.byMm,
        ...(worst.crossXMm === null ? {} : { crossMm: worst.crossXMm }),
      })
    endMisfits(brace, number, brace.id !== placed[i - 1]?.id, report)
    const intoHoleMm = radiusMm - toPolygonMm(brace.corners, { x: centreMm, y: 0 })
    if (brace.plan.plate === 'top' && intoHoleMm > TOUCH_MM)
      report('braceThroughHole', 'cannot', ['bracing.braces', 'soundhole.centreMm', 'soundhole.radiusMm'], {
        brace: number,
        byMm: intoHoleMm,
      })
    const room = leastRoomMm(brace, geometry.top.plate, geometry.back.surface)
    if (room.heightMm > room.insideMm)
      report('braceTooTallInside', 'cannot', ['bracing.braces', 'rim.depthAtTailMm', 'rim.depthAtNeckMm'], {
        brace: number,
        ...room,
      })
    for (const { end, field, corners } of blocks) {
      const byMm = overlapMm(brace.corners, corners)
      if (byMm > TOUCH_MM) report('braceUnderBlock', 'cannot', ['bracing.braces', field], { brace: number, end, byMm })
    }
    const inTheWay = meetsRodOrBolt(plan, numbers, brace, neckInsideMm, lengthMm)
    if (inTheWay !== null)
      report(
        'rodOrBoltMeetsBrace',
        'care',
        ['bracing.braces', inTheWay === 0 ? 'neck.rodLengthMm' : 'neck.boltsAtMm'],
        {
          brace: number,
          which: inTheWay,
        },
      )
  })
  ringMisfit(plan, numbers, geometry, report)
  plateMisfits(plan, numbers, geometry, report)
}

/** A place is found as entered within this. */
const FOUND_MM = 0.05

/** What is entered for either end and cannot be so; of twins, what is the same on both is said of the first. */
function endMisfits(brace: Placed, number: number, isFirst: boolean, report: Report) {
  for (const [end, which] of (['from', 'to'] as const).entries()) {
    const { stops, xMm, letInMm, taper, taperMm, endHeightMm } = brace.plan[which]
    const { at, point, liningMm } = brace[which]
    const say = (code: FindingCode, weight: 'cannot' | 'care', values: Record<string, number>) =>
      report(code, weight, ['bracing.braces'], { brace: number, end, ...values })
    if (at === 'rim' && letInMm > liningMm + FOUND_MM)
      report('braceLetInTooDeep', 'cannot', ['bracing.braces', `linings.${brace.plan.plate}.widthMm`], {
        brace: number,
        end,
        letInMm,
        liningMm,
      })
    if (!isFirst) continue
    if (taper !== 'none' && taperMm > 0 && endHeightMm > brace.plan.heightMm)
      say('braceEndTooHigh', 'care', { endMm: endHeightMm, heightMm: brace.plan.heightMm })
    if (stops === 'rimAt' && Math.abs(point.x - xMm) > FOUND_MM)
      say('braceEndBeyondBody', 'cannot', { wantedMm: xMm, foundMm: point.x })
  }
}

/**
 * Braces that lie over a part of the ring's width and leave the rest: the ring has to be cut to their flanks. One that runs right across it,
 * from its outer edge to its inner one, only parts it. Said once, of the brace that lies furthest over it.
 */
function ringMisfit(plan: Plan, { patches }: Numbers, { bracing }: Geometry, report: Report) {
  const { innerRadiusMm: innerMm, outerRadiusMm: outerMm } = patches.holeRing
  if (typeof innerMm !== 'number' || typeof outerMm !== 'number') return
  const centre = { x: plan.soundhole.centreMm, y: 0 }
  const over = bracing.placed.flatMap((brace, i) => {
    const byMm = outerMm - toPolygonMm(brace.corners, centre)
    const isPartly = byMm > TOUCH_MM && byMm < outerMm - innerMm - TOUCH_MM
    return brace.plan.plate === 'top' && brace.lengthMm > 0 && isPartly ? [{ brace: i + 1, byMm }] : []
  })
  if (over.length === 0) return
  const worst = over.reduce((a, b) => (b.byMm > a.byMm ? b : a))
  report('braceOverHoleRing', 'care', ['bracing.holeRingMm', 'bracing.holeRingSetBackMm', 'bracing.braces'], {
    ...worst,
    count: over.length,
    innerMm,
    outerMm,
  })
}

/** 0: the rod, or the key to its nut, that reaches into the box; 1: the spanner on a bolt through the neck block; null: neither. */
function meetsRodOrBolt(
  plan: Plan,
  { neck }: Numbers,
  { corners, plan: brace }: Geometry['bracing']['placed'][number],
  insideMm: number,
  lengthMm: number,
): 0 | 1 | null {
  const { before, aside } = SPANNER_MM
  const meets = (fromMm: number, halfMm: number) => overlapMm(corners, box(fromMm, insideMm, halfMm)) > TOUCH_MM
  const { rodEndsBeforeJointMm: ends, rodDepthMm } = neck
  if (brace.plate === 'top' && typeof ends === 'number' && typeof rodDepthMm === 'number') {
    const tipMm = lengthMm + ends
    if (tipMm < insideMm && rodDepthMm > plan.plates.topMm && meets(tipMm - before, aside)) return 0
  }
  // A spanner's head is about as high over the bolt's middle as the bolt is thick.
  const headMm = plan.neck.boltMm
  const reachesMm =
    brace.plate === 'top' ? plan.plates.topMm + brace.heightMm : neck.heelDepthMm - plan.plates.backMm - brace.heightMm
  const isAtBolt = neck.bolts.some(({ underTopMm }) =>
    brace.plate === 'top' ? reachesMm > underTopMm - headMm : reachesMm < underTopMm + headMm,
  )
  return isAtBolt && meets(insideMm - before, aside) ? 1 : null
}

function plateMisfits(plan: Plan, { bridgePlate }: Numbers, { bracing }: Geometry, report: Report) {
  const { besidePinsMm } = bridgePlate
  if (plan.bridge.holds === 'pins' && typeof besidePinsMm === 'number' && besidePinsMm < PLATE_BESIDE_PIN_MM)
    report(
      'plateMissesFeet',
      besidePinsMm < 0 ? 'cannot' : 'care',
      ['bridge.plateTailWidthMm', 'bridge.plateNeckWidthMm', 'bridge.pinSpreadMm'],
      { byMm: besidePinsMm },
    )
  const { nearestToPlate: nearest } = bracing
  if (nearest !== null && nearest.clearMm < -TOUCH_MM)
    report('plateOverBrace', 'care', ['bridge.plateTailWidthMm', 'bridge.plateNeckWidthMm', 'bracing.braces'], {
      brace: nearest.index + 1,
      byMm: -nearest.clearMm,
    })
}
