import { type CuttingAllowances } from '../core/wood/cutting.ts'
import { cutList } from '../core/wood/cutList.ts'
import { groupStock, type StockGroup } from '../core/wood/stock.ts'
import { figureText } from '../format/figure.ts'
import { formatQuantity } from '../format/formatQuantity.ts'
import { layNote } from './blocks/caution.ts'
import { buyingPiece } from './blocks/buyingTable.ts'
import { layPartHeading } from './blocks/heading.ts'
import { partsPiece } from './blocks/partsTable.ts'
import type { Piece, Run } from './flow.ts'
import type { Block, Page } from './page.ts'
import type { PaperOrder } from './paperOrder.ts'
import { columnOf, setOnPages } from './sheetPages.ts'

/** What to buy, board by board, and every part by the board it is sawn from, with boxes to tick. Always at least one page. */
export function layBuyingList(order: PaperOrder): readonly Page[] {
  const { words, shop, doc } = order
  const { buyingList } = words
  const column = columnOf(order.paperSize, 'upright')
  const groups = stockOf(order)
  const whole = (block: Block, keepsWithNext = false): Piece => ({ kind: 'whole', block, airMm: 1.5, keepsWithNext })
  const heading = (title: string) => layPartHeading(title, column)
  const again = (title: string) => heading(buyingList.of(title, words.paper.continued))
  const runOf = (group: StockGroup): Run => {
    const title = buyingList.groupHeading(
      buyingList.groupName(group),
      doc.plan.cutting.woods[group.role],
      buyingList.quarters(group.quarters),
      figureText(formatQuantity(group.nominalMm, 'thickness', shop.units)),
    )
    const paired = group.rows.filter(({ part }) => part.isBookmatched)
    return {
      pieces: [
        whole(heading(title), true),
        partsPiece(order, group, column),
        ...paired.map(({ part }) => whole(layNote(`${buyingList.partName(part)}: ${buyingList.bookmatched}.`, column))),
      ],
      again: again(title),
    }
  }
  const runs: readonly Run[] =
    groups.length === 0
      ? [{ pieces: [whole(layNote(buyingList.noParts, column))], again: null }]
      : [
          {
            pieces: [
              whole(heading(buyingList.buying), true),
              buyingPiece(order, groups, column),
              whole(layNote(buyingList.boughtNote, column)),
            ],
            again: again(buyingList.buying),
          },
          {
            pieces: [whole(heading(buyingList.cutList), true), whole(layNote(buyingList.caution, column))],
            again: null,
          },
          ...groups.map(runOf),
        ]
  return setOnPages(order, runs, {
    sheet: buyingList.sheet,
    showsOf: () => '',
    scale: null,
    otherLengths: ['thickness'],
  })
}

/** The parts of an instrument by what they are bought as, with what its plan leaves on. */
function stockOf({ doc, computed }: PaperOrder): readonly StockGroup[] {
  const { plateMarginMm, lengthMm, widthMm, thicknessMm, kerfMm } = doc.plan.cutting
  const left: CuttingAllowances = { plateMarginMm, lengthMm, widthMm, thicknessMm, sawKerfMm: kerfMm }
  return groupStock(cutList(doc.plan, computed.numbers, left), kerfMm)
}
