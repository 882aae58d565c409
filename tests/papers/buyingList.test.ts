import { expect, test } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import { cutList } from '../../src/core/wood/cutList.ts'
import { layBuyingList } from '../../src/papers/buyingList.ts'
import type { Mark, Page } from '../../src/papers/page.ts'
import { partName } from '../../src/words/wood.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { textsOf } from './pageChecks.ts'
import { samplePaperOrder } from './samplePaperOrder.ts'
import { CUTAWAY } from './samplePlans.ts'

/** The rows of tables of one kind: what stands between one box to tick and the next, left to right. */
function rowsOf(pages: readonly Page[], kind: 'buying' | 'parts'): string[][] {
  return pages.flatMap(({ blocks }) =>
    blocks
      .filter((block) => block.kind === kind)
      .flatMap(({ marks }) => {
        const tops = ticksOf(marks).map(({ yMm }) => yMm)
        return tops.map((top, i) => {
          const inRow = marks.filter(
            (mark) => mark.kind === 'text' && mark.yMm > top && mark.yMm < (tops[i + 1] ?? Number.POSITIVE_INFINITY),
          )
          return inRow.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []))
        })
      }),
  )
}
const ticksOf = (marks: readonly Mark[]) => marks.filter((mark) => mark.kind === 'box')

const left = ({ cutting }: typeof STEEL_STRING.plan) => ({ ...cutting, sawKerfMm: cutting.kerfMm })

test.each([
  ['steel string', STEEL_STRING.plan],
  ['pointed cutaway', CUTAWAY],
])('%s: every part of the cut list once, with a box to tick', (_, plan) => {
  const parts = cutList(plan, compute(plan).numbers, left(plan))
  const rows = rowsOf(layBuyingList(samplePaperOrder(plan)), 'parts')
  expect(rows).toHaveLength(parts.length)
  const names = rows.map((row) => row.join(' '))
  for (const part of parts) {
    const words = partName(part).split(' ')
    expect(names.filter((name) => words.every((word) => name.includes(word))).length).toBeGreaterThan(0)
  }
})

test('sizes as they were entered, finished and rough, in the shop’s units', () => {
  const order = samplePaperOrder(STEEL_STRING.plan)
  const rows = rowsOf(layBuyingList(order), 'parts')
  // Half of 392 wide; 6 mm left round the plate, 3 of them at the joint's edge, and 1 on the thickness.
  const half = rows.find(([name]) => name === 'Half of the top')!
  expect(half.slice(1, 3)).toEqual(['2', '496.0 × 196.0 × 2.8 mm'])
  expect(rows.find(([name]) => name === 'Bridge')![2]).toMatch(/^155\.0 × 32\.0 × /u)
  const inches = { bodyLength: 'fractionalInch', domeRadius: 'feetInches', thickness: 'thousandths' } as const
  const inInches = rowsOf(layBuyingList({ ...order, shop: { ...order.shop, units: inches } }), 'parts')
  // 496 / 25.4 = 19.5276, 196 / 25.4 = 7.7165, 2.8 / 25.4 = 0.1102.
  expect(inInches.find(([name]) => name === 'Half of the top')!.join(' ')).toContain('19.528 in × 7.717 in × 110 thou')
})

test('a board to buy for every wood and thickness, and under it the parts that come from it', () => {
  const pages = layBuyingList(samplePaperOrder(STEEL_STRING.plan))
  const bought = rowsOf(pages, 'buying')
  const { woods } = STEEL_STRING.plan.cutting
  expect(bought[0]!.slice(0, 3)).toEqual(['Top', woods.top, '2/4 (12.7 mm)'])
  const headings = pages
    .flatMap(({ blocks }) => blocks.filter(({ kind }) => kind === 'heading'))
    .flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])))
    .filter((text) => /\d\/4/u.test(text) && !text.includes('continued'))
  expect(headings).toHaveLength(bought.length)
  expect(headings[0]).toBe(`Top: ${woods.top}, 2/4 (12.7 mm)`)
})

test('board feet are a volume by its definition, never less than it', () => {
  const bought = rowsOf(layBuyingList(samplePaperOrder(STEEL_STRING.plan)), 'buying')
  for (const row of bought) {
    const litres = Number(/^<?([\d.]+) l$/u.exec(row.at(-2)!)![1])
    // 144 cubic inches are 2.3597 litres; a volume is shown to 0.01 litre, board feet to 0.1, rounded up.
    expect(Number(row.at(-1))).toBeGreaterThan((litres - 0.0051) / 2.35974)
    expect(Number(row.at(-1))).toBeLessThan((litres + 0.0051) / 2.35974 + 0.1001)
  }
})

test('boxes are large enough for a pencil’s tick, and the saw’s caution stands before the parts', () => {
  const pages = layBuyingList(samplePaperOrder(STEEL_STRING.plan))
  for (const { blocks } of pages)
    for (const { kind, marks } of blocks)
      if (kind === 'buying' || kind === 'parts')
        for (const box of ticksOf(marks)) if (box.kind === 'box') expect(box.widthMm).toBeGreaterThanOrEqual(5)
  expect(pages.flatMap(textsOf).join(' ')).toMatch(/Guards on.*Half of the top/su)
})

test('names only the units that stand on it: of lengths and thicknesses, of no dome', () => {
  const order = samplePaperOrder(STEEL_STRING.plan)
  const unitsOf = (units: typeof order.shop.units) =>
    layBuyingList({ ...order, shop: { ...order.shop, units } })
      .flatMap(textsOf)
      .filter((text) => text.startsWith('Units:'))
  for (const text of unitsOf({ bodyLength: 'mm', thickness: 'mm', domeRadius: 'metres' }))
    expect(text).toBe('Units: mm.')
  for (const text of unitsOf({ bodyLength: 'decimalInch', thickness: 'thousandths', domeRadius: 'feetInches' }))
    expect(text).toBe('Units: body decimal inches; thickness thou.')
})
