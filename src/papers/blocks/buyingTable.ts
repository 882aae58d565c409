import type { StockGroup } from '../../core/wood/stock.ts'
import { figureText } from '../../format/figure.ts'
import { formatBoardFeet } from '../../format/formatBoardFeet.ts'
import { formatNotNothing } from '../../format/formatNotNothing.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import type { Piece } from '../flow.ts'
import type { PaperOrder } from '../paperOrder.ts'
import type { Column } from '../pen.ts'
import { tickPiece } from './tickTable.ts'

/** What to buy: a row for every board, with its wood, its thickness and the least of it. */
export function buyingPiece(order: PaperOrder, groups: readonly StockGroup[], column: Column): Piece {
  const { buyingList } = order.words
  const { columns } = buyingList
  const { woods } = order.doc.plan.cutting
  return tickPiece(
    'buying',
    [
      { head: columns.buyFor, share: 30, isFigure: false },
      { head: columns.wood, share: 40, isFigure: false },
      { head: columns.board, share: 36, isFigure: false },
      { head: columns.volume, share: 18, isFigure: true },
      { head: columns.boardFeet, share: 15, isFigure: true },
    ],
    groups.map((group) => [
      buyingList.groupName(group),
      woods[group.role].trim() || buyingList.noWood,
      `${buyingList.quarters(group.quarters)} (${figureText(formatQuantity(group.nominalMm, 'thickness', order.shop.units))})`,
      volumeText(order, group.boughtMm3),
      formatBoardFeet(group.boardFeet),
    ]),
    column,
  )
}

const volumeText = ({ shop }: PaperOrder, mm3: number): string =>
  figureText(formatNotNothing(mm3, 'volume', shop.units))
