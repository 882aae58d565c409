import { dropTiny, strokeKey } from './mendPath.ts'
import { nearZeroRad } from './hermiteClothoid.ts'
import type { Path, Stroke } from './path.ts'
import { endsMeet, pathEnd, pathLengthMm, reversePath } from './path.ts'
import type { Point } from './point.ts'
import { distanceMm } from './point.ts'
import { strokeHeadingRad, strokeLengthMm, withEnd, withStart } from './stroke.ts'

/** A line of strokes that hang together. */
export interface Chain {
  readonly path: Path
  readonly isClosed: boolean
  /** Which of the given paths it was made of, in its order. */
  readonly from: readonly number[]
}

/** What had to be mended on the way. */
export interface Healed {
  readonly gapsClosed: number
  readonly largestGapMm: number
  readonly tinyDropped: number
  readonly duplicatesDropped: number
}

export interface Traced {
  /** The longest first. */
  readonly chains: readonly Chain[]
  readonly healed: Healed
}

export interface TraceLimits {
  /** Ends no farther apart are one; 0.5 mm where not said. */
  readonly gapMm?: number
  /** Shorter strokes are dropped; 0.01 mm where not said. */
  readonly tinyMm?: number
}

/** Ends closer than this were drawn together. */
const TOGETHER_MM = 1e-6
/** At one end no more ends than this are tried. */
const MOST_NEAR = 24
/** A stroke this many times longer than a gap is moved to close it; beside a shorter one a line is put in. */
const MOVED_SHARE = 20

/**
 * Loose paths joined end to end into chains. The nearest ends are joined first; of ends drawn together those that go on straightest.
 * Gaps are closed, tiny strokes and paths drawn twice are dropped, and all of that is told. Millimetres; paths that cross
 * without ending there are not joined. The work is bounded by the count of strokes.
 */
export function tracePath(
  paths: readonly { readonly path: Path; readonly isClosed: boolean }[],
  { gapMm = 0.5, tinyMm = 0.01 }: TraceLimits = {},
): Traced {
  let tinyDropped = 0
  let duplicatesDropped = 0
  const seen = new Set<string>()
  const links: Link[] = []
  paths.forEach(({ path, isClosed }, index) => {
    const kept = dropTiny(path, tinyMm)
    tinyDropped += path.strokes.length - kept.strokes.length
    if (kept.strokes.length === 0) return
    const key = strokeKey(kept)
    if (seen.has(key)) {
      duplicatesDropped++
      return
    }
    seen.add(key)
    links.push({ path: kept, isClosed: isClosed || endsMeet(kept, TOGETHER_MM), index, next: [null, null] })
  })
  for (const [a, b] of pairsOfEnds(links, gapMm)) {
    if (a.link.next[a.end] !== null || b.link.next[b.end] !== null) continue
    a.link.next[a.end] = b
    b.link.next[b.end] = a
  }
  const gaps: number[] = []
  const chains = chainsOf(links, gaps)
  const closed = gaps.filter((gap) => gap > TOGETHER_MM)
  return {
    chains: chains.toSorted((a, b) => pathLengthMm(b.path) - pathLengthMm(a.path)),
    healed: { gapsClosed: closed.length, largestGapMm: Math.max(0, ...closed), tinyDropped, duplicatesDropped },
  }
}

interface Link {
  readonly path: Path
  readonly isClosed: boolean
  readonly index: number
  /** What its start and its end are joined to. */
  readonly next: [End | null, End | null]
}

interface End {
  readonly link: Link
  /** 0 its start, 1 its end. */
  readonly end: 0 | 1
}

const pointOf = ({ link, end }: End): Point => (end === 0 ? link.path.start : pathEnd(link.path))

/** Heading out of the path at an end. */
function headingOut({ link: { path }, end }: End): number {
  if (end === 0) return strokeHeadingRad(path.start, path.strokes[0]!, 0) + Math.PI
  const from = path.strokes.at(-2)?.to ?? path.start
  return strokeHeadingRad(from, path.strokes.at(-1)!, 1)
}

/** All pairs of ends that may be joined, the best first. */
function pairsOfEnds(links: readonly Link[], gapMm: number): (readonly [End, End])[] {
  const cell = Math.max(gapMm, TOGETHER_MM)
  const cells = new Map<string, End[]>()
  const pairs: { readonly pair: readonly [End, End]; readonly gap: number; readonly turn: number }[] = []
  for (const link of links) {
    if (link.isClosed) continue
    for (const end of [0, 1] as const) {
      const here: End = { link, end }
      const p = pointOf(here)
      const [column, row] = [Math.floor(p.x / cell), Math.floor(p.y / cell)]
      const near = [-1, 0, 1].flatMap((i) => [-1, 0, 1].flatMap((j) => cells.get(`${column + i},${row + j}`) ?? []))
      for (const there of near.slice(0, MOST_NEAR)) {
        const gap = distanceMm(p, pointOf(there))
        if (gap > gapMm || (there.link === link && pathLengthMm(link.path) < 4 * gapMm)) continue
        const turn = Math.abs(nearZeroRad(headingOut(here) - headingOut(there) - Math.PI))
        pairs.push({ pair: [there, here], gap: gap <= TOGETHER_MM ? 0 : gap, turn })
      }
      const key = `${column},${row}`
      const others = cells.get(key)
      if (others === undefined) cells.set(key, [here])
      else if (others.length < MOST_NEAR) others.push(here)
    }
  }
  return pairs.toSorted((a, b) => a.gap - b.gap || a.turn - b.turn).map(({ pair }) => pair)
}

function chainsOf(links: readonly Link[], gaps: number[]): Chain[] {
  const taken = new Set<Link>()
  const walk = (first: End): Chain => {
    const parts: Path[] = []
    const from: number[] = []
    let entry: End | null = first
    while (entry !== null && !taken.has(entry.link)) {
      taken.add(entry.link)
      parts.push(entry.end === 0 ? entry.link.path : reversePath(entry.link.path))
      from.push(entry.link.index)
      entry = entry.link.next[entry.end === 0 ? 1 : 0]
    }
    const isClosed = entry !== null
    return { path: weld(parts, isClosed, gaps), isClosed: isClosed || first.link.isClosed, from }
  }
  const chains: Chain[] = []
  for (const link of links) {
    if (taken.has(link)) continue
    if (link.next[0] === null) chains.push(walk({ link, end: 0 }))
    else if (link.next[1] === null) chains.push(walk({ link, end: 1 }))
  }
  for (const link of links) if (!taken.has(link)) chains.push(walk({ link, end: 0 }))
  return chains
}

/** The parts as one path, gaps closed. */
function weld(parts: readonly Path[], isClosed: boolean, gaps: number[]): Path {
  const start = parts[0]!.start
  const strokes: Stroke[] = []
  const lastLong = (gap: number) => isLong(strokes.at(-2)?.to ?? start, strokes.at(-1)!, gap)
  const moveLast = (to: Point) => strokes.push(withEnd(strokes.pop()!, to))
  parts.forEach((part, i) => {
    const [first, ...rest] = part.strokes
    if (i === 0 || first === undefined) return strokes.push(...part.strokes)
    const end = strokes.at(-1)!.to
    const gap = distanceMm(end, part.start)
    gaps.push(gap)
    const movable = gap > 0 && lastLong(gap) && isLong(part.start, first, gap)
    const middle = movable ? { x: (end.x + part.start.x) / 2, y: (end.y + part.start.y) / 2 } : part.start
    if (movable) moveLast(middle)
    else if (gap > 0) strokes.push({ kind: 'line', to: part.start })
    return strokes.push(withStart(part.start, first, middle), ...rest)
  })
  if (isClosed) {
    const gap = distanceMm(strokes.at(-1)!.to, start)
    gaps.push(gap)
    if (gap > 0 && lastLong(gap)) moveLast(start)
    else if (gap > 0) strokes.push({ kind: 'line', to: start })
  }
  return { start, strokes }
}

const isLong = (from: Point, stroke: Stroke, gap: number): boolean =>
  gap <= TOGETHER_MM || strokeLengthMm(from, stroke) > MOVED_SHARE * gap
