import { describe, expect, test } from 'vitest'
import { UNPLACED_REASONS } from '../../src/core/wood/boardLayout.ts'
import { ROLE_OF_PART, WOOD_ROLES } from '../../src/core/wood/part.ts'
import { PART_NAMES, partName, quartersText, UNPLACED_WORDS, WOOD_ROLE_NAMES } from '../../src/words/wood.ts'

describe('words of the wood list', () => {
  test('no two parts, and no two woods, go by one name', () => {
    for (const names of [PART_NAMES, WOOD_ROLE_NAMES].map((words) => Object.values(words)))
      expect(new Set(names.map((name) => name.toLowerCase())).size).toBe(names.length)
    expect(Object.keys(PART_NAMES).toSorted()).toEqual(Object.keys(ROLE_OF_PART).toSorted())
    expect(Object.keys(WOOD_ROLE_NAMES)).toEqual([...WOOD_ROLES])
  })

  test('every reason says what is wrong and ends as a sentence', () => {
    for (const reason of UNPLACED_REASONS) expect(UNPLACED_WORDS[reason]).toMatch(/^[A-Z][^.]+\. .*\.$/)
  })

  test('which of several, and of which half', () => {
    expect(partName({ key: 'topBrace', row: 3, half: 'either' })).toBe('Brace of the top 3')
    expect(partName({ key: 'side', row: 2, half: 'treble' })).toBe('Side 2, treble side')
    expect(partName({ key: 'nut', row: 'none', half: 'either' })).toBe('Nut')
    expect(quartersText(8)).toBe('8/4')
  })
})
