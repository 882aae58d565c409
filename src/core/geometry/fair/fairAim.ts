import type { ChainSpace, ChainSums } from './chainSpace.ts'
import { makeChainSums } from './chainSpace.ts'

/** What a chain is to do: reach the rows, with end curvatures given or free. Lengths in units of the body. */
export interface ChainAim {
  readonly space: ChainSpace
  /** Wanted value of each row of the space; the last (curvature at the end) counts only where `endGiven`. */
  readonly rows: Float64Array
  readonly startGiven: boolean
  readonly endGiven: boolean
  /** true: curvature goes up, down, up, down and a free end curvature stays at or above 0. false: as it likes. */
  readonly fourPhases: boolean
  /** Weight of half the squared misses between the ends, added to the variation; null: they are met exactly. */
  readonly softness: number | null
}

/** Where a fit stands between two steps. */
export interface FitState {
  readonly aim: ChainAim
  readonly z: Float64Array
  readonly sums: ChainSums
  /** Multiplier of each row. */
  readonly forces: Float64Array
  /** 1 for each unknown that is held: at zero, or the start curvature where it is given. */
  readonly held: Uint8Array
  readonly step: Float64Array
  /** Softness at this step. */
  softness: number | null
  endHeld: boolean
  /** Pieces before each turn of curvature; null until they are first placed. */
  turns: readonly number[] | null
  /** Weight, in the line search, of what a held unknown still lacks to zero. */
  holdPenalty: number
}

export function makeFitState(aim: ChainAim, z: Float64Array): FitState {
  const n = aim.space.unknownCount
  const held = new Uint8Array(n)
  if (aim.startGiven) held[0] = 1
  return {
    aim,
    z: z.slice(),
    sums: makeChainSums(aim.space),
    forces: new Float64Array(aim.space.rowCount),
    held,
    step: new Float64Array(n),
    softness: aim.softness,
    endHeld: aim.endGiven,
    turns: null,
    holdPenalty: 0,
  }
}

/** The rows that count: all, or all but the curvature at the end. */
export const countRows = (state: FitState): number => state.aim.space.rowCount - (state.endHeld ? 0 : 1)

/** Whether a row may be missed for a price: the places between the ends, while the fit is soft. */
export const isSoftRow = (state: FitState, row: number): boolean =>
  state.softness !== null && row < state.aim.space.rowCount - 4

/** What is still missing in a row. */
export const missOfRow = (state: FitState, row: number): number => state.sums.rows[row]! - state.aim.rows[row]!
