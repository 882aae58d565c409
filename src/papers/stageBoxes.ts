import type { NumberKey } from '../core/numbers.ts'
import { getsBox } from '../record/patterns/figuresOfStage.ts'
import type { Box } from '../record/bench/readingOf.ts'
import { MOST_RINGS } from './blocks/ringsTable.ts'
import { columnsTogether } from './blocks/rowsTable.ts'
import { columnOf } from './sheetPages.ts'
import { groupNumbers, type NumberGroup } from './stageGroups.ts'
import { stageFigures } from './stageFigures.ts'
import { stageNumbers } from './stageNumbers.ts'
import type { StageOnSheet, StageSheetOrder } from './stageSheetOrder.ts'
import { namedRows, stationRuns } from './stageTables.ts'
import { valuesOf } from './targetCell.ts'

type Side = Box['side']

/** The boxes of one number in one row, as they stand side by side on the paper. */
export interface BoxCell {
  readonly number: NumberKey
  readonly row: number
  readonly sides: readonly Side[]
}

/** A table of a stage sheet by its boxes. */
export interface BoxTable {
  /** Over it; null: it needs none. */
  readonly title: string | null
  /** Over the names of its rows. */
  readonly head: string
  /** Over its cells; empty where a row is one number that stands once, under a name of its own. */
  readonly columns: readonly { readonly name: string; readonly number: NumberKey | null }[]
  readonly rows: readonly { readonly name: string; readonly cells: readonly (BoxCell | null)[] }[]
}

/**
 * The boxes of a stage's sheet in the order they are written in: table by table, row by row, across. What has no box is left out. The same
 * tables as are printed, broken where those are.
 */
export function stageBoxes(order: StageSheetOrder, stage: StageOnSheet): readonly BoxTable[] {
  const { numbers } = stageFigures(order, stage)
  const keys = stageNumbers(stage.key, numbers, order.doc.plan.rim.method, order.computed.numbers)
  return groupNumbers(keys)
    .flatMap((group) => tablesOf(order, group, stage))
    .map((table) => ({ ...table, rows: table.rows.filter(({ cells }) => cells.some((cell) => cell !== null)) }))
    .filter(({ rows }) => rows.length > 0)
}

/** All boxes in order, one after the other. */
export const boxesInOrder = (tables: readonly BoxTable[]): readonly Box[] =>
  tables.flatMap(({ rows }) =>
    rows.flatMap(({ cells }) =>
      cells.flatMap((cell) =>
        cell === null ? [] : cell.sides.map((side) => ({ number: cell.number, row: cell.row, side })),
      ),
    ),
  )

function tablesOf(order: StageSheetOrder, group: NumberGroup, stage: StageOnSheet): readonly BoxTable[] {
  const { list, keys } = group
  const { paper, numbers } = order.words
  const figures = stageFigures(order, stage)
  const hasBox = (key: NumberKey) => getsBox(figures, key)
  const nameOf = (key: NumberKey) => numbers[key].name
  if (list === 'rosette.rings') return ringTables(order, keys.filter(hasBox))
  if (list === 'rim' || list === 'trebleRim') {
    const [, target] = keys
    if (target === undefined || !hasBox(target)) return []
    return stationRuns(order, list).map(({ title, rows, boxes }) => ({
      title,
      head: paper.columns.station,
      columns: [{ name: nameOf(target), number: target }],
      rows: rows.map((row) => ({
        name: String(row),
        cells: [{ number: target, row, sides: sidesOf(list, boxes, title !== null) }],
      })),
    }))
  }
  const named = namedRows(order, group, stage)
  if (named !== null) {
    const { names, at, boxesOf, head, title } = named
    return columnsTogether(named, columnOf(order.paperSize, 'upright')).map((together) => {
      const read = together.filter((key) => boxesOf(key) > 0)
      return {
        title,
        head,
        columns: read.map((key) => ({ name: nameOf(key), number: key })),
        rows: names.map((name, i) => ({
          name,
          cells: read.map((key) => ({
            number: key,
            row: at?.[i] ?? i,
            sides: sidesOf(list, boxesOf(key), title !== null),
          })),
        })),
      }
    })
  }
  if (list.endsWith('.contour') || list.endsWith('.flank')) return []
  const single = keys.filter((key) => hasBox(key) && (valuesOf(order, key)[0] ?? 'none') !== 'none')
  return [
    {
      title: null,
      head: paper.columns.what,
      columns: [],
      rows: single.map((key) => ({ name: nameOf(key), cells: [{ number: key, row: 0, sides: ['whole'] }] })),
    },
  ]
}

/** Rings stand side by side, three to a table, a row for each number. */
function ringTables(order: StageSheetOrder, keys: readonly NumberKey[]): readonly BoxTable[] {
  const { paper, numbers } = order.words
  const count = order.computed.numbers.rosette.rings.length
  const firsts = Array.from({ length: Math.ceil(count / MOST_RINGS) }, (_, i) => i * MOST_RINGS)
  return firsts.map((first) => {
    const rings = Array.from({ length: Math.min(MOST_RINGS, count - first) }, (_, i) => first + i)
    return {
      title: null,
      head: paper.columns.what,
      columns: rings.map((ring) => ({ name: paper.ring(ring + 1), number: null })),
      rows: keys.map((key) => ({
        name: numbers[key].name,
        cells: rings.map((row) =>
          (valuesOf(order, key)[row] ?? 'none') === 'none' ? null : { number: key, row, sides: ['whole' as const] },
        ),
      })),
    }
  })
}

/** Which halves the boxes of a cell are for: both where one table serves both, else that of its table. */
function sidesOf(list: string, boxes: 0 | 1 | 2, isOfOneHalf: boolean): readonly Side[] {
  if (boxes === 0) return []
  if (boxes === 2) return ['bass', 'treble']
  if (!isOfOneHalf) return ['whole']
  return [list.startsWith('treble') ? 'treble' : 'bass']
}
