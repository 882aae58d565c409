import type { OutlinePiece } from '../../src/core/plan.ts'

/**
 * A half outline traced the other way round, sharing no code with the core: every arc by its centre and the angle of its radius,
 * corner to corner, as with a compass on paper. Points at most `stepMm` apart.
 */
export function traceChain(pieces: readonly OutlinePiece[], stepMm: number): { x: number; y: number }[] {
  const points = [{ x: 0, y: 0 }]
  // Direction of travel as a unit vector; the outline leaves the tail square to the centreline.
  let way = { x: 0, y: 1 }
  for (const piece of pieces) {
    const from = points.at(-1)!
    if (piece.kind === 'straight') {
      const length = piece.lengthMm!
      const count = Math.max(1, Math.ceil(length / stepMm))
      for (let i = 1; i <= count; i++) {
        const part = (length * i) / count
        points.push({ x: from.x + way.x * part, y: from.y + way.y * part })
      }
      continue
    }
    // Convex: the centre lies to the right of the way and the radius turns clockwise.
    const side = piece.bend === 'convex' ? 1 : -1
    const radius = piece.radiusMm!
    const centre = { x: from.x + side * radius * way.y, y: from.y - side * radius * way.x }
    const spoke = { x: from.x - centre.x, y: from.y - centre.y }
    const sweep = -side * piece.sweepDeg! * (Math.PI / 180)
    const count = Math.max(1, Math.ceil((radius * Math.abs(sweep)) / stepMm))
    for (let i = 1; i <= count; i++) {
      const [c, s] = [Math.cos((sweep * i) / count), Math.sin((sweep * i) / count)]
      points.push({ x: centre.x + spoke.x * c - spoke.y * s, y: centre.y + spoke.x * s + spoke.y * c })
    }
    const [c, s] = [Math.cos(sweep), Math.sin(sweep)]
    way = { x: way.x * c - way.y * s, y: way.x * s + way.y * c }
  }
  return points
}

export function polylineLengthMm(points: readonly { x: number; y: number }[]): number {
  let length = 0
  for (let i = 1; i < points.length; i++)
    length += Math.hypot(points[i]!.x - points[i - 1]!.x, points[i]!.y - points[i - 1]!.y)
  return length
}

/** Area between a half outline and the centreline, by the shoelace formula. */
export function shoelaceMm2(points: readonly { x: number; y: number }[]): number {
  let twice = 0
  points.forEach((a, i) => {
    const b = points[(i + 1) % points.length]!
    twice += a.x * b.y - b.x * a.y
  })
  return Math.abs(twice) / 2
}
