import type { Piece } from '../flow.ts'
import type { BlockKind, Mark } from '../page.ts'
import {
  ascentMm,
  blockOf,
  boxMark,
  type Column,
  leadingMm,
  level,
  LINE,
  linesHeightMm,
  linesMarks,
  rightMm,
  textMark,
  TYPE,
} from '../pen.ts'
import { wrapText } from '../textWidth.ts'

/** A column of words or figures; figures stand at its right, where they can be compared. */
export interface TickColumn {
  readonly head: string
  readonly share: number
  readonly isFigure: boolean
}

const PAD_MM = 1.2
const BETWEEN_MM = 3
const TICK = { sideMm: 5, columnMm: 9 } as const

/** Rows of words, each with a box to tick at its left. Cells are broken into lines where they are long. */
export function tickPiece(
  kind: BlockKind,
  columns: readonly TickColumn[],
  rows: readonly (readonly string[])[],
  column: Column,
): Piece {
  const roomMm = column.widthMm - TICK.columnMm - BETWEEN_MM * (columns.length - 1)
  const shares = columns.reduce((sum, { share }) => sum + share, 0)
  let leftMm = column.leftMm + TICK.columnMm
  const placed = columns.map((one) => {
    const widthMm = (roomMm * one.share) / shares
    const at = { ...one, leftMm, widthMm }
    leftMm += widthMm + BETWEEN_MM
    return at
  })
  const heads = placed.map(({ head, widthMm }) => wrapText(head, widthMm, TYPE.caption))
  const headMm = linesHeightMm(Math.max(...heads.map((lines) => lines.length)), TYPE.caption) + 1.2
  const set = rows.map((row) => {
    const cells = placed.map(({ widthMm }, i) => wrapText(row[i] ?? '', widthMm, TYPE.small))
    const linesMm = linesHeightMm(Math.max(1, ...cells.map((lines) => lines.length)), TYPE.small)
    return { cells, heightMm: Math.max(linesMm, TICK.sideMm) + 2 * PAD_MM }
  })
  const heightMm = (from: number, to: number) =>
    headMm + set.slice(from, to).reduce((sum, row) => sum + row.heightMm, 0)

  const cellMarks = (lines: readonly string[], at: (typeof placed)[number], topMm: number, sizePt: number): Mark[] =>
    at.isFigure
      ? lines.map((line, i) =>
          textMark(line, at.leftMm + at.widthMm, topMm + ascentMm(sizePt) + i * leadingMm(sizePt), {
            sizePt,
            anchor: 'end',
          }),
        )
      : linesMarks(lines, at.leftMm, topMm, { sizePt })

  return {
    kind: 'rows',
    count: rows.length,
    airMm: 1.5,
    least: Math.min(rows.length, 2),
    heightMm,
    lay: (from, to) => {
      const marks: Mark[] = [
        ...placed.flatMap((at, i) => cellMarks(heads[i] ?? [], at, 0, TYPE.caption)),
        level(column.leftMm, rightMm(column), headMm, LINE.narrowMm),
      ]
      let top = headMm
      for (const row of set.slice(from, to)) {
        marks.push(
          boxMark(
            { xMm: column.leftMm, yMm: top + PAD_MM, widthMm: TICK.sideMm, heightMm: TICK.sideMm },
            'frame',
            LINE.narrowMm,
          ),
          ...placed.flatMap((at, i) => cellMarks(row.cells[i] ?? [], at, top + PAD_MM, TYPE.small)),
          level(column.leftMm, rightMm(column), top + row.heightMm, LINE.hairMm),
        )
        top += row.heightMm
      }
      return blockOf(kind, column, heightMm(from, to), marks)
    },
  }
}
