import type { Point } from '../../src/core/geometry/point.ts'

/**
 * Points along the `d` attribute of a path, read from its text alone: lines, circular arcs by the centre formulae of SVG 1.1, appendix
 * F.6.5, cubics by de Casteljau. Written for the tests and independent of what writes the text.
 */
export function pointsAlong(d: string, perStep = 16): Point[] {
  const points: Point[] = []
  let at: Point = { x: 0, y: 0 }
  let start = at
  for (const [, letter, rest] of d.matchAll(/([MLACZ])([^MLACZ]*)/g)) {
    const n = (rest ?? '')
      .trim()
      .split(/[\s,]+/)
      .filter((text) => text !== '')
      .map(Number)
    const end = letter === 'Z' ? start : { x: n.at(-2)!, y: n.at(-1)! }
    if (letter === 'M') start = end
    for (let i = 1; i <= perStep; i++) {
      const t = i / perStep
      if (letter === 'M') continue
      else if (letter === 'A') points.push(onArc(at, n[0]!, n[3] === 1, n[4] === 1, end, t))
      else if (letter === 'C') points.push(onCubic([at, { x: n[0]!, y: n[1]! }, { x: n[2]!, y: n[3]! }, end], t))
      else points.push(mix(at, end, t))
    }
    at = end
  }
  return points
}

const mix = (a: Point, b: Point, t: number): Point => ({ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t })

function onCubic(handles: readonly Point[], t: number): Point {
  let level = [...handles]
  while (level.length > 1) level = level.slice(1).map((point, i) => mix(level[i]!, point, t))
  return level[0]!
}

function onArc(p1: Point, r: number, large: boolean, sweep: boolean, p2: Point, t: number): Point {
  const x = (p1.x - p2.x) / 2
  const y = (p1.y - p2.y) / 2
  const dd = x * x + y * y
  const root = (large === sweep ? -1 : 1) * Math.sqrt(Math.max(r * r - dd, 0) / dd)
  const cx = root * y + (p1.x + p2.x) / 2
  const cy = -root * x + (p1.y + p2.y) / 2
  const from = Math.atan2(p1.y - cy, p1.x - cx)
  let turn = Math.atan2(p2.y - cy, p2.x - cx) - from
  if (sweep && turn < 0) turn += 2 * Math.PI
  if (!sweep && turn > 0) turn -= 2 * Math.PI
  return { x: cx + r * Math.cos(from + turn * t), y: cy + r * Math.sin(from + turn * t) }
}
