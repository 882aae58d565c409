import { expect, test } from 'vitest'
import { expectedHz, shopRatio, tellsNext } from '../../src/core/shopAir.ts'
import { expectWithin } from './within.ts'

test('mean, least, greatest and count of what a shop heard', () => {
  const shop = shopRatio([0.8, 0.72, 0.85, 0.83])!
  expectWithin(shop.mean, 0.8, 1e-12)
  expect([shop.least, shop.greatest, shop.count]).toEqual([0.72, 0.85, 4])
})

test('one box is its own mean; before the first there is none', () => {
  expect(shopRatio([0.8])).toEqual({ mean: 0.8, least: 0.8, greatest: 0.8, count: 1 })
  expect(shopRatio([])).toBeNull()
})

test('what is no ratio is passed over', () => {
  expect(shopRatio([Number.NaN, 0, -1, Number.POSITIVE_INFINITY])).toBeNull()
  expect(shopRatio([0.8, Number.NaN])?.count).toBe(1)
})

test('a rigid box of 125 Hz is expected where the shop’s boxes were', () => {
  const { meanHz, leastHz, greatestHz } = expectedHz(125, { mean: 0.8, least: 0.72, greatest: 0.88, count: 3 })
  expectWithin(meanHz, 100, 1e-12)
  expectWithin(leastHz, 90, 1e-12)
  expectWithin(greatestHz, 110, 1e-12)
})

test('three boxes are enough to go by, two are not', () => {
  expect(tellsNext(shopRatio([0.8, 0.75]))).toBe(false)
  expect(tellsNext(shopRatio([0.8, 0.75, Number.NaN]))).toBe(false)
  expect(tellsNext(shopRatio([0.8, 0.75, 0.78]))).toBe(true)
  expect(tellsNext(null)).toBe(false)
})
