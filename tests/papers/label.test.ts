import { expect, test } from 'vitest'
import { layLabel } from '../../src/papers/label.ts'
import type { Area, Block, BoxMark } from '../../src/papers/page.ts'
import type { PaperOrder } from '../../src/papers/paperOrder.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { anyOverlap, areaOf, isInside, textsOf } from './pageChecks.ts'
import { samplePaperOrder } from './samplePaperOrder.ts'

const labelsOf = (order: PaperOrder): Block[] =>
  layLabel(order).flatMap(({ blocks }) => blocks.filter(({ kind }) => kind === 'label'))
const frameOf = ({ marks }: Block): BoxMark => marks.find((mark) => mark.kind === 'box')!
const lettersOf = ({ marks }: Block) => marks.filter((mark) => mark.kind === 'text')

const ORDER = samplePaperOrder(STEEL_STRING.plan)
const long = (text: string): PaperOrder => ({
  ...ORDER,
  doc: { ...ORDER.doc, number: text.slice(0, 40), title: text },
  shop: { ...ORDER.shop, name: text },
})

test('one page with two labels of 90 by 50 mm, alike to the last line', () => {
  expect(layLabel(ORDER)).toHaveLength(1)
  const labels = labelsOf(ORDER)
  expect(labels).toHaveLength(2)
  for (const label of labels) expect(frameOf(label)).toMatchObject({ widthMm: 90, heightMm: 50 })
  const [a, b] = labels.map((label) => {
    const { xMm, yMm } = frameOf(label)
    return lettersOf(label).map((mark) => [mark.text, mark.sizePt, mark.xMm - xMm, (mark.yMm - yMm).toFixed(6)])
  })
  expect(a).toEqual(b)
  expect(textsOf(layLabel(ORDER)[0]!).join(' ')).toContain('90.0 mm × 50.0 mm')
})

test('says whose it is, what it is, its number and the year it was made', () => {
  for (const label of labelsOf(ORDER))
    expect(lettersOf(label).map(({ text }) => text)).toEqual([
      'Oakhollow workshop',
      'Steel-string, 14 frets to the body',
      'Steel string',
      'No. 0412',
      '2027',
      'Signed',
    ])
})

test.each([
  ['short', ORDER],
  ['long', long('Oakhollow and daughters, makers of wide and narrow things, '.repeat(4).slice(0, 200))],
  ['wide', long('W'.repeat(200))],
])('%s names: every line stands inside the label, clear of its edge and of the others', (_, order) => {
  for (const label of labelsOf(order)) {
    const { xMm, yMm, widthMm, heightMm } = frameOf(label)
    const inner: Area = { xMm: xMm + 3, yMm: yMm + 3, widthMm: widthMm - 6, heightMm: heightMm - 4 }
    const areas = lettersOf(label).map(areaOf)
    expect(areas.filter((area) => !isInside(area, inner))).toEqual([])
    expect(anyOverlap(areas)).toBe(false)
    for (const { sizePt } of lettersOf(label)) expect(sizePt).toBeGreaterThanOrEqual(8)
  }
})

test('marks to cut along stand in line with the edges and off the label', () => {
  for (const label of labelsOf(ORDER)) {
    const frame = frameOf(label)
    const [right, bottom] = [frame.xMm + frame.widthMm, frame.yMm + frame.heightMm]
    const outside = label.marks.filter((mark) => mark.kind === 'rule').filter((rule) => !isInside(areaOf(rule), frame))
    expect(outside).toHaveLength(8)
    for (const rule of outside) {
      if (rule.fromYMm === rule.toYMm) {
        expect([frame.yMm, bottom]).toContain(rule.fromYMm)
        expect(rule.toXMm <= frame.xMm - 2 || rule.fromXMm >= right + 2).toBe(true)
      } else {
        expect([frame.xMm, right]).toContain(rule.fromXMm)
        expect(rule.toYMm <= frame.yMm - 2 || rule.fromYMm >= bottom + 2).toBe(true)
      }
    }
  }
})

test('names only the unit that stands on it', () => {
  const text = textsOf(layLabel(ORDER)[0]!).join(' ')
  expect(text).toContain('Units: mm;')
  expect(text).not.toContain('domes')
})
