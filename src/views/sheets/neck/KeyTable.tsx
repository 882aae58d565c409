import { CATALOGUE, type NumberKey } from '../../../core/catalogue.ts'
import { readNumbers } from '../../../core/numbers.ts'
import { NUMBER_NAMES } from '../../../words/numberNames.ts'
import { FigureRows } from '../FigureRows.tsx'
import { usePlannedColumn } from '../planned.ts'
import { useSheetBench } from '../sheetBench.ts'
import { TableTools } from '../TableTools.tsx'
import type { FigureTable } from '../tableText.ts'

interface Props {
  readonly caption: string
  readonly fileName: string
  /** Over the names of the rows. */
  readonly head: string
  readonly names: readonly string[]
  /** Which row of the list each name stands for, where some are left out. */
  readonly at?: readonly number[]
  /** Keys of one list, a column each. */
  readonly keys: readonly NumberKey[]
}

/** Numbers of a list, a row each, under names of their own. A list without rows shows nothing. */
export function KeyTable({ caption, fileName, head, names, at, keys }: Props) {
  const { numbers } = useSheetBench().computed
  const planned = usePlannedColumn()
  if (names.length === 0) return null
  const columns = keys.map((key) => readNumbers(numbers, key))
  const table: FigureTable = {
    columns: [
      { heading: head, quantity: null },
      ...keys.map((key) => ({ heading: NUMBER_NAMES[key], quantity: CATALOGUE[key].quantity, ...planned(key, at) })),
    ],
    rows: names.map((name, i) => [name, ...columns.map((column) => column[at?.[i] ?? i] ?? 'none')]),
  }
  return (
    <section>
      <h2>{caption}</h2>
      <FigureRows table={table} caption={caption} keys={[null, ...keys]} keysOf="columns" />
      <TableTools table={() => table} fileName={fileName} />
    </section>
  )
}
