import type { NumberKey } from '../../core/numbers.ts'
import { getsBox, STAGES } from '../../record/patterns/stages.ts'
import { figureText } from '../../format/figure.ts'
import type { Piece } from '../flow.ts'
import { LEAST_BOX, type Mark } from '../page.ts'
import { blockOf, boxMark, cellFigureMarks, type Column, level, LINE, textMark, TYPE, upright } from '../pen.ts'
import type { StageOnSheet, StageSheetOrder } from '../stageSheetOrder.ts'
import { targetFigure, toleranceFigure, valuesOf } from '../targetCell.ts'

const BOX = { widthMm: 23, heightMm: LEAST_BOX.heightMm + 0.05 } as const
const ROW_MM = 9.4
const CAPTION_MM = 6
const HEAD_MM = 5
const GUTTER_MM = 7
const STATION_MM = 17

/** Stations round the rim in two columns, down the left one first: where, target, and a box for each half of the body. */
export function stationsPiece(
  order: StageSheetOrder,
  keys: readonly NumberKey[],
  stage: StageOnSheet,
  column: Column,
): Piece | null {
  const [alongKey, targetKey] = keys
  if (alongKey === undefined || targetKey === undefined) return null
  const along = valuesOf(order, alongKey)
  const targets = valuesOf(order, targetKey)
  if (along.length === 0) return null
  const hasBoxes = getsBox(STAGES[stage.key], targetKey)
  const halfMm = (column.widthMm - GUTTER_MM) / 2
  const { paper, numbers } = order.words
  const within = toleranceFigure(order, targetKey, targets[0] ?? 'none')
  const caption = [
    `${paper.columns.target}: ${numbers[targetKey].name}${within === null ? '' : `, ${figureText(within.figure)}`}.`,
    paper.stationsFrom(numbers[alongKey].name),
  ].join(' ')
  const places = (left: number) => {
    const right = left + halfMm
    const trebleLeft = right - BOX.widthMm
    const bassLeft = trebleLeft - BOX.widthMm - 0.8
    return { left, right, trebleLeft, bassLeft, targetRight: (hasBoxes ? bassLeft : right) - 2.5 }
  }

  const headMarks = (left: number): Mark[] => {
    const at = places(left)
    const base = CAPTION_MM + HEAD_MM - 1.4
    const style = { sizePt: TYPE.caption }
    return [
      textMark(paper.columns.station, left, base, style),
      textMark(paper.columns.target, at.targetRight, base, { ...style, anchor: 'end' }),
      ...(hasBoxes
        ? [
            textMark(paper.columns.bass, at.bassLeft, base, style),
            textMark(paper.columns.treble, at.trebleLeft, base, style),
          ]
        : []),
      level(left, at.right, CAPTION_MM + HEAD_MM, LINE.narrowMm),
    ]
  }

  const rowMarks = (row: number, left: number, top: number): Mark[] => {
    const at = places(left)
    const middle = top + ROW_MM / 2
    const box = (x: number) => boxMark({ xMm: x, yMm: middle - BOX.heightMm / 2, ...BOX }, 'measured')
    return [
      ...cellFigureMarks(
        targetFigure(order, alongKey, along[row] ?? 'none'),
        left,
        middle,
        { sizePt: TYPE.text },
        STATION_MM,
      ),
      ...cellFigureMarks(
        targetFigure(order, targetKey, targets[row] ?? 'none'),
        at.targetRight,
        middle,
        { sizePt: TYPE.cellTarget, weight: 'strong', anchor: 'end' },
        at.targetRight - left - STATION_MM - 1,
      ),
      ...(hasBoxes ? [box(at.bassLeft), box(at.trebleLeft)] : []),
      level(left, at.right, top + ROW_MM, LINE.hairMm),
    ]
  }

  const perColumn = (from: number, to: number) => Math.ceil((to - from) / 2)
  const heightMm = (from: number, to: number) => CAPTION_MM + HEAD_MM + perColumn(from, to) * ROW_MM
  return {
    kind: 'rows',
    count: along.length,
    airMm: 3,
    least: 12,
    heightMm,
    lay: (from, to) => {
      const deep = perColumn(from, to)
      const second = column.leftMm + halfMm + GUTTER_MM
      const marks: Mark[] = [
        textMark(caption, column.leftMm, 4, { sizePt: TYPE.small }, column.widthMm),
        ...headMarks(column.leftMm),
        ...(to - from > deep ? headMarks(second) : []),
        upright(second - GUTTER_MM / 2, CAPTION_MM, heightMm(from, to), LINE.hairMm),
      ]
      for (let row = from; row < to; row++) {
        const i = row - from
        const left = i < deep ? column.leftMm : second
        marks.push(...rowMarks(row, left, CAPTION_MM + HEAD_MM + (i % deep) * ROW_MM))
      }
      return blockOf('stations', column, heightMm(from, to), marks, stage)
    },
  }
}
