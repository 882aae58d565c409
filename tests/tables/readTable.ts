import { readFileSync } from 'node:fs'

/** One row of a table of check values: its columns as written, by name. */
export interface TableRow {
  readonly text: (column: string) => string
  readonly number: (column: string) => number
}

/** A CSV table of this folder. Lines that begin with # say where the values come from; the next one names the columns. */
export function readTable(file: string): readonly TableRow[] {
  const lines = readFileSync(new URL(file, import.meta.url), 'utf8')
    .trim()
    .split(/\r?\n/)
  const [names = '', ...rows] = lines.filter((line) => !line.startsWith('#'))
  const columns = cellsOf(names)
  return rows.map((row) => {
    const cells = cellsOf(row)
    const text = (column: string) => {
      const cell = cells[columns.indexOf(column)]
      if (cell === undefined) throw new Error(`${file} has no column ${column}`)
      return cell
    }
    return { text, number: (column) => Number(text(column)) }
  })
}

/** Cells between commas; one in quotes may hold commas of its own. */
const cellsOf = (row: string): string[] =>
  Array.from(row.matchAll(/(?:^|,)(?:"([^"]*)"|([^,]*))/gu), ([, quoted, plain]) => quoted ?? plain ?? '')

/** The check values of the steel-string model: see `about` in the file. */
export interface SteelModel {
  readonly closure: Readonly<Record<string, number>>
  readonly found: Readonly<Record<string, number>>
  readonly scale: Readonly<Record<string, number>>
  readonly rings: readonly { readonly ri: number; readonly ro: number; readonly hidden_deg: number }[]
  readonly rim_stations_cols: readonly string[]
  readonly rim_stations: readonly (readonly number[])[]
  readonly blank_to_buy: { readonly length: number; readonly width: number }
  readonly waist_mark_on_blank: number
  readonly back_axis_x: number
  readonly largest_depth_between_domes: number
  readonly finished_depth_tail_with_plates: number
  readonly neck_set: Readonly<Record<'strung' | 'built', Readonly<Record<string, number>>>>
  readonly board: Readonly<Record<string, number>>
  readonly strings: {
    readonly tension_N: readonly number[]
    readonly total_N: number
    readonly bridge_torque_Nm: number
  }
}

export const readSteelModel = (): SteelModel =>
  JSON.parse(readFileSync(new URL('steelModel.json', import.meta.url), 'utf8')) as SteelModel
