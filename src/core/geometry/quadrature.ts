import type { Point } from './point.ts'

// Gauss-Legendre rule of ten points on [-1, 1]: exact for polynomials up to degree 19.
// Source: Abramowitz & Stegun, Handbook of Mathematical Functions, table 25.4 (from memory; the test checks the rule against polynomials).
const NODES = [0.1488743389816312, 0.4333953941292472, 0.6794095682990244, 0.8650633666889845, 0.9739065285171717]
const WEIGHTS = [0.2955242247147529, 0.2692667193099963, 0.219086362515982, 0.1494513491505806, 0.0666713443086881]

/** Integral of f over [from, to] by one ten-point rule: full double precision for the smooth, slowly turning pieces used here. */
export function integrate(f: (t: number) => number, from: number, to: number): number {
  const middle = (from + to) / 2
  const half = (to - from) / 2
  let sum = 0
  for (let i = 0; i < NODES.length; i++) {
    const step = half * NODES[i]!
    sum += WEIGHTS[i]! * (f(middle - step) + f(middle + step))
  }
  return sum * half
}

/** Integral of (cos, sin) of an angle over [from, to], by the same rule: the chord of a stretch that heads along it. */
export function integrateHeading(headingRad: (t: number) => number, from: number, to: number): Point {
  const middle = (from + to) / 2
  const half = (to - from) / 2
  let x = 0
  let y = 0
  for (let i = 0; i < NODES.length; i++) {
    const step = half * NODES[i]!
    const [before, after] = [headingRad(middle - step), headingRad(middle + step)]
    x += WEIGHTS[i]! * (Math.cos(before) + Math.cos(after))
    y += WEIGHTS[i]! * (Math.sin(before) + Math.sin(after))
  }
  return { x: x * half, y: y * half }
}

/** Gauss-Legendre's two and three points on [0, 1], exact up to degrees 3 and 5: for stretches that turn little. Source: closed form. */
export const TWO_POINTS = [
  { at: (1 - Math.sqrt(1 / 3)) / 2, weight: 1 / 2 },
  { at: (1 + Math.sqrt(1 / 3)) / 2, weight: 1 / 2 },
] as const
export const THREE_POINTS = [
  { at: (1 - Math.sqrt(3 / 5)) / 2, weight: 5 / 18 },
  { at: 1 / 2, weight: 4 / 9 },
  { at: (1 + Math.sqrt(3 / 5)) / 2, weight: 5 / 18 },
] as const
