import { BLOCKS_WORDS } from '../../words/bodySheets.ts'
import { FigureRows } from './FigureRows.tsx'
import { usePlannedColumn } from './planned.ts'
import { useSheetBench } from './sheetBench.ts'
import { TableTools } from './TableTools.tsx'
import type { FigureTable } from './tableText.ts'

/** The true glue face of a block: how far it falls back, going out from its middle. */
export function ContourTable({ end }: { readonly end: 'tail' | 'neck' }) {
  const { computed } = useSheetBench()
  const planned = usePlannedColumn()
  const keys = [`blocks.${end}.contour[].acrossMm`, `blocks.${end}.contour[].fallsBackMm`] as const
  const rows = computed.numbers.blocks[end].contour
  const table: FigureTable = {
    columns: [
      { heading: BLOCKS_WORDS.point, quantity: null },
      { heading: BLOCKS_WORDS.across, quantity: 'bodyLength', ...planned(keys[0]) },
      { heading: BLOCKS_WORDS.fallsBack, quantity: 'thickness', ...planned(keys[1]) },
    ],
    rows: rows.map((row, i) => [String(i), row.acrossMm, row.fallsBackMm]),
  }
  return (
    <details className="more">
      <summary>{BLOCKS_WORDS.contour}</summary>
      <FigureRows
        table={table}
        caption={`${BLOCKS_WORDS[end]}: ${BLOCKS_WORDS.contour}`}
        keys={[null, ...keys]}
        keysOf="columns"
      />
      <TableTools table={() => table} fileName={`${end}-block-contour`} />
    </details>
  )
}
