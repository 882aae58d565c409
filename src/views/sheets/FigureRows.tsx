import { memo } from 'react'
import type { NumberKey } from '../../core/catalogue.ts'
import type { Quantity, ShopUnits } from '../../core/quantity.ts'
import { evenPlaces } from '../../format/evenPlaces.ts'
import { type Figure, figureText } from '../../format/figure.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import { FROM_READING_WORDS } from '../../words/fromReading.ts'
import { WrittenCell } from './CellFigure.tsx'
import { ColumnHead } from './ColumnHead.tsx'
import { useSheetBench } from './sheetBench.ts'
import { useSheetPointer } from './sheetPointer.ts'
import { TableScroll } from './TableScroll.tsx'
import { type FigureTable, figureWord, isFromReading, plannedCell } from './tableText.ts'

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
  const columns = table.columns.slice(1).map((_, j) => cellsOf(table, j + 1, units))
  return (
    <TableScroll caption={caption}>
      <table className="table">
        <caption className="out-of-sight">{caption}</caption>
        <thead>
          <tr>
            {table.columns.map((column, i) => (
              <ColumnHead
                key={column.heading}
                heading={column.heading}
                quantity={column.quantity}
                units={units}
                isFromReading={isFromReading(table, i, units)}
                about={aboutOf(keysOf === 'columns' ? keys[i] : null)}
              />
            ))}
          </tr>
        </thead>
        <tbody>
          {table.rows.map(([head], i) => (
            <tr key={String(i)}>
              <th scope="row">{named(String(head), keysOf === 'rows' ? keys[i] : null)}</th>
              {table.columns.slice(1).map(({ heading, quantity }, j) => (
                <td key={heading} data-figures={quantity !== null} title={plannedTitle(table, j + 1, i, units)}>
                  <Cell cell={columns[j]?.[i] ?? ''} quantity={quantity} units={units} />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </TableScroll>
  )
})

/** Every cell of a column: a figure, or the word in place of one. */
function cellsOf(table: FigureTable, at: number, units: ShopUnits): readonly (Figure | string)[] {
  const quantity = table.columns[at]?.quantity ?? null
  const cells = table.rows.map((row) => row[at] ?? '')
  if (quantity === null) return cells.map(figureWord)
  const figures = evenPlaces(
    cells.map((cell) => formatQuantity(typeof cell === 'number' ? cell : 'none', quantity, units)),
  )
  return cells.map((cell, i) => (typeof cell === 'string' ? figureWord(cell) : (figures[i] ?? '')))
}

/** What was planned in a cell that came out otherwise. */
function plannedTitle(table: FigureTable, at: number, row: number, units: ShopUnits): string | undefined {
  const column = table.columns[at]
  const planned = plannedCell(column, row, table.rows[row]?.[at] ?? '', units)
  if (planned === null || column === undefined || column.quantity === null) return undefined
  const text =
    typeof planned === 'string' ? figureWord(planned) : figureText(formatQuantity(planned, column.quantity, units))
  return FROM_READING_WORDS.planned(text)
}

function Cell({ cell, quantity, units }: { cell: Figure | string; quantity: Quantity | null; units: ShopUnits }) {
  if (typeof cell === 'string' || quantity === null) return typeof cell === 'string' ? cell : null
  return <WrittenCell figure={cell} quantity={quantity} units={units} />
}
