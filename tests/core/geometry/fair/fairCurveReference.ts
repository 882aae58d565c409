// The same aim as fairCurve by plain means that share nothing with it: several hundred straight steps, their slopes of curvature as
// unknowns, an augmented Lagrangian for the places and projected gradient steps of Barzilai and Borwein length for the signs
// (Birgin, Martinez & Raydan 2000, Nonmonotone spectral projected gradient methods; from memory).
import type { FairCurveAim } from '../../../../src/core/geometry/fair/fairCurve.ts'
import type { Point } from '../../../../src/core/geometry/point.ts'

export interface FairPolyline {
  readonly points: readonly Point[]
  readonly curvaturesPerMm: readonly number[]
  readonly missMm: number
  /** Integral of (dk/ds)^2 ds, times length^3. */
  readonly variation: number
}

export interface Patience {
  /** Weight of squared misses: above the pull of the points, well below what makes the steps tiny. */
  readonly stiffness: number
  readonly rounds: number
  readonly stepsPerRound: number
}

export const PATIENT: Patience = { stiffness: 1e5, rounds: 40, stepsPerRound: 2000 }
/** For curves held hard by their points. */
export const MOST_PATIENT: Patience = { stiffness: 1e6, rounds: 60, stepsPerRound: 3000 }

/** Fair polyline of about `count` steps; `fourPhases` false lets curvature turn as often as it likes. */
export function fairPolyline(
  aim: FairCurveAim,
  count: number,
  fourPhases: boolean,
  { stiffness: rho, rounds, stepsPerRound }: Patience,
): FairPolyline {
  const size = aim.lengthMm
  const stops = [...aim.through, { x: size, y: aim.neckFlatHalfWidthMm }].map((p) => [p.x / size, p.y / size] as const)
  const chords = stops.map((p, j) => Math.hypot(p[0] - (stops[j - 1]?.[0] ?? 0), p[1] - (stops[j - 1]?.[1] ?? 0)))
  const whole = chords.reduce((a, b) => a + b, 0)
  const steps = chords.map((chord) => Math.round((count * chord) / whole))
  const spanOf = steps.flatMap((n, j) => Array.from({ length: n }, () => j))
  const n = spanOf.length
  const tail = aim.tailCurvaturePerMm === null ? null : aim.tailCurvaturePerMm * size
  const neck = aim.neckCurvaturePerMm === null ? null : aim.neckCurvaturePerMm * size

  // x = slopes of curvature times ROOT, then span lengths / SPAN, then curvature at the tail.
  const ROOT = Math.sqrt(whole / n)
  const SPAN = 0.1
  const x = new Float64Array(n + steps.length + 1)
  chords.forEach((chord, j) => {
    x[n + j] = (1.15 * chord) / SPAN
  })
  x[n + steps.length] = tail ?? 1.5
  // Turns of curvature, in steps: first near the widest place, the waist and the upper bout.
  const ends = steps.map((_, j) => steps.slice(0, j + 1).reduce((a, b) => a + b, 0))
  const turns = ends.length > 3 ? [ends[0]!, ends[1]!, ends[2]!] : [ends[0]!, n, n]
  const signAt = (i: number) => (turns.filter((turn) => turn <= i).length % 2 === 0 ? 1 : -1)
  const project = (z: Float64Array) => {
    if (fourPhases) for (let i = 0; i < n; i++) if (z[i]! * signAt(i) < 0) z[i] = 0
    if (tail !== null) z[n + steps.length] = tail
    else if (fourPhases) z[n + steps.length] = Math.max(0, z[n + steps.length]!)
  }

  const misses = new Float64Array(2 * stops.length + 2)
  const lambda = new Float64Array(misses.length)
  const headings = new Float64Array(n + 1)
  const bends = new Float64Array(n + 1)

  function walk(z: Float64Array): number {
    let px = 0
    let py = 0
    let sum = 0
    headings[0] = Math.PI / 2
    bends[0] = z[n + steps.length]!
    for (let i = 0; i < n; i++) {
      const j = spanOf[i]!
      const h = (z[n + j]! * SPAN) / steps[j]!
      const v = z[i]! / ROOT
      const middle = headings[i]! - (h * bends[i]!) / 2 - (h * h * v) / 8
      px += h * Math.cos(middle)
      py += h * Math.sin(middle)
      headings[i + 1] = headings[i]! - h * (bends[i]! + (h * v) / 2)
      bends[i + 1] = bends[i]! + h * v
      sum += h * v * v
      if (spanOf[i + 1] !== j) {
        misses[2 * j] = px - stops[j]![0]
        misses[2 * j + 1] = py - stops[j]![1]
      }
    }
    misses[misses.length - 2] = headings[n]! + Math.PI / 2
    misses[misses.length - 1] = neck === null ? (fourPhases ? Math.min(0, bends[n]!) : 0) : bends[n]! - neck
    return sum
  }

  function value(z: Float64Array): number {
    let sum = walk(z)
    for (let r = 0; r < misses.length; r++) sum += lambda[r]! * misses[r]! + (rho / 2) * misses[r]! ** 2
    return sum
  }

  /** Gradient at the z last walked, backwards along the chain. */
  function gradient(z: Float64Array, g: Float64Array): void {
    g.fill(0)
    const force = misses.map((miss, r) => lambda[r]! + rho * miss)
    let byHeading = force[misses.length - 2]!
    let byBend = neck === null && misses[misses.length - 1] === 0 ? 0 : force[misses.length - 1]!
    let fx = 0
    let fy = 0
    for (let i = n - 1; i >= 0; i--) {
      const j = spanOf[i]!
      if (spanOf[i + 1] !== j) {
        fx += force[2 * j]!
        fy += force[2 * j + 1]!
      }
      const h = (z[n + j]! * SPAN) / steps[j]!
      const v = z[i]! / ROOT
      const k = bends[i]!
      const middle = headings[i]! - (h * k) / 2 - (h * h * v) / 8
      const along = fx * Math.cos(middle) + fy * Math.sin(middle)
      const across = h * (fy * Math.cos(middle) - fx * Math.sin(middle))
      const byV = 2 * h * v - (across * h * h) / 8 - (byHeading * h * h) / 2 + byBend * h
      const byH = v * v + along - across * (k / 2 + (h * v) / 4) - byHeading * (k + h * v) + byBend * v
      g[i] = byV / ROOT
      g[n + j]! += (byH * SPAN) / steps[j]!
      byBend += -(across * h) / 2 - byHeading * h
      byHeading += across
    }
    if (tail === null) g[n + steps.length] = byBend
  }

  /** Moves each turn over steps that are at zero and would rather go the other way. */
  function moveTurns(z: Float64Array, g: Float64Array): void {
    for (let t = 0; t < 3; t++) {
      const up = t % 2 === 0 ? 1 : -1 // sign before this turn
      const turn = turns[t]!
      const low = turns[t - 1] ?? 0
      const high = turns[t + 1] ?? n
      if (turn > low && z[turn - 1] === 0 && g[turn - 1]! * up > 0) turns[t] = turn - 1
      else if (turn < high && z[turn] === 0 && g[turn]! * up < 0) turns[t] = turn + 1
    }
  }

  const g = new Float64Array(x.length)
  const trial = new Float64Array(x.length)
  const before = new Float64Array(x.length)
  const slope = new Float64Array(x.length)
  project(x)
  for (let outer = 0; outer < rounds; outer++) {
    const last: number[] = [value(x)]
    gradient(x, g)
    let length = 1e-3
    for (let inner = 0; inner < stepsPerRound; inner++) {
      for (let p = 0; p < x.length; p++) trial[p] = x[p]! - length * g[p]!
      project(trial)
      let dot = 0
      let most = 0
      for (let p = 0; p < x.length; p++) {
        trial[p]! -= x[p]!
        dot += trial[p]! * g[p]!
        most = Math.max(most, Math.abs(trial[p]!))
      }
      if (most < 1e-12) break
      before.set(x)
      slope.set(g)
      let t = Math.min(1, 0.5 / most)
      for (let cut = 0; cut < 40; cut++) {
        for (let p = 0; p < x.length; p++) x[p] = before[p]! + t * trial[p]!
        if (value(x) <= Math.max(...last) + 1e-4 * t * dot) break
        t /= 2
      }
      last.push(value(x))
      if (last.length > 10) last.shift()
      gradient(x, g)
      let ss = 0
      let sy = 0
      for (let p = 0; p < x.length; p++) {
        const s = x[p]! - before[p]!
        ss += s * s
        sy += s * (g[p]! - slope[p]!)
      }
      length = sy > 0 ? Math.min(ss / sy, 1e3) : 1e-2
      if (fourPhases && inner % 10 === 9) moveTurns(x, g)
    }
    walk(x)
    for (let r = 0; r < misses.length; r++) lambda[r]! += rho * misses[r]!
  }

  const variation = walk(x)
  const points: Point[] = [{ x: 0, y: 0 }]
  for (let i = 0; i < n; i++) {
    const j = spanOf[i]!
    const h = (x[n + j]! * SPAN) / steps[j]!
    const middle = headings[i]! - (h * bends[i]!) / 2 - (h * x[i]! * h) / ROOT / 8
    const from = points.at(-1)!
    points.push({ x: from.x + h * size * Math.cos(middle), y: from.y + h * size * Math.sin(middle) })
  }
  return {
    points,
    curvaturesPerMm: [...bends].map((k) => k / size),
    missMm: Math.max(...misses.subarray(0, misses.length - 2).map(Math.abs)) * size,
    variation,
  }
}
