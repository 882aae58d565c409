import type { Quantity, ShopUnits } from '../../core/quantity.ts'
import type { Table } from '../../files/csv.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import { FIGURE_WORDS } from '../../words/sheets.ts'

/** One column of a table as a sheet shows it. */
export interface FigureColumn {
  readonly heading: string
  /** null: a column of words. */
  readonly quantity: Quantity | null
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

/** A table as text for the clipboard or a file: units in the headings, decimals in the cells. */
export function tableText({ columns, rows }: FigureTable, units: ShopUnits): Table {
  const inUnits = decimalUnits(units)
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
