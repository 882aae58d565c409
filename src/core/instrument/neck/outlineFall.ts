import { type Curve, curveAt } from '../../geometry/curve.ts'

const STEPS = 50

/**
 * How far a half outline falls away from the plane of the neck joint at a distance from the centreline, mm: halving along it between
 * `fromMm`, its widest place, and the neck. Beyond that half-width it is what it is there. Derived.
 */
export function outlineFallMm(half: Curve, fromMm: number, acrossMm: number): number {
  let [low, high] = [fromMm, half.lengthMm]
  for (let step = 0; step < STEPS; step++) {
    const middle = (low + high) / 2
    if (curveAt(half, middle).point.y > acrossMm) low = middle
    else high = middle
  }
  return curveAt(half, half.lengthMm).point.x - curveAt(half, high).point.x
}
