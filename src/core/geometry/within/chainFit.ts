import type { Chain } from './chain.ts'
import { sumChain } from './chain.ts'
import type { EndAim, EndRows } from './ends.ts'
import { makeEndRows, sumEnds } from './ends.ts'
import type { Feet } from './feet.ts'
import { placeFeet, slopeOfFoot } from './feet.ts'

/** A chain on its way to a fit, with all that hangs on its z. */
export interface ChainFit {
  readonly chain: Chain
  readonly feet: Feet
  readonly ends: EndAim
  readonly endRows: EndRows
  /** How fast the distance of each reading grows with each unknown; nothing from `reach[j]` on. */
  readonly offSlope: Float64Array
  readonly reach: Int32Array
}

export function makeChainFit(chain: Chain, feet: Feet, ends: EndAim): ChainFit {
  const n = chain.grid.unknownCount
  return {
    chain,
    feet,
    ends,
    endRows: makeEndRows(ends, n),
    offSlope: new Float64Array(feet.count * n),
    reach: new Int32Array(feet.count),
  }
}

/** Brings sums, feet, distances and their slopes up to the chain's z. */
export function sumFit(fit: ChainFit): void {
  const { chain, feet, ends, endRows, offSlope, reach } = fit
  const n = chain.grid.unknownCount
  sumChain(chain)
  placeFeet(chain, feet)
  sumEnds(chain, feet, ends, endRows)
  for (let j = 0; j < feet.count; j++) {
    // Where a foot is nearest, its sliding along does not count: only the place moving against the normal.
    slopeOfFoot(chain, feet, j, feet.sin[j]!, -feet.cos[j]!, offSlope, j * n)
    reach[j] = feet.piece[j]! + 3
  }
}

/** Adds weight_j x slope slope' of each distance to the lower triangle of `bend`. */
export function addOffSquares(fit: ChainFit, weights: Float64Array, bend: Float64Array): void {
  const { offSlope, reach, feet, chain } = fit
  const n = chain.grid.unknownCount
  for (let j = 0; j < feet.count; j++) {
    const from = j * n
    const end = reach[j]!
    for (let u = 0; u < end; u++) {
      const scaled = weights[j]! * offSlope[from + u]!
      const row = u * n
      for (let v = 0; v <= u; v++) bend[row + v]! += scaled * offSlope[from + v]!
    }
  }
}

/** Furthest the headings may turn, and the length change, in one step. */
const MOST_TURN_RAD = 0.4
const MOST_STRETCH = 0.2

/** The part of a step that can be trusted: 1, or less where it turns or stretches the chain much. */
export function trustedPart(chain: Chain, step: Float64Array): number {
  const { pieceCount, shares } = chain.grid
  let bend = step[1]!
  let heading = 0
  let most = Math.abs(step[0]!) / (MOST_STRETCH * chain.z[0]!)
  for (let i = 0; i < pieceCount; i++) {
    heading -= shares[i]! * (bend + step[2 + i]! / 2)
    bend += step[2 + i]!
    most = Math.max(most, Math.abs(heading) / MOST_TURN_RAD)
  }
  return most > 1 ? 1 / most : 1
}
