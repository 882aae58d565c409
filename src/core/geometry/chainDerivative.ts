import type { ChainSpace, ChainSums } from './chainSpace.ts'
import { addVariation } from './chainVariation.ts'

// Gauss-Legendre rule of four points on [0, 1]. Source: Abramowitz & Stegun, table 25.4 (from memory).
const NODES = [-0.8611363115940526, -0.3399810435848563, 0.3399810435848563, 0.8611363115940526].map((t) => (1 + t) / 2)
const WEIGHTS = [0.3478548451374538, 0.6521451548625461, 0.6521451548625461, 0.3478548451374538].map((w) => w / 2)

/**
 * Variation and rows of the chain z, into `sums`.
 *
 *   k_i+1 = k_i + d_i     theta_i+1 = theta_i - h (k_i + d_i / 2)     chord = h * integral of (cos, sin) theta(u) du, u in 0..1
 */
export function sumChain(space: ChainSpace, z: Float64Array, sums: ChainSums): void {
  const { pieceCount, shareOf, spanOf, rowCount } = space
  let k = z[0]!
  let theta = Math.PI / 2
  let x = 0
  let y = 0
  for (let i = 0; i < pieceCount; i++) {
    const span = spanOf[i]!
    const h = z[1 + pieceCount + span]! * shareOf[i]!
    const d = z[1 + i]!
    for (let q = 0; q < 4; q++) {
      const u = NODES[q]!
      const angle = theta - h * u * (k + (d * u) / 2)
      x += h * WEIGHTS[q]! * Math.cos(angle)
      y += h * WEIGHTS[q]! * Math.sin(angle)
    }
    theta -= h * (k + d / 2)
    k += d
    sums.rows[2 * span] = x
    sums.rows[2 * span + 1] = y
  }
  sums.rows[rowCount - 2] = theta
  sums.rows[rowCount - 1] = k
  addVariation(space, z, sums, false)
}

/**
 * Variation, rows and all derivatives at z, into `sums`. `forces` is one multiplier for each row.
 * One sweep forward for each unknown gives the rows' slopes, one back from the end the second derivatives.
 */
export function differentiateChain(space: ChainSpace, z: Float64Array, forces: Float64Array, sums: ChainSums): void {
  sumChain(space, z, sums)
  const { pieceCount: count, unknownCount: n, rowCount, counts, spanOf, shareOf } = space
  const { variationSlope, rowSlope, bend } = sums
  const spans = counts.length
  variationSlope.fill(0)
  rowSlope.fill(0)
  bend.fill(0)

  // What each piece adds, by its own (theta, k, d, h): chord slopes, and second slopes of force . chord.
  const length = new Float64Array(count)
  const mean = new Float64Array(count)
  const chordX = new Float64Array(4 * count)
  const chordY = new Float64Array(4 * count)
  const second = new Float64Array(16 * count)
  const pull = new Float64Array(count + 1) // force on the heading where each piece starts
  const forceX = new Float64Array(spans)
  const forceY = new Float64Array(spans)
  for (let j = spans - 1; j >= 0; j--) {
    forceX[j] = forces[2 * j]! + (j + 1 < spans ? forceX[j + 1]! : 0)
    forceY[j] = forces[2 * j + 1]! + (j + 1 < spans ? forceY[j + 1]! : 0)
  }
  let k = z[0]!
  let theta = Math.PI / 2
  const t = new Float64Array(4)
  t[0] = 1
  for (let i = 0; i < count; i++) {
    const span = spanOf[i]!
    const h = z[1 + count + span]! * shareOf[i]!
    const d = z[1 + i]!
    const fx = forceX[span]!
    const fy = forceY[span]!
    const at = 4 * i
    const m = 16 * i
    length[i] = h
    mean[i] = k + d / 2
    for (let q = 0; q < 4; q++) {
      const u = NODES[q]!
      const w = WEIGHTS[q]!
      t[1] = -h * u
      t[2] = (-h * u * u) / 2
      t[3] = -u * (k + (d * u) / 2)
      const angle = theta - h * u * (k + (d * u) / 2)
      const cos = Math.cos(angle)
      const sin = Math.sin(angle)
      const along = fx * cos + fy * sin
      const across = fy * cos - fx * sin
      for (let a = 0; a < 4; a++) {
        chordX[at + a]! -= w * h * sin * t[a]!
        chordY[at + a]! += w * h * cos * t[a]!
        for (let b = 0; b <= a; b++) second[m + 4 * a + b]! -= w * h * along * t[a]! * t[b]!
        second[m + 12 + a]! += w * across * t[a]! * (a === 3 ? 2 : 1)
      }
      chordX[at + 3]! += w * cos
      chordY[at + 3]! += w * sin
      second[m + 13]! -= w * h * across * u
      second[m + 14]! -= (w * h * across * u * u) / 2
    }
    for (let a = 0; a < 4; a++) for (let b = 0; b < a; b++) second[m + 4 * b + a] = second[m + 4 * a + b]!
    theta -= h * (k + d / 2)
    k += d
  }
  pull[count] = forces[rowCount - 2]!
  for (let i = count - 1; i >= 0; i--) {
    const span = spanOf[i]!
    pull[i] = pull[i + 1]! + forceX[span]! * chordX[4 * i]! + forceY[span]! * chordY[4 * i]!
  }

  const dTheta = new Float64Array(count)
  const dK = new Float64Array(count)
  for (let p = 0; p < n; p++) {
    const moved = p - 1 < count ? -1 : p - 1 - count // span whose length moves
    const risen = moved < 0 ? p - 1 : -1 // piece whose rise moves
    const from = Math.max(risen, 0)
    let tTheta = 0
    let tK = p === 0 ? 1 : 0
    let tX = 0
    let tY = 0
    for (let i = from; i < count; i++) {
      const span = spanOf[i]!
      const tD = i === risen ? 1 : 0
      const tH = span === moved ? shareOf[i]! : 0
      const at = 4 * i
      dTheta[i] = tTheta
      dK[i] = tK
      tX += chordX[at]! * tTheta + chordX[at + 1]! * tK + chordX[at + 2]! * tD + chordX[at + 3]! * tH
      tY += chordY[at]! * tTheta + chordY[at + 1]! * tK + chordY[at + 2]! * tD + chordY[at + 3]! * tH
      rowSlope[2 * span * n + p] = tX
      rowSlope[(2 * span + 1) * n + p] = tY
      tTheta -= length[i]! * (tK + tD / 2) + tH * mean[i]!
      tK += tD
    }
    rowSlope[(rowCount - 2) * n + p] = tTheta
    rowSlope[(rowCount - 1) * n + p] = tK
    let pTheta = 0
    let pK = 0
    for (let i = count - 1; i >= from; i--) {
      const span = spanOf[i]!
      const a = dTheta[i]!
      const b = dK[i]!
      const tD = i === risen ? 1 : 0
      const tH = span === moved ? shareOf[i]! : 0
      const m = 16 * i
      const h = length[i]!
      const gD =
        second[m + 8]! * a +
        second[m + 9]! * b +
        second[m + 10]! * tD +
        second[m + 11]! * tH +
        pK -
        (h * pTheta + tH * pull[i + 1]!) / 2
      if (moved < 0) bend[(1 + i) * n + p] = gD
      else {
        bend[p * n + 1 + i] = gD
        const gH =
          second[m + 12]! * a +
          second[m + 13]! * b +
          second[m + 14]! * tD +
          second[m + 15]! * tH -
          b * pull[i + 1]! -
          mean[i]! * pTheta
        if (span <= moved) bend[p * n + 1 + count + span]! += gH * shareOf[i]!
      }
      pK +=
        second[m + 4]! * a +
        second[m + 5]! * b +
        second[m + 6]! * tD +
        second[m + 7]! * tH -
        h * pTheta -
        tH * pull[i + 1]!
      pTheta += second[m]! * a + second[m + 1]! * b + second[m + 2]! * tD + second[m + 3]! * tH
    }
    if (p === 0) bend[0] = pK
    else if (moved >= 0) bend[p * n] = pK
  }
  addVariation(space, z, sums, true)
}
