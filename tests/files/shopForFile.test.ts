import { expect, it } from 'vitest'
import { parseCommissionText, writeCommissionFile } from '../../src/files/commissionFile.ts'
import { shopForFile } from '../../src/files/shopForFile.ts'
import type { ShopDoc } from '../../src/record/commission.ts'
import { readCommissionFile } from '../../src/record/door.ts'
import { STARTING_SHOP } from '../../src/state/shopStore.ts'
import { DEMO_FIXTURES } from '../generators/demoFixtures.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { beginSteel, countedIds, valueIn } from '../record/fixture.ts'

const shop: ShopDoc = {
  ...STARTING_SHOP,
  name: 'Weir Lane',
  fixtures: structuredClone(DEMO_FIXTURES) as ShopDoc['fixtures'],
}
const MOMENT = '2026-03-14T09:26:53.000Z'

it('carries only the fixtures this instrument uses, and passes the door with them', () => {
  const carried = shopForFile(shop, STEEL_STRING.plan)
  expect(
    Object.values(carried.fixtures)
      .map(({ name }) => name)
      .sort(),
  ).toEqual(['Back dish', 'Flat board', 'Long board', 'Meadow form', 'Meadow mould', 'Top dish'])
  expect(carried).toMatchObject({ name: 'Weir Lane', origin: shop.origin })
  const text = writeCommissionFile(beginSteel(countedIds()), carried, MOMENT)
  const read = valueIn(readCommissionFile(valueIn(parseCommissionText(text))))
  expect(read.shop).toEqual(carried)
})

it('is the same text in whatever order the fixtures came to be', () => {
  const carried = shopForFile(shop, STEEL_STRING.plan)
  const turned = { ...carried, fixtures: Object.fromEntries(Object.entries(carried.fixtures).reverse()) }
  const bundle = beginSteel(countedIds())
  expect(writeCommissionFile(bundle, turned, MOMENT)).toBe(writeCommissionFile(bundle, carried, MOMENT))
})

it('leaves a shop without fixtures as it is', () => {
  expect(shopForFile(STARTING_SHOP, STEEL_STRING.plan)).toBe(STARTING_SHOP)
})

it('keeps to itself which boxes were tapped', () => {
  const tap = { number: '26-07', title: 'Meadow', ratio: 0.8 }
  const shop = { ...STARTING_SHOP, taps: { '0dd0de15-0000-4000-8000-000000000009': tap } }
  expect(shopForFile(shop, STEEL_STRING.plan)).toEqual(STARTING_SHOP)
})

it('keeps the building orders of the shop at home', () => {
  const patterns = { [countedIds('c')()]: { name: 'Mine', family: 'small' as const, stages: {} } }
  expect(shopForFile({ ...STARTING_SHOP, patterns }, STEEL_STRING.plan).patterns).toEqual({})
})
