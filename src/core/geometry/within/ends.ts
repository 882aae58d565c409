import type { Chain } from './chain.ts'
import type { Feet } from './feet.ts'
import { slopeOfFoot } from './feet.ts'

/** What a chain must meet at its ends, in its own unit; null: free. It starts at (0, 0) with its heading given. */
export interface EndAim {
  readonly x: number
  readonly y: number
  readonly headingRad: number | null
  readonly startCurvature: number | null
  readonly endCurvature: number | null
}

/** Rows to bring to nothing: place at the end, then heading, curvature at the start and at the end, where given. */
export interface EndRows {
  readonly count: number
  readonly value: Float64Array
  /** Slope of each by each unknown. */
  readonly slope: Float64Array
}

export function makeEndRows(aim: EndAim, unknownCount: number): EndRows {
  const given = [aim.headingRad, aim.startCurvature, aim.endCurvature].filter((value) => value !== null)
  const count = 2 + given.length
  return { count, value: new Float64Array(count), slope: new Float64Array(count * unknownCount) }
}

/** Rows and slopes of a chain whose sums and feet are up to date. */
export function sumEnds(chain: Chain, feet: Feet, aim: EndAim, rows: EndRows): void {
  const { grid, z } = chain
  const { value, slope } = rows
  const n = grid.unknownCount
  const count = grid.pieceCount
  value[0] = z[0]! * chain.x[count]! - aim.x
  value[1] = z[0]! * chain.y[count]! - aim.y
  slopeOfFoot(chain, feet, feet.count, 1, 0, slope, 0)
  slopeOfFoot(chain, feet, feet.count, 0, 1, slope, n)
  let row = 2
  if (aim.headingRad !== null) {
    value[row] = chain.headings[count]! - aim.headingRad
    slope[row * n + 1] = -1
    for (let i = 0; i < count; i++) slope[row * n + 2 + i] = grid.middles[i]! - 1
    row++
  }
  if (aim.startCurvature !== null) {
    value[row] = z[1]! - z[0]! * aim.startCurvature
    slope[row * n] = -aim.startCurvature
    slope[row * n + 1] = 1
    row++
  }
  if (aim.endCurvature !== null) {
    value[row] = chain.bends[count]! - z[0]! * aim.endCurvature
    slope.fill(1, row * n + 1, (row + 1) * n)
    slope[row * n] = -aim.endCurvature
  }
}
