import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { inOrder, orderBetween, orderStrings, placeBefore } from '../../src/record/order.ts'

describe('order strings', () => {
  it('fall between their neighbours, however often one is put in the same place', () => {
    let [low, high]: [string | null, string | null] = [null, null]
    for (let i = 0; i < 60; i += 1) {
      const made: string = orderBetween(low, high)
      expect(low === null || made > low).toBe(true)
      expect(high === null || made < high).toBe(true)
      expect(made.endsWith('0')).toBe(false)
      if (i % 3 === 0) low = made
      else high = made
    }
  })

  it('come evenly spaced and ascending for a fresh collection', () => {
    for (const count of [0, 1, 3, 34, 35, 47, 200]) {
      const made = orderStrings(count)
      expect(made).toEqual([...new Set(made)].toSorted())
      expect(made).toHaveLength(count)
    }
  })

  it('keep the order of a plain list under any moves', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.nat(6), fc.nat(7)), { maxLength: 120 }), (moves) => {
        const ids = ['a', 'b', 'c', 'd', 'e', 'f', 'g']
        const entries = Object.fromEntries(ids.map((id, i) => [id, { order: orderStrings(7)[i] ?? '' }]))
        let list = ids
        for (const [from, to] of moves) {
          const [id, before] = [ids[from] ?? 'a', ids[to] ?? null]
          if (id === before) continue
          placeBefore(entries, id, before)
          const others = list.filter((one) => one !== id)
          const at = before === null ? others.length : others.indexOf(before)
          list = [...others.slice(0, at), id, ...others.slice(at)]
          expect(inOrder(entries).map(([one]) => one)).toEqual(list)
          for (const { order } of Object.values(entries)) expect(order).toMatch(/^[0-9a-z]{1,40}$/)
        }
      }),
      { numRuns: 60 },
    )
  })

  it('make room where two entries share one string, or the room is used up', () => {
    const entries = { a: { order: 'i' }, b: { order: 'i' }, c: { order: '0' } }
    placeBefore(entries, 'c', 'b')
    expect(inOrder(entries).map(([id]) => id)).toEqual(['a', 'c', 'b'])
  })
})
