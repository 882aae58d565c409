import type { NumberKey } from '../../core/numbers.ts'
import { getsBox } from '../../record/patterns/figuresOfStage.ts'
import { figureText } from '../../format/figure.ts'
import type { Piece } from '../flow.ts'
import { LEAST_BOX, type Mark } from '../page.ts'
import {
  blockOf,
  boxMark,
  capitalMm,
  cellFigureMarks,
  type Column,
  level,
  LINE,
  textMark,
  TYPE,
  upright,
} from '../pen.ts'
import { stageFigures } from '../stageFigures.ts'
import type { StageOnSheet, StageSheetOrder } from '../stageSheetOrder.ts'
import { targetFigure, toleranceFigure, valuesOf } from '../targetCell.ts'

const BOX = { widthMm: 23, heightMm: LEAST_BOX.heightMm + 0.05 } as const
const ROW_MM = 9.4
const CAPTION_MM = 6
const HEAD_MM = 5
const GUTTER_MM = 7
const TITLE_MM = 6
/** The station's number, and where it stands. */
const NUMBER_MM = 5.5
const STATION_MM = 15

/** Stations that share one table. */
export interface StationRun {
  /** Over the table; null: both sides are read by it. */
  readonly title: string | null
  /** Their places in the list, counted from 0 at the tail as everywhere in the app. */
  readonly rows: readonly number[]
  /** One for each side that is read. */
  readonly boxes: 1 | 2
  /** A further piece of its side: its blank is measured from a tail line of its own. */
  readonly isLaterPiece: boolean
}
const isOnBlank = (key: NumberKey): boolean => key.endsWith('.alongBlankMm')

/** Stations round the rim in two columns, down the left one first: number, where, target, and a box for each side read. No stations: null. */
export function stationsPiece(
  order: StageSheetOrder,
  keys: readonly NumberKey[],
  run: StationRun,
  stage: StageOnSheet,
  column: Column,
): Piece | null {
  const [alongKey, targetKey] = keys
  if (alongKey === undefined || targetKey === undefined) return null
  const along = valuesOf(order, alongKey)
  const targets = valuesOf(order, targetKey)
  if (run.rows.length === 0) return null
  const boxes = getsBox(stageFigures(order, stage), targetKey) ? run.boxes : 0
  const titleMm = run.title === null ? 0 : TITLE_MM
  const headTopMm = titleMm + CAPTION_MM
  const halfMm = (column.widthMm - GUTTER_MM) / 2
  const { paper, numbers } = order.words
  const within = toleranceFigure(order, targetKey, targets[run.rows[0] ?? 0] ?? 'none')
  const caption = [
    `${paper.columns.target}: ${numbers[targetKey].name}${within === null ? '' : `, ${figureText(within.figure)}`}.`,
    paper.stationsFrom(
      numbers[alongKey].name,
      !isOnBlank(alongKey) ? 'tail' : run.isLaterPiece ? 'ownTailLine' : 'tailLine',
    ),
  ].join(' ')
  const places = (left: number) => {
    const right = left + halfMm
    const boxLefts = Array.from({ length: boxes }, (_, n) => right - (boxes - n) * BOX.widthMm - (boxes - 1 - n) * 0.8)
    return { left, right, boxLefts, targetRight: (boxLefts[0] ?? right) - 2.5 }
  }

  const headMarks = (left: number): Mark[] => {
    const at = places(left)
    const base = headTopMm + HEAD_MM - 1.4
    const style = { sizePt: TYPE.caption }
    const captions = boxes === 2 ? [paper.columns.bass, paper.columns.treble] : [paper.columns.measured]
    return [
      textMark(paper.columns.station, left, base, style),
      textMark(paper.columns.target, at.targetRight, base, { ...style, anchor: 'end' }),
      ...at.boxLefts.map((boxLeft, n) => textMark(captions[n] ?? '', boxLeft, base, style)),
      level(left, at.right, headTopMm + HEAD_MM, LINE.narrowMm),
    ]
  }

  const rowMarks = (row: number, left: number, top: number): Mark[] => {
    const at = places(left)
    const middle = top + ROW_MM / 2
    const box = (x: number) => boxMark({ xMm: x, yMm: middle - BOX.heightMm / 2, ...BOX }, 'measured')
    return [
      textMark(
        String(row),
        left + NUMBER_MM - 1.5,
        middle + capitalMm(TYPE.small) / 2,
        { sizePt: TYPE.small, anchor: 'end' },
        NUMBER_MM - 1.5,
      ),
      ...cellFigureMarks(
        targetFigure(order, alongKey, along[row] ?? 'none'),
        left + NUMBER_MM,
        middle,
        { sizePt: TYPE.text },
        STATION_MM,
      ),
      ...cellFigureMarks(
        targetFigure(order, targetKey, targets[row] ?? 'none'),
        at.targetRight,
        middle,
        { sizePt: TYPE.cellTarget, weight: 'strong', anchor: 'end' },
        at.targetRight - left - NUMBER_MM - STATION_MM - 1,
      ),
      ...at.boxLefts.map(box),
      level(left, at.right, top + ROW_MM, LINE.hairMm),
    ]
  }

  const perColumn = (from: number, to: number) => Math.ceil((to - from) / 2)
  const heightMm = (from: number, to: number) => headTopMm + HEAD_MM + perColumn(from, to) * ROW_MM
  return {
    kind: 'rows',
    count: run.rows.length,
    airMm: 3,
    least: 12,
    heightMm,
    lay: (from, to) => {
      const deep = perColumn(from, to)
      const second = column.leftMm + halfMm + GUTTER_MM
      const marks: Mark[] = [
        ...(run.title === null
          ? []
          : [textMark(run.title, column.leftMm, 4.4, { sizePt: TYPE.name, weight: 'strong' }, column.widthMm)]),
        textMark(caption, column.leftMm, titleMm + 4, { sizePt: TYPE.small }, column.widthMm),
        ...headMarks(column.leftMm),
        ...(to - from > deep ? headMarks(second) : []),
        upright(second - GUTTER_MM / 2, headTopMm, heightMm(from, to), LINE.hairMm),
      ]
      for (const [i, row] of run.rows.slice(from, to).entries()) {
        const left = i < deep ? column.leftMm : second
        marks.push(...rowMarks(row, left, headTopMm + HEAD_MM + (i % deep) * ROW_MM))
      }
      return blockOf('stations', column, heightMm(from, to), marks, stage)
    },
  }
}
