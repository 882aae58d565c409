import type { Chain, Grid } from './chain.ts'
import { NODES, WEIGHTS } from './chain.ts'
import type { Feet } from './feet.ts'
import { slopeOfFoot, turnOfFoot } from './feet.ts'

/** Adds the slope of the variation to `slope` and its second slope to the lower triangle of `bend`; `convex`: without what may be negative. */
export function addVariation(
  grid: Grid,
  z: Float64Array,
  slope: Float64Array,
  bend: Float64Array,
  convex: boolean,
): void {
  const n = grid.unknownCount
  const cube = z[0]! ** 3
  let sum = 0
  for (let i = 0; i < grid.pieceCount; i++) {
    const part = z[2 + i]! / (grid.shares[i]! * cube)
    sum += part * z[2 + i]!
    slope[2 + i]! += 2 * part
    bend[(2 + i) * n + 2 + i]! += 2 / (grid.shares[i]! * cube)
    bend[(2 + i) * n]! -= ((convex ? 3 : 6) * part) / z[0]!
  }
  slope[0]! -= (3 * sum) / z[0]!
  bend[0]! += ((convex ? 4.5 : 12) * sum) / z[0]! ** 2
}

/**
 * Adds to the lower triangle of `bend` the second slope of the sum of forces . places of the feet, the end included:
 *
 *   -L integral of (forces ahead . (cos, sin)) theta_u theta_v dt, and forces . place_u / L against L
 *
 * by the moments of that density over each piece: from the piece where the later of two unknowns acts on, theta_u is t - m_u.
 */
export function addPlaceBend(
  chain: Chain,
  feet: Feet,
  forceX: Float64Array,
  forceY: Float64Array,
  bend: Float64Array,
): void {
  const { grid, z } = chain
  const count = grid.pieceCount
  const n = grid.unknownCount
  const length = z[0]!
  const row = new Float64Array(n)
  const aheadX = new Float64Array(count + 1)
  const aheadY = new Float64Array(count + 1)
  // For each piece: integrals of the density times 1, t, t^2, own, own t, own^2.
  const moments = new Float64Array(6 * count)
  for (let j = 0; j <= feet.count; j++) {
    const fx = forceX[j]!
    const fy = forceY[j]!
    if (fx === 0 && fy === 0) continue
    const i = feet.piece[j]!
    aheadX[i]! += fx
    aheadY[i]! += fy
    addMoments(chain, i, feet.t[j]! - grid.knots[i]!, fx, fy, moments)
    slopeOfFoot(chain, feet, j, fx, fy, row, 0)
    for (let u = 1; u < i + 3; u++) bend[u * n]! += row[u]! / length
  }
  for (let i = count - 2; i >= 0; i--) {
    aheadX[i]! += aheadX[i + 1]!
    aheadY[i]! += aheadY[i + 1]!
  }
  for (let i = 0; i < count - 1; i++) addMoments(chain, i, grid.shares[i]!, aheadX[i + 1]!, aheadY[i + 1]!, moments)
  let m0 = 0
  let m1 = 0
  let m2 = 0
  for (let i = count - 1; i >= 0; i--) {
    const own1 = moments[6 * i + 3]!
    const ownT = moments[6 * i + 4]!
    const middle = grid.middles[i]!
    const at = (2 + i) * n
    const flat = m1 - middle * m0
    const tilt = m2 - middle * m1
    bend[at + 1]! += ownT + tilt
    for (let b = 0; b < i; b++) bend[at + 2 + b]! += ownT + tilt - grid.middles[b]! * (own1 + flat)
    bend[at + 2 + i]! += moments[6 * i + 5]! + tilt - middle * flat
    m0 += moments[6 * i]!
    m1 += moments[6 * i + 1]!
    m2 += moments[6 * i + 2]!
  }
  bend[n + 1]! += m2
}

function addMoments(chain: Chain, i: number, part: number, fx: number, fy: number, moments: Float64Array): void {
  const { grid, z, headings, bends } = chain
  for (let q = 0; q < 4; q++) {
    const v = NODES[q]! * part
    const own = (v * v) / (2 * grid.shares[i]!)
    const angle = headings[i]! - bends[i]! * v - z[2 + i]! * own
    const density = -z[0]! * WEIGHTS[q]! * part * (fx * Math.cos(angle) + fy * Math.sin(angle))
    const t = grid.knots[i]! + v
    moments[6 * i]! += density
    moments[6 * i + 1]! += density * t
    moments[6 * i + 2]! += density * t * t
    moments[6 * i + 3]! += density * own
    moments[6 * i + 4]! += density * own * t
    moments[6 * i + 5]! += density * own * own
  }
}

/** Forces smaller than this part of the largest do not count where a foot slides. */
const LEAST_FORCE = 1e-2

/**
 * Adds to `bend` what comes from each foot sliding along while its reading's distance r is pressed with force g:
 *
 *   g ((theta p' + p theta') / b + k p p' / b - r theta theta' / b)     p the place's slope along the way, b = 1 + r k (derived)
 *
 * together with `addPlaceBend` of the forces -g n it makes the second slope of g r.
 */
export function addSlideBend(chain: Chain, feet: Feet, press: Float64Array, bend: Float64Array): void {
  const n = chain.grid.unknownCount
  const along = new Float64Array(n)
  const turn = new Float64Array(n)
  let most = 0
  for (let j = 0; j < feet.count; j++) most = Math.max(most, Math.abs(press[j]!))
  for (let j = 0; j < feet.count; j++) {
    if (Math.abs(press[j]!) <= LEAST_FORCE * most) continue
    const k = feet.bend[j]! / chain.z[0]!
    const g = press[j]! / Math.max(1 + feet.off[j]! * k, 0.3)
    slopeOfFoot(chain, feet, j, feet.cos[j]!, feet.sin[j]!, along, 0)
    turnOfFoot(chain, feet, j, turn)
    const end = feet.piece[j]! + 3
    for (let u = 0; u < end; u++) {
      const byTurn = g * (along[u]! - feet.off[j]! * turn[u]!)
      const byAlong = g * (turn[u]! + k * along[u]!)
      for (let v = 0; v <= u; v++) bend[u * n + v]! += byTurn * turn[v]! + byAlong * along[v]!
    }
  }
}
