import { type Curve, crossingsOfXMm, curveAt } from '../core/geometry/curve.ts'
import { type Surface, slopeToward } from '../core/geometry/surface.ts'
import type { PathCommand } from './drawing.ts'

/** A straight line heights are drawn about: height at 0 and rise per mm. Only what departs from it is drawn larger. */
export interface Base {
  readonly atZeroMm: number
  readonly rise: number
}
export const LEVEL: Base = { atZeroMm: 0, rise: 0 }

/** A place on the sheet: along, and the height about its base times the exaggeration, y down. */
export const onSheetMm = (base: Base, times: number, alongMm: number, heightMm: number): number => {
  const baseMm = base.atZeroMm + base.rise * alongMm
  return -(baseMm + (heightMm - baseMm) * times)
}

interface Sample {
  readonly along: number
  readonly height: number
  /** How both change per mm of the way. */
  readonly alongRate: number
  readonly heightRate: number
}

/** A curve of heights by cubics that share its ends and slopes. Each stretch between stops is smooth; at a stop it may bend or step. */
export function profileCommands(
  sampleAt: (u: number) => Sample,
  stops: readonly number[],
  longestMm: number,
  base: Base,
  times: number,
): PathCommand[] {
  const commands: PathCommand[] = []
  let last = Number.NaN
  const y = (s: Sample) => onSheetMm(base, times, s.along, s.height)
  for (let i = 1; i < stops.length; i++) {
    const a = stops[i - 1]!
    const b = stops[i]!
    if (b - a < 1e-6) continue
    const nudge = Math.min(1e-7, (b - a) / 1000)
    const parts = Math.min(Math.max(2, Math.ceil((b - a) / longestMm)), 40)
    const samples = Array.from({ length: parts + 1 }, (_, j) => {
      const u = a + ((b - a) * j) / parts
      return sampleAt(j === 0 ? u + nudge : j === parts ? u - nudge : u)
    })
    const first = samples[0]!
    if (!(Math.abs(y(first) - last) < 0.01)) commands.push(['M', first.along, y(first)])
    const third = (b - a) / parts / 3
    for (let j = 1; j <= parts; j++) {
      const p = samples[j - 1]!
      const q = samples[j]!
      const out = { along: p.along + p.alongRate * third, height: p.height + p.heightRate * third }
      const into = { along: q.along - q.alongRate * third, height: q.height - q.heightRate * third }
      commands.push([
        'C',
        out.along,
        onSheetMm(base, times, out.along, out.height),
        into.along,
        onSheetMm(base, times, into.along, into.height),
        q.along,
        y(q),
      ])
    }
    last = y(samples.at(-1)!)
  }
  return commands
}

/** A surface cut along the body at a distance `atYMm` from the centreline. */
export const alongBody =
  (surface: Surface, atYMm: number) =>
  (x: number): Sample => ({
    along: x,
    height: surface.heightMm(x, atYMm),
    alongRate: 1,
    heightRate: surface.slope(x, atYMm).x,
  })

/** A surface cut across the body at a place along it. */
export const acrossBody =
  (surface: Surface, atXMm: number) =>
  (y: number): Sample => ({
    along: y,
    height: surface.heightMm(atXMm, y),
    alongRate: 1,
    heightRate: surface.slope(atXMm, y).y,
  })

/** The edge where a surface meets the side, seen square to the centreline, by arc length. */
export const edgeFromSide =
  (half: Curve, surface: Surface) =>
  (s: number): Sample => {
    const { point, headingRad } = curveAt(half, s)
    const way = { x: Math.cos(headingRad), y: Math.sin(headingRad) }
    return {
      along: point.x,
      height: surface.heightMm(point.x, point.y),
      alongRate: way.x,
      heightRate: slopeToward(surface, point, way),
    }
  }

/** Where an edge may bend: the joints of the outline and the given places along the body. */
export function edgeStops(half: Curve, bendsAtMm: readonly number[]): number[] {
  const stops = [...half.startsMm, ...bendsAtMm.flatMap((x) => crossingsOfXMm(half, x))]
  return [...new Set(stops)].sort((a, b) => a - b)
}
