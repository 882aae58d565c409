/** One column of a table: its heading and the unit its cells are in (empty for none). */
export interface TableColumn {
  readonly heading: string
  readonly unit: string
}

export interface Table {
  readonly columns: readonly TableColumn[]
  /** Cells as text; a number is written with a point and without its unit, which stands in the heading. */
  readonly rows: readonly (readonly string[])[]
}

/**
 * A table as comma-separated values: CRLF after every record, a field quoted where it holds a comma, a quote or a line end.
 * Source: RFC 4180 (2005), section 2. A text that a spreadsheet would run as a formula gets an apostrophe in front; numbers do not.
 */
export function writeCsv(table: Table): string {
  return lines(table)
    .map((line) => `${line.map((cell) => quote(tame(cell))).join(',')}\r\n`)
    .join('')
}

/** A table as tab-separated values for the clipboard; tabs and line ends inside a cell become blanks. */
export function writeTsv(table: Table): string {
  return lines(table)
    .map((line) => line.map((cell) => tame(cell).replaceAll(/[\t\r\n]+/g, ' ')).join('\t'))
    .join('\n')
}

const lines = ({ columns, rows }: Table): readonly (readonly string[])[] => [
  columns.map(({ heading, unit }) => (unit === '' ? heading : `${heading} (${unit})`)),
  ...rows,
]

const quote = (cell: string): string => (/[",\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell)

const NUMBER = /^-?\d+(\.\d+)?$/
const tame = (cell: string): string => (/^[=+\-@\t\r]/.test(cell) && !NUMBER.test(cell) ? `'${cell}` : cell)
