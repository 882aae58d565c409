import clipping from 'polygon-clipping'

export interface Dot {
  readonly x: number
  readonly y: number
}
export const ringOf = (dots: readonly Dot[]): [number, number][] => dots.map(({ x, y }) => [x, y])

/** Area two outlines share, by a general library of polygons and the shoelace. */
export function sharedMm2(a: readonly Dot[], b: readonly Dot[]): number {
  return clipping
    .intersection([ringOf(a)], [ringOf(b)])
    .reduce(
      (sum, polygon) =>
        sum + polygon.reduce((area, ring, i) => area + (i === 0 ? 1 : -1) * Math.abs(shoelace(ring)), 0),
      0,
    )
}

const shoelace = (ring: readonly (readonly [number, number])[]): number =>
  ring.reduce((sum, [x, y], i) => {
    const [u, v] = ring[(i + 1) % ring.length]!
    return sum + (x * v - u * y) / 2
  }, 0)

/** Parts of a line within an outline: the library clips a strip 2 micrometres wide; ends of the longest part, along the line from `from`. */
export function longestWithin(outline: readonly Dot[], from: Dot, way: Dot): { startMm: number; endMm: number } {
  const [reach, half] = [2000, 1e-6]
  const strip = [
    [-reach, -half],
    [reach, -half],
    [reach, half],
    [-reach, half],
  ].map(([u, v]) => ({ x: from.x + u! * way.x - v! * way.y, y: from.y + u! * way.y + v! * way.x }))
  const parts = clipping.intersection([ringOf(outline)], [ringOf(strip)]).map(([ring]) => {
    const along = ring!.map(([x, y]) => (x - from.x) * way.x + (y - from.y) * way.y)
    return { startMm: Math.min(...along), endMm: Math.max(...along) }
  })
  return parts.reduce((best, part) => (part.endMm - part.startMm > best.endMm - best.startMm ? part : best))
}

/** The inner face of a traced half: every dot moved inward square to its neighbours. */
export function movedInward(dots: readonly Dot[], byMm: number): Dot[] {
  return dots.slice(1, -1).map((dot, i) => {
    const [a, b] = [dots[i]!, dots[i + 2]!]
    const size = Math.hypot(b.x - a.x, b.y - a.y)
    return { x: dot.x + (byMm * (b.y - a.y)) / size, y: dot.y - (byMm * (b.x - a.x)) / size }
  })
}
