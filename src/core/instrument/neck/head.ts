import type { HeadPlan } from '../../neckPlan.ts'
import { radFromDeg } from '../../units/angle.ts'
import type { StringLine } from './strings.ts'

export interface HeadNumbers {
  readonly angleRad: number
  readonly lengthMm: number
  readonly thicknessMm: number
  /** Neck wood between the veneers. */
  readonly coreMm: number
  /** How far the head's end lies under the line of the neck's face. */
  readonly dropMm: number
  readonly holeMm: number
}

/** A post, with the string that goes to it: strings from the bass side to the nearest post first, on either side. */
export interface TunerRow {
  /** Along the head's face from the nut, and across with the bass side negative. */
  readonly fromNutMm: number
  readonly acrossMm: number
  /** The string's angle at the nut, sideways; positive where it goes outward. */
  readonly sideRad: number
  /** And downward, over the nut. */
  readonly overNutRad: number
}

export interface HeadSite {
  readonly lines: readonly StringLine[]
  /** Bottom of the nut's slots over the face the head leaves from: board and crown and nut height, less the veneer. */
  readonly nutOverFaceMm: readonly number[]
}

/**
 * Head and veneers, mm and rad.
 *
 *   core = thickness - both veneers, under 0 where they are thicker;   drop = length x sin(head angle)
 *
 * Derived.
 */
export function measureHead(head: HeadPlan): HeadNumbers {
  const angleRad = radFromDeg(head.angleDeg)
  return {
    angleRad,
    lengthMm: head.lengthMm,
    thicknessMm: head.thicknessMm,
    coreMm: head.thicknessMm - head.faceVeneerMm - head.backVeneerMm,
    dropMm: head.lengthMm * Math.sin(angleRad),
    holeMm: head.holeMm,
  }
}

/** A post: which it is from the nut, of how many on its side, and on which side. */
interface Post {
  readonly place: number
  readonly side: -1 | 1
}

/** Which post each string goes to: half of the strings to either side (the odd one to the bass), the outermost to the nearest post. */
function postsOf(count: number, tuners: HeadPlan['tuners']): readonly Post[] {
  const bassCount = tuners === 'bassSide' ? count : Math.ceil(count / 2)
  return Array.from({ length: count }, (_, i) =>
    i < bassCount ? { place: i, side: -1 } : { place: count - 1 - i, side: 1 },
  )
}

/**
 * One row for each string, in the order of the strings; mm and rad.
 *
 *   side = atan((w - y) / d) - atan((y - y_saddle) / S), outward      w across where the string meets the post, y at the nut, d along the head
 *   over the nut = t + atan((h cos t - p) / (d + h sin t))            t head angle, h bottom of the slot over the face at the nut, p where the post is met
 *
 * against the neck's face: h stands square to that, p to the head's, so the slot lies h cos t over the head's face and h sin t behind the nut.
 * A string meets the post on its inner flank. A way of less than 1 mm counts as 1. Derived.
 */
export function tunerRows(head: HeadPlan, { lines, nutOverFaceMm }: HeadSite): readonly TunerRow[] {
  const angleRad = radFromDeg(head.angleDeg)
  const posts = postsOf(lines.length, head.tuners)
  const most = Math.max(...posts.map(({ place }) => place), 1)
  return lines.map((line, i): TunerRow => {
    const { place, side } = posts[i]!
    const fromNutMm = head.firstPostMm + place * head.postSpacingMm
    const outMm = head.firstAcrossMm + ((head.lastAcrossMm - head.firstAcrossMm) * place) / most
    const meetsMm = side * Math.max(outMm - head.postMm / 2, 0)
    const alongMm = Math.max(fromNutMm, 1)
    const onBoard = (line.nutAcrossMm - line.saddleAcrossMm) / Math.max(line.scaleMm, 1)
    const slotMm = nutOverFaceMm[i] ?? 0
    const slotAlongMm = Math.max(fromNutMm + slotMm * Math.sin(angleRad), 1)
    const outward = Math.atan((meetsMm - line.nutAcrossMm) / alongMm) - Math.atan(onBoard)
    return {
      fromNutMm,
      acrossMm: side * outMm,
      sideRad: side * outward,
      overNutRad: angleRad + Math.atan((slotMm * Math.cos(angleRad) - head.stringOverFaceMm) / slotAlongMm),
    }
  })
}
