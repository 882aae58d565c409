import type { NumberKey } from '../../core/numbers.ts'
import type { Piece } from '../flow.ts'
import { LEAST_BOX, type Mark } from '../page.ts'
import {
  blockOf,
  boxMark,
  capitalMm,
  cellFigureMarks,
  type Column,
  figureMark,
  level,
  LINE,
  linesHeightMm,
  linesMarks,
  textMark,
  TYPE,
} from '../pen.ts'
import type { StageOnSheet, StageSheetOrder } from '../stageSheetOrder.ts'
import { targetFigure, toleranceFigure, valuesOf } from '../targetCell.ts'
import { wrapText } from '../textWidth.ts'

const BOX = { widthMm: 22.4, heightMm: LEAST_BOX.heightMm + 0.2 } as const
const ROW_MM = 10.2
const TITLE_MM = 6
const WITHIN_MM = 4.2
const CAPTION_MM = 5
const NAME_MM = 22
const TARGET_MM = 22
const LOOK_UP_MM = 28
const GUTTER_MM = 2
/** A table of no more rows stays whole. */
const STAYS_WHOLE = 8

/** A list with a name for every row. */
export interface NamedRows {
  /** Over the table; null: it needs none. */
  readonly title: string | null
  /** Over the names. */
  readonly head: string
  readonly names: readonly string[]
  /** Which row of the list each name stands for, where some are left out. */
  readonly at?: readonly number[]
  readonly keys: readonly NumberKey[]
  /** Boxes of a number: one for each half of the body it is read on, none for what is looked up. */
  readonly boxesOf: (key: NumberKey) => 0 | 1 | 2
}

interface Group {
  readonly key: NumberKey
  readonly boxes: 0 | 1 | 2
  readonly name: readonly string[]
  readonly leftMm: number
  readonly targetRightMm: number
  readonly endMm: number
}

/** A row for each name with some of its numbers side by side; columns that do not fit beside the others take a further table. No rows: nothing. */
export function rowsPieces(order: StageSheetOrder, rows: NamedRows, stage: StageOnSheet, column: Column): Piece[] {
  if (rows.names.length === 0 || rows.keys.length === 0) return []
  return columnsTogether(rows, column).map((keys, i) =>
    rowsPiece(order, { ...rows, title: i === 0 ? rows.title : null, keys }, stage, column),
  )
}

/** The columns of each table on a page of this width. */
export const columnsTogether = (rows: NamedRows, column: Pick<Column, 'widthMm'>): readonly (readonly NumberKey[])[] =>
  tablesOf(rows, column.widthMm - NAME_MM + GUTTER_MM)

/** The columns of each table: as many as fit beside each other, in their order, and as even as that allows. */
function tablesOf({ keys, boxesOf }: NamedRows, roomMm: number): NumberKey[][] {
  const widthOf = (list: readonly NumberKey[]) => list.reduce((sum, key) => sum + groupWidthMm(boxesOf(key)), 0)
  const least = Math.ceil(widthOf(keys) / roomMm - 1e-9)
  for (let count = least; count < keys.length; count++) {
    const perTable = Math.ceil(keys.length / count)
    const tables = Array.from({ length: Math.ceil(keys.length / perTable) }, (_, i) =>
      keys.slice(i * perTable, (i + 1) * perTable),
    )
    if (tables.every((table) => widthOf(table) <= roomMm + 1e-9)) return tables
  }
  return keys.map((key) => [key])
}

const groupWidthMm = (boxes: number): number =>
  (boxes === 0 ? LOOK_UP_MM : TARGET_MM) + boxes * (BOX.widthMm + 0.6) + GUTTER_MM

function rowsPiece(order: StageSheetOrder, rows: NamedRows, stage: StageOnSheet, column: Column): Piece {
  const { paper, numbers } = order.words
  const groups: Group[] = []
  let left = column.leftMm + NAME_MM
  for (const key of rows.keys) {
    const boxes = rows.boxesOf(key)
    const widthMm = groupWidthMm(boxes)
    const name = wrapText(numbers[key].name, widthMm - 5, TYPE.small, 'strong')
    const targetRightMm = left + (boxes === 0 ? LOOK_UP_MM : TARGET_MM) - 2
    groups.push({ key, boxes, name, leftMm: left, targetRightMm, endMm: left + widthMm - GUTTER_MM })
    left += widthMm
  }
  const right = left - GUTTER_MM
  const titleMm = rows.title === null ? 0 : TITLE_MM
  const nameLines = Math.max(...groups.map(({ name }) => name.length))
  const nameMm = linesHeightMm(nameLines, TYPE.small) + 0.5
  const headMm = titleMm + nameMm + WITHIN_MM + CAPTION_MM
  const boxLeft = (targetRightMm: number, n: number) => targetRightMm + 2 + n * (BOX.widthMm + 0.6)

  const headMarks = (): Mark[] => {
    const style = { sizePt: TYPE.caption }
    const base = headMm - 1.4
    const marks: Mark[] = [
      textMark(rows.head, column.leftMm, base, style, NAME_MM),
      level(column.leftMm, right, headMm, LINE.narrowMm),
    ]
    if (rows.title !== null)
      marks.push(textMark(rows.title, column.leftMm, 4.4, { sizePt: TYPE.name, weight: 'strong' }, column.widthMm))
    for (const { key, boxes, name, leftMm, targetRightMm, endMm } of groups) {
      const within = boxes === 0 ? null : toleranceFigure(order, key, valuesOf(order, key)[0] ?? 'none')
      marks.push(
        ...linesMarks(name, leftMm + 2, titleMm, { sizePt: TYPE.small, weight: 'strong' }),
        textMark(paper.columns.target, targetRightMm, base, { ...style, anchor: 'end' }),
      )
      if (within !== null)
        marks.push(figureMark(within, leftMm + 2, titleMm + nameMm + 3, { sizePt: TYPE.small }, endMm - leftMm - 3))
      const captions =
        boxes === 2 ? [paper.columns.bass, paper.columns.treble] : boxes === 1 ? [paper.columns.measured] : []
      captions.forEach((caption, n) =>
        marks.push(textMark(caption, boxLeft(targetRightMm, n), base, style, BOX.widthMm)),
      )
    }
    return marks
  }

  const rowMarks = (row: number, top: number): Mark[] => {
    const middle = top + ROW_MM / 2
    const name = rows.names[row] ?? ''
    const isLong = wrapText(name, NAME_MM - 1, TYPE.name, 'strong').length > 1
    const marks: Mark[] = [
      level(column.leftMm, right, top + ROW_MM, LINE.hairMm),
      ...(isLong
        ? longNameMarks(name, column.leftMm, middle)
        : [
            textMark(
              name,
              column.leftMm,
              middle + capitalMm(TYPE.name) / 2,
              { sizePt: TYPE.name, weight: 'strong' },
              NAME_MM,
            ),
          ]),
    ]
    for (const { key, boxes, leftMm, targetRightMm } of groups) {
      marks.push(
        ...cellFigureMarks(
          targetFigure(order, key, valuesOf(order, key)[rows.at?.[row] ?? row] ?? 'none'),
          targetRightMm,
          middle,
          { sizePt: TYPE.cellTarget, weight: 'strong', anchor: 'end' },
          targetRightMm - leftMm,
        ),
      )
      for (let n = 0; n < boxes; n++)
        marks.push(boxMark({ xMm: boxLeft(targetRightMm, n), yMm: middle - BOX.heightMm / 2, ...BOX }, 'measured'))
    }
    return marks
  }

  const count = rows.names.length
  const heightMm = (from: number, to: number) => headMm + (to - from) * ROW_MM
  return {
    kind: 'rows',
    count,
    airMm: 3,
    least: count <= STAYS_WHOLE ? count : 3,
    heightMm,
    lay: (from, to) => {
      const marks = headMarks()
      for (let row = from; row < to; row++) marks.push(...rowMarks(row, headMm + (row - from) * ROW_MM))
      return blockOf('rows', column, heightMm(from, to), marks, stage)
    },
  }
}

/** A name on two lines, smaller. */
function longNameMarks(name: string, leftMm: number, middleMm: number): Mark[] {
  const lines = wrapText(name, NAME_MM - 1, TYPE.small, 'strong').slice(0, 2)
  const topMm = middleMm - linesHeightMm(lines.length, TYPE.small) / 2
  return linesMarks(lines, leftMm, topMm, { sizePt: TYPE.small, weight: 'strong' })
}
