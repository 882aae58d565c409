import { describe, expect, it } from 'vitest'
import { CATALOGUE, NUMBER_KEYS } from '../../src/core/catalogue.ts'
import { PLAN_FIELDS } from '../../src/core/plan.ts'
import { FIELD_WORDS, PIECE_WORDS, RING_WORDS } from '../../src/words/fields.ts'
import { NUMBER_WORDS } from '../../src/words/numbers.ts'
import * as sheetWords from '../../src/words/sheets.ts'

describe('words of numbers', () => {
  it.each(NUMBER_KEYS)('%s has a name, a sentence, and a way of measuring exactly where it is measured', (key) => {
    const { name, what, how } = NUMBER_WORDS[key]
    expect(name).toMatch(/^[A-Z].{2,44}$/)
    expect(what).toMatch(/^[A-Z].*\.$/)
    expect(how !== null).toBe(CATALOGUE[key].measured !== null)
    if (how !== null) expect(how).toMatch(/^[A-Z].*\.$/)
  })

  it('says of every depth whether the plates are in it', () => {
    const depths = NUMBER_KEYS.filter((key) => /depth|deepest(Side|Inside)Mm/i.test(key) && !key.includes('channel'))
    expect(depths.length).toBeGreaterThan(7)
    const silent = depths.filter(
      (key) => !/plates|bare side/.test(`${NUMBER_WORDS[key].name} ${NUMBER_WORDS[key].what}`),
    )
    expect(silent).toEqual([])
  })

  it('names no two numbers of one part alike', () => {
    for (const part of ['body', 'sides', 'rim[]', 'top', 'back', 'blocks', 'soundhole', 'rosette.rings[]']) {
      const names = NUMBER_KEYS.filter((key) => key.startsWith(`${part}.`)).map((key) => NUMBER_WORDS[key].name)
      expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([])
    }
  })
})

describe('words of fields', () => {
  it.each(PLAN_FIELDS)('%s has a name and a hint', (field) => {
    expect(FIELD_WORDS[field].name).toMatch(/^[A-Z].{2,34}$/)
    expect(FIELD_WORDS[field].hint).toMatch(/\.$/)
  })
})

it('raises its voice nowhere and begs nowhere', () => {
  const all = JSON.stringify([NUMBER_WORDS, FIELD_WORDS, PIECE_WORDS, RING_WORDS, sheetWords])
  expect(all).not.toMatch(/!|please/i)
})
