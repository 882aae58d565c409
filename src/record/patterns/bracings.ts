import type { BraceEndPlan, BracePlan, PlateSide } from '../../core/boxPlan.ts'
import { halfMm } from '../../core/instrument/brace/halfMm.ts'
import type { Numbers } from '../../core/numbers.ts'
import type { Plan } from '../../core/plan.ts'

/**
 * Bracings to start from, laid out by plain proportions of the body. Sizes and proportions are common practice without a published
 * source, as a shop would sketch them before it carves by ear; no one maker's plan stands behind them.
 */
export interface BracingSite {
  readonly lengthMm: number
  /** Half the lower bout, and how far from the tail it and the waist stand. */
  readonly lowerBoutHalfMm: number
  readonly lowerBoutAtMm: number
  readonly waistAtMm: number
  readonly holeCentreMm: number
  readonly holeRadiusMm: number
  readonly bridgeFrontMm: number
  readonly bridgeBackMm: number
  /** The plate under the bridge, from the tail. */
  readonly plateFromMm: number
  readonly plateToMm: number
  /** Faces of the blocks inside the box. */
  readonly tailBlockMm: number
  readonly neckBlockMm: number
}

/** A brace under an id of its own, so that others can stop at it; `order` is left to whoever keeps them. */
export interface PatternBrace {
  readonly id: string
  readonly brace: BracePlan
}
export type BracingPattern = (site: BracingSite, newId: () => string) => readonly PatternBrace[]

/** What patterns ask of a body; one without a waist is taken to have it in its middle. */
export function bracingSiteOf(plan: Plan, { body, bridge }: Numbers): BracingSite {
  const { sideThicknessMm } = plan.rim
  return {
    lengthMm: body.lengthMm,
    lowerBoutHalfMm: body.lowerBoutMm / 2,
    lowerBoutAtMm: body.lowerBoutAtMm,
    waistAtMm: typeof body.waistAtMm === 'number' ? body.waistAtMm : body.lengthMm / 2,
    holeCentreMm: plan.soundhole.centreMm,
    holeRadiusMm: plan.soundhole.radiusMm,
    bridgeFrontMm: bridge.frontEdgeAtMm,
    bridgeBackMm: bridge.backEdgeAtMm,
    plateFromMm: plan.bridge.plateFromMm,
    plateToMm: plan.bridge.plateToMm,
    tailBlockMm: sideThicknessMm + plan.blocks.tail.thicknessMm,
    neckBlockMm: body.lengthMm - sideThicknessMm - plan.blocks.neck.thicknessMm,
  }
}

/** Sizes are told for a lower bout of this half-width and grow with it. */
const USUAL_HALF_MM = 195
const growthOf = ({ lowerBoutHalfMm }: BracingSite): number =>
  Math.min(Math.max(lowerBoutHalfMm / USUAL_HALF_MM, 0.45), 1.3)

type Where = Pick<BraceEndPlan, 'stops' | 'side' | 'xMm' | 'yMm' | 'braceId'>
const sideOf = (yMm: number): 'bass' | 'treble' => (yMm < 0 ? 'bass' : 'treble')
const rimAt = (side: 'bass' | 'treble', xMm: number): Where => ({ stops: 'rimAt', side, xMm, yMm: 0, braceId: null })
const rimBeyond = (xMm: number, yMm: number): Where => ({
  stops: 'rimBeyond',
  side: sideOf(yMm),
  xMm,
  yMm,
  braceId: null,
})
const atBrace = (braceId: string, xMm: number, yMm: number): Where => ({
  stops: 'brace',
  side: sideOf(yMm),
  xMm,
  yMm,
  braceId,
})
const here = (xMm: number, yMm: number): Where => ({ stops: 'here', side: sideOf(yMm), xMm, yMm, braceId: null })

/** How an end runs out, in mm at the usual size. */
interface Runout {
  readonly taperMm: number
  readonly endHeightMm: number
  readonly letInMm: number
}
const LET_IN: Runout = { taperMm: 40, endHeightMm: 2.5, letInMm: 2.5 }
const THIN: Runout = { taperMm: 30, endHeightMm: 1.5, letInMm: 0 }
/** It butts against another brace at its whole height. */
const BUTT: Runout = { taperMm: 0, endHeightMm: 2, letInMm: 0 }

interface Wood {
  readonly plate: PlateSide
  readonly kind: BracePlan['kind']
  readonly widthMm: number
  readonly heightMm: number
  readonly underside: BracePlan['underside']
  readonly twin?: boolean
  readonly lapped?: boolean
}

/** Makes braces of one body, all sizes grown with it and every figure as a maker would enter it. */
function carpenter(growth: number) {
  const end = (where: Where, runout: Runout): BraceEndPlan => ({
    ...where,
    xMm: halfMm(where.xMm),
    yMm: halfMm(where.yMm),
    letInMm: halfMm(runout.letInMm * growth),
    taper: runout.taperMm > 0 ? 'scoop' : 'none',
    taperMm: halfMm(runout.taperMm * growth),
    endHeightMm: halfMm(runout.endHeightMm * growth),
  })
  return (wood: Wood, from: readonly [Where, Runout], to: readonly [Where, Runout]): BracePlan => ({
    order: '',
    plate: wood.plate,
    kind: wood.kind,
    twin: wood.twin ?? false,
    from: end(...from),
    to: end(...to),
    widthMm: halfMm(wood.widthMm * growth),
    heightMm: halfMm(wood.heightMm * growth),
    underside: wood.underside,
    archRadiusMm: wood.plate === 'top' ? 8000 : 4500,
    lapped: wood.lapped ?? false,
  })
}

const across = (xMm: number) =>
  [[rimAt('bass', xMm), LET_IN] as const, [rimAt('treble', xMm), LET_IN] as const] as const

/** Half-way between the hole's edge and the neck block: under the board, and so flat. */
const overHoleMm = (site: BracingSite): number => (site.holeCentreMm + site.holeRadiusMm + site.neckBlockMm) / 2
const UPPER = { plate: 'top', kind: 'transverse', widthMm: 12, heightMm: 14, underside: 'flat' } as const

/** Half the angle at which the legs of an X open toward the tail. */
const LEG_RAD = (48.5 * Math.PI) / 180
/** From the hole's edge to where they cross. */
const CROSS_BEHIND_HOLE_MM = 38
/** How much nearer the tail a tone bar runs for each mm from bass to treble: 18 degrees off square. */
const TONE_LEAN = Math.tan((18 * Math.PI) / 180)
/** The way a finger brace runs from its leg: mostly outward, a little toward the neck. */
const FINGER_WAY = 0.37

/** A lapped X with a flat brace over the hole, two tone bars behind the bridge plate and two finger braces on either side. */
export const xBracing: BracingPattern = (site, newId) => {
  const growth = growthOf(site)
  const brace = carpenter(growth)
  const crossMm = site.holeCentreMm - site.holeRadiusMm - CROSS_BEHIND_HOLE_MM * growth
  const open = Math.tan(LEG_RAD)
  const legX = (yMm: number) => crossMm - Math.abs(yMm) / open
  const halfMm = site.lowerBoutHalfMm
  const [up, down] = [0.25 * halfMm, 0.45 * halfMm]
  const leg = newId()
  const tone = (middleMm: number): PatternBrace => {
    // On the bass leg: crossMm - u / open = middleMm + lean u.
    const u = (crossMm - middleMm) / (1 / open + TONE_LEAN)
    const aside = 0.25 * halfMm
    return {
      id: newId(),
      brace: brace(
        { plate: 'top', kind: 'tone', widthMm: 7, heightMm: 12, underside: 'dome' },
        [atBrace(leg, middleMm + TONE_LEAN * u, -u), BUTT],
        [rimBeyond(middleMm - TONE_LEAN * aside, aside), LET_IN],
      ),
    }
  }
  const finger = (part: number): PatternBrace => {
    const yMm = -part * halfMm
    const outMm = 0.12 * halfMm
    return {
      id: newId(),
      brace: brace(
        { plate: 'top', kind: 'finger', widthMm: 6, heightMm: 9, underside: 'dome', twin: true },
        [atBrace(leg, legX(yMm), yMm), BUTT],
        [rimBeyond(legX(yMm) + FINGER_WAY * outMm, yMm - outMm), LET_IN],
      ),
    }
  }
  // Behind the plate, however near to the legs its corners reach.
  const firstMm = site.plateFromMm - TONE_LEAN * open * (crossMm - site.plateFromMm) - 8 * growth
  const secondMm = firstMm - 0.36 * (firstMm - site.tailBlockMm)
  return [
    { id: newId(), brace: brace(UPPER, ...across(overHoleMm(site))) },
    {
      id: leg,
      brace: brace(
        { plate: 'top', kind: 'cross', widthMm: 8, heightMm: 16, underside: 'dome', twin: true, lapped: true },
        [rimBeyond(crossMm + up / open, -up), LET_IN],
        [rimBeyond(crossMm - down / open, down), LET_IN],
      ),
    },
    tone(firstMm),
    tone(secondMm),
    finger(0.27),
    finger(0.5),
  ]
}

/** Where fans stop, as a share of the way from the middle of the lower bout to its rim. */
const FAN_REACH = 0.76
/** Fans stand so much closer together at the bar below the hole than under the bridge. */
const FAN_CLOSES = 0.55

/** Behind the hole, clear of its edge. */
const underHoleMm = (site: BracingSite): number => site.holeCentreMm - 1.35 * site.holeRadiusMm

/** Where a line through two places, going toward the tail, leaves the lower bout drawn smaller by `FAN_REACH`: an ellipse about its middle. */
function fanEnd(site: BracingSite, start: { x: number; y: number }, through: { x: number; y: number }) {
  const [alongMm, acrossMm] = [FAN_REACH * site.lowerBoutAtMm, FAN_REACH * site.lowerBoutHalfMm]
  const [px, py] = [(start.x - site.lowerBoutAtMm) / alongMm, start.y / acrossMm]
  const [dx, dy] = [(through.x - start.x) / alongMm, (through.y - start.y) / acrossMm]
  const [a, b, c] = [dx * dx + dy * dy, px * dx + py * dy, px * px + py * py - 1]
  const t = (-b + Math.sqrt(Math.max(b * b - a * c, 0))) / a
  const x = start.x + t * (through.x - start.x)
  const y = start.y + t * (through.y - start.y)
  return { x: Math.max(x, site.tailBlockMm + 3), y }
}

/** Seven fans from a bar below the hole, another bar over it. */
export const fanBracing: BracingPattern = (site, newId) => {
  const brace = carpenter(growthOf(site))
  const barMm = underHoleMm(site)
  const bar = newId()
  const bridgeMm = (site.bridgeFrontMm + site.bridgeBackMm) / 2
  const fan = (i: number): PatternBrace => {
    const through = { x: bridgeMm, y: (-i * site.lowerBoutHalfMm) / 6 }
    const start = { x: barMm, y: FAN_CLOSES * through.y }
    const stop = fanEnd(site, start, through)
    return {
      id: newId(),
      brace: brace(
        { plate: 'top', kind: 'fan', widthMm: 6.5, heightMm: 4.5, underside: 'dome', twin: i > 0 },
        [atBrace(bar, start.x, start.y), THIN],
        [here(stop.x, stop.y), THIN],
      ),
    }
  }
  return [
    { id: newId(), brace: brace({ ...UPPER, widthMm: 10, heightMm: 16 }, ...across(overHoleMm(site))) },
    {
      id: bar,
      brace: brace({ plate: 'top', kind: 'transverse', widthMm: 7, heightMm: 16, underside: 'dome' }, ...across(barMm)),
    },
    ...[0, 1, 2, 3].map(fan),
  ]
}

/** Three bars across, over the hole, below it and behind the bridge, with three short fans between the lower two. */
export const ladderBracing: BracingPattern = (site, newId) => {
  const brace = carpenter(growthOf(site))
  const [barMm, lowMm] = [underHoleMm(site), (site.plateFromMm + site.tailBlockMm) / 2]
  const [bar, low] = [newId(), newId()]
  const ladder = { plate: 'top', kind: 'ladder', widthMm: 7, heightMm: 13, underside: 'dome' } as const
  const fan = (i: number): PatternBrace => {
    const yMm = (-i * site.lowerBoutHalfMm) / 3.5
    return {
      id: newId(),
      brace: brace(
        { plate: 'top', kind: 'fan', widthMm: 6, heightMm: 4.5, underside: 'dome', twin: i > 0 },
        [atBrace(bar, barMm, FAN_CLOSES * yMm), THIN],
        [atBrace(low, lowMm, yMm), THIN],
      ),
    }
  }
  return [
    { id: newId(), brace: brace({ ...UPPER, kind: 'ladder' }, ...across(overHoleMm(site))) },
    { id: bar, brace: brace(ladder, ...across(barMm)) },
    { id: low, brace: brace(ladder, ...across(lowMm)) },
    fan(0),
    fan(1),
  ]
}

/** Shares of the way from block to block at which the back's braces stand: two low wide ones, two tall narrow ones. */
const BACK_BRACES = [
  { at: 0.2, widthMm: 18, heightMm: 9 },
  { at: 0.44, widthMm: 18, heightMm: 9 },
  { at: 0.67, widthMm: 8, heightMm: 15 },
  { at: 0.88, widthMm: 8, heightMm: 15 },
] as const

/** Four braces across the back. */
export const ladderBack: BracingPattern = (site, newId) => {
  const brace = carpenter(growthOf(site))
  return BACK_BRACES.map(({ at, widthMm, heightMm }) => ({
    id: newId(),
    brace: brace(
      { plate: 'back', kind: 'ladder', widthMm, heightMm, underside: 'dome' },
      ...across(site.tailBlockMm + at * (site.neckBlockMm - site.tailBlockMm)),
    ),
  }))
}

/** A plate without braces. */
export const noBracing: BracingPattern = () => []

/** What can be laid out on either plate. */
export const BRACING_PATTERNS = {
  top: { x: xBracing, fan: fanBracing, ladder: ladderBracing, none: noBracing },
  back: { ladder: ladderBack, none: noBracing },
} as const satisfies Record<PlateSide, Readonly<Record<string, BracingPattern>>>
