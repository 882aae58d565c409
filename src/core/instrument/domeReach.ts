import { type Curve, curveAt } from '../geometry/curve.ts'
import type { Back } from './back.ts'

const SAMPLES = 40

/** How far the rim reaches from the axis of each dome, in plan, at most: a radius must be well above it. Sampled; only findings hang on it. */
export function domeReach(
  halves: readonly Curve[],
  back: Back,
  lengthMm: number,
  taperMm: number,
): { topMm: number; backMm: number } {
  let topMm = 0
  let backMm = 0
  for (let i = 0; i < halves.length * (SAMPLES + 1); i++) {
    const half = halves[Math.floor(i / (SAMPLES + 1))]!
    const { x, y } = curveAt(half, (half.lengthMm * (i % (SAMPLES + 1))) / SAMPLES).point
    topMm = Math.max(topMm, Math.hypot(x - lengthMm / 2, y))
    if (back.form === 'across') backMm = Math.max(backMm, Math.abs(y))
    else if (typeof back.axisAtMm === 'number') {
      // Reach from the middle of the chord, since a taper moves the upright axis without tightening the dome.
      const middle = Math.hypot(lengthMm, taperMm) / lengthMm
      backMm = Math.max(backMm, Math.hypot((x - lengthMm / 2) * middle, y))
    }
  }
  return { topMm, backMm }
}
