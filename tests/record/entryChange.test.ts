import { expect, test } from 'vitest'
import { entryChange } from '../../src/record/entryChange.ts'

const set = [
  { note: 40, diameterMm: 1.35 },
  { note: 45, diameterMm: 1.07 },
]

test('tells in how many a list differs, before it looks at any of them', () => {
  expect(entryChange(set, [...set, { note: 50, diameterMm: 0.8 }])).toEqual({ kind: 'count', before: 2, after: 3 })
})

test('tells the one value that differs, and of which', () => {
  expect(entryChange(set, set.with(1, { note: 43, diameterMm: 1.07 }))).toEqual({ kind: 'entry', at: 1, key: 'note' })
})

test.each<[string, unknown, unknown]>([
  ['nothing differs', set, set.map((one) => ({ ...one }))],
  ['two values differ', set, set.with(0, { note: 38, diameterMm: 1.4 })],
  ['it is no list', 7, set],
  ['its entries are no objects', [1, 2], [1, 3]],
])('says nothing where %s', (_, before, after) => expect(entryChange(before, after)).toBeNull())
