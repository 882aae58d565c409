import { BLOCKS_WORDS } from '../../words/bodySheets.ts'
import { FigureRows } from './FigureRows.tsx'
import { useSheetBench } from './sheetBench.ts'
import { TableTools } from './TableTools.tsx'
import type { FigureTable } from './tableText.ts'

/** The true glue face of a block: how far it falls back, going out from its middle. */
export function ContourTable({ end }: { readonly end: 'tail' | 'neck' }) {
  const { computed } = useSheetBench()
  const rows = computed.numbers.blocks[end].contour
  const table: FigureTable = {
    columns: [
      { heading: BLOCKS_WORDS.point, quantity: null },
      { heading: BLOCKS_WORDS.across, quantity: 'bodyLength' },
      { heading: BLOCKS_WORDS.fallsBack, quantity: 'thickness' },
    ],
    rows: rows.map((row, i) => [String(i), row.acrossMm, row.fallsBackMm]),
  }
  return (
    <details className="more">
      <summary>{BLOCKS_WORDS.contour}</summary>
      <FigureRows
        table={table}
        caption={`${BLOCKS_WORDS[end]}: ${BLOCKS_WORDS.contour}`}
        keys={[null, `blocks.${end}.contour[].acrossMm`, `blocks.${end}.contour[].fallsBackMm`]}
        keysOf="columns"
      />
      <TableTools table={() => table} fileName={`${end}-block-contour`} />
    </details>
  )
}
