import type { BraceEndPlan, BracePlan } from '../../boxPlan.ts'
import type { ConvexPolygon } from '../../geometry/convexPolygon.ts'
import type { Point } from '../../geometry/point.ts'
import { type InnerRim, isInsideRim, leavesRim, meetRim, rimAtX, type RimPlaceIn, type RimSide } from './innerRim.ts'

export type BraceHalf = 'single' | 'bass' | 'treble'

/** Where a brace ends: the middle of its end, in plan. */
export interface PlacedEnd {
  readonly point: Point
  /** At the inner face of a side, at another brace, or where it was told to end. */
  readonly at: 'rim' | 'brace' | 'free'
  /** Of an end at the rim: on which side, and how far along its outer face from the tail. */
  readonly rim: { readonly side: RimSide; readonly alongOuterMm: number } | null
  /** The place, among those placed, of the brace it stops at. */
  readonly stopsAt: number | null
  /** Of an end at the rim, along the brace: how much of it lies over the lining, and how far its tip stays short of the side. */
  readonly liningMm: number
  readonly shortMm: number
}

/** Why a brace does not stand as it was asked for; it stands as far as it can all the same. */
export interface BraceFaults {
  /** An end, or a stretch between both, lies beyond the inner face of the sides. */
  readonly outsideRim: boolean
  /** An end never met the brace it is to stop at. */
  readonly meetsNothing: boolean
}

/** One straight piece of wood in its place. Those that are the same once more, mirrored, follow each other: bass, then treble. */
export interface PlacedBrace {
  readonly id: string
  readonly half: BraceHalf
  /** As entered, or mirrored. */
  readonly plan: BracePlan
  readonly from: PlacedEnd
  readonly to: PlacedEnd
  /** From one end to the other in plan, and the way there: of length 1. */
  readonly lengthMm: number
  readonly way: Point
  /** Its four corners in plan, between its ends, cut square: what drawings and collisions are made of. */
  readonly corners: ConvexPolygon
  readonly faults: BraceFaults
}

export interface BraceEntry {
  readonly id: string
  readonly brace: BracePlan
}

/** The braces by their order, ties by id. */
export const bracesInOrder = (braces: { readonly [id: string]: BracePlan }): BraceEntry[] =>
  Object.entries(braces)
    .map(([id, brace]) => ({ id, brace }))
    .sort((a, b) => compareText(a.brace.order, b.brace.order) || compareText(a.id, b.id))

/** Of braces in their order, those that decide where one of them stands: itself, each it stops at, each those stop at, and so on. */
export function bracesBehind(entries: readonly BraceEntry[], id: string): BraceEntry[] {
  const needed = new Set([id])
  // A brace is found behind another at most once, so as many rounds as there are braces find them all.
  for (let round = 0; round < entries.length; round++) {
    const before = needed.size
    for (const { id: own, brace } of entries)
      if (needed.has(own))
        for (const { stops, braceId } of [brace.from, brace.to])
          if (stops === 'brace' && braceId !== null) needed.add(braceId)
    if (needed.size === before) break
  }
  return entries.filter((entry) => needed.has(entry.id))
}

const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)

const mirrorEnd = (end: BraceEndPlan): BraceEndPlan => ({
  ...end,
  side: end.side === 'bass' ? 'treble' : 'bass',
  yMm: -end.yMm,
})

/** A brace seen in the mirror of the centreline. */
const mirrorBrace = (brace: BracePlan): BracePlan => ({
  ...brace,
  from: mirrorEnd(brace.from),
  to: mirrorEnd(brace.to),
})

/** Points nearer together than this give no direction. */
const SAME_MM = 1e-9
/** Two lines that meet under less than this are taken as parallel. */
const PARALLEL = 0.02

/** A copy to be placed: the line it lies on, from one entered point to the other, and how far along they are. */
interface Line {
  readonly half: BraceHalf
  readonly plan: BracePlan
  readonly start: Point
  readonly end: Point
  /** Of ends that are to be on a side at a distance from the tail. */
  readonly rimStart: RimPlaceIn | null
  readonly rimEnd: RimPlaceIn | null
  readonly way: Point
  readonly betweenMm: number
}

const rimPlaceOf = (rim: InnerRim, end: BraceEndPlan): RimPlaceIn | null =>
  end.stops === 'rimAt' ? rimAtX(rim, end.side, end.xMm) : null

function lineOf(rim: InnerRim, plan: BracePlan, half: BraceHalf): Line {
  const [rimStart, rimEnd] = [rimPlaceOf(rim, plan.from), rimPlaceOf(rim, plan.to)]
  const start = rimStart?.point ?? { x: plan.from.xMm, y: plan.from.yMm }
  const end = rimEnd?.point ?? { x: plan.to.xMm, y: plan.to.yMm }
  const betweenMm = Math.hypot(end.x - start.x, end.y - start.y)
  const way =
    betweenMm < SAME_MM ? { x: 0, y: 1 } : { x: (end.x - start.x) / betweenMm, y: (end.y - start.y) / betweenMm }
  return { half, plan, start, end, rimStart, rimEnd, way, betweenMm }
}

/** One line, or two, bass first: the bass one begins on the bass side, or, where it begins on the centreline, ends there. */
function linesOf(rim: InnerRim, brace: BracePlan): Line[] {
  const own = lineOf(rim, brace, 'single')
  if (!brace.twin) return [own]
  const other = lineOf(rim, mirrorBrace(brace), 'single')
  const lean = Math.abs(own.start.y) > SAME_MM ? own.start.y : own.end.y
  const [bass, treble] = lean > 0 ? [other, own] : [own, other]
  return [
    { ...bass, half: 'bass' },
    { ...treble, half: 'treble' },
  ]
}

interface EndFound {
  readonly end: PlacedEnd
  readonly outsideRim: boolean
  readonly meetsNothing: boolean
}

/** Of ends that are not at the rim, and of all until the lining is known. */
const NO_LINING = { liningMm: 0, shortMm: 0 } as const

const freeEnd = (point: Point): PlacedEnd => ({
  point,
  at: 'free',
  rim: null,
  stopsAt: null,
  ...NO_LINING,
})

/**
 * Where a line drawn from one entered point through the other first comes to a brace: of all its copies the crossing nearest to the
 * entered point, less what the brace's own flank takes of the way. null where it crosses none.
 */
function stopAtBrace(
  start: Point,
  way: Point,
  enteredMm: number,
  targets: readonly { readonly brace: PlacedBrace; readonly index: number }[],
): { readonly alongMm: number; readonly index: number } | null {
  let best: { readonly alongMm: number; readonly index: number; readonly missMm: number } | null = null
  for (const { brace, index } of targets) {
    const sine = way.x * brace.way.y - way.y * brace.way.x
    if (Math.abs(sine) < PARALLEL) continue
    const [dx, dy] = [brace.from.point.x - start.x, brace.from.point.y - start.y]
    const alongMm = (dx * brace.way.y - dy * brace.way.x) / sine
    const onItMm = (dx * way.y - dy * way.x) / sine
    if (alongMm < 0 || onItMm < -SAME_MM || onItMm > brace.lengthMm + SAME_MM) continue
    const missMm = Math.abs(alongMm - enteredMm)
    const flankMm = brace.plan.widthMm / 2 / Math.abs(sine)
    if (best === null || missMm < best.missMm) best = { alongMm: Math.max(alongMm - flankMm, 0), index, missMm }
  }
  return best
}

function findEnd(rim: InnerRim, line: Line, which: 'from' | 'to', placed: readonly PlacedBrace[]): EndFound {
  const plan = line.plan[which]
  const [start, entered] = which === 'to' ? [line.start, line.end] : [line.end, line.start]
  const way = which === 'to' ? line.way : { x: -line.way.x, y: -line.way.y }
  const asEntered = (faults: Partial<BraceFaults>): EndFound => ({
    end: freeEnd(entered),
    outsideRim: false,
    meetsNothing: false,
    ...faults,
  })
  const atRim = (found: RimPlaceIn | null, outsideRim: boolean): EndFound =>
    found === null
      ? asEntered({ outsideRim: true })
      : {
          end: {
            point: found.point,
            at: 'rim',
            rim: { side: found.side, alongOuterMm: found.alongOuterMm },
            stopsAt: null,
            ...NO_LINING,
          },
          outsideRim,
          meetsNothing: false,
        }
  if (plan.stops === 'rimAt') return atRim(which === 'to' ? line.rimEnd : line.rimStart, false)
  const isInside = isInsideRim(rim, entered)
  if (plan.stops === 'rimBeyond') {
    if (isInside) return atRim(meetRim(rim, entered, way), false)
    return atRim(isInsideRim(rim, start) ? meetRim(rim, start, way) : null, true)
  }
  if (plan.stops === 'here') return asEntered({ outsideRim: !isInside })
  const targets = placed.flatMap((brace, index) =>
    brace.id === plan.braceId && brace.plan.plate === line.plan.plate ? [{ brace, index }] : [],
  )
  const stop = stopAtBrace(start, way, line.betweenMm, targets)
  if (stop === null) return asEntered({ outsideRim: !isInside, meetsNothing: true })
  const point = { x: start.x + stop.alongMm * way.x, y: start.y + stop.alongMm * way.y }
  return {
    end: { point, at: 'brace', rim: null, stopsAt: stop.index, ...NO_LINING },
    outsideRim: !isInsideRim(rim, point),
    meetsNothing: false,
  }
}

function place(rim: InnerRim, id: string, line: Line, placed: readonly PlacedBrace[]): PlacedBrace {
  const from = findEnd(rim, line, 'from', placed)
  const found = findEnd(rim, line, 'to', placed)
  const { way } = line
  const alongMm = (found.end.point.x - from.end.point.x) * way.x + (found.end.point.y - from.end.point.y) * way.y
  // Two ends that stop short of each other leave no wood between them.
  const to = alongMm > 0 ? found : { ...found, end: { ...found.end, point: from.end.point } }
  const lengthMm = Math.max(alongMm, 0)
  const { point: a } = from.end
  const { point: b } = to.end
  const isOff = from.outsideRim || to.outsideRim
  const ends = [from.end.rim, to.end.rim].filter((end) => end !== null)
  const [acrossX, acrossY] = [(-way.y * line.plan.widthMm) / 2, (way.x * line.plan.widthMm) / 2]
  return {
    id,
    half: line.half,
    plan: line.plan,
    from: from.end,
    to: to.end,
    lengthMm,
    way,
    corners: [
      { x: a.x - acrossX, y: a.y - acrossY },
      { x: b.x - acrossX, y: b.y - acrossY },
      { x: b.x + acrossX, y: b.y + acrossY },
      { x: a.x + acrossX, y: a.y + acrossY },
    ],
    faults: {
      outsideRim: isOff || leavesRim(rim, a, b, ends),
      meetsNothing: from.meetsNothing || to.meetsNothing,
    },
  }
}

const stopsAtId = (end: BraceEndPlan): string | null => (end.stops === 'brace' ? end.braceId : null)

/**
 * Every brace in its place, by number: in their order, twins one after the other. One that stops at another is placed after it; where
 * braces stop at each other in a circle, the first of them in order is placed as it was entered, with a fault, and so on.
 * Total: an end that finds nothing stays at its entered point. Source: derived.
 */
export function placeBraces(entries: readonly BraceEntry[], rim: InnerRim): PlacedBrace[] {
  const plates = new Map(entries.map(({ id, brace }) => [id, brace.plate]))
  const waits = ({ id, brace }: BraceEntry, left: ReadonlySet<string>) =>
    [brace.from, brace.to].some((end) => {
      const target = stopsAtId(end)
      return target !== null && target !== id && left.has(target) && plates.get(target) === brace.plate
    })
  // They are placed in the order they can be, and then put in the order they were kept in.
  const queue = [...entries]
  const left = new Set(entries.map(({ id }) => id))
  const found: { readonly entry: number; readonly brace: PlacedBrace }[] = []
  while (queue.length > 0) {
    const next = queue.find((entry) => !waits(entry, left)) ?? queue[0]!
    queue.splice(queue.indexOf(next), 1)
    left.delete(next.id)
    const before = found.map(({ brace }) => brace)
    for (const line of linesOf(rim, next.brace))
      found.push({ entry: entries.indexOf(next), brace: place(rim, next.id, line, before) })
  }
  const order = found.map((_, i) => i).sort((a, b) => found[a]!.entry - found[b]!.entry || a - b)
  const numberOf = new Map(order.map((was, now) => [was, now]))
  const renamed = (end: PlacedEnd): PlacedEnd =>
    end.stopsAt === null ? end : { ...end, stopsAt: numberOf.get(end.stopsAt)! }
  return order.map((was) => {
    const { brace } = found[was]!
    return { ...brace, from: renamed(brace.from), to: renamed(brace.to) }
  })
}
