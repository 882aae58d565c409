import type { FitState } from './fairAim.ts'
import { countRows } from './fairAim.ts'
import { chooseTurns, signBetweenTurns } from './turnPattern.ts'

/** Pieces a turn of curvature may move in one step, once placed. */
const TURN_REACH = 3
/** Rises and curvatures smaller than this, in units of 1/body, have no sign. */
const LEAST_RISE = 1e-9

/**
 * Settles which rises, and which free end curvatures, are held at zero in the next step; gives how many changed.
 *
 * A free rise wants to be what it is, a held one what its multiplier says it would become if let; the turns are put where they
 * let most through, and what then has the wrong sign is held: a primal-dual active set
 * (Hintermueller, Ito & Kunisch 2002, The primal-dual active set strategy as a semismooth Newton method).
 */
export function settleBounds(state: FitState): number {
  const { aim, z, held, forces, sums } = state
  const { pieceCount, unknownCount, spanOf, shareOf, rowCount } = aim.space
  if (!aim.fourPhases) return 0
  let changed = 0
  state.holdPenalty = 0
  const hold = (p: number, on: boolean) => {
    if (held[p] === (on ? 1 : 0)) return
    held[p] = on ? 1 : 0
    changed++
  }
  const wish = new Float64Array(pieceCount)
  const lengths = new Float64Array(pieceCount)
  for (let i = 0; i < pieceCount; i++) {
    const span = spanOf[i]!
    lengths[i] = z[1 + pieceCount + span]! * shareOf[i]!
    let to = z[1 + i]!
    if (held[1 + i] === 1) to -= (steepness(state, 1 + i, unknownCount) * lengths[i]!) / 2
    wish[i] = Math.abs(to) < LEAST_RISE ? 0 : to
  }
  state.turns = chooseTurns(wish, lengths, state.turns, TURN_REACH)
  for (let i = 0; i < pieceCount; i++) {
    hold(1 + i, wish[i]! * signBetweenTurns(state.turns, i) < 0)
    if (held[1 + i] === 1) {
      state.holdPenalty = Math.max(state.holdPenalty, 2 * Math.abs(steepness(state, 1 + i, unknownCount)))
    }
  }
  if (!aim.startGiven) hold(0, held[0] === 1 ? steepness(state, 0, unknownCount) > 0 : z[0]! < -LEAST_RISE)
  if (!aim.endGiven) {
    const on = state.endHeld ? forces[rowCount - 1]! < 0 : sums.rows[rowCount - 1]! < -LEAST_RISE
    if (on !== state.endHeld) changed++
    state.endHeld = on
    if (!on) forces[rowCount - 1] = 0
  }
  return changed
}

/** Derivative of variation + forces . rows by one unknown. */
function steepness(state: FitState, p: number, unknownCount: number): number {
  let sum = state.sums.variationSlope[p]!
  for (let r = 0; r < countRows(state); r++) sum += state.forces[r]! * state.sums.rowSlope[r * unknownCount + p]!
  return sum
}
