import { factorPositive, solveLower, solveUpper } from './denseSolve.ts'
import type { FitState } from './fairAim.ts'
import { countRows, isSoftRow, missOfRow } from './fairAim.ts'

/** Weight on squared misses that makes the second derivative positive across the rows as well as along them. */
const ROW_WEIGHT = 1e9

/**
 * Newton's step of a fit, and the forces after it, from the sums at z; false where there is none.
 *
 *   (H + J' W J) step + J' (1 - W C) forces = -(slope + J' W miss)      H bend, J slopes of the rows, W row weights
 *   J step - C forces = -miss                                           C 1/softness for a soft row, 0 for a hard one
 *
 * solved for the forces first (Schur complement). The terms with W cancel at the answer; they make the matrix positive where H
 * is so only along the rows. Where even that fails, H is lifted until it is: the step then still goes downhill.
 * Source: Nocedal & Wright, Numerical Optimization, chapters 16 and 18 (method, from memory).
 */
export function findStep(state: FitState): boolean {
  const { aim, sums, forces, held, step, z } = state
  const n = aim.space.unknownCount
  const free: number[] = []
  const sent: number[] = [] // held, and not yet at zero
  for (let p = 0; p < n; p++) {
    step[p] = 0
    if (held[p] === 0) free.push(p)
    else if ((p > 0 || !aim.startGiven) && z[p] !== 0) {
      step[p] = -z[p]!
      sent.push(p)
    }
  }
  const m = free.length
  const count = countRows(state)
  const miss = new Float64Array(count)
  const give = new Float64Array(count)
  const weight = new Float64Array(count)
  const slopes = new Float64Array(count * m)
  for (let r = 0; r < count; r++) {
    miss[r] = missOfRow(state, r)
    for (const p of sent) miss[r]! += sums.rowSlope[r * n + p]! * step[p]!
    give[r] = isSoftRow(state, r) ? 1 / state.softness! : 0
    weight[r] = give[r]! > 0 ? Math.min(ROW_WEIGHT, 0.5 / give[r]!) : ROW_WEIGHT
    for (let i = 0; i < m; i++) slopes[r * m + i] = sums.rowSlope[r * n + free[i]!]!
  }

  const bend = factorBend(state, free, slopes, weight)
  if (bend === null) return false
  const g = new Float64Array(m)
  for (let i = 0; i < m; i++) {
    const p = free[i]!
    let sum = sums.variationSlope[p]!
    for (const q of sent) sum += sums.bend[Math.max(p, q) * n + Math.min(p, q)]! * step[q]!
    for (let r = 0; r < count; r++) sum += weight[r]! * slopes[r * m + i]! * miss[r]!
    g[i] = sum
  }
  solveLower(bend, m, g)
  for (let r = 0; r < count; r++) solveLower(bend, m, slopes, r * m)
  const schur = new Float64Array(count * count)
  const pull = new Float64Array(count)
  for (let r = 0; r < count; r++) {
    for (let q = 0; q <= r; q++) {
      let sum = 0
      for (let i = 0; i < m; i++) sum += slopes[r * m + i]! * slopes[q * m + i]!
      schur[r * count + q] = sum
    }
    schur[r * count + r]! += give[r]! / (1 - weight[r]! * give[r]!)
    let sum = miss[r]!
    for (let i = 0; i < m; i++) sum -= slopes[r * m + i]! * g[i]!
    pull[r] = sum
  }
  if (!factorPositive(schur, count)) return false
  solveLower(schur, count, pull)
  solveUpper(schur, count, pull)
  for (let i = 0; i < m; i++) {
    let sum = g[i]!
    for (let r = 0; r < count; r++) sum += slopes[r * m + i]! * pull[r]!
    g[i] = -sum
  }
  solveUpper(bend, m, g)
  for (let i = 0; i < m; i++) step[free[i]!] = g[i]!
  for (let r = 0; r < count; r++) forces[r] = pull[r]! / (1 - weight[r]! * give[r]!)
  return true
}

/** Factor of the weighted second derivative by the free unknowns, lifted as little as makes it positive; null where nothing does. */
function factorBend(
  state: FitState,
  free: readonly number[],
  slopes: Float64Array,
  weight: Float64Array,
): Float64Array | null {
  const n = state.aim.space.unknownCount
  const m = free.length
  const a = new Float64Array(m * m)
  for (let lift = 0; lift < 1e9; lift = lift === 0 ? 10 : lift * 10) {
    for (let i = 0; i < m; i++) {
      const row = free[i]! * n
      for (let j = 0; j <= i; j++) a[i * m + j] = state.sums.bend[row + free[j]!]!
      a[i * m + i]! += lift
    }
    for (let r = 0; r < weight.length; r++) {
      for (let i = 0; i < m; i++) {
        const scaled = weight[r]! * slopes[r * m + i]!
        if (scaled !== 0) for (let j = 0; j <= i; j++) a[i * m + j]! += scaled * slopes[r * m + j]!
      }
    }
    if (factorPositive(a, m)) return a
  }
  return null
}
