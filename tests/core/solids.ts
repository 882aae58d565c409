import type { Plan } from '../../src/core/plan.ts'

/**
 * Heights of top and back by another way than the core's closed forms: a vertical ray through each place is halved until it meets the
 * implicit surface |p - centre| = R, or the plane through three points of the planed flat.
 */
export interface March {
  readonly topMm: (x: number, y: number) => number
  readonly backMm: (x: number, y: number) => number
}

type Inside = (x: number, y: number, z: number) => boolean

/** The highest (or lowest) z of a solid on the vertical line through (x, y). */
function meet(inside: Inside, x: number, y: number, from: number, to: number): number {
  let [out, within] = [from, to]
  for (let i = 0; i < 200 && Math.abs(out - within) > 1e-12; i++) {
    const middle = (out + within) / 2
    if (inside(x, y, middle)) within = middle
    else out = middle
  }
  return (out + within) / 2
}

/** The centre of the circle of this radius through two points of the plane y = 0, on the side asked for: by halving, not by formula. */
function centreThrough(
  a: { x: number; z: number },
  b: { x: number; z: number },
  radius: number,
  side: 'under' | 'over',
): { x: number; z: number } {
  const middle = { x: (a.x + b.x) / 2, z: (a.z + b.z) / 2 }
  const along = { x: b.x - a.x, z: b.z - a.z }
  const size = Math.hypot(along.x, along.z)
  const sign = side === 'under' ? -1 : 1
  const square = { x: (-sign * along.z) / size, z: (sign * along.x) / size }
  let [near, far] = [0, radius]
  for (let i = 0; i < 200; i++) {
    const t = (near + far) / 2
    const reach = Math.hypot(middle.x + square.x * t - a.x, middle.z + square.z * t - a.z)
    if (reach < radius) near = t
    else far = t
  }
  return { x: middle.x + square.x * near, z: middle.z + square.z * near }
}

const ball =
  (centre: { x: number; z: number }, radius: number): Inside =>
  (x, y, z) =>
    Math.hypot(x - centre.x, y, z - centre.z) <= radius

/** The domes of a plan with a spherical back and a spherical or planed top. `halfWidthAtMm`: of the outline, where the flat begins. */
export function marchSolids(plan: Plan, lengthMm: number, halfWidthAtMm: number): March {
  const topCentre = centreThrough({ x: 0, z: 0 }, { x: lengthMm, z: 0 }, plan.top.radiusMm, 'under')
  const dish = ball(topCentre, plan.top.radiusMm)
  const dishMm = (x: number, y: number) => meet(dish, x, y, 400, topCentre.z)
  const backCentre = centreThrough(
    { x: 0, z: -plan.rim.depthAtTailMm },
    { x: lengthMm, z: -plan.rim.depthAtNeckMm },
    plan.back.radiusMm,
    'over',
  )
  const backMm = (x: number, y: number) => meet(ball(backCentre, plan.back.radiusMm), x, y, -1000, backCentre.z)
  if (plan.top.form !== 'flatUpperBout') return { topMm: dishMm, backMm }
  const from = plan.top.flatFromMm
  const startMm = dishMm(from, halfWidthAtMm)
  const endMm = startMm - (lengthMm - from) * Math.tan((plan.top.flatSlopeDeg * Math.PI) / 180)
  const flatMm = (x: number) => startMm + ((endMm - startMm) * (x - from)) / (lengthMm - from)
  return { topMm: (x, y) => (x < from ? dishMm(x, y) : Math.min(dishMm(x, y), flatMm(x))), backMm }
}
