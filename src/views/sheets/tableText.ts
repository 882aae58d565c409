import type { Quantity, ShopUnits } from '../../core/quantity.ts'
import type { Table } from '../../files/csv.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import { plannedHeading } from '../../words/fromReading.ts'
import { FIGURE_WORDS } from '../../words/sheets.ts'

/** One column of a table as a sheet shows it. */
export interface FigureColumn {
  readonly heading: string
  /** null: a column of words. */
  readonly quantity: Quantity | null
  /** What the plan has in each row, where the column follows what was measured. */
  readonly planned?: readonly (number | string)[]
}

export interface FigureTable {
  readonly columns: readonly FigureColumn[]
  /** Numbers, words such as flat, and names. */
  readonly rows: readonly (readonly (number | string)[])[]
}

/** Fractions and feet do not stand in a spreadsheet's cell: such shops get the same lengths in decimal inches, dome radii in mm. */
const decimalUnits = (units: ShopUnits): ShopUnits => ({
  ...units,
  bodyLength: units.bodyLength === 'fractionalInch' ? 'decimalInch' : units.bodyLength,
  domeRadius: units.domeRadius === 'feetInches' ? 'mm' : units.domeRadius,
})

/** A table as text for the clipboard or a file: units in the headings, decimals in the cells. Beside what follows a reading stands what was planned. */
export function tableText(table: FigureTable, units: ShopUnits): Table {
  const inUnits = decimalUnits(units)
  const { columns, rows } = withPlannedColumns(table, inUnits)
  const unitOf = ({ quantity }: FigureColumn): string =>
    quantity === null ? '' : formatQuantity(0, quantity, inUnits).unit.replace('°', 'deg')
  return {
    columns: columns.map((column) => ({ heading: column.heading, unit: unitOf(column) })),
    rows: rows.map((row) => row.map((cell, i) => cellText(cell, columns[i]?.quantity ?? null, inUnits))),
  }
}

function cellText(cell: number | string, quantity: Quantity | null, units: ShopUnits): string {
  if (quantity === null || typeof cell === 'string') return figureWord(cell)
  const { sign, whole } = formatQuantity(cell, quantity, units)
  return `${sign}${whole}`
}

/** What stands in a cell that holds no number. */
export const figureWord = (cell: number | string): string =>
  cell === 'flat' || cell === 'none' ? FIGURE_WORDS[cell] : String(cell)

/** Whether a cell came out otherwise than planned, as the shop reads it. */
export function plannedCell(column: FigureColumn | undefined, row: number, cell: number | string, units: ShopUnits) {
  const planned = column?.planned?.[row]
  if (column === undefined || planned === undefined) return null
  const text = (one: number | string) => cellText(one, column.quantity, units)
  return text(planned) === text(cell) ? null : planned
}

/** True where any cell of a column came out otherwise than planned. */
export const isFromReading = ({ columns, rows }: FigureTable, at: number, units: ShopUnits): boolean =>
  columns[at]?.planned !== undefined &&
  rows.some((row, i) => plannedCell(columns[at], i, row[at] ?? '', units) !== null)

/** The table with a column of what was planned after each that came out otherwise. */
function withPlannedColumns(table: FigureTable, units: ShopUnits): FigureTable {
  const moved = table.columns.map((_, at) => isFromReading(table, at, units))
  if (!moved.includes(true)) return table
  return {
    columns: table.columns.flatMap((column, at) => {
      const { planned: _, ...plain } = column
      return moved[at] === true ? [column, { ...plain, heading: plannedHeading(column.heading) }] : [column]
    }),
    rows: table.rows.map((row, i) =>
      row.flatMap((cell, at) => (moved[at] === true ? [cell, table.columns[at]?.planned?.[i] ?? ''] : [cell])),
    ),
  }
}

/** Two tables with the same columns as one. */
export const joinTables = (first: FigureTable, then: FigureTable): FigureTable => ({
  columns: first.columns.map((column, at) => {
    const [a, b] = [column.planned, then.columns[at]?.planned]
    return a === undefined || b === undefined ? column : { ...column, planned: [...a, ...b] }
  }),
  rows: [...first.rows, ...then.rows],
})
