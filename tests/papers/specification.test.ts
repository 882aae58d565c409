import { describe, expect, test } from 'vitest'
import { figureText } from '../../src/format/figure.ts'
import type { Page } from '../../src/papers/page.ts'
import type { PaperOrder } from '../../src/papers/paperOrder.ts'
import { laySpecification } from '../../src/papers/specification.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { marksOf, textsOf } from './pageChecks.ts'
import { samplePaperOrder } from './samplePaperOrder.ts'
import { CUTAWAY, STEEL } from './samplePlans.ts'

const INCHES = { bodyLength: 'fractionalInch', domeRadius: 'feetInches', thickness: 'thousandths' } as const

/** What stands to the right of a name on the same line, in its own column. */
function factsOf(pages: readonly Page[]): Map<string, string> {
  const facts = new Map<string, string>()
  for (const page of pages)
    for (const { kind, marks } of page.blocks) {
      if (kind !== 'facts') continue
      const names = marks.filter((mark) => mark.kind === 'text' && mark.anchor === 'start')
      const values = marks.filter((mark) => (mark.kind === 'text' || mark.kind === 'figure') && mark.anchor === 'end')
      for (const name of names) {
        if (name.kind !== 'text') continue
        const [value] = values
          .filter((one) => 'xMm' in one && one.yMm === name.yMm && one.xMm > name.xMm)
          .toSorted((a, b) => ('xMm' in a && 'xMm' in b ? a.xMm - b.xMm : 0))
        if (value?.kind === 'text') facts.set(name.text, value.text)
        if (value?.kind === 'figure') facts.set(name.text, value.word || figureText(value.figure))
      }
    }
  return facts
}
const factsFor = (order: PaperOrder) => factsOf(laySpecification(order))

test('what was entered stands there, in the shop’s millimetres', () => {
  // From the steel-string model as its maker entered it.
  expect(Object.fromEntries(factsFor(samplePaperOrder(STEEL_STRING.plan)))).toMatchObject({
    Number: '0412',
    'Kind of instrument': 'Steel string',
    Client: 'Tamsin Oakhollow',
    'Ordered on': '20 Jan 2027',
    'Promised for': '30 Nov 2027',
    'Body length': '496.0 mm',
    'Lower bout': '392.0 mm',
    Waist: '238.0 mm',
    'Upper bout': '290.0 mm',
    // Rim and both plates: 106 + 2.8 + 2.5.
    'Body depth at the tail, with plates': '111.3 mm',
    'Dome of the top': '8.5 m',
    'Dome of the back': '4.6 m',
    'Hand it is played with': 'Right hand',
    'Top thickness': '2.8 mm',
    'Side thickness': '2.2 mm',
    'Small parts': 'not chosen yet',
    'Binding, height': '6.0 mm',
    'Radius of the hole': '50.0 mm',
    'Ring 2, inner and outer radius': '58.5 mm to 62.5 mm',
    'Scale length': '645.00 mm',
    Frets: '20',
    'Fret at the joint': '14',
    'Width at the nut': '44.0 mm',
    'Tuning, bass to treble': 'E2 A2 D3 G3 B3 E4',
    'E2, wound on steel': '1.35 mm',
    // 16 thousandths of an inch are 0.4064 mm.
    'B3, plain steel': '0.41 mm',
    'Action, bass': '2.4 mm',
    'Action, treble': '1.8 mm',
    'Bridge length': '155.0 mm',
    'Joint of neck and body': 'Tenon, bolted',
    'Head angle': '15.00°',
    Tuners: 'On both sides',
  })
})

test('in inches where the shop reads them so', () => {
  const order = samplePaperOrder(STEEL_STRING.plan)
  const facts = factsFor({ ...order, shop: { ...order.shop, units: INCHES } })
  // 496 / 25.4 = 19.5276: 17/32 is 19.53125, less 4 thousandths. 645 / 25.4 = 25.394. 2.8 / 25.4 = 0.110.
  expect(facts.get('Body length')).toBe('19 17/32" -4 thou')
  expect(facts.get('Scale length')).toBe('25.394 in')
  expect(facts.get('Top thickness')).toBe('110 thou')
  expect(facts.get('B3, plain steel')).toBe('0.016 in')
})

test('every wood that was chosen, by its part', () => {
  const { woods } = STEEL_STRING.plan.cutting
  const facts = factsFor(samplePaperOrder(STEEL_STRING.plan))
  expect(facts.get('Top')).toBe(woods.top)
  expect(facts.get('Sides')).toBe(woods.sides)
  expect(facts.get('Fingerboard')).toBe(woods.board)
})

test('what an instrument has none of is left out', () => {
  const plain = factsFor(
    samplePaperOrder({
      ...STEEL,
      binding: { ...STEEL.binding, topPurflingMm: 0 },
      rosette: { ...STEEL.rosette, rings: {} },
    }),
  )
  expect(plain.has('Purfling of the top')).toBe(false)
  expect(plain.get('Rings')).toBe('none')
  expect(plain.get('Cutaway')).toBe('None')
  expect(factsFor(samplePaperOrder(CUTAWAY)).get('Cutaway')).toBe('Pointed horn')
})

describe('what is signed', () => {
  const pages = laySpecification(samplePaperOrder(STEEL_STRING.plan))
  const block = pages.flatMap(({ blocks }) => blocks).find(({ kind }) => kind === 'signatures')!
  const texts = block.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []))

  test('names number and revision, and who signs', () => {
    expect(texts.join(' ')).toMatch(/instrument 0412 .*revision 7QK4ZD/u)
    expect(texts).toContain('Client: Tamsin Oakhollow')
    expect(texts).toContain('Maker: Oakhollow workshop')
    expect(texts.filter((text) => text === 'Date')).toHaveLength(2)
  })

  test('has a line a name fits on, and one for the day, for each of them', () => {
    const lines = block.marks.filter((mark) => mark.kind === 'rule')
    expect(lines).toHaveLength(4)
    for (const line of lines) expect(line.toXMm - line.fromXMm).toBeGreaterThan(25)
    // Room above the lines to write in.
    const above = Math.max(
      ...block.marks.flatMap((mark) => (mark.kind === 'text' && mark.yMm < lines[0]!.fromYMm ? [mark.yMm] : [])),
    )
    expect(lines[0]!.fromYMm - above).toBeGreaterThan(10)
  })

  test('stands on one page whole, the last one', () => {
    expect(pages.at(-1)!.blocks.some(({ kind }) => kind === 'signatures')).toBe(true)
  })
})

test('wishes stand there in the client’s own words, all of them, however many', () => {
  const order = samplePaperOrder(STEEL_STRING.plan)
  const wishes = Array.from({ length: 900 }, (_, i) => `wish${i}`).join(' ')
  const told = (text: string) =>
    laySpecification({ ...order, doc: { ...order.doc, brief: { ...order.doc.brief, wishes: text } } })
  const words = told(wishes)
    .flatMap(textsOf)
    .join(' ')
    .match(/wish\d+/gu)
  expect(words).toEqual(wishes.split(' '))
  expect(told('').flatMap(textsOf)).not.toContain('Wishes')
})

test('nothing the shop keeps to itself: no notes, no contact, no price', () => {
  const all = laySpecification(samplePaperOrder(STEEL_STRING.plan)).flatMap(textsOf).join(' ')
  expect(all).not.toMatch(/three parts|price|€|\$|£/iu)
})

test('an instrument for stock, by a shop without a name', () => {
  const order = samplePaperOrder(STEEL_STRING.plan)
  const pages = laySpecification({
    ...order,
    doc: { ...order.doc, brief: { ...order.doc.brief, client: '', orderedOn: null } },
    shop: { ...order.shop, name: '' },
  })
  const facts = factsOf(pages)
  expect(facts.get('Client')).toBe('for stock')
  expect(facts.get('Ordered on')).toBe('no day set')
  expect(pages.flatMap(marksOf).some((mark) => mark.kind === 'text' && mark.text === 'Maker')).toBe(true)
})
