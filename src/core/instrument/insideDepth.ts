import type { Surface } from '../geometry/surface.ts'

const SAMPLES = 120

/**
 * Where on the centreline two surfaces stand furthest apart, and how far: sampled, then refined within the best sample's neighbours
 * by a bounded golden section to 1e-9 of the body length.
 */
export function insideDepth(upper: Surface, lower: Surface, lengthMm: number): { depthMm: number; atMm: number } {
  const depth = (x: number) => upper.heightMm(x, 0) - lower.heightMm(x, 0)
  let best = 0
  for (let i = 1; i <= SAMPLES; i++)
    if (depth((lengthMm * i) / SAMPLES) > depth((lengthMm * best) / SAMPLES) + 1e-12) best = i
  const golden = (Math.sqrt(5) - 1) / 2
  let a = (lengthMm * Math.max(best - 1, 0)) / SAMPLES
  let b = (lengthMm * Math.min(best + 1, SAMPLES)) / SAMPLES
  for (let count = 0; count < 50; count++) {
    const c = b - golden * (b - a)
    const d = a + golden * (b - a)
    if (depth(c) >= depth(d)) b = d
    else a = c
  }
  const atMm = [a, (a + b) / 2, b, 0, lengthMm].reduce((x, y) => (depth(y) > depth(x) + 1e-12 ? y : x))
  return { depthMm: depth(atMm), atMm }
}
