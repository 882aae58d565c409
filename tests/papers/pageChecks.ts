import { expect } from 'vitest'
import { type Area, type Block, MARGIN_MM, type Mark, type Page } from '../../src/papers/page.ts'
import { capitalMm } from '../../src/papers/pen.ts'
import { figureWidthMm, textWidthMm } from '../../src/papers/textWidth.ts'

/** Blocks inside the margins and apart, the title block last, and every mark within its block. */
export function expectInOrder(pages: readonly Page[]): void {
  for (const page of pages) {
    const sheet: Area = {
      xMm: MARGIN_MM,
      yMm: MARGIN_MM,
      widthMm: page.widthMm - 2 * MARGIN_MM,
      heightMm: page.heightMm - 2 * MARGIN_MM,
    }
    const areas = page.blocks.map(({ area }) => area)
    expect(areas.filter((area) => !isInside(area, sheet))).toEqual([])
    expect(anyOverlap(areas)).toBe(false)
    expect(page.blocks.at(-1)?.kind).toBe('titleBlock')
    for (const block of page.blocks) expect(strayMarks(block)).toEqual([])
  }
}

/** Marks that stand, by the widths the layout reckons with, outside their block. */
function strayMarks(block: Block): Mark[] {
  return block.marks.filter((mark) => !isInside(areaOf(mark), block.area))
}

/** The room a mark takes, texts by the widths the layout reckons with. */
export function areaOf(mark: Mark): Area {
  switch (mark.kind) {
    case 'rule':
      return {
        xMm: mark.fromXMm,
        yMm: mark.fromYMm,
        widthMm: mark.toXMm - mark.fromXMm,
        heightMm: mark.toYMm - mark.fromYMm,
      }
    case 'sign':
      return { xMm: mark.xMm, yMm: mark.yMm, widthMm: mark.sizeMm, heightMm: mark.sizeMm }
    case 'text':
    case 'figure': {
      const widthMm =
        mark.kind === 'text'
          ? textWidthMm(mark.text, mark.sizePt, mark.weight)
          : figureWidthMm(mark.figure, mark.word, mark.sizePt, mark.weight)
      const part = { start: 0, middle: 0.5, end: 1 }[mark.anchor]
      const heightMm = capitalMm(mark.sizePt)
      return { xMm: mark.xMm - part * widthMm, yMm: mark.yMm - heightMm, widthMm, heightMm }
    }
    default:
      return mark
  }
}

const SLACK_MM = 0.01
export const isInside = (inner: Area, outer: Area): boolean =>
  inner.xMm >= outer.xMm - SLACK_MM &&
  inner.yMm >= outer.yMm - SLACK_MM &&
  inner.xMm + inner.widthMm <= outer.xMm + outer.widthMm + SLACK_MM &&
  inner.yMm + inner.heightMm <= outer.yMm + outer.heightMm + SLACK_MM

export const anyOverlap = (areas: readonly Area[]): boolean =>
  areas.some((a, i) =>
    areas
      .slice(i + 1)
      .some(
        (b) =>
          a.xMm + a.widthMm > b.xMm + SLACK_MM &&
          b.xMm + b.widthMm > a.xMm + SLACK_MM &&
          a.yMm + a.heightMm > b.yMm + SLACK_MM &&
          b.yMm + b.heightMm > a.yMm + SLACK_MM,
      ),
  )

export const marksOf = (page: Page): Mark[] => page.blocks.flatMap(({ marks }) => marks)
export const textsOf = (page: Page): string[] =>
  marksOf(page).flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []))

/** Lines of text and figures of a page that stand on one another. */
export function meetingTexts(page: Page): string[] {
  const lettered = marksOf(page).filter((mark) => mark.kind === 'text' || mark.kind === 'figure')
  const areas = lettered.map(areaOf)
  const told = lettered.map((mark) => (mark.kind === 'text' ? mark.text : mark.figure.whole))
  return areas.flatMap((a, i) =>
    areas.slice(i + 1).flatMap((b, j) => (anyOverlap([a, b]) ? [`${told[i]} and ${told[i + 1 + j]}`] : [])),
  )
}
