import { figureText } from '../format/figure.ts'
import { formatDate } from '../format/formatDate.ts'
import { formatQuantity } from '../format/formatQuantity.ts'
import { layNote } from './blocks/caution.ts'
import type { Block, Mark, Page } from './page.ts'
import { shiftBlock } from './page.ts'
import type { PaperOrder } from './paperOrder.ts'
import { boxMark, level, LINE, textMark, TYPE, upright } from './pen.ts'
import { columnOf, framePage, roomOnPage } from './sheetPages.ts'

/** A label that goes in through any soundhole it is glued under: common practice. */
export const LABEL_MM = { widthMm: 90, heightMm: 50 } as const
const COPIES = 2
const PAD_MM = 4
/** Cut marks stand off the label's corners, so that none of them is left on it. */
const MARK = { offMm: 2, longMm: 6 } as const
const BETWEEN_MM = 24
const UNDER_NOTE_MM = 14

/** The label inside the body, twice on one page at true size, with marks to cut along. */
export function layLabel(order: PaperOrder): readonly Page[] {
  const { label } = order.words
  const column = columnOf(order.paperSize, 'upright')
  const { topMm } = roomOnPage(order, 'upright')
  const mm = (value: number) => figureText(formatQuantity(value, 'bodyLength', order.shop.units))
  const size = label.size(mm(LABEL_MM.widthMm), mm(LABEL_MM.heightMm))
  const note = layNote(label.lead(size), column)
  const leftMm = column.leftMm + (column.widthMm - LABEL_MM.widthMm) / 2
  const firstMm = topMm + note.area.heightMm + UNDER_NOTE_MM
  const copies = Array.from({ length: COPIES }, (_, i) =>
    labelBlock(order, leftMm, firstMm + i * (LABEL_MM.heightMm + BETWEEN_MM)),
  )
  return [
    framePage(order, [shiftBlock(note, topMm), ...copies], {
      number: 1,
      count: 1,
      lie: 'upright',
      sheet: label.sheet,
      showsOf: () => size,
      scale: label.trueSize,
      otherLengths: [],
    }),
  ]
}

function labelBlock(order: PaperOrder, leftMm: number, topMm: number): Block {
  const { widthMm, heightMm } = LABEL_MM
  const reachMm = MARK.offMm + MARK.longMm
  return {
    kind: 'label',
    area: {
      xMm: leftMm - reachMm,
      yMm: topMm - reachMm,
      widthMm: widthMm + 2 * reachMm,
      heightMm: heightMm + 2 * reachMm,
    },
    stage: null,
    marks: [
      boxMark({ xMm: leftMm, yMm: topMm, widthMm, heightMm }, 'frame', LINE.hairMm),
      ...cutMarks(leftMm, topMm),
      ...lettering(order, leftMm, topMm),
    ],
  }
}

function cutMarks(leftMm: number, topMm: number): Mark[] {
  const { widthMm, heightMm } = LABEL_MM
  const { offMm, longMm } = MARK
  return [leftMm, leftMm + widthMm].flatMap((x, i) => {
    const out = i === 0 ? -1 : 1
    return [topMm, topMm + heightMm].flatMap((y, j) => {
      const down = j === 0 ? -1 : 1
      const [nearX, farX] = [x + out * offMm, x + out * (offMm + longMm)]
      const [nearY, farY] = [y + down * offMm, y + down * (offMm + longMm)]
      return [
        level(Math.min(nearX, farX), Math.max(nearX, farX), y, LINE.hairMm),
        upright(x, Math.min(nearY, farY), Math.max(nearY, farY), LINE.hairMm),
      ]
    })
  })
}

/** Shop, instrument and year, all within the label; long names are set smaller, and at the least size cut. */
function lettering({ doc, shop, dateIso, words }: PaperOrder, leftMm: number, topMm: number): Mark[] {
  const { label } = words
  const widthMm = LABEL_MM.widthMm - 2 * PAD_MM
  const x = leftMm + PAD_MM
  const right = x + widthMm
  const middle = leftMm + LABEL_MM.widthMm / 2
  const signY = topMm + LABEL_MM.heightMm - PAD_MM - 4
  const half = widthMm / 2 - 2
  const year = yearOf(dateIso)
  return [
    textMark(shop.name, middle, topMm + 11, { sizePt: TYPE.stageTitle, weight: 'strong', anchor: 'middle' }, widthMm),
    level(x, right, topMm + 14.5, LINE.narrowMm),
    textMark(doc.title, middle, topMm + 21, { sizePt: TYPE.name, anchor: 'middle' }, widthMm),
    textMark(label.families[doc.family], middle, topMm + 26, { sizePt: TYPE.small, anchor: 'middle' }, widthMm),
    textMark(label.number(doc.number), x, topMm + 33, { sizePt: TYPE.name, weight: 'strong' }, half),
    textMark(year, right, topMm + 33, { sizePt: TYPE.name, weight: 'strong', anchor: 'end' }, half),
    level(x, right, signY, LINE.narrowMm),
    textMark(label.signed, x, signY + 3.4, { sizePt: TYPE.caption }, widthMm),
  ]
}

/** The year of a day of the calendar, as it is written. */
const yearOf = (iso: string): string => formatDate(iso).split(' ').at(-1) ?? ''
