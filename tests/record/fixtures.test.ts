import { describe, expect, it } from 'vitest'
import {
  addFixture,
  changeFixture,
  moveFixture,
  type NewFixture,
  removeFixture,
} from '../../src/record/changes/fixtures.ts'
import { beginShop } from '../../src/record/changes/begin.ts'
import type { Change, ShopRecord } from '../../src/record/commission.ts'
import { editDocument, type Recipe } from '../../src/record/edit.ts'
import { MOST_FIXTURES } from '../../src/record/fields.ts'
import { inOrder } from '../../src/record/order.ts'
import { takeBack } from '../../src/record/undo.ts'
import { STARTING_SHOP } from '../../src/state/shopStore.ts'
import { DEMO_FIXTURES } from '../generators/demoFixtures.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { countedIds, metaWith, valueIn } from './fixture.ts'

const newId = countedIds('b')
const board: NewFixture = { kind: 'contourBoard', name: 'Board', radiusMm: 1000 }
const dish: NewFixture = { kind: 'dish', name: 'Dish', radiusMm: 4600, diameterMm: 610 }

interface Shop {
  readonly row: ShopRecord
  readonly changes: readonly Change[]
}
const begin = (): Shop => valueIn(beginShop(STARTING_SHOP, metaWith(newId)))
const answer = (shop: Shop, recipe: Recipe<ShopRecord>, gesture = newId()) =>
  editDocument(shop.row, shop.changes, recipe, metaWith(newId, gesture))
function after(shop: Shop, ...recipes: Recipe<ShopRecord>[]): Shop {
  return recipes.reduce((now, recipe) => {
    const { row, changes } = valueIn(answer(now, recipe))
    return { row, changes: [...now.changes, ...changes] }
  }, shop)
}
const names = ({ row }: Shop) => inOrder(row.doc.fixtures).map(([, { name }]) => name)

describe('the fixtures of the shop', () => {
  const [a, b, c] = [newId(), newId(), newId()]
  const three = after(begin(), addFixture(a, board), addFixture(b, dish), addFixture(c, { ...board, name: 'Last' }))

  it('are added last, moved, and changed one by one, one entry of the log each', () => {
    expect(names(three)).toEqual(['Board', 'Dish', 'Last'])
    expect(names(after(three, moveFixture(c, a)))).toEqual(['Last', 'Board', 'Dish'])
    expect(names(after(three, moveFixture(a, null)))).toEqual(['Dish', 'Last', 'Board'])
    const changed = valueIn(answer(three, changeFixture(b, { radiusMm: 8500 })))
    expect(changed.changes.map(({ path }) => path.join('.'))).toEqual([`doc.fixtures.${b}.radiusMm`])
    expect(valueIn(answer(three, changeFixture(newId(), { name: 'Nobody' }))).changes).toEqual([])
  })

  it('come back as they were when a removal is undone', () => {
    const gesture = newId()
    const { row, changes } = valueIn(answer(three, removeFixture(a), gesture))
    expect(Object.keys(row.doc.fixtures)).not.toContain(a)
    const log = [...three.changes, ...changes]
    const back = valueIn(takeBack(row, log, [], gesture, metaWith(newId)))
    expect(back.row.doc.fixtures).toEqual(three.row.doc.fixtures)
  })

  it('keep a whole outline, apart from the instrument it came from', () => {
    const { outline } = STEEL_STRING.plan
    const kept = after(three, addFixture(newId(), { kind: 'mould', name: 'Mould', outline }))
    const mould = Object.values(kept.row.doc.fixtures).find(({ kind }) => kind === 'mould')
    expect(mould).toMatchObject({ outline })
  })

  it('refuse a radius out of range, a flat dish, a measure of another kind, and one too many', () => {
    for (const values of [{ radiusMm: 3 }, { radiusMm: 'flat' as const }, { insetMm: 2 }])
      expect(answer(three, changeFixture(b, values)).ok).toBe(false)
    expect(answer(three, changeFixture(a, { radiusMm: 'flat' })).ok).toBe(true)
    const full = after(begin(), ({ doc }) => {
      for (let i = 0; i < MOST_FIXTURES; i += 1) doc.fixtures[newId()] = { ...board, order: 'm' } as never
    })
    expect(answer(full, addFixture(newId(), board)).ok).toBe(false)
  })

  it('of the demo pass the door', () => {
    expect(beginShop({ ...STARTING_SHOP, fixtures: structuredClone(DEMO_FIXTURES) as never }, metaWith(newId)).ok).toBe(
      true,
    )
  })
})
