import type { ShopUnits } from '../../core/quantity.ts'
import type { Size } from '../../core/wood/part.ts'
import type { StockGroup } from '../../core/wood/stock.ts'
import { type Figure, figureText } from '../../format/figure.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import type { Piece } from '../flow.ts'
import type { PaperOrder } from '../paperOrder.ts'
import type { Column } from '../pen.ts'
import { tickPiece } from './tickTable.ts'

/** The parts that come out of one board: how many, finished and rough, and how the grain lies in them. */
export function partsPiece(order: PaperOrder, group: StockGroup, column: Column): Piece {
  const { buyingList } = order.words
  const { columns, sizes } = buyingList
  return tickPiece(
    'parts',
    [
      { head: columns.part, share: 42, isFigure: false },
      { head: columns.quantity, share: 12, isFigure: true },
      { head: `${columns.finished}: ${sizes}`, share: 44, isFigure: true },
      { head: `${columns.rough}: ${sizes}`, share: 44, isFigure: true },
      { head: columns.grain, share: 26, isFigure: false },
    ],
    group.rows.map(({ part }) => [
      buyingList.partName(part),
      figureText(formatQuantity(part.quantity, 'count', order.shop.units)),
      sizeText(order, part.finished),
      sizeText(order, part.rough),
      buyingList.grains[part.grain],
    ]),
    column,
  )
}

/**
 * Three measures on a line, millimetres said once. A fraction with what it leaves over is too long to stand beside two others: inches are in
 * decimals here, as exact.
 */
function sizeText({ shop, words }: PaperOrder, { lengthMm, widthMm, thicknessMm }: Size): string {
  const { units } = shop
  const short: ShopUnits = units.bodyLength === 'fractionalInch' ? { ...units, bodyLength: 'decimalInch' } : units
  const [length, width] = [lengthMm, widthMm].map((mm) => formatQuantity(mm, 'bodyLength', short))
  const thickness = formatQuantity(thicknessMm, 'thickness', short)
  const saidLater = (figure: Figure) => (figure.unit === thickness.unit ? { ...figure, unit: '' } : figure)
  return words.buyingList.size(figureText(saidLater(length!)), figureText(saidLater(width!)), figureText(thickness))
}
