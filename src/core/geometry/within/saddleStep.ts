import { factorPositive, solveLower, solveUpper } from '../fair/denseSolve.ts'
import type { EndRows } from './ends.ts'

/** A factored saddle system, ready for more than one right side. */
export interface Saddle {
  readonly n: number
  readonly rows: EndRows
  readonly weight: number
  readonly bend: Float64Array
  /** Rows divided by the factor of the bend; factor of what they leave of the forces. */
  readonly divided: Float64Array
  readonly schur: Float64Array
}

/**
 * Factors the system of a least place under hard rows, from the lower triangle of `bend`, which is overwritten; null where bend, with the rows
 * added on as squares, is not positive.
 *
 *   bend step + rows' forces = push       rows step = -value
 *
 * Source: Nocedal & Wright, Numerical Optimization, chapter 16 (Schur complement; from memory).
 */
export function factorSaddle(bend: Float64Array, n: number, rows: EndRows): Saddle | null {
  const { count, slope } = rows
  let weight = 1
  for (let u = 0; u < n; u++) weight = Math.max(weight, Math.abs(bend[u * n + u]!))
  for (let r = 0; r < count; r++) {
    for (let u = 0; u < n; u++) {
      const scaled = weight * slope[r * n + u]!
      if (scaled !== 0) for (let v = 0; v <= u; v++) bend[u * n + v]! += scaled * slope[r * n + v]!
    }
  }
  if (!factorPositive(bend, n)) return null
  const divided = slope.slice()
  for (let r = 0; r < count; r++) solveLower(bend, n, divided, r * n)
  const schur = new Float64Array(count * count)
  for (let r = 0; r < count; r++) {
    for (let q = 0; q <= r; q++) {
      let sum = 0
      for (let u = 0; u < n; u++) sum += divided[r * n + u]! * divided[q * n + u]!
      schur[r * count + q] = sum
    }
  }
  return factorPositive(schur, count) ? { n, rows, weight, bend, divided, schur } : null
}

/** The step, written over `push`, and the forces of the rows. */
export function solveSaddle(saddle: Saddle, push: Float64Array, forces: Float64Array): void {
  const { n, rows, weight, bend, divided, schur } = saddle
  const { count, value, slope } = rows
  for (let r = 0; r < count; r++) {
    const pull = weight * value[r]!
    for (let u = 0; u < n; u++) push[u]! -= pull * slope[r * n + u]!
  }
  solveLower(bend, n, push)
  for (let r = 0; r < count; r++) {
    let sum = value[r]!
    for (let u = 0; u < n; u++) sum += divided[r * n + u]! * push[u]!
    forces[r] = sum
  }
  solveLower(schur, count, forces)
  solveUpper(schur, count, forces)
  for (let r = 0; r < count; r++) {
    for (let u = 0; u < n; u++) push[u]! -= forces[r]! * divided[r * n + u]!
  }
  solveUpper(bend, n, push)
}
