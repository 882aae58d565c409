import type { Draft } from 'immer'
import type { Fixture } from '../../core/fixture.ts'
import type { ShopRecord } from '../commission.ts'
import type { Recipe } from '../edit.ts'
import { placeBefore } from '../order.ts'

type WithoutOrder<One> = One extends unknown ? Omit<One, 'order'> : never
/** A fixture before it has its place among the others. */
export type NewFixture = WithoutOrder<Fixture>

type Board = Extract<Fixture, { kind: 'contourBoard' }>
type Dish = Extract<Fixture, { kind: 'dish' }>
type Form = Extract<Fixture, { kind: 'bendingForm' }>
/** What of a fixture can be set anew; the outline a mould or form was made to stays with it. */
export type FixtureValues = Partial<
  Pick<Fixture, 'name'> & (Pick<Board, 'radiusMm'> | Pick<Dish, 'radiusMm' | 'diameterMm'> | Pick<Form, 'insetMm'>)
>

/** Adds a fixture as the last; `id` is a fresh uuid. */
export function addFixture(id: string, fixture: NewFixture): Recipe<ShopRecord> {
  return ({ doc }) => {
    doc.fixtures[id] = { ...structuredClone(fixture), order: '' } as Draft<Fixture>
    placeBefore(doc.fixtures, id, null)
  }
}

/** Sets some values of one fixture; an id that is not there changes nothing. */
export function changeFixture(id: string, values: FixtureValues): Recipe<ShopRecord> {
  return ({ doc }) => {
    const fixture = doc.fixtures[id]
    if (fixture !== undefined) Object.assign(fixture, values)
  }
}

export function removeFixture(id: string): Recipe<ShopRecord> {
  return ({ doc }) => {
    delete doc.fixtures[id]
  }
}

/** Puts a fixture before another; null: last. */
export function moveFixture(id: string, beforeId: string | null): Recipe<ShopRecord> {
  return ({ doc }) => placeBefore(doc.fixtures, id, beforeId)
}
