import { formatDate } from '../../format/formatDate.ts'
import type { FullSizeWords } from '../../words/fullSize.ts'
import type { Block, TextMark, Weight } from '../page.ts'
import { ascentMm, leadingMm, TYPE } from '../pen.ts'
import { wrapText } from '../textWidth.ts'
import type { TemplateOrder } from './fullSizeOrder.ts'
import { type TileOnPage, tileName } from './tileOnPage.ts'

const SIZES = [1, 0.95, 0.9, 0.85, 0.8, 0.75, 0.7, 0.65, 0.6] as const

interface Line {
  readonly text: string
  readonly sizePt: number
  readonly weight: Weight
}

/** Which template of which instrument, which sheet of it, and how the sheets go together; set as much smaller as it takes to fit. */
export function layTileTitle(
  order: TemplateOrder,
  tile: TileOnPage,
  page: { readonly number: number; readonly count: number },
  area: Block['area'],
): Block {
  const lines = linesOf(order, tile, page)
  const set = (times: number): Line[] =>
    lines.flatMap(({ text, sizePt, weight }) =>
      wrapText(text, area.widthMm, sizePt * times, weight).map((line) => ({
        text: line,
        sizePt: sizePt * times,
        weight,
      })),
    )
  const heightMm = (rows: readonly Line[]) => rows.reduce((sum, { sizePt }) => sum + leadingMm(sizePt), 0)
  const fitting = SIZES.map(set).find((rows) => heightMm(rows) <= area.heightMm) ?? set(SIZES.at(-1)!)
  let bottom = area.yMm
  const marks = fitting.map(({ text, sizePt, weight }): TextMark => {
    const yMm = bottom + ascentMm(sizePt)
    bottom += leadingMm(sizePt)
    return { kind: 'text', text, xMm: area.xMm, yMm, sizePt, weight, anchor: 'start' }
  })
  return { kind: 'tileTitle', area, stage: null, marks }
}

function linesOf(order: TemplateOrder, tile: TileOnPage, page: { number: number; count: number }): Line[] {
  const { title, doc, revisionCode, dateIso, words } = order
  const { instrument, revision, page: pageOf, tile: tileOf, join } = words.fullSize
  const { rows, columns } = tile.tiling
  const plain = (text: string, sizePt: number = TYPE.small): Line => ({ text, sizePt, weight: 'plain' })
  const strong = (text: string, sizePt: number): Line => ({ text, sizePt, weight: 'strong' })
  const way = wayToJoin(tile, join)
  return [
    strong(title, TYPE.text),
    plain(instrument(doc.number, doc.title)),
    plain(revision(revisionCode, formatDate(dateIso))),
    plain(pageOf(page.number, page.count)),
    ...(rows * columns === 1
      ? []
      : [
          strong(tileOf(tileName(tile), tile.row + 1, rows, tile.column + 1, columns), TYPE.small),
          ...(way === null ? [] : [plain(way, TYPE.caption)]),
        ]),
  ]
}

/** Only of sheets that are printed: what no ink runs through is left out. Null for a sheet without a neighbour. */
function wayToJoin({ tiling, row, column }: TileOnPage, join: FullSizeWords['join']): string | null {
  const nameAt = (down: number, across: number): string | null => {
    const other = tiling.tiles.find((one) => one.row === row + down && one.column === column + across)
    return other === undefined ? null : tileName(other)
  }
  const [right, below] = [nameAt(0, 1), nameAt(1, 0)]
  if (right !== null) return below === null ? join.right(right) : join.both(right, below)
  if (below !== null) return join.below(below)
  const over = [nameAt(0, -1), nameAt(-1, 0)].filter((name) => name !== null)
  return over.length === 0 ? null : join.under(over)
}
