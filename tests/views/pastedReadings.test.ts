import { describe, expect, it } from 'vitest'
import { STARTING_UNITS, type ShopUnits } from '../../src/core/quantity.ts'
import { READING_RANGES } from '../../src/record/fields.ts'
import { readPasted } from '../../src/views/sheets/pastedReadings.ts'

const COLUMNS = [
  { label: 'From the tail', range: READING_RANGES.fromTailMm },
  { label: 'Half-width', range: READING_RANGES.halfWidthMm },
] as const
const IN_INCHES: ShopUnits = { ...STARTING_UNITS, bodyLength: 'fractionalInch' }
const read = (text: string, units = STARTING_UNITS) => readPasted(text, COLUMNS, units)

describe('a pasted table', () => {
  it.each([
    [
      'tabs',
      '20\t117.6\n40\t143.9',
      [
        [20, 117.6],
        [40, 143.9],
      ],
    ],
    [
      'tabs and decimal commas',
      '20,5\t117,6\r\n40\t143,125',
      [
        [20.5, 117.6],
        [40, 143.125],
      ],
    ],
    [
      'semicolons',
      '20;117.6\n\n40; 143,9;',
      [
        [20, 117.6],
        [40, 143.9],
      ],
    ],
    [
      'commas beside decimal points',
      '20,117.6\n40,98',
      [
        [20, 117.6],
        [40, 98],
      ],
    ],
    [
      'commas and blanks',
      '20, 117.6\n40, 143.9',
      [
        [20, 117.6],
        [40, 143.9],
      ],
    ],
    [
      'commas between whole numbers',
      '20,117\n400,138',
      [
        [20, 117],
        [400, 138],
      ],
    ],
    [
      'blanks',
      '  20   117.6\n40 143.9  ',
      [
        [20, 117.6],
        [40, 143.9],
      ],
    ],
    ['blanks and decimal commas', '20,5 117,6', [[20.5, 117.6]]],
    ['decimal commas and a comma between', '20,5, 117,6', [[20.5, 117.6]]],
    [
      'units of their own',
      '2 in\t4 1/2"\n40 mm 14.39 cm',
      [
        [50.8, 114.3],
        [40, 143.9],
      ],
    ],
  ])('is read with %s', (_, text, pairs) => {
    const pasted = read(text)
    expect(pasted.ok ? pasted.pairs.map((pair) => pair.map((mm) => Number(mm.toFixed(9)))) : pasted).toEqual(pairs)
  })

  it('is in inches, fractions too, where the shop is', () => {
    // 3 7/8 in = 98.425 mm, 5 1/2 in = 139.7 mm, by the inch of 25.4 mm.
    const pasted = read('3 7/8 5 1/2\n40 mm;5.5', IN_INCHES)
    expect(pasted).toMatchObject({
      ok: true,
      pairs: [
        [98.425, 139.7],
        [40, 139.7],
      ],
    })
  })

  it('may begin with a heading, which is passed over and said', () => {
    expect(read('from tail\thalf-width\n20\t117.6')).toEqual({ ok: true, pairs: [[20, 117.6]], passedOver: 1 })
    expect(read('')).toEqual({ ok: true, pairs: [], passedOver: null })
  })

  it.each([
    ['a word', '40\tabout a hand', /Half-width: “about” makes no sense/],
    ['one number', '40', /one number stands/],
    ['three numbers', '1\t40\t143.9', /3 numbers stand/],
    ['what may be one number or two', '20,5', /one number or two/],
    ['more than can be built', '40\t900', /Half-width of 900.0 mm is more/],
    ['a second heading', 'half\twidth', /makes no sense/],
  ])('names the line that holds %s and gives no pair', (_, line, sentence) => {
    const pasted = read(`20\t117.6\n${line}\n60\t160.4`)
    expect(pasted).toEqual({ ok: false, problems: [{ line: 2, sentence: expect.stringMatching(sentence) }] })
  })
})
