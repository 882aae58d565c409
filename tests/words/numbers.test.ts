import { describe, expect, it } from 'vitest'
import { aboutNumber, CATALOGUE, NUMBER_KEYS } from '../../src/core/catalogue.ts'
import { PLAN_FIELDS } from '../../src/core/planFields.ts'
import { FIELD_WORDS, PIECE_WORDS, RING_WORDS } from '../../src/words/fields.ts'
import { NUMBER_WORDS } from '../../src/words/numbers.ts'
import * as measuringWords from '../../src/words/measuring.ts'
import { SHEET_LEADS } from '../../src/words/sheetLeads.ts'
import * as sheetWords from '../../src/words/sheets.ts'

/** Signs that fit in two or three lines of the help. */
const LONGEST = 180

/** What a source of each kind has to own up to; a published one is known by its year or the number of its standard, table or equation. */
const KIND_OF_SOURCE = {
  published: /\b(19|20)\d\d\b|\b(ISO|ASTM|EN|DIN|table|Eq\.) ?\w*\d/,
  derived: /derived|entered/i,
  practice: /practice/i,
  memory: /from memory/i,
}

/** A letter is told by a word after it ("R dish radius", "a and b the plates"), or by a sum of its own. */
const isTold = (letter: string, formula: string): boolean =>
  new RegExp(
    `(?<![\\p{L}\\d])${letter}((,| and) \\p{L}\\d?)* (the |how |in |from |along )?\\p{L}{2,}|(?<![\\p{L}\\d])${letter} = `,
    'u',
  ).test(formula)

describe('words of numbers', () => {
  it.each(NUMBER_KEYS)('%s has a name, a sentence, and a way of measuring exactly where it is measured', (key) => {
    const { name, what, how } = NUMBER_WORDS[key]
    expect(name).toMatch(/^[A-Z].{2,44}$/)
    expect(what).toMatch(/^[A-Z].*\.$/)
    expect(how !== null).toBe(CATALOGUE[key].measured !== null)
    if (how !== null) expect(how).toMatch(/^[A-Z].*\.$/)
  })

  it.each(NUMBER_KEYS)('%s says how it is worked out and after whom, in a line or two', (key) => {
    const { what, how, formula, from } = NUMBER_WORDS[key]
    expect(formula).toMatch(/^\S.*\.$/)
    expect(formula.length).toBeLessThanOrEqual(LONGEST)
    expect(from).toMatch(/^[A-Z].*\.$/)
    expect(from.length).toBeLessThanOrEqual(LONGEST)
    expect(new Set([what, how, formula, from]).size).toBe(4)
    expect(`${formula} ${from}`).not.toMatch(/[\\_{}$*]/)
  })

  it.each(NUMBER_KEYS)('%s tells the kind of source that stands in the catalogue', (key) => {
    expect(NUMBER_WORDS[key].from).toMatch(KIND_OF_SOURCE[aboutNumber(key).source])
  })

  it('calls every estimate one', () => {
    const silent = NUMBER_KEYS.filter((key) => aboutNumber(key).standing === 'estimate').filter((key) => {
      const { what, formula, from } = NUMBER_WORDS[key]
      return !/estimate/i.test(`${what} ${formula} ${from}`)
    })
    expect(silent).toEqual([])
  })

  it('tells every letter it reckons with', () => {
    const untold = NUMBER_KEYS.flatMap((key) => {
      const letters = new Set(
        NUMBER_WORDS[key].formula.replaceAll('’s', '').match(/(?<![\p{L}\d])[A-Zb-z](?![\p{L}\d])/gu),
      )
      return [...letters]
        .filter((letter) => !isTold(letter, NUMBER_WORDS[key].formula))
        .map((letter) => `${key}: ${letter}`)
    })
    expect(untold).toEqual([])
  })

  it('says of every depth whether the plates are in it', () => {
    const depths = NUMBER_KEYS.filter(
      (key) => /depth|deepest(Side|Inside)Mm/i.test(key) && !/channel|slotDepth|rodDepth|tenonDepth/.test(key),
    )
    expect(depths.length).toBeGreaterThan(7)
    const silent = depths.filter(
      (key) => !/plates|bare side/.test(`${NUMBER_WORDS[key].name} ${NUMBER_WORDS[key].what}`),
    )
    expect(silent).toEqual([])
  })

  it('names no two numbers of one part alike', () => {
    const lists = [
      'rim[]',
      'trebleRim[]',
      'places[]',
      'treblePlaces[]',
      'readings[]',
      'blanks[]',
      'rosette.rings[]',
      'frets[]',
      'strings[]',
      'pins[]',
      'tuners[]',
      'edgePlaces[]',
      'edgeStrips[]',
    ]
    const braces = ['sideBraces[]', 'trebleBraces[]']
    const parts = [
      'body',
      'fit',
      'cutaway',
      'sides',
      'linings',
      'caul',
      'top',
      'back',
      'blocks',
      'soundhole',
      'board',
      'setup',
      'stringSet',
      'neckSet',
      'bridge',
      'neck',
      'head',
      'edges',
      'endWedge',
      'backStrip',
    ]
    for (const part of [...parts, ...lists, ...braces]) {
      const names = NUMBER_KEYS.filter((key) => key.startsWith(`${part}.`)).map((key) => NUMBER_WORDS[key].name)
      expect(names).not.toEqual([])
      expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([])
    }
  })
})

it('shares the columns of stations and named places between both sides', () => {
  for (const list of ['trebleRim', 'places', 'treblePlaces'] as const)
    expect(NUMBER_WORDS[`${list}[].topProudOuterMm`]).toEqual(NUMBER_WORDS['rim[].topProudOuterMm'])
})

describe('words of fields', () => {
  it.each(PLAN_FIELDS)('%s has a name and a hint', (field) => {
    expect(FIELD_WORDS[field].name).toMatch(/^[A-Z].{2,34}$/)
    expect(FIELD_WORDS[field].hint).toMatch(/\.$/)
  })
})

it('raises its voice nowhere and begs nowhere', () => {
  const all = JSON.stringify([
    NUMBER_WORDS,
    FIELD_WORDS,
    PIECE_WORDS,
    RING_WORDS,
    measuringWords,
    SHEET_LEADS,
    sheetWords,
  ])
  expect(all).not.toMatch(/!|please/i)
})
