import { curveAt } from '../geometry/curve.ts'
import type { Halves } from './mouldGap.ts'

const SAMPLES = 400
const STEPS = 60

/**
 * Diameter of the smallest circle with its middle on the centreline that goes round the whole body, mm: what a dish has to be wide
 * enough for. The farthest distance from a place is convex in the place, so halving toward where the farther point lies finds the
 * least. Source: derived.
 */
export function bodySpanMm({ bass, treble, isMirrored }: Halves): number {
  const points = (isMirrored ? [bass] : [bass, treble]).flatMap((half) =>
    Array.from({ length: SAMPLES + 1 }, (_, i) => curveAt(half, (half.lengthMm * i) / SAMPLES).point),
  )
  const farthest = (xMm: number) => {
    let far = { xMm, squareMm2: 0 }
    for (const { x, y } of points) {
      const squareMm2 = (x - xMm) * (x - xMm) + y * y
      if (squareMm2 > far.squareMm2) far = { xMm: x, squareMm2 }
    }
    return far
  }
  let low = Math.min(...points.map(({ x }) => x))
  let high = Math.max(...points.map(({ x }) => x))
  for (let count = 0; count < STEPS; count++) {
    const middle = (low + high) / 2
    if (farthest(middle).xMm > middle) low = middle
    else high = middle
  }
  return 2 * Math.sqrt(farthest((low + high) / 2).squareMm2)
}
