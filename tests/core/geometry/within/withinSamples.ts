import type { Curve } from '../../../../src/core/geometry/curve.ts'
import { curveAt } from '../../../../src/core/geometry/curve.ts'
import type { Point } from '../../../../src/core/geometry/point.ts'
import type { WithinAim } from '../../../../src/core/geometry/within/curveWithin.ts'
import { orderReadings } from '../../../../src/core/geometry/within/orderReadings.ts'

/** Numbers spread evenly over -1..1, the same for the same seed: a linear congruence (Numerical Recipes' constants, from memory). */
export function seededErrors(seed: number): () => number {
  let state = (seed * 2654435761) >>> 0
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return (state / 2 ** 32) * 2 - 1
  }
}

/** Half an outline asked for by its readings alone. */
export const halfAim = (
  readings: readonly Point[],
  lengthMm: number,
  flatMm: number,
  withinMm: number,
  tailCurvaturePerMm: number | null = null,
): WithinAim => ({
  start: { point: { x: 0, y: 0 }, headingRad: Math.PI / 2, curvaturePerMm: tailCurvaturePerMm },
  end: { point: { x: lengthMm, y: flatMm }, headingRad: -Math.PI / 2, curvaturePerMm: null },
  readings,
  withinMm,
  shape: 'guitar',
})

/** Where a traced outline, tail to neck, is first crossed by a line at this x, or at this half-width from the one end or the other. */
const heightAt = (trace: readonly Point[], x: number): number => between(trace, (p) => p.x - x).y
const tailAt = (trace: readonly Point[], y: number): number => between(trace, (p) => p.y - y).x
const neckAt = (trace: readonly Point[], y: number): number => between([...trace].reverse(), (p) => p.y - y).x

function between(trace: readonly Point[], of: (point: Point) => number): Point {
  for (let i = 1; i < trace.length; i++) {
    const [a, b] = [trace[i - 1]!, trace[i]!]
    const [from, to] = [of(a), of(b)]
    if (from <= 0 && to > 0) {
      const part = from / (from - to)
      return { x: a.x + part * (b.x - a.x), y: a.y + part * (b.y - a.y) }
    }
  }
  throw new Error('never crossed')
}

/** Half-widths every `stepMm`, and readings across both ends, off a traced outline; each passed through `misread`. */
export function readTrace(
  trace: readonly Point[],
  stepMm: number,
  tailHalfWidths: readonly number[],
  neckHalfWidths: readonly number[],
  neckFlatHalfWidthMm: number,
  misread: (valueMm: number) => number,
): Point[] {
  const lengthMm = trace.at(-1)!.x
  const rows: Point[] = []
  for (let x = stepMm; x < lengthMm - 0.5; x += stepMm) rows.push({ x, y: misread(heightAt(trace, x)) })
  const tailRows = tailHalfWidths.map((y) => ({ x: misread(tailAt(trace, y)), y }))
  const neckRows = neckHalfWidths.map((y) => ({ x: misread(neckAt(trace, y)), y }))
  return orderReadings({ rows, tailRows, neckRows, lengthMm, neckFlatHalfWidthMm })
}

export const sampleCurve = (curve: Curve, count: number): Point[] =>
  Array.from({ length: count + 1 }, (_, i) => curveAt(curve, (curve.lengthMm * i) / count).point)

/** The furthest any point of the one polyline lies from the other. */
export function furthestMm(points: readonly Point[], line: readonly Point[]): number {
  let most = 0
  for (const p of points) {
    let least = Number.POSITIVE_INFINITY
    for (let i = 1; i < line.length; i++) {
      const [a, b] = [line[i - 1]!, line[i]!]
      const [ux, uy] = [b.x - a.x, b.y - a.y]
      const part = Math.min(Math.max(((p.x - a.x) * ux + (p.y - a.y) * uy) / (ux * ux + uy * uy || 1), 0), 1)
      least = Math.min(least, Math.hypot(p.x - a.x - part * ux, p.y - a.y - part * uy))
    }
    most = Math.max(most, least)
  }
  return most
}

/** How often curvature changes its sign on the way. */
export function countInflections(curve: Curve): number {
  const signs = curve.pieces
    .flatMap((piece) => [piece.startCurvaturePerMm, piece.endCurvaturePerMm])
    .map(Math.sign)
    .filter((sign) => sign !== 0)
  return signs.filter((sign, i) => i > 0 && sign !== signs[i - 1]).length
}

/** How often curvature changes between rising and falling on the way. */
export function countTurns(curve: Curve): number {
  const ways = curve.pieces
    .map((piece) => piece.endCurvaturePerMm - piece.startCurvaturePerMm)
    .filter((rise) => Math.abs(rise) > 1e-12)
    .map(Math.sign)
  return ways.filter((way, i) => i > 0 && way !== ways[i - 1]).length + (ways[0] === -1 ? 1 : 0)
}

/** The integral of (dk/ds)^2 ds, 1/mm3. */
export const variationPerMm3 = (curve: Curve): number =>
  curve.pieces.reduce(
    (sum, piece) => sum + (piece.endCurvaturePerMm - piece.startCurvaturePerMm) ** 2 / piece.lengthMm,
    0,
  )
