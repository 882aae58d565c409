import { memo } from 'react'
import type { NumberKey } from '../../core/catalogue.ts'
import type { Quantity, ShopUnits } from '../../core/quantity.ts'
import { CellFigure } from './CellFigure.tsx'
import { ColumnHead } from './ColumnHead.tsx'
import { useSheetBench } from './sheetBench.ts'
import { useSheetPointer } from './sheetPointer.ts'
import { TableScroll } from './TableScroll.tsx'
import { type FigureTable, figureWord } from './tableText.ts'

interface Props {
  readonly table: FigureTable
  readonly caption: string
  /** The number each row, or each column, is about; its name then opens what it is. */
  readonly keys?: readonly (NumberKey | null)[]
  readonly keysOf?: 'rows' | 'columns'
}

/** A table of figures as it stands on a sheet. */
export function FigureRows({ table, caption, keys = [], keysOf = 'rows' }: Props) {
  const { units } = useSheetBench()
  const { openHelp } = useSheetPointer()
  return <Rows table={table} caption={caption} keys={keys} keysOf={keysOf} units={units} openHelp={openHelp} />
}

interface RowsProps extends Required<Props> {
  readonly units: ShopUnits
  readonly openHelp: (key: NumberKey) => void
}

const Rows = memo(function Rows({ table, caption, keys, keysOf, units, openHelp }: RowsProps) {
  const aboutOf = (key: NumberKey | null | undefined) => (key === null || key === undefined ? null : { key, openHelp })
  const named = (text: string, key: NumberKey | null | undefined) =>
    key === null || key === undefined ? (
      text
    ) : (
      <button className="number-name" type="button" onClick={() => openHelp(key)}>
        {text}
      </button>
    )
  return (
    <TableScroll caption={caption}>
      <table className="table">
        <caption className="out-of-sight">{caption}</caption>
        <thead>
          <tr>
            {table.columns.map((column, i) => (
              <ColumnHead
                key={column.heading}
                {...column}
                units={units}
                about={aboutOf(keysOf === 'columns' ? keys[i] : null)}
              />
            ))}
          </tr>
        </thead>
        <tbody>
          {table.rows.map(([head, ...cells], i) => (
            <tr key={String(i)}>
              <th scope="row">{named(String(head), keysOf === 'rows' ? keys[i] : null)}</th>
              {cells.map((cell, j) => (
                <td key={table.columns[j + 1]?.heading} data-figures={table.columns[j + 1]?.quantity !== null}>
                  {cellOf(cell, table.columns[j + 1]?.quantity ?? null, units)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </TableScroll>
  )
})

function cellOf(cell: number | string, quantity: Quantity | null, units: ShopUnits) {
  if (quantity === null || typeof cell === 'string') return figureWord(cell)
  return <CellFigure value={cell} quantity={quantity} units={units} />
}
