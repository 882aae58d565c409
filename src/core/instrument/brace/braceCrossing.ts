import type { Figure } from '../../figure.ts'
import { overlapMm } from '../../geometry/convexPolygon.ts'
import { placedHeightMm } from './braceHeight.ts'
import type { PlacedBrace } from './placedBrace.ts'

export interface BraceCrossingRow {
  /** Of both braces, the lower one first. */
  readonly number: number
  readonly otherNumber: number
  readonly xMm: number
  readonly acrossMm: number
  /** From the `from` end of each. */
  readonly alongMm: number
  readonly otherAlongMm: number
  readonly angleRad: number
  /** Cut out of each: half of the lower one's height there; none unless both are lapped. */
  readonly lapMm: Figure
  /** Which of the two is notched in its gluing face: the one counted second. The other is notched in its free face. */
  readonly underNumber: Figure
  /** Along the first and along the second: what the other takes of it. */
  readonly notchMm: Figure
  readonly otherNotchMm: Figure
}

/**
 * Two braces of one plate in the same place. Two that cross share so much of the first one's length; two that lie side by side, or meet at an end,
 * run so deep into each other in plan.
 */
export interface BraceCollision {
  readonly number: number
  readonly otherNumber: number
  readonly byMm: number
  /** Where their middles cross, from the tail; null where they do not, or hardly turned to each other. */
  readonly crossXMm: number | null
}

/** An end that only touches another brace does not cross it. */
const TOUCH_MM = 1e-6
/** Braces that run into each other by less than this touch. */
const APART_MM = 0.05
/** Under this sine two braces run side by side. */
const PARALLEL = 1e-6
/** Over this sine, that of 15 degrees, a maker would say that they cross. */
const CROSSES = Math.sin(Math.PI / 12)

const stopAtEachOther = (a: PlacedBrace, i: number, b: PlacedBrace, j: number): boolean =>
  a.from.stopsAt === j || a.to.stopsAt === j || b.from.stopsAt === i || b.to.stopsAt === i

function crossing(a: PlacedBrace, b: PlacedBrace): { readonly alongMm: number; readonly otherAlongMm: number } | null {
  const sine = a.way.x * b.way.y - a.way.y * b.way.x
  if (Math.abs(sine) < PARALLEL) return null
  const [dx, dy] = [b.from.point.x - a.from.point.x, b.from.point.y - a.from.point.y]
  const alongMm = (dx * b.way.y - dy * b.way.x) / sine
  const otherAlongMm = (dx * a.way.y - dy * a.way.x) / sine
  const isWithin = (mm: number, { lengthMm }: PlacedBrace) => mm > TOUCH_MM && mm < lengthMm - TOUCH_MM
  return isWithin(alongMm, a) && isWithin(otherAlongMm, b) ? { alongMm, otherAlongMm } : null
}

/** What a brace of this width takes of the length of one it crosses: the width over the sine of the angle, at most all of it. */
const notchMm = (taker: PlacedBrace, from: PlacedBrace, sine: number): number =>
  Math.min(taker.plan.widthMm / sine, from.lengthMm)

/** Further apart than both reach from their middles: no need to look closer. */
function areFar(a: PlacedBrace, b: PlacedBrace): boolean {
  const middle = ({ from, to }: PlacedBrace) => ({
    x: (from.point.x + to.point.x) / 2,
    y: (from.point.y + to.point.y) / 2,
  })
  const [p, q] = [middle(a), middle(b)]
  const reachMm = (a.lengthMm + b.lengthMm + a.plan.widthMm + b.plan.widthMm) / 2
  return Math.hypot(q.x - p.x, q.y - p.y) > reachMm
}

/**
 * Where the lines of two braces of one plate cross, and which stand in each other's place: whose footprints overlap although neither
 * stops at the other, and that are not both lapped where they cross. Numbers count from 1. Source: derived.
 */
export function crossBraces(placed: readonly PlacedBrace[]): {
  readonly crossings: BraceCrossingRow[]
  readonly collisions: BraceCollision[]
} {
  const crossings: BraceCrossingRow[] = []
  const collisions: BraceCollision[] = []
  placed.forEach((a, i) => {
    for (let j = i + 1; j < placed.length; j++) {
      const b = placed[j]!
      if (a.plan.plate !== b.plan.plate || areFar(a, b) || stopAtEachOther(a, i, b, j)) continue
      const found = crossing(a, b)
      const sine = Math.abs(a.way.x * b.way.y - a.way.y * b.way.x)
      const isLapped = found !== null && a.plan.lapped && b.plan.lapped
      if (found !== null)
        crossings.push({
          number: i + 1,
          otherNumber: j + 1,
          xMm: a.from.point.x + found.alongMm * a.way.x,
          acrossMm: a.from.point.y + found.alongMm * a.way.y,
          ...found,
          angleRad: Math.acos(Math.min(Math.abs(a.way.x * b.way.x + a.way.y * b.way.y), 1)),
          lapMm: isLapped
            ? Math.min(placedHeightMm(a, found.alongMm), placedHeightMm(b, found.otherAlongMm)) / 2
            : 'none',
          underNumber: isLapped ? j + 1 : 'none',
          notchMm: isLapped ? notchMm(b, a, sine) : 'none',
          otherNotchMm: isLapped ? notchMm(a, b, sine) : 'none',
        })
      if (isLapped) continue
      const byMm = overlapMm(a.corners, b.corners)
      if (byMm <= APART_MM) continue
      const isCrossing = found !== null && sine > CROSSES
      collisions.push({
        number: i + 1,
        otherNumber: j + 1,
        byMm: isCrossing ? notchMm(b, a, sine) : byMm,
        crossXMm: isCrossing ? a.from.point.x + found.alongMm * a.way.x : null,
      })
    }
  })
  return { crossings, collisions }
}
