import type { BraceEndPlan, BracePlan } from '../../boxPlan.ts'
import type { Point } from '../../geometry/point.ts'
import { type InnerRim, isInsideRim } from './innerRim.ts'
import { justInside, nearestRim } from './nearestRim.ts'
import type { PlacedBrace } from './placedBrace.ts'

interface Reach {
  readonly minMm: number
  readonly maxMm: number
}

export type BraceEndName = 'from' | 'to'
/** What is entered anew of either end. */
export type MovedEnds = Readonly<Record<BraceEndName, Partial<BraceEndPlan>>>

/** A hand places no finer than this; what it leaves where it is may be entered finer. */
const GRAIN_MM = 0.5
const FINE_MM = 0.1
/** A point that is this near to where the end comes out holds the end there: at the rim, and at a brace, half a brace away at the least. */
const NEAR_MM = { rim: 1, brace: 12 } as const

const held = (mm: number, { minMm, maxMm }: Reach, grainMm: number): number =>
  // Divided by a whole number, so that 0.1 stays 0.1.
  Math.min(Math.max(Math.round(mm / grainMm) / Math.round(1 / grainMm), minMm), maxMm) + 0

/**
 * What is entered for a brace of which one end was moved to a place of the body, mm. The moved end: to the half millimetre, held to what may
 * be entered; beyond the inner face of the sides, the nearest place on it; an end that is to be at the rim at a distance from the tail keeps
 * to the rim. The other end stays where it is: where it was entered by a point further in, about which the brace would turn, its own place
 * is entered instead. `placed` is the copy that was moved: of a twin, what is entered is the other one's mirror image. Source: derived.
 */
export function movedEnd(
  brace: BracePlan,
  placed: PlacedBrace,
  end: BraceEndName,
  to: Point,
  rim: InnerRim,
  reach: { readonly xMm: Reach; readonly yMm: Reach },
): MovedEnds {
  const other = end === 'from' ? 'to' : 'from'
  const flip = placed.plan === brace ? 1 : -1
  const entered = ({ x, y }: Point, grainMm: number) => ({
    xMm: held(x, reach.xMm, grainMm),
    yMm: held(flip * y, reach.yMm, grainMm),
  })
  const isOut = !isInsideRim(rim, to)
  const place = isOut ? nearestRim(rim, to).point : to
  const moved = (): Partial<BraceEndPlan> => {
    if (brace[end].stops === 'rimAt') {
      const { xMm, yMm } = entered(place, GRAIN_MM)
      return { xMm, side: yMm < 0 ? 'bass' : 'treble' }
    }
    return entered(isOut ? justInside(rim, place, placed[other].point, GRAIN_MM) : place, GRAIN_MM)
  }
  const left = (): Partial<BraceEndPlan> => {
    const { stops, xMm, yMm } = placed.plan[other]
    const { at, point } = placed[other]
    const isTurnedAbout = (stops === 'rimBeyond' && at === 'rim') || (stops === 'brace' && at === 'brace')
    if (!isTurnedAbout || Math.hypot(point.x - xMm, point.y - yMm) <= NEAR_MM[at]) return {}
    return entered(at === 'rim' ? justInside(rim, point, placed[end].point, FINE_MM) : point, FINE_MM)
  }
  return end === 'from' ? { from: moved(), to: left() } : { from: left(), to: moved() }
}
