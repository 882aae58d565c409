import type { LengthQuantity } from '../../core/quantity.ts'
import { formatDate } from '../../format/formatDate.ts'
import type { Block, Mark } from '../page.ts'
import { blockOf, boxMark, type Column, level, LINE, linesMarks, textMark, TYPE, upright } from '../pen.ts'
import type { PaperWords } from '../../words/paper.ts'
import type { CommissionDoc, ShopDoc } from '../../record/commission.ts'
import { wrapText } from '../textWidth.ts'

export const TITLE_BLOCK_MM = 20
const MIDDLE_MM = 10
const SHARES = [0.37, 0.33, 0.3] as const

/** What every title block says of an instrument. */
export interface TitledOrder {
  readonly doc: Pick<CommissionDoc, 'number' | 'title'> & { readonly brief: Pick<CommissionDoc['brief'], 'client'> }
  readonly shop: Pick<ShopDoc, 'units'>
  readonly revisionCode: string
  /** The day of printing, ISO. */
  readonly dateIso: string
  readonly words: { readonly paper: PaperWords }
}

/** And of the page it stands on. */
export interface TitledPage {
  readonly number: number
  readonly count: number
  /** Which paper it is, and what of it this page shows; empty: all that the paper's name says. */
  readonly sheet: string
  readonly shows: string
  /** To what scale it is drawn, in words; null: nothing is. */
  readonly scale: string | null
  /** The kinds of length that stand on it besides those of the body; left out: all of them. */
  readonly otherLengths?: readonly OtherLength[]
}
export type OtherLength = Exclude<LengthQuantity, 'bodyLength'>
const ALL_OTHERS: readonly OtherLength[] = ['thickness', 'domeRadius']

/** The block at the foot of every page: which instrument, what this sheet shows, unit and scale, revision, page. Fields after ISO 7200. */
export function layTitleBlock(order: TitledOrder, page: TitledPage, column: Column): Block {
  const { titleBlock, units, unitLine } = order.words.paper
  const { doc, shop } = order
  const x0 = column.leftMm
  const x1 = x0 + column.widthMm * SHARES[0]
  const x2 = x1 + column.widthMm * SHARES[1]
  const x3 = x2 + (column.widthMm * SHARES[2]) / 2
  const end = x0 + column.widthMm
  const small = { sizePt: TYPE.caption }
  const text = { sizePt: TYPE.small }
  const client = doc.brief.client.trim() === '' ? titleBlock.forStock : titleBlock.client(doc.brief.client)

  const others = page.otherLengths ?? ALL_OTHERS
  const unitOf = (kind: OtherLength) => (others.includes(kind) ? units[shop.units[kind]] : null)
  const read = unitLine(units[shop.units.bodyLength], unitOf('thickness'), unitOf('domeRadius'))
  const unitText = [`${titleBlock.unit}: ${read}`, ...(page.scale === null ? [] : [page.scale])].join('; ')
  const unitLines = wrapText(`${unitText}.`, x2 - x1 - 3, TYPE.caption).slice(0, 2)
  const shows = page.shows === '' ? page.sheet : `${page.sheet}: ${page.shows}`

  const caption = (word: string, x: number, top: number) => textMark(word, x + 1.5, top + 3.2, small)
  const marks: Mark[] = [
    boxMark(
      { xMm: x0 + 0.25, yMm: 0.25, widthMm: column.widthMm - 0.5, heightMm: TITLE_BLOCK_MM - 0.5 },
      'frame',
      LINE.wideMm,
    ),
    upright(x1, 0.25, TITLE_BLOCK_MM - 0.25, LINE.narrowMm),
    upright(x2, 0.25, TITLE_BLOCK_MM - 0.25, LINE.narrowMm),
    upright(x3, MIDDLE_MM, TITLE_BLOCK_MM - 0.25, LINE.narrowMm),
    level(x1, end - 0.25, MIDDLE_MM, LINE.narrowMm),

    caption(titleBlock.instrument, x0, 0.3),
    textMark(doc.number, x0 + 1.5, 9.2, { sizePt: TYPE.stageTitle, weight: 'strong' }, x1 - x0 - 3),
    textMark(doc.title, x0 + 1.5, 13.6, { sizePt: TYPE.text }, x1 - x0 - 3),
    textMark(client, x0 + 1.5, 17.8, text, x1 - x0 - 3),

    caption(titleBlock.sheet, x1, 0.3),
    textMark(shows, x1 + 1.5, 8, { sizePt: TYPE.text, weight: 'strong' }, x2 - x1 - 3),
    ...linesMarks(unitLines, x1 + 1.5, MIDDLE_MM + 1, small),

    caption(titleBlock.revision, x2, 0.3),
    textMark(order.revisionCode, x2 + 1.5, 8.6, { sizePt: TYPE.stageTitle, weight: 'strong' }),
    textMark(titleBlock.revisionNote[0], x2 + 25, 4.6, small, end - x2 - 27),
    textMark(titleBlock.revisionNote[1], x2 + 25, 8, small, end - x2 - 27),

    caption(titleBlock.date, x2, MIDDLE_MM),
    textMark(formatDate(order.dateIso), x2 + 1.5, MIDDLE_MM + 7.9, { sizePt: TYPE.text }, x3 - x2 - 3),
    caption(titleBlock.page, x3, MIDDLE_MM),
    textMark(titleBlock.pageOf(page.number, page.count), x3 + 1.5, MIDDLE_MM + 7.9, {
      sizePt: TYPE.name,
      weight: 'strong',
    }),
  ]
  return blockOf('titleBlock', column, TITLE_BLOCK_MM, marks)
}
