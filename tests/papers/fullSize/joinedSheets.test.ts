import { expect, test } from 'vitest'
import type { Drawing } from '../../../src/drawing/drawing.ts'
import { rectangle } from '../../../src/drawing/line.ts'
import { layTemplatePages } from '../../../src/papers/fullSize/layTemplatePages.ts'
import type { Page } from '../../../src/papers/page.ts'
import { sampleTemplate, sheetChoice } from './sampleTemplate.ts'

const plotOf = (page: Page) =>
  page.blocks.flatMap(({ kind, marks }) => (kind === 'tile' ? marks : [])).find((mark) => mark.kind === 'plot')!
const textsOf = (page: Page) => page.blocks.flatMap(({ marks }) => marks.filter((mark) => mark.kind === 'text'))
const saidOn = (page: Page) =>
  textsOf(page)
    .map(({ text }) => text)
    .join(' ')
    .replaceAll(/\s+/g, ' ')
const nameOn = (page: Page) => saidOn(page).match(/([A-Z]+\d+): row/)![1]!

/** Which sheet goes on where is told by the parts of the plot they show, and not by their names. */
function expectJoined(pages: readonly Page[], measured: { readonly across: number; readonly along: number }) {
  const placeOf = (page: Page) => {
    const { fromXMm, fromYMm, widthMm, heightMm } = plotOf(page)
    return { x: fromXMm, y: fromYMm, w: (widthMm * measured.across) / 100, h: (heightMm * measured.along) / 100 }
  }
  for (const page of pages) {
    const here = placeOf(page)
    const at = (right: number, down: number) =>
      pages.find((other) => {
        const { x, y } = placeOf(other)
        const [dx, dy] = [(x - here.x) * right, (y - here.y) * down]
        return right === 0
          ? Math.abs(x - here.x) < 1 && dy > 1 && dy < here.h
          : Math.abs(y - here.y) < 1 && dx > 1 && dx < here.w
      })
    const names = (...others: readonly (Page | undefined)[]) =>
      others.flatMap((other) => (other === undefined ? [] : [nameOn(other)])).join(' and ')
    const [right, below] = [at(1, 0), at(0, 1)]
    const cut =
      /Cut along the frame( at the right| right)?( and)?( below)?, lay over ([A-Z0-9]+(?: and [A-Z0-9]+)?), cross on cross/
    const [, ...found] = saidOn(page).match(cut) ?? []
    expect([found[0] !== undefined, found[2] !== undefined], nameOn(page)).toEqual([
      right !== undefined,
      below !== undefined,
    ])
    expect(found[3] ?? '').toBe(names(right, below))
    const over = names(at(-1, 0), at(0, -1))
    const isLast = right === undefined && below === undefined && over !== ''
    expect(saidOn(page).includes('Do not cut along the frame')).toBe(isLast)
    if (isLast) expect(saidOn(page)).toContain(`frame: ${over} lie`)
  }
}

test('a sheet beside one that is left out is not told to lie on it', () => {
  // A frame whose middle sheets have no ink on them.
  const frame: Drawing = {
    name: 'contourBoard',
    seenFrom: 'face',
    bounds: { minX: 0, minY: 0, maxX: 520, maxY: 720 },
    heightsTimes: 1,
    marks: {},
    shapes: [{ kind: 'path', role: 'cut', commands: rectangle(0, 0, 520, 720) }],
    titleRoom: { minX: 5, maxX: 160, minY: 5, maxY: 160 },
  }
  const order = sampleTemplate({ drawing: frame })
  const pages = layTemplatePages(order, sheetChoice('A4'))
  const grid = saidOn(pages[0]!).match(/row 1 of (\d+), column \d+ of (\d+)/)!
  expect(pages.length).toBeLessThan(Number(grid[1]) * Number(grid[2]))
  expectJoined(pages, { across: 100, along: 100 })
})

test.each(['A4', 'Letter', 'A3'] as const)(
  'sheets of %s are told to be cut only where another printed sheet goes on, which is named',
  (size) => {
    const measured = { across: 99.2, along: 100.7 }
    expectJoined(layTemplatePages(sampleTemplate(), sheetChoice(size, { boxMeasuredMm: measured })), measured)
  },
)
