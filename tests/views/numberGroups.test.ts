import { expect, it } from 'vitest'
import { NUMBER_KEYS } from '../../src/core/catalogue.ts'
import { groupNumbers } from '../../src/views/sheets/numberGroups.ts'
import { toleranceGroups } from '../../src/views/shop/toleranceGroups.ts'

it('every number stands in one part of the table of all numbers, and in one only', () => {
  const shown = groupNumbers('').flatMap(({ single, rows }) => [...single, ...rows.flatMap(({ keys }) => keys)])
  expect(shown.toSorted()).toEqual([...NUMBER_KEYS].toSorted())
})

it('no two numbers under one heading of the tolerances are of different lists', () => {
  const groups = toleranceGroups(NUMBER_KEYS)
  expect(groups.flatMap(({ keys }) => keys).toSorted()).toEqual([...NUMBER_KEYS].toSorted())
  for (const { heading, keys } of groups) {
    expect(heading).toMatch(/^[A-Z]/)
    expect(new Set(keys.map((key) => (key.includes('[]') ? key.slice(0, key.lastIndexOf('[]')) : ''))).size).toBe(1)
  }
})
