import { describe, expect, test } from 'vitest'
import { addPlaceBend, addSlideBend, addVariation } from '../../../../src/core/geometry/within/bend.ts'
import { makeChain, makeGrid, variationOf } from '../../../../src/core/geometry/within/chain.ts'
import type { ChainFit } from '../../../../src/core/geometry/within/chainFit.ts'
import { makeChainFit, sumFit } from '../../../../src/core/geometry/within/chainFit.ts'
import { makeFeet } from '../../../../src/core/geometry/within/feet.ts'
import { expectWithin } from '../../within.ts'
import { seededErrors } from './withinSamples.ts'

// Every slope against differences of the sums themselves, on a chain that bends both ways with readings on either side of it.
const grid = makeGrid(9)
const n = grid.unknownCount
const error = seededErrors(5)
const Z = Float64Array.from([1.3, 3, ...Array.from({ length: 9 }, () => 4 * error())])
const START_RAD = 0.4

function fitAt(z: Float64Array): ChainFit {
  const chain = makeChain(grid, START_RAD, z.slice())
  const feet = makeFeet(READINGS, PARTS)
  const fit = makeChainFit(chain, feet, { x: 0.3, y: 0.2, headingRad: 0, startCurvature: 1, endCurvature: 2 })
  // The feet settle by a few steps each time.
  for (let turn = 0; turn < 6; turn++) sumFit(fit)
  return fit
}

const PARTS = [0.05, 0.21, 0.5, 0.52, 0.83, 0.97]
const READINGS = PARTS.map((part) => {
  const chain = makeChain(grid, START_RAD, Z)
  const i = grid.knots.findLastIndex((knot) => knot <= part)
  const share = (part - grid.knots[i]!) / grid.shares[i]!
  const x = Z[0]! * (chain.x[i]! + share * (chain.x[i + 1]! - chain.x[i]!))
  const y = Z[0]! * (chain.y[i]! + share * (chain.y[i + 1]! - chain.y[i]!))
  return { x: x + 0.02 * error(), y: y + 0.02 * error() }
})

const STEP = 1e-5
const moved = (u: number, by: number): Float64Array => Z.map((value, v) => (v === u ? value + by : value))
/** Slope of what a fit gives, by unknown u. */
const difference = (u: number, of: (fit: ChainFit) => number): number =>
  (of(fitAt(moved(u, STEP))) - of(fitAt(moved(u, -STEP)))) / (2 * STEP)

describe('slopes', () => {
  const fit = fitAt(Z)
  test('of distances, end rows and variation', () => {
    const slope = new Float64Array(n)
    addVariation(grid, Z, slope, new Float64Array(n * n), false)
    for (let u = 0; u < n; u++) {
      READINGS.forEach((_, j) =>
        expectWithin(
          fit.offSlope[j * n + u],
          difference(u, (at) => at.feet.off[j]!),
          1e-7,
          `distance ${j} by ${u}`,
        ),
      )
      for (let r = 0; r < fit.endRows.count; r++) {
        expectWithin(
          fit.endRows.slope[r * n + u],
          difference(u, (at) => at.endRows.value[r]!),
          1e-7,
          `row ${r} by ${u}`,
        )
      }
      const wanted = difference(u, (at) => variationOf(grid, at.chain.z))
      expectWithin(slope[u], wanted, 1e-5 * (1 + Math.abs(wanted)), `variation by ${u}`)
    }
  })

  test('second slopes of variation, of pressed distances and of forces at the end', () => {
    const press = Float64Array.from(READINGS, () => error())
    const [endX, endY] = [0.7, -0.4]
    const bend = new Float64Array(n * n)
    addVariation(grid, Z, new Float64Array(n), bend, false)
    const forceX = Float64Array.from([...press.map((g, j) => g * fit.feet.sin[j]!), endX])
    const forceY = Float64Array.from([...press.map((g, j) => -g * fit.feet.cos[j]!), endY])
    addPlaceBend(fit.chain, fit.feet, forceX, forceY, bend)
    addSlideBend(fit.chain, fit.feet, press, bend)
    for (let u = 0; u < n; u++) {
      for (let v = 0; v <= u; v++) {
        const wanted = difference(v, (at) => {
          const slope = new Float64Array(n)
          addVariation(grid, at.chain.z, slope, new Float64Array(n * n), false)
          const pressed = press.reduce((sum, g, j) => sum + g * at.offSlope[j * n + u]!, 0)
          return slope[u]! + pressed + endX * at.endRows.slope[u]! + endY * at.endRows.slope[n + u]!
        })
        expectWithin(bend[u * n + v], wanted, 1e-5 * (1 + Math.abs(wanted)), `${u}, ${v}`)
      }
    }
    expect(bend.some((value) => value !== 0)).toBe(true)
  })
})
