import type { Figure } from '../figure.ts'
import { lowerOf, plane, sphere, splitAtX, type Surface } from '../geometry/surface.ts'
import type { TopPlan } from '../plan.ts'

export interface TopNumbers {
  readonly form: TopPlan['form']
  readonly radiusMm: Figure
  /** Start of the flat of the upper bout from the tail, its fall toward the neck, and the rim edge at the neck once planed. */
  readonly flatFromMm: Figure
  readonly flatSlopeRad: Figure
  readonly neckEdgeMm: number
  readonly riseAtSaddleMm: Figure
  /** Height of the plate over the rim plane on the centreline at the saddle line. */
  readonly heightAtSaddleMm: number
  /** Gap under a straightedge from rim to rim across the dished top, and along the centreline. */
  readonly gapAcrossLowerBoutMm: Figure
  readonly gapAcrossWaistMm: Figure
  readonly gapAcrossUpperBoutMm: Figure
  readonly gapAlongMm: number
}

export interface Top {
  readonly form: TopPlan['form']
  readonly radiusMm: number | 'flat'
  /** What the rim and the blocks are brought to. */
  readonly rim: Surface
  /** What the plate itself follows between the rims. */
  readonly plate: Surface
  /** The dish before the upper bout is planed: the same as the rim where nothing is planed. */
  readonly dish: Surface
  readonly flatFromMm: Figure
  readonly flatSlopeRad: Figure
  readonly riseAtSaddleMm: Figure
  /** Of a flat upper bout only. */
  readonly flat: FlatStart | null
}

/** What the top needs to know of the body. */
export interface TopSite {
  readonly lengthMm: number
  readonly saddleLineMm: number
  readonly halfWidthAtMm: (xMm: number) => number
  /** How steeply a flat of the upper bout falls toward the neck, once it is known where it begins. */
  readonly flatSlopeRad: (flat: FlatStart) => number
}

/** Where the flat of an upper bout begins: from the tail, the height of the rim's two edges there, and the dish it is planed from. */
export interface FlatStart {
  readonly fromMm: number
  readonly startMm: number
  readonly dish: Surface
}

/**
 * The four forms of a top.
 *   sphere         through (0,0,0) and (L,0,0), bulging up
 *   flatUpperBout  the same, then planed from x_f to one flat through the two rim edges at x_f, falling by the slope toward the neck;
 *                  beyond x_f the edge is the lower of sphere and flat
 *   flatRim        rim edge at 0; the plate a cap of the dish radius whose crown stands the entered rise over the rim at the saddle line
 *   flat           all at 0
 * Source: derived.
 */
export function makeTop(plan: TopPlan, site: TopSite): Top {
  const level = plane(0, 0)
  const none = { flatFromMm: 'none', flatSlopeRad: 'none', riseAtSaddleMm: 'none', flat: null } as const
  if (plan.form === 'flat') return { form: 'flat', radiusMm: 'flat', rim: level, plate: level, dish: level, ...none }
  const { radiusMm } = plan
  if (plan.form === 'flatRim') {
    const riseMm = plan.riseAtSaddleMm
    const cap = sphere(radiusMm, site.saddleLineMm, { x: site.saddleLineMm, z: riseMm }, 'up')
    const plate = {
      heightMm: (x: number, y: number) => Math.max(0, cap.heightMm(x, y)),
      slope: (x: number, y: number) => (cap.heightMm(x, y) > 0 ? cap.slope(x, y) : { x: 0, y: 0 }),
    }
    return { form: 'flatRim', radiusMm, rim: level, plate, dish: level, ...none, riseAtSaddleMm: riseMm }
  }
  const dish = sphere(radiusMm, site.lengthMm / 2, { x: 0, z: 0 }, 'up')
  if (plan.form === 'sphere') return { form: 'sphere', radiusMm, rim: dish, plate: dish, dish, ...none }
  const fromMm = Math.min(Math.max(plan.flatFromMm, 0), site.lengthMm)
  const startMm = dish.heightMm(fromMm, site.halfWidthAtMm(fromMm))
  const slopeRad = site.flatSlopeRad({ fromMm, startMm, dish })
  const flat = plane(startMm + fromMm * Math.tan(slopeRad), -Math.tan(slopeRad))
  return {
    form: 'flatUpperBout',
    radiusMm,
    rim: splitAtX(fromMm, dish, lowerOf(dish, flat)),
    plate: splitAtX(fromMm, dish, lowerOf(dish, flat)),
    dish,
    ...none,
    flatFromMm: fromMm,
    flatSlopeRad: slopeRad,
    flat: { fromMm, startMm, dish },
  }
}
