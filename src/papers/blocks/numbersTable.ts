import type { NumberKey } from '../../core/numbers.ts'
import { standingOf } from '../../record/standing.ts'
import { getsBox } from '../../record/patterns/figuresOfStage.ts'
import type { StageFigures } from '../../record/patterns/stages/stagePattern.ts'
import type { Piece } from '../flow.ts'
import type { Mark } from '../page.ts'
import {
  ascentMm,
  blockOf,
  boxMark,
  capitalMm,
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
import { type SetFigure, targetFigure, toleranceFigure, valuesOf } from '../targetCell.ts'
import { wrapText } from '../textWidth.ts'

const BOX = { widthMm: 32, heightMm: 9.5 } as const
const ROW_MM = 11.5
const HEAD_MM = 5
const WITHIN_MM = 24
const TARGET_MM = 40
const AIR_MM = 3

interface Row {
  readonly name: readonly string[]
  readonly how: readonly string[]
  readonly target: SetFigure
  readonly within: SetFigure | null
  readonly hasBox: boolean
  readonly isEstimate: boolean
  readonly heightMm: number
}

/** Numbers that stand once, a row each: what and how, target, tolerance, and a box for the reading. null: this instrument has none of them. */
export function numbersPiece(
  order: StageSheetOrder,
  keys: readonly NumberKey[],
  stage: StageOnSheet,
  column: Column,
): Piece | null {
  const nameMm = column.widthMm - TARGET_MM - WITHIN_MM - BOX.widthMm - 2
  const figures = stageFigures(order, stage)
  const rows = keys.flatMap((key) => rowOf(order, key, figures, nameMm))
  if (rows.length === 0) return null
  const right = rightMm(column)
  const targetRight = right - BOX.widthMm - WITHIN_MM - 4
  const withinLeft = targetRight + 4
  const { columns, estimate } = order.words.paper

  const head = (hasBoxes: boolean): Mark[] => {
    const style = { sizePt: TYPE.caption }
    const base = HEAD_MM - 1.4
    return [
      textMark(columns.what, column.leftMm, base, style),
      textMark(columns.target, targetRight, base, { ...style, anchor: 'end' }),
      textMark(columns.tolerance, withinLeft, base, style),
      ...(hasBoxes ? [textMark(columns.measured, right - BOX.widthMm, base, style)] : []),
      level(column.leftMm, right, HEAD_MM, LINE.narrowMm),
    ]
  }

  const rowMarks = (row: Row, top: number): Mark[] => {
    const middle = top + row.heightMm / 2
    const textHeightMm = linesHeightMm(row.name.length, TYPE.name) + linesHeightMm(row.how.length, TYPE.small)
    const textTop = middle - textHeightMm / 2
    const marks: Mark[] = [
      ...linesMarks(row.name, column.leftMm, textTop, { sizePt: TYPE.name, weight: 'strong' }),
      ...linesMarks(row.how, column.leftMm, textTop + linesHeightMm(row.name.length, TYPE.name), {
        sizePt: TYPE.small,
      }),
      figureMark(
        row.target,
        targetRight,
        middle + capitalMm(TYPE.target) / 2 - (row.isEstimate ? 1.6 : 0),
        { sizePt: TYPE.target, weight: 'strong', anchor: 'end' },
        TARGET_MM - 4,
      ),
      level(column.leftMm, right, top + row.heightMm, LINE.hairMm),
    ]
    if (row.isEstimate)
      marks.push(
        textMark(estimate, targetRight, middle + 1.6 + ascentMm(TYPE.caption), { sizePt: TYPE.caption, anchor: 'end' }),
      )
    if (row.within !== null)
      marks.push(
        figureMark(row.within, withinLeft, middle + capitalMm(TYPE.text) / 2, { sizePt: TYPE.text }, WITHIN_MM - 2),
      )
    if (row.hasBox)
      marks.push(
        boxMark({ xMm: right - BOX.widthMm, yMm: middle - BOX.heightMm / 2, ...BOX }, 'measured', LINE.narrowMm),
      )
    return marks
  }

  const heightMm = (from: number, to: number) =>
    HEAD_MM + rows.slice(from, to).reduce((sum, row) => sum + row.heightMm, 0)
  return {
    kind: 'rows',
    count: rows.length,
    airMm: AIR_MM,
    least: 2,
    heightMm,
    lay: (from, to) => {
      const shown = rows.slice(from, to)
      let top = HEAD_MM
      const marks = head(shown.some((row) => row.hasBox))
      for (const row of shown) {
        marks.push(...rowMarks(row, top))
        top += row.heightMm
      }
      return blockOf('numbers', column, heightMm(from, to), marks, stage)
    },
  }
}

function rowOf(order: StageSheetOrder, key: NumberKey, figures: StageFigures, nameMm: number): Row[] {
  const value = valuesOf(order, key)[0]
  if (value === undefined || value === 'none') return []
  const words = order.words.numbers[key]
  const hasBox = getsBox(figures, key)
  const name = wrapText(words.name, nameMm, TYPE.name, 'strong')
  const how = wrapText((hasBox ? words.how : null) ?? words.what, nameMm, TYPE.small)
  const textMm = linesHeightMm(name.length, TYPE.name) + linesHeightMm(how.length, TYPE.small) + 1.5
  return [
    {
      name,
      how,
      target: targetFigure(order, key, value),
      within: toleranceFigure(order, key, value),
      hasBox,
      isEstimate: standingOf(key, order.doc.plan) === 'estimate',
      heightMm: Math.max(textMm, hasBox ? ROW_MM : 9.5),
    },
  ]
}
