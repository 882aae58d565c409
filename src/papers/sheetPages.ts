import type { Computed } from '../core/compute.ts'
import { countCannot } from '../core/findings.ts'
import { layCautions } from './blocks/caution.ts'
import { layTitleBlock, type OtherLength, TITLE_BLOCK_MM, type TitledOrder } from './blocks/titleBlock.ts'
import { flowOntoPages, type Run } from './flow.ts'
import { type Block, MARGIN_MM, type Page, PAPER_SIZES, type PaperSize, shiftBlock } from './page.ts'
import type { Column } from './pen.ts'

export type Lie = 'upright' | 'across'

const ABOVE_TITLE_BLOCK_MM = 4
const UNDER_WARNING_MM = 4

/** What pages of any paper are made from, besides what stands on them. */
export interface PagedOrder extends TitledOrder {
  readonly computed: Pick<Computed, 'findings'>
  readonly paperSize: PaperSize
}

/** What the title block says of the paper. */
export interface Titling {
  readonly sheet: string
  readonly showsOf: (blocks: readonly Block[]) => string
  readonly scale: string | null
  /** As in `TitledPage`. */
  readonly otherLengths?: readonly OtherLength[]
}

export const pageSizeMm = (size: PaperSize, lie: Lie): { readonly widthMm: number; readonly heightMm: number } => {
  const { widthMm, heightMm } = PAPER_SIZES[size]
  return lie === 'upright' ? { widthMm, heightMm } : { widthMm: heightMm, heightMm: widthMm }
}

export const columnOf = (size: PaperSize, lie: Lie): Column => ({
  leftMm: MARGIN_MM,
  widthMm: pageSizeMm(size, lie).widthMm - 2 * MARGIN_MM,
})

const titleTopMm = (heightMm: number): number => heightMm - MARGIN_MM - TITLE_BLOCK_MM

/** Between what height and what height of a page its contents stand. */
export function roomOnPage(order: PagedOrder, lie: Lie): { readonly topMm: number; readonly bottomMm: number } {
  const warning = misfitWarning(order, columnOf(order.paperSize, lie))
  return {
    topMm: MARGIN_MM + (warning === null ? 0 : warning.area.heightMm + UNDER_WARNING_MM),
    bottomMm: titleTopMm(pageSizeMm(order.paperSize, lie).heightMm) - ABOVE_TITLE_BLOCK_MM,
  }
}

/** A page with its blocks, its title block at the foot and, while something cannot be built, the warning at its head. */
export function framePage(
  order: PagedOrder,
  blocks: readonly Block[],
  { number, count, lie, showsOf, ...titled }: Titling & { number: number; count: number; lie: Lie },
): Page {
  const { widthMm, heightMm } = pageSizeMm(order.paperSize, lie)
  const column = columnOf(order.paperSize, lie)
  const warning = misfitWarning(order, column)
  const title = layTitleBlock(order, { ...titled, number, count, shows: showsOf(blocks) }, column)
  return {
    size: order.paperSize,
    widthMm,
    heightMm,
    number,
    count,
    blocks: [
      ...(warning === null ? [] : [shiftBlock(warning, MARGIN_MM)]),
      ...blocks,
      shiftBlock(title, titleTopMm(heightMm)),
    ],
  }
}

/** Runs set on upright pages one after the other, each page framed. */
export function setOnPages(order: PagedOrder, runs: readonly Run[], titling: Titling): readonly Page[] {
  const pages = flowOntoPages(runs, roomOnPage(order, 'upright'))
  return pages.map((blocks, i) =>
    framePage(order, blocks, { ...titling, number: i + 1, count: pages.length, lie: 'upright' }),
  )
}

/** Papers are cut to: while something cannot be built, every page says so before anything else. */
function misfitWarning(order: PagedOrder, column: Column): Block | null {
  const count = countCannot(order.computed.findings)
  return count === 0 ? null : layCautions([order.words.paper.misfits(count)], null, column)
}
