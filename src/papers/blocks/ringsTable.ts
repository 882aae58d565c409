import type { NumberKey } from '../../core/numbers.ts'
import { getsBox } from '../../record/patterns/figuresOfStage.ts'
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
  rightMm,
  textMark,
  TYPE,
} from '../pen.ts'
import { stageFigures } from '../stageFigures.ts'
import type { StageOnSheet, StageSheetOrder } from '../stageSheetOrder.ts'
import { targetFigure, toleranceFigure, valuesOf } from '../targetCell.ts'
import { wrapText } from '../textWidth.ts'

const BOX = { widthMm: 22.4, heightMm: LEAST_BOX.heightMm + 0.2 } as const
const ROW_MM = 9.8
const HEAD_MM = 5.5
const NAME_MM = 34
const WITHIN_MM = 17
export const MOST_RINGS = 3

/** The rings of the rosette side by side, three at most, a row for each number. More rings take further tables. */
export function ringsPieces(
  order: StageSheetOrder,
  keys: readonly NumberKey[],
  stage: StageOnSheet,
  column: Column,
): Piece[] {
  const count = order.computed.numbers.rosette.rings.length
  const pieces: Piece[] = []
  for (let first = 0; first < count; first += MOST_RINGS)
    pieces.push(ringsPiece(order, keys, stage, column, first, Math.min(first + MOST_RINGS, count)))
  return pieces
}

function ringsPiece(
  order: StageSheetOrder,
  keys: readonly NumberKey[],
  stage: StageOnSheet,
  column: Column,
  first: number,
  end: number,
): Piece {
  const { paper, numbers } = order.words
  const figures = stageFigures(order, stage)
  const rings = Array.from({ length: end - first }, (_, i) => first + i)
  const shown = keys.filter((key) => rings.some((ring) => (valuesOf(order, key)[ring] ?? 'none') !== 'none'))
  const groupMm = (column.widthMm - NAME_MM - WITHIN_MM) / MOST_RINGS
  const groupLeft = (i: number) => column.leftMm + NAME_MM + WITHIN_MM + i * groupMm
  const right = Math.min(rightMm(column), groupLeft(rings.length))

  const headMarks = (): Mark[] => [
    textMark(paper.columns.tolerance, column.leftMm + NAME_MM, HEAD_MM - 1.6, { sizePt: TYPE.caption }),
    ...rings.map((ring, i) =>
      textMark(paper.ring(ring + 1), groupLeft(i) + 3, HEAD_MM - 1.6, { sizePt: TYPE.name, weight: 'strong' }, groupMm),
    ),
    level(column.leftMm, right, HEAD_MM, LINE.narrowMm),
  ]

  const rowMarks = (key: NumberKey, top: number): Mark[] => {
    const middle = top + ROW_MM / 2
    const name = wrapText(numbers[key].name, NAME_MM - 2, TYPE.small, 'strong').slice(0, 2)
    const values = valuesOf(order, key)
    const within = toleranceFigure(order, key, values[first] ?? 'none')
    const marks: Mark[] = [
      ...linesMarks(name, column.leftMm, middle - linesHeightMm(name.length, TYPE.small) / 2, {
        sizePt: TYPE.small,
        weight: 'strong',
      }),
      level(column.leftMm, right, top + ROW_MM, LINE.hairMm),
    ]
    if (within !== null)
      marks.push(
        figureMark(
          within,
          column.leftMm + NAME_MM,
          middle + capitalMm(TYPE.small) / 2,
          { sizePt: TYPE.small },
          WITHIN_MM - 1,
        ),
      )
    rings.forEach((ring, i) => {
      const value = values[ring] ?? 'none'
      if (value === 'none') return
      const targetRight = groupLeft(i) + groupMm - BOX.widthMm - 2
      marks.push(
        ...cellFigureMarks(
          targetFigure(order, key, value),
          targetRight,
          middle,
          { sizePt: TYPE.cellTarget, weight: 'strong', anchor: 'end' },
          groupMm - BOX.widthMm - 3,
        ),
      )
      if (getsBox(figures, key))
        marks.push(boxMark({ xMm: targetRight + 2, yMm: middle - BOX.heightMm / 2, ...BOX }, 'measured'))
    })
    return marks
  }

  const heightMm = (from: number, to: number) => HEAD_MM + (to - from) * ROW_MM
  return {
    kind: 'rows',
    count: shown.length,
    airMm: 3,
    least: Math.min(3, shown.length),
    heightMm,
    lay: (from, to) => {
      const marks = headMarks()
      shown.slice(from, to).forEach((key, i) => marks.push(...rowMarks(key, HEAD_MM + i * ROW_MM)))
      return blockOf('rows', column, heightMm(from, to), marks, stage)
    },
  }
}
