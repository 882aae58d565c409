import fc from 'fast-check'
import { expect, test } from 'vitest'
import { differentiateChain } from '../../../../src/core/geometry/fair/chainDerivative.ts'
import { makeChainSpace, makeChainSums } from '../../../../src/core/geometry/fair/chainSpace.ts'
import { makeCurve } from '../../../../src/core/geometry/curve.ts'
import { factorPositive, solveLower, solveUpper } from '../../../../src/core/geometry/fair/denseSolve.ts'
import { chooseTurns, signBetweenTurns } from '../../../../src/core/geometry/fair/turnPattern.ts'
import { expectWithin } from '../../within.ts'

const space = makeChainSpace([3, 2, 4])
const n = space.unknownCount
const z = Float64Array.from({ length: n }, (_, p) =>
  p === 0 ? 0.5 : p > space.pieceCount ? 0.3 + 0.1 * (p % 3) : Math.sin(p * 7.3),
)
const forces = Float64Array.from({ length: space.rowCount }, (_, r) => 5 * Math.cos(r * 3.1))
const sumsAt = (at: Float64Array) => {
  const sums = makeChainSums(space)
  differentiateChain(space, at, forces, sums)
  return sums
}

test('slopes of a chain are those of small differences', () => {
  const here = sumsAt(z)
  const slope = (sums: typeof here, p: number) =>
    forces.reduce((sum, force, r) => sum + force * sums.rowSlope[r * n + p]!, sums.variationSlope[p]!)
  const step = 1e-5
  for (let p = 0; p < n; p++) {
    const low = sumsAt(z.with(p, z[p]! - step))
    const high = sumsAt(z.with(p, z[p]! + step))
    expectWithin(here.variationSlope[p], (high.variation - low.variation) / (2 * step), 1e-6, `variation by ${p}`)
    for (let r = 0; r < space.rowCount; r++) {
      expectWithin(here.rowSlope[r * n + p], (high.rows[r]! - low.rows[r]!) / (2 * step), 1e-8, `row ${r} by ${p}`)
    }
    for (let q = 0; q < n; q++) {
      const second = (slope(high, q) - slope(low, q)) / (2 * step)
      expectWithin(here.bend[Math.max(p, q) * n + Math.min(p, q)], second, 1e-5, `bend by ${p} and ${q}`)
    }
  }
})

test('rows of a chain are the places of the curve with its pieces', () => {
  let bend = z[0]!
  const pieces = space.spanOf.map((span, i) => {
    const startCurvaturePerMm = bend
    bend += z[1 + i]!
    const lengthMm = z[1 + space.pieceCount + span]! * space.shareOf[i]!
    return { lengthMm, startCurvaturePerMm, endCurvaturePerMm: bend }
  })
  const curve = makeCurve({ point: { x: 0, y: 0 }, headingRad: Math.PI / 2 }, pieces)
  const { rows } = sumsAt(z)
  for (const [j, last] of [3, 5, 9].entries()) {
    expectWithin(rows[2 * j], curve.places[last]!.point.x, 1e-9, 'x')
    expectWithin(rows[2 * j + 1], curve.places[last]!.point.y, 1e-9, 'y')
  }
  expectWithin(rows[6], curve.places[9]!.headingRad, 1e-12, 'heading')
  expectWithin(rows[7], bend, 1e-12, 'curvature')
})

test('a positive matrix is solved, another refused', () => {
  // A = [[4, 2, 0], [2, 5, 3], [0, 3, 6]], b = A (1, -2, 3)
  const a = Float64Array.of(4, 0, 0, 2, 5, 0, 0, 3, 6)
  const x = Float64Array.of(0, 1, 12)
  expect(factorPositive(a, 3)).toBe(true)
  solveLower(a, 3, x)
  solveUpper(a, 3, x)
  for (const [i, value] of [1, -2, 3].entries()) expectWithin(x[i], value, 1e-14)
  expect(factorPositive(Float64Array.of(1, 0, 2, 1), 2)).toBe(false)
  expect(factorPositive(Float64Array.of(1, 0, 1, 1), 2)).toBe(false)
})

test('the turns let through the most that any three turns can', () => {
  const wishes = fc.array(fc.integer({ min: -5, max: 5 }), { minLength: 1, maxLength: 9 })
  fc.assert(
    fc.property(wishes, (wishList) => {
      const wish = Float64Array.from(wishList)
      const lengths = wish.map((_, i) => 1 + (i % 3))
      const through = (turns: readonly number[]) =>
        wish.reduce((sum, w, i) => sum + (w * signBetweenTurns(turns, i) > 0 ? (w * w) / lengths[i]! : 0), 0)
      let most = 0
      for (let a = 0; a <= wish.length; a++) {
        for (let b = a; b <= wish.length; b++) {
          for (let c = b; c <= wish.length; c++) most = Math.max(most, through([a, b, c]))
        }
      }
      const turns = chooseTurns(wish, lengths)
      expectWithin(through(turns), most, 1e-12)
      const near = chooseTurns(
        wish.map((w) => -w),
        lengths,
        turns,
        1,
      )
      near.forEach((turn, t) => expect(Math.abs(turn - turns[t]!)).toBeLessThanOrEqual(1))
    }),
    { seed: 5, numRuns: 300 },
  )
})
